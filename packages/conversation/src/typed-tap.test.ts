import { expected, openCase, turn, type Case, type Input } from '@keyturn/core';
import { shippedFlow, shippedTexts } from '@keyturn/flows';
import { createSpeaker, localeTags, type Hearing } from '@keyturn/language';
import { describe, expect, test } from 'vitest';
import { blankStanding } from './standing.ts';
import { typedTap } from './typed-tap.ts';

const { chart } = shippedFlow('no-start', 'en');
const at = '2026-01-05T08:00:00.000Z';
const context = { place: 'home', 'vehicle.fuel': 'petrol' };

function after(...inputs: readonly Input[]): Case {
  const { case: opened } = openCase(chart, { id: 'c', at, context });
  return inputs.reduce((kase, input) => turn(chart, kase, { at, input }).case, opened);
}

const asked = after({ type: 'answers', answers: [{ check: 'scene', value: ['safe'] }] });
const raised = after({ type: 'interrupt', interrupt: 'smoke' });
const closed: Case = { ...asked, value: 'closed' };

describe.each(localeTags)('the words of a key, typed in %s,', (locale) => {
  const speaker = createSpeaker({
    locale,
    flowTexts: shippedTexts('no-start', locale),
    checks: chart.flow.checks,
  });
  const inputs = (key: string, hearing: Hearing): readonly Input[] => {
    const understood = speaker.understand(speaker.key(key as 'why'), hearing);
    return understood.type === 'input' ? understood.inputs : [];
  };

  test('take those that are picked', () => {
    const standing = { ...blankStanding(locale), taps: [{ type: 'take', check: 'kit' }] as const };
    const held = { case: asked, standing };
    expect(typedTap(held, speaker.key('take').toUpperCase(), speaker)).toEqual(standing.taps[0]);
    expect(typedTap({ ...held, standing: blankStanding(locale) }, 'x', speaker)).toBe(undefined);
  });

  test('begin anew once the case is closed', () => {
    const held = { case: closed, standing: blankStanding(locale) };
    expect(typedTap(held, speaker.key('begin'), speaker)).toEqual({ type: 'begin' });
    expect(typedTap({ ...held, case: asked }, speaker.key('begin'), speaker)).toBe(undefined);
  });

  test.each([
    ['dontKnow', 'dont-know'],
    ['cannot', 'cannot'],
    ['why', 'why'],
    ['back', 'back'],
  ])('do at a question what the key does: %s', (key, talk) => {
    expect(inputs(key, expected(chart, asked))).toEqual([{ type: 'talk', talk }]);
  });

  test('confirm a caution, or say that it cannot be', () => {
    const hearing: Hearing = { ...expected(chart, asked), awaiting: 'confirm' };
    expect(inputs('confirm', hearing)).toEqual([{ type: 'confirm' }]);
    expect(inputs('cannot', hearing)).toEqual([{ type: 'talk', talk: 'cannot' }]);
  });

  test('end a wait, and a danger', () => {
    const waiting: Hearing = { ...expected(chart, asked), awaiting: 'wait' };
    expect(inputs('done', waiting)).toEqual([{ type: 'waited' }]);
    expect(inputs('over', expected(chart, raised))).toEqual([{ type: 'resume' }]);
  });
});
