import { openCase, positionOf, turn, type Case, type Input } from '@keyturn/core';
import { shippedFlow, shippedTexts } from '@keyturn/flows';
import { createSpeaker } from '@keyturn/language';
import { expect, test } from 'vitest';
import { summaryDraft } from './summary.ts';

const { chart } = shippedFlow('no-start', 'en');
const at = '2026-01-05T08:00:00.000Z';

/** The lines of a case at its end, after these answers; whatever else is asked is not known. */
function summaryOf(
  answers: Readonly<Record<string, readonly string[]>>,
  { tag = 'en', raised }: { readonly tag?: string; readonly raised?: string } = {},
): readonly string[] {
  const context = { role: 'driver', place: 'parking', 'vehicle.fuel': 'petrol', kit: [] };
  let kase: Case = openCase(chart, { id: 'c', at, context }).case;
  if (raised !== undefined) {
    for (const input of [{ type: 'interrupt', interrupt: raised }, { type: 'resume' }]) {
      kase = turn(chart, kase, { at, input }).case;
    }
  }
  for (let position = positionOf(kase); position.awaiting !== 'nothing';) {
    const value = position.awaiting === 'answer' ? answers[position.check] : undefined;
    const input: Input =
      position.awaiting === 'confirm'
        ? { type: 'confirm' }
        : position.awaiting === 'answer' && value !== undefined
          ? { type: 'answers', answers: [{ check: position.check, value }] }
          : { type: 'talk', talk: 'dont-know' };
    kase = turn(chart, kase, { at, input }).case;
    position = positionOf(kase);
  }
  const { checks } = chart.flow;
  const speaker = createSpeaker({
    locale: tag,
    flowTexts: shippedTexts('no-start', tag),
    checks,
    role: 'driver',
  });
  return summaryDraft(kase, speaker).lines.map(({ text }) => text);
}

const flatBattery = {
  scene: ['safe'],
  complaint: ['rapid-clicking'],
  history: ['lights-left-on'],
  'battery-look': ['sound'],
};

test('says what should come and what to bring, before what was found', () => {
  const lines = summaryOf(flatBattery);
  const sent = lines.findIndex((line) => line.startsWith('Boost van: leads or a pack'));
  expect(sent).toBe(3);
  expect(lines.slice(sent + 1)).toContain('– What happens at start: fast clicking.');
});

test('is headed for whoever it is passed on to, and for no workshop where somebody comes', () => {
  expect(summaryOf(flatBattery)[0]).toBe('Summary, to be passed on');
  expect(summaryOf(flatBattery, { tag: 'de' })[0]).toBe('Zusammenfassung, zum Weiterleiten');
});

test('says what a danger forbids to whoever comes', () => {
  expect(summaryOf(flatBattery, { raised: 'smoke' })).toContain(
    'There was smoke: no start, no boost and no charge until somebody has found why.',
  );
});

test('calls nobody once the repair is proved', () => {
  const swapped = {
    ...flatBattery,
    complaint: ['silent'],
    history: ['none'],
    dash: ['stays-bright'],
    selector: ['park-neutral'],
    'neutral-try': ['no-change'],
    'relay-swap': ['cranks'],
  };
  const repaired = { repair: ['done'], 'start-after': ['starts'] };
  expect(summaryOf(swapped)).toContain('Proved by measurement.');
  expect(summaryOf(swapped).join('\n')).toContain('Technician: voltmeter');
  expect(summaryOf({ ...swapped, ...repaired }).join('\n')).not.toContain('Technician: voltmeter');
});
