/**
 * The shipped flow in every language: each way to say an answer is that answer, each interrupt is
 * heard, and nothing but a yes confirms a caution.
 */
import { positionOf, openCase, type Input } from '@keyturn/core';
import { createSpeaker, localeTags, type Hearing, type Words } from '@keyturn/language';
import { replayCard, shippedTexts } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';
import { translateCard } from './support/translate-card.ts';
import { cards, noStart, playedCard, speaker as english } from './support/no-start.ts';

const { chart } = noStart;
const { checks, interrupts } = chart.flow;

function hearing(check: string | null, awaiting: Hearing['awaiting'] = 'answer'): Hearing {
  return {
    awaiting,
    check,
    checks,
    interrupts: Object.keys(interrupts),
    answered: [],
    kit: [],
    nominal: 12,
    lamp: false,
  };
}

describe.each(localeTags)('in %s', (locale) => {
  const flowTexts = shippedTexts('no-start', locale);
  const speaker = createSpeaker({ locale, flowTexts, checks });
  const inputs = (text: string, to: Hearing): readonly Input[] => {
    const understood = speaker.understand(text, to);
    return understood.type === 'input' ? understood.inputs : [];
  };

  test.each(Object.values(checks).map((check) => [check.id, check] as const))(
    'every way to answer %s is that answer',
    (id, { form, like }) => {
      if (form.kind !== 'choice') return;
      const words = { ...flowTexts.checks[like ?? id], ...flowTexts.checks[id] };
      for (const answer of form.choices) {
        const { label = answer, said = [] } = words.answers?.[answer] ?? {};
        for (const phrase of [label, ...said]) {
          expect(inputs(phrase, hearing(id)), phrase).toEqual([
            { type: 'answers', answers: [{ check: id, value: [answer] }] },
          ]);
        }
      }
    },
  );

  test.each(Object.keys(interrupts))('%s is raised however it is said', (interrupt) => {
    for (const phrase of flowTexts.interrupts[interrupt]?.said ?? []) {
      for (const check of [null, 'complaint', 'battery-rest']) {
        expect(inputs(phrase, hearing(check)), phrase).toContainEqual({
          type: 'interrupt',
          interrupt,
        });
      }
    }
  });

  test('a caution is confirmed by a yes, never by what is not known or not possible', () => {
    const confirms = (text: string): boolean =>
      inputs(text, hearing('battery-crank', 'confirm')).some(({ type }) => type === 'confirm');
    const no = ['no', 'nein', 'non', 'nie', 'لا', 'cannot', 'nicht', 'no puedo', 'je ne peux pas'];
    for (const text of no) expect(confirms(text), text).toBe(locale === 'pl' && text === 'no');
    const yes = { en: 'yes', es: 'sí', de: 'ja', fr: 'oui', pl: 'tak', ar: 'نعم' }[locale] ?? '';
    expect(confirms(yes)).toBe(true);
    const but = { en: 'but', es: 'pero', de: 'aber', fr: 'mais', pl: 'ale', ar: 'لكن' }[locale];
    expect(confirms(`${yes} ${but}`)).toBe(false);
  });

  test('a caution is confirmed by no other talk', async () => {
    const words = (await import(`../packages/language/src/words/${locale}.ts`)) as Readonly<
      Record<string, Words>
    >;
    const { talk } = words[`${locale}Words`]!;
    const said = ['no', 'cannot', 'dont-know', 'why', 'back', 'repeat', 'person', 'stop'] as const;
    const confirmed = said
      .flatMap((word) => talk[word])
      .filter((text) =>
        inputs(text, hearing('battery-crank', 'confirm')).some(({ type }) => type === 'confirm'),
      );
    expect(confirmed).toEqual([]);
  });

  // Every card in one language at least, and one card in 24 in all of them.
  const own = cards.filter(
    (_, index) => index % 24 === 0 || index % localeTags.length === localeTags.indexOf(locale),
  );

  test.each(own.map((card) => [card.id, card] as const))(
    'the card %s comes to the same verdict by the same questions and figures',
    (_, card) => {
      const translated = translateCard(card, { from: english, to: speaker, chart });
      expect(replayCard(chart, speaker, translated)).toEqual(playedCard(card));
    },
  );
});

test('changing the language changes nothing but the words', () => {
  const opened = openCase(chart, { id: 'k', at: '2026-01-01T08:00:00.000Z' });
  const position = JSON.stringify(positionOf(opened.case));
  for (const locale of localeTags) {
    const flowTexts = shippedTexts('no-start', locale);
    const speaker = createSpeaker({ locale, flowTexts, checks });
    expect(speaker.render(opened.messages).length).toBe(english.render(opened.messages).length);
    expect(JSON.stringify(positionOf(opened.case))).toBe(position);
  }
});
