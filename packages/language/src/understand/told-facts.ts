import type { AnswerInput } from '@keyturn/core';
import { findPhrase, type Heard } from '../typed/heard.ts';
import type { Terms } from '../typed/terms.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import type { Spoken } from './learned.ts';
import { gather } from '../gather.ts';
import { onceFor } from '../once.ts';
import type { Turn } from './turn.ts';

/** A fact, and the words that tell it. */
interface Fact {
  readonly answer: AnswerInput & { readonly value: readonly string[] };
  readonly terms: ReadonlySet<string>;
}

/** A phrase on its own is as likely of its check, and of its answer, if it tells a fact. */
const sureSubject = 0.7;
const sureAnswer = 0.8;

/**
 * Facts told by the way, in a few words amid others: "my diesel van", "at home". Each stands word
 * for word in the text, and means the same on its own; of two answers to one check neither is taken.
 */
export function factsIn(heard: Heard, { listener, inHand }: Turn): Fact[] {
  const { lexicon } = listener;
  if (!lexicon.isHeard) return [];
  return lexicon.checksIn(heard).flatMap((check) => {
    const { sets, at } = check.check;
    if (at !== 'memory') return [];
    // Of what the vehicle is a word is enough.
    const leastTerms = Object.keys(sets).length > 0 ? 1 : 2;
    if (check === inHand || !check.isToldUnasked || check.check.form.kind !== 'choice') return [];
    const said = check.options.flatMap(({ id, phrasesIn, spoken }) =>
      phrasesIn(heard)
        .filter((phrase) => phrase.length >= leastTerms && findPhrase(heard, phrase) >= 0)
        .filter(
          (phrase) => phrase.length > 1 || isToldIn(heard, phrase, { check, spoken, lexicon }),
        )
        .map((phrase) => ({ id, phrase })),
    );
    // "Petrol hybrid" says no more than that, and not "petrol" as well.
    const whole = said.filter(
      ({ phrase }) => !said.some((other) => isPartOf(phrase, other.phrase)),
    );
    const telling = whole.filter((one) => tells(one, { check, lexicon }));
    const ids = [...new Set(telling.map(({ id }) => id))];
    const isPlain = ids.length === 1 || check.check.form.several;
    const terms = new Set(telling.flatMap(({ phrase }) => phrase));
    return ids.length > 0 && isPlain ? [{ answer: { check: check.id, value: ids }, terms }] : [];
  });
}

/**
 * True where a phrase of one term stands in the text with the small words that it is said with, or
 * is a word of its check alone: "at home" and "nur Akku" tell where and what, "Akku" does not.
 */
function isToldIn(
  { words }: Heard,
  phrase: Terms,
  by: {
    readonly check: CheckPhrases;
    readonly spoken: readonly Spoken[];
    readonly lexicon: Lexicon;
  },
): boolean {
  const { check, spoken, lexicon } = by;
  const text = ` ${words.join(' ')} `;
  const [word = ''] = phrase;
  const ways = spoken.filter(({ terms }) => terms.length === 1 && terms[0] === word);
  const isWhole = ways.some(
    (way) => way.words.length > 1 && text.includes(` ${way.words.join(' ')} `),
  );
  if (isWhole) return true;
  return ways.some((way) => way.words.length === 1) && isOwn(word, check, lexicon);
}

function isPartOf(phrase: Terms, other: Terms): boolean {
  return phrase.length < other.length && phrase.every((term) => other.includes(term));
}

/** What each phrase tells on its own, which is found once. */
const kept = new WeakMap<Terms, boolean>();

function tells(
  { id, phrase }: { readonly id: string; readonly phrase: Terms },
  { check, lexicon }: { readonly check: CheckPhrases; readonly lexicon: Lexicon },
): boolean {
  const known = kept.get(phrase);
  if (known !== undefined) return known;
  const told = isSaidAlone(phrase, id, { check, lexicon });
  kept.set(phrase, told);
  return told;
}

function isSaidAlone(
  phrase: Terms,
  id: string,
  { check, lexicon }: { readonly check: CheckPhrases; readonly lexicon: Lexicon },
): boolean {
  if (id === 'none' || phrase.some((term) => term.startsWith('!'))) return false;
  const spoken = { terms: phrase, words: phrase };
  const subject = lexicon.subject()(spoken);
  if (subject.check !== check.id || subject.share < sureSubject) return false;
  const at = check.options.findIndex((option) => option.id === id);
  return (check.taught()(spoken).answers[at] ?? 0) >= sureAnswer;
}

/** What each word is found to be, once for each check. */
const keptOwn = new WeakMap<CheckPhrases, Map<string, boolean>>();

/**
 * True where a word is said to this check at least as often as to all others that are told unasked:
 * "diesel", but not the "key" that is turned, nor the "power" that is gone. What holds another word
 * of the check as well says neither: "petrol in a diesel".
 */
export function isOwn(word: string, own: CheckPhrases, { checks }: Lexicon): boolean {
  const known = keptOwn.get(own) ?? new Map<string, boolean>();
  keptOwn.set(own, known);
  const found = known.get(word);
  if (found !== undefined) return found;
  const alone = (term: string): boolean =>
    term !== word &&
    saidTo(own)
      .get(term)
      ?.some(({ terms }) => terms.length === 1) === true;
  const countIn = (check: CheckPhrases): number => {
    const holders = saidTo(check).get(word) ?? [];
    return check === own
      ? holders.length
      : holders.filter(({ terms }) => !terms.some(alone)).length;
  };
  const others = [...checks.values()].filter((one) => one !== own && one.isToldUnasked);
  const isOwned = countIn(own) >= others.reduce((sum, one) => sum + countIn(one), 0);
  known.set(word, isOwned);
  return isOwned;
}

/** All that is said to a check, by each term of it. */
const saidTo = onceFor(({ options }: CheckPhrases): ReadonlyMap<string, readonly Spoken[]> =>
  gather(
    options.flatMap(({ spoken, heard }) => [...spoken, ...heard()]),
    ({ terms }) => new Set(terms),
  ),
);
