/**
 * The phrases of `tests/phrases`, and how well they are understood.
 */
import { existsSync, readFileSync } from 'node:fs';
import type { Chart } from '@keyturn/core';
import { createSpeaker } from '@keyturn/language';
import { meaningOf, shippedFlow, type Meaning, type SaidAnswer } from '@keyturn/terminal';

/** A typed text with what it means. */
export interface Phrase {
  readonly check: string | null;
  readonly text: string;
  readonly understood?: readonly SaidAnswer[];
  /** Where more than one reading is right: each of these is. */
  readonly anyOf?: readonly (readonly SaidAnswer[])[];
  readonly talk?: string;
  readonly askBack?: true;
}

/** What came of a phrase. */
type Outcome = 'right' | 'part' | 'asked' | 'wrong';

/** A phrase with what was made of it. */
export interface Scored {
  readonly phrase: Phrase;
  readonly meaning: Meaning;
  readonly outcome: Outcome;
  /** What the phrase is, for the table. */
  readonly kind: 'choice' | 'reading' | 'interrupt' | 'talk' | 'ask back';
  /** True where a figure was taken that is wrong by a factor of ten or more. */
  readonly isOffByTen: boolean;
}

/** The phrases of a language that measure; none where there is no file. */
export function phrasesOf(locale: string): readonly Phrase[] {
  return readPhrases(`${locale}.json`);
}

/** Those that have been looked at while the understanding was being improved. */
export function seenPhrasesOf(locale: string): readonly Phrase[] {
  return readPhrases(`seen/${locale}.json`);
}

/** Dangers told in an answer or beside one, all of which have been looked at. */
export function dangersOf(locale: string): readonly Phrase[] {
  return readPhrases(`dangers/${locale}.json`);
}

function readPhrases(name: string): readonly Phrase[] {
  const file = new URL(`../phrases/${name}`, import.meta.url);
  return existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as Phrase[]) : [];
}

/** Every phrase of a language as it is understood now. */
export function scorePhrases(
  locale: string,
  phrases: readonly Phrase[] = phrasesOf(locale),
): readonly Scored[] {
  const { chart, texts } = shippedFlow('no-start', locale);
  const speaker = createSpeaker({ locale, flowTexts: texts, checks: chart.flow.checks });
  return phrases.map((phrase) => scored(phrase, meaningOf(phrase, chart, speaker), chart));
}

function scored(phrase: Phrase, meaning: Meaning, chart: Chart): Scored {
  return {
    phrase,
    meaning,
    outcome: outcomeOf(phrase, meaning),
    kind: kindOf(phrase, chart),
    isOffByTen: isOffByTen(phrase, meaning),
  };
}

function outcomeOf(phrase: Phrase, { understood, talk }: Meaning): Outcome {
  const isSilent = understood.length === 0 && talk === null;
  if (phrase.askBack === true) return isSilent ? 'right' : 'wrong';
  if (phrase.talk !== undefined) {
    if (talk === phrase.talk) return 'right';
    return isSilent ? 'asked' : 'wrong';
  }
  if (isSilent) return 'asked';
  const isSame = wantedOf(phrase).some(
    (wanted) =>
      wanted.length === understood.length &&
      wanted.every((one) => understood.some((other) => isAnswer(one, other))),
  );
  const isTalkBeside = talk === null || ['yes', 'no', 'done', 'correction'].includes(talk);
  if (isSame && isTalkBeside) return 'right';
  const isPart = wantedOf(phrase).some((wanted) =>
    understood.every((one) => wanted.some((other) => isAnswer(one, other))),
  );
  return isPart && isTalkBeside && understood.length > 0 ? 'part' : 'wrong';
}

function wantedOf({ understood, anyOf }: Phrase): readonly (readonly SaidAnswer[])[] {
  return anyOf ?? [understood ?? []];
}

function isAnswer(one: SaidAnswer, other: SaidAnswer): boolean {
  if (one.check !== other.check) return false;
  const { value } = one;
  if (typeof value === 'string' || typeof other.value === 'string') return value === other.value;
  return value.unit === other.value.unit && Math.abs(value.value - other.value.value) < 1e-4;
}

function kindOf(phrase: Phrase, { flow }: Chart): Scored['kind'] {
  if (phrase.askBack === true) return 'ask back';
  if (phrase.talk !== undefined) {
    return Object.hasOwn(flow.interrupts, phrase.talk) ? 'interrupt' : 'talk';
  }
  return wantedOf(phrase)
    .flat()
    .some(({ value }) => typeof value !== 'string')
    ? 'reading'
    : 'choice';
}

function isOffByTen(phrase: Phrase, { understood }: Meaning): boolean {
  const wanted = wantedOf(phrase).flat();
  return understood.some(({ check, value }) => {
    const meant = wanted.find((one) => one.check === check)?.value;
    if (typeof value === 'string' || meant === undefined || typeof meant === 'string') return false;
    if (meant.value === 0) return false;
    const ratio = Math.abs(value.value / meant.value);
    return ratio >= 9.5 || ratio <= 1 / 9.5;
  });
}
