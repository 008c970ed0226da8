/** What a text seems to tell unasked, and other words of it say otherwise. */
import type { AnswerInput } from '@keyturn/core';
import { hasFigure, spellNumbers } from '../numbers/numbers.ts';
import { hearTokens } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { withoutPhrases } from '../readings/word-run.ts';
import { figureWordsOf } from '../words/words.ts';
import { isOfSeveral, likeliest } from './choices.ts';
import { isOfVehicle } from './fact-runs.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { isOfPast, likewise } from './named-things.ts';
import { isOutOfPlace } from './out-of-place.ts';
import { mixedOf, withoutFuels } from './own-fuel.ts';
import { type Span, answerShare, holds, isDenied, isSupported, spansOf } from './spans.ts';
import { withoutStray } from './stray-facts.ts';
import { factsTogether, isAgeOfOther } from './told-unasked.ts';
import type { Turn } from './turn.ts';

/** More words say another answer as surely as this. */
const sureOther = 0.8;

/**
 * Answers without those that nobody told: a word amid talk of something else, the wrong fuel where a
 * fuel is only named; and with what more words say, where a part of them seemed to say another
 * thing: "it just stopped while I was driving".
 */
export function withoutDoubtful(given: readonly AnswerInput[], turn: Turn): readonly AnswerInput[] {
  const { inHand, tokens, listener } = turn;
  const { lexicon } = listener;
  if (!lexicon.isHeard) return given;
  const isTried = isTrial(inHand) && given.some(({ check }) => check === inHand?.id);
  const told = inHand === undefined ? withoutStray(given, tokens, lexicon) : given;
  return told.flatMap((one) => {
    const check = lexicon.checks.get(one.check);
    if (check === undefined || check === inHand || 'value' in one.value) return [one];
    if (isTried && check.check.at === 'memory' && !isToldApart(one, turn)) return [];
    if (inHand !== undefined && isAgeOfOther(one, turn)) return [];
    const mixed = mixedOf(lexicon);
    const isMixed = mixed?.check === check && one.value.includes(mixed.id);
    if (isMixed) return isToldWithoutFuels(one, turn) ? [one] : [];
    if (isOfPast(check)) return withoutLongAgo({ check: one.check, value: one.value }, turn);
    if (isOfSeveral(check) || check.check.form.kind !== 'choice') return [one];
    const [id = ''] = one.value;
    if (isOutOfPlace({ check, id }, given, turn)) return [];
    const plain = withoutBattery(one, { check, id }, turn);
    if (plain !== undefined) return [{ check: check.id, value: [plain] }];
    if (isOfVehicle(check) || isSaidLikewise(one, turn)) return [one];
    const other = saidByMore(tokens, { check, id }, turn);
    return [other === undefined ? one : { check: check.id, value: [other] }];
  });
}

/** What is done to try something. */
const doneForIt: readonly string[] = ['jumped-recently', 'just-fuelled'];

/** What was done or happened just now. */
const justNow: readonly string[] = ['work-just-done', ...doneForIt];

/** What happened before, without what only words that speak of years tell: "battery changed two years ago". */
function withoutLongAgo(
  { check, value }: { readonly check: string; readonly value: readonly string[] },
  { clauses, listener: { lexicon } }: Turn,
): AnswerInput[] {
  const old = clauses.filter((clause) => tellsYears(clause, lexicon));
  if (old.length === 0 || !value.some((id) => justNow.includes(id))) return [{ check, value }];
  const recent = clauses.filter((clause) => !old.includes(clause));
  const isTold = (id: string): boolean =>
    recent.some((clause) =>
      isSupported({ check, value: [id] }, spansOf(clause, lexicon), {
        lexicon,
        isAsked: false,
        leastWords: 1,
      }),
    );
  const left = value.filter((id) => !justNow.includes(id) || isTold(id));
  return left.length === 0 ? [] : [{ check, value: left }];
}

function tellsYears(clause: readonly Token[], { numbers, readUnit }: Lexicon): boolean {
  return spellNumbers(clause, numbers).some(
    ({ kind }, at, all) => kind === 'number' && readUnit(all, at + 1)?.code === 'a',
  );
}

/** True for a check of trying something: whoever does tells what he does, and nothing from memory. */
function isTrial(check: CheckPhrases | undefined): boolean {
  return check?.check.form.kind === 'choice' && !check.isToldUnasked;
}

/** A clause of its own tells as surely as this something else, and as little what was asked. */
const [surelyOther, hardlyAsked] = [0.8, 0.2];

