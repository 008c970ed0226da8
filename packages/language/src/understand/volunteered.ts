import type { Position } from '@keyturn/core';
import type { Heard } from '../typed/heard.ts';
import { says } from '../typed/heard.ts';
import { chooseOption } from './choices.ts';
import { type Fit, fitOptions } from './fit.ts';
import type { FoundAnswer } from './found-answer.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { onceFor } from '../once.ts';
import type { SubjectHeard } from './taught.ts';
import type { Turn } from './turn.ts';

/** The least that an answer to a question that was not asked must fit, told from memory. */
const leastFit = 0.72;

/** The least that it must fit elsewhere. */
const sureFit = 0.78;

/** No answer is told in more terms than this. */
const longestAnswer = 24;

/** More than anything can fit. */
const never = 2;

/** The least that it must fit while another question in words is in hand. */
const plainFit = 0.88;

/** The least that it must fit where it is found only by going to look, and is not named. */
const wholeFit = 0.93;

/** How much better than the check's next answer it must fit. */
const answerMargin = 0.1;

/** How much better than another check's answer it must fit, so as not to be asked about. */
const checkMargin = 0.05;

/** What naming the check adds. */
const namedBonus = 0.1;

/** What is known without going to look is told first. */
const placeBonus = { memory: 0.04, seat: 0.02, bonnet: -0.06, below: -0.06, bench: -0.06 } as const;

/**
 * Answers to checks that were not asked, in a text that says one of them plainly: the best one, or
 * several where it may be either. `among` limits the checks. What is found only by opening the
 * bonnet must be named; while a question in words is in hand everything must be, short of a phrase.
 */
export function volunteered(
  heard: Heard,
  turn: Turn,
  among?: readonly string[],
): readonly FoundAnswer[] {
  if (among !== undefined) return findVolunteered(heard, turn, among);
  const { inHand } = turn;
  const found = volunteeredInHand(heard).get(inHand) ?? findVolunteered(heard, turn);
  volunteeredInHand(heard).set(inHand, found);
  return found;
}

/** Several ways of understanding a text ask for them. */
const volunteeredInHand = onceFor<Heard, Map<Turn['inHand'], readonly FoundAnswer[]>>(
  () => new Map(),
);

function findVolunteered(
  heard: Heard,
  turn: Turn,
  among?: readonly string[],
): readonly FoundAnswer[] {
  const { lexicon } = turn.listener;
  const { inHand } = turn;
  if (heard.at.length > longestAnswer) return [];
  // One word alone must be typed right.
  const [only, more] = heard.at;
  if (only !== undefined && more === undefined && ![...only.values()].includes(1)) return [];
  const heardOf = among === undefined ? subjectOf(heard, { lexicon, inHand }) : undefined;
  if (heardOf !== undefined) return [heardOf];
  const subject =
    among === undefined && lexicon.isHeard && heard.at.length > 1
      ? lexicon.subject()(heard)
      : undefined;
  const isInWords = inHand !== undefined && inHand.options.length > 0;
  const ranked = lexicon
    .checksIn(heard)
    .filter(({ id, options }) => options.length > 0 && (among?.includes(id) ?? true))
    .flatMap((check): (FoundAnswer & { readonly rank: number })[] => {
      if (isOther(subject, check.id)) return [];
      const isNamed = namesCheck(heard, check);
      // What nobody tells unasked is named, where it is known what people tell.
      const isFar = among === undefined && lexicon.isHeard && !check.isToldUnasked && !isNamed;
      if (isFar) return [];
      const [fit, second] = fitsOf(heard, check, lexicon);
      // "Nothing" is said of what was asked.
      if (fit === undefined || fit.score < leastFit || fit.id === 'none') return [];
      if (fit.score - Math.max(second?.score ?? 0, 0) < answerMargin) return [];
      const { at } = check.check;
      const isTaken =
        among !== undefined
          ? fit.score >= sureFit
          : fit.score >= leastOf({ at, isNamed, isInWords, isAsked: inHand !== undefined }) &&
            (isNamed || at === 'memory' || heard.at.length > 1) &&
            (inHand === undefined || heard.at.length > 1);
      if (!isTaken) return [];
      return [{ check, fit, rank: fit.score + placeBonus[at] + (isNamed ? namedBonus : 0) }];
    })
    .sort((one, other) => other.rank - one.rank);
  return ranked.filter(({ rank }) => (ranked[0]?.rank ?? 0) - rank < checkMargin);
}

/** A text is about what it sounds like from here on, where nothing was asked and where something was. */
const sureSubject = 0.6;
const sureUnnamed = 0.9;
const sureAside = 0.85;

/** A text that speaks as likely as this of another check does not answer one that it is less likely to speak of. */
const otherSubject = 0.5;
const leastSubject = 0.1;

function isOther(subject: ReturnType<SubjectHeard> | undefined, check: string): boolean {
  if (subject === undefined || subject.share < otherSubject) return false;
  return (subject.shareOf(check) ?? 1) < leastSubject;
}

/** What answers the question in hand as likely as this is no aside. */
const notAside = 0.2;

/** The answer to the check that a text sounds like, where it plainly gives one. */
function subjectOf(
  heard: Heard,
  { lexicon, inHand }: { readonly lexicon: Lexicon; readonly inHand: Turn['inHand'] },
): FoundAnswer | undefined {
  // A word alone is told by the lists.
  if (!lexicon.isHeard || heard.at.length < 2) return undefined;
  const { check: id, share } = lexicon.subject()(heard);
  const check = lexicon.checks.get(id);
  if (check === undefined || check === inHand) return undefined;
  // What is seen only by looking for it is named, or plain.
  const isPlain = check.check.at === 'memory' || namesCheck(heard, check);
  const least = inHand !== undefined ? sureAside : isPlain ? sureSubject : sureUnnamed;
  if (share < least) return undefined;
  if (inHand !== undefined && Math.max(0, ...inHand.taught()(heard).answers) >= notAside)
    return undefined;
  const choice = chooseOption(heard, check);
  // "Nothing" is said of what was asked.
  if (choice.type !== 'one' || choice.fit.id === 'none') return undefined;
  return { check, fit: choice.fit };
}

/** How well an answer must fit, by where it is found and how plainly its check is named. */
function leastOf(by: {
  readonly at: Position;
  readonly isNamed: boolean;
  readonly isInWords: boolean;
  readonly isAsked: boolean;
}): number {
  const { at, isNamed, isInWords, isAsked } = by;
  if (isInWords) return isNamed || at === 'memory' ? plainFit : never;
  if (isNamed) return at === 'memory' ? leastFit : sureFit;
  if (at === 'memory') return isAsked ? sureFit : leastFit;
  return wholeFit;
}

/** True where the text names what the check alone is about. */
export function namesCheck(heard: Heard, { named }: CheckPhrases): boolean {
  for (const term of named) if (says(heard, term) || says(heard, `!${term}`)) return true;
  return false;
}

/** How well a text fits the answers of a check by what each term tells of all answers of the flow. */
function fitsOf(heard: Heard, check: CheckPhrases, { weights }: Lexicon): Fit[] {
  const fits = fitsInHand(heard).get(check) ?? fitOptions(heard, { ...check, weights });
  fitsInHand(heard).set(check, fits);
  return fits;
}

/** Several ways of understanding a text ask for them. */
const fitsInHand = onceFor<Heard, Map<CheckPhrases, Fit[]>>(() => new Map());
