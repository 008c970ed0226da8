/**
 * No alarm where there is no danger: answers where they are asked, figures however they are said,
 * and calm statements about batteries and engines. And alarms where there is one: few may be lost.
 * Common practice, no source.
 */
import { createSpeaker, localeTags } from '@keyturn/language';
import { meaningOf, shippedFlow } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';
import { alarms } from './support/alarms.ts';
import { speech } from './support/said-figures.ts';

/** So many of the frightened sentences must be heard, whatever is asked. */
const leastHeard = 0.85;

/** Answers that name a danger themselves, and may raise the alarm of it. */
const dangerous = new Set(['place', 'scene', 'battery-case', 'flooded-smell']);

describe.each(localeTags)('in %s', (locale) => {
  const { raised, calm, statements, things, figures } = alarms[locale]!;
  const { elsewhere, inWords } = speech[locale]!;
  const { chart, texts } = shippedFlow('no-start', locale);
  const { checks, interrupts } = chart.flow;
  const speaker = createSpeaker({ locale, flowTexts: texts, checks });

  /** The interrupt that is heard, if any. */
  const alarm = (check: string | null, text: string): string | undefined => {
    const { talk } = meaningOf({ check, text }, chart, speaker);
    return talk !== null && Object.hasOwn(interrupts, talk) ? talk : undefined;
  };

  const falseAlarms = (
    said: readonly (readonly [check: string | null, text: string])[],
  ): string[] =>
    said.flatMap(([check, text]) => {
      const heard = alarm(check, text);
      return heard === undefined ? [] : [`${check ?? 'nothing'}: ${text}: ${heard}`];
    });

  test('no answer raises an alarm where it is asked', () => {
    const answers = Object.values(checks).flatMap(({ id, like }) => {
      const own = texts.checks[id]?.answers ?? texts.checks[like ?? '']?.answers ?? {};
      return Object.values(own).flatMap(({ label, said }) =>
        said === undefined ? [] : [label, ...said].map((text) => [id, text] as const),
      );
    });
    expect(answers.length).toBeGreaterThan(1000);
    expect(falseAlarms(answers.filter(([id]) => !dangerous.has(id)))).toEqual([]);
  });

  test('no figure raises an alarm', () => {
    const readings = Object.values(checks).filter(({ form }) => form.kind === 'reading');
    const words = inWords.flatMap(([, said]) => said.slice(0, 2)).slice(0, 12);
    const said = [...words, '12.4', '12,4 V', '0.3', '9.8 V', '180 A', '24.8 V', '4', '-10'];
    const plain = readings.flatMap(({ id }) => said.map((text) => [id, text] as const));
    const others = elsewhere.flatMap(([id, , texts]) => texts.map((text) => [id, text] as const));
    expect(falseAlarms([...plain, ...others])).toEqual([]);
  });

  test('nothing ordinary raises an alarm, beside a battery, a car and a figure', () => {
    const said = statements.flatMap((statement) =>
      things.flatMap((thing) =>
        figures.flatMap((figure) => [
          `${statement}, ${thing}`,
          `${thing} ${figure}`,
          `${statement}, ${thing} ${figure}`,
          `${statement}, ${figure}`,
        ]),
      ),
    );
    const asked = [...new Set(said)].flatMap((text) =>
      [null, 'battery-rest'].map((check) => [check, text] as const),
    );
    expect(falseAlarms([...asked, ...calm])).toEqual([]);
  });

  test('who is in danger is heard, whatever is asked', () => {
    const asked = [null, 'battery-rest', 'complaint'];
    const missed = asked.flatMap((check) =>
      raised.filter(([interrupt, text]) => alarm(check, text) !== interrupt),
    );
    expect(1 - missed.length / (raised.length * asked.length)).toBeGreaterThanOrEqual(leastHeard);
  });
});