/** True for what a clause tells that does not answer the question in hand: "still, and the tank is half full". */
function isToldApart(one: AnswerInput, turn: Turn): boolean {
  const { clauses, inHand, listener } = turn;
  const { lexicon } = listener;
  // Whoever tries something tells what was done for it: that it was fuelled, or boosted.
  if (!('value' in one.value) && one.value.some((id) => doneForIt.includes(id))) return false;
  const { exclaims = [] } = lexicon.words;
  const said = clauses.filter((clause) => withoutPhrases(clause, exclaims).length > 0);
  if (factsTogether({ ...turn, clauses: said }).some(({ check }) => check === one.check))
    return true;
  return clauses.some((clause) => {
    const heard = hearTokens(clause, lexicon);
    if (inHand !== undefined && likeliest(heard, inHand).share > hardlyAsked) return false;
    const by = { lexicon, isAsked: true, leastWords: 2 };
    const { check, share } = lexicon.subject()(heard);
    return (
      check === one.check && share >= surelyOther && isSupported(one, spansOf(clause, lexicon), by)
    );
  });
}

/** True for what was said of something else, and is the same of this: "goes out, headlights the same". */
function isSaidLikewise({ check, value }: AnswerInput, turn: Turn): boolean {
  const { clauses, inHand, listener } = turn;
  return clauses.some((clause, at) => {
    const told = likewise(clause, clauses.slice(0, at), { inHand, lexicon: listener.lexicon });
    return told?.check === check && !('value' in value) && value.includes(told.value[0]);
  });
}

function isToldWithoutFuels(one: AnswerInput, { tokens, listener: { lexicon } }: Turn): boolean {
  const left = withoutFuels(tokens, lexicon);
  // Two fuels say by themselves that one of them is wrong.
  if (left.fuels > 1) return true;
  return isSupported(one, spansOf(left.tokens, lexicon), { lexicon, isAsked: true, leastWords: 2 });
}

/**
 * The fuel alone, where beside figures only the battery that they are told of made a hybrid of it:
 * "petrol, battery seven years".
 */
function withoutBattery(
  one: AnswerInput,
  { check, id }: { readonly check: CheckPhrases; readonly id: string },
  { tokens, listener: { lexicon } }: Turn,
): string | undefined {
  const { sets } = check.check;
  const whole = Object.entries(sets[id] ?? {});
  if (whole.length < 2 || !hasFigure(tokens, lexicon.numbers)) return undefined;
  const { battery } = figureWordsOf(lexicon.words);
  const left = tokens.filter((token) => token.kind !== 'word' || !battery.includes(token.text));
  const by = { lexicon, isAsked: true, leastWords: 1 };
  if (isSupported(one, spansOf(left, lexicon), by)) return undefined;
  return Object.keys(sets).find((other) => {
    const part = Object.entries(sets[other] ?? {});
    return part.length === 1 && part.every(([key, value]) => sets[id]?.[key] === value);
  });
}

/** Another answer that more words say, with which what says this one best goes on. */
function saidByMore(
  tokens: readonly Token[],
  { check, id }: { readonly check: CheckPhrases; readonly id: string },
  { listener: { lexicon } }: Turn,
): string | undefined {
  const spans = spansOf(tokens, lexicon);
  const shareIn = (span: Span, answer: string): number =>
    (span.subject.shareOf(check.id) ?? 0) * answerShare(span.heard, check, answer);
  const sure = spans.filter(({ subject }) => (subject.shareOf(check.id) ?? 0) >= sureOther);
  const others = sure.flatMap((span) =>
    check.options
      .filter((option) => option.id !== id && shareIn(span, option.id) >= sureOther)
      .map((option) => ({ span, id: option.id })),
  );
  const best = others.length === 0 ? undefined : bestOf(spans, (span) => shareIn(span, id));
  if (best === undefined) return undefined;
  const more = others.find(
    ({ span }) =>
      goesOn(best, span) &&
      isOneClause(tokens.slice(span.from, span.to), lexicon) &&
      !isDenied(span, tokens, lexicon),
  );
  if (more === undefined) return undefined;
  const isHeld = sure.some((span) => shareIn(span, id) >= sureOther && holds(span, more.span));
  return isHeld ? undefined : more.id;
}

/** The first of the spans of which the most is said. */
function bestOf(spans: readonly Span[], shareOf: (span: Span) => number): Span | undefined {
  const shares = spans.map(shareOf);
  return spans[shares.indexOf(Math.max(...shares))];
}

/** True where some words of a stretch go on in another, or stand in it. */
function goesOn(one: Span, other: Span): boolean {
  const shared = Math.min(one.to, other.to) - Math.max(one.from, other.from);
  return holds(other, one) || (other.to > one.to && shared >= leastShared);
}

/** So many words are the same that a stretch goes on from. */
const leastShared = 2;

/** True for words without a mark, and without a break but one that says meanwhile. */
function isOneClause(some: readonly Token[], { words }: Lexicon): boolean {
  const { moments } = figureWordsOf(words);
  return some.every(
    (token) =>
      token.kind !== 'mark' &&
      (token.kind !== 'word' ||
        moments.includes(token.text) ||
        !words.clauseBreaks.includes(token.text)),
  );
}
