import type { AnswerInput } from '@keyturn/core';
import { hearTokens } from '../typed/heard.ts';
import { hasFigure } from '../numbers/numbers.ts';
import type { Token } from '../typed/token.ts';
import { exactChoice, isOfSeveral, likeliest } from './choices.ts';
import { isOfKit } from './kit-told.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { isOfPast, isOfThing, joinClauses, notInHand } from './named-things.ts';
import { type Span, holds, isDenied, spansOf } from './spans.ts';
import { askedOfEvery } from './told-of-every.ts';
import type { Turn } from './turn.ts';
import { namesCheck } from './volunteered.ts';

/** So many words in a row, and as sure as this. */
interface Least {
  readonly words: number;
  readonly sure: number;
}

/** What happened before, and what is said of a thing by its name, is told so. */
const named: Least = { words: 3, sure: 0.93 };

/** Beside an answer what names nothing is: "dry and not cracked anywhere". */
const unnamed: Least = { words: 4, sure: 0.97 };

/** That nothing is at hand is said by denying kit: "no tools". */
const nothing: Least = { words: 2, sure: 0.9 };

/** What sounds like a danger as much as this is left to that. */
const alarming = 0.3;

/** The rest still answers the question in hand as surely as this. */
const leastLeft = 0.5;

/**
 * What some words in a row surely tell, wherever they stand: "the old van has stood for two months
 * at the garage and only clicks". Beside a figure that was asked for only clauses without any do.
 */
export function toldSurely(given: readonly AnswerInput[], turn: Turn): readonly AnswerInput[] {
  const { inHand, clauses, heard, listener } = turn;
  const { lexicon } = listener;
  const isGiven = (id: string): boolean => given.some(({ check }) => check === id);
  if (inHand !== undefined) {
    if (!isGiven(inHand.id) || exactChoice(heard, inHand.options) !== undefined) return [];
  }
  const isReading = inHand?.check.form.kind === 'reading';
  const tokens = isReading
    ? joinClauses(clauses.filter((clause) => !hasFigure(clause, lexicon.numbers)))
    : turn.tokens;
  const told = new Map<string, Set<string>>();
  const spans = spansOf(tokens, lexicon);
  const taken = spans.filter(
    ({ subject }) => isGiven(subject.check) && subject.share >= named.sure,
  );
  for (const span of spans) {
    const { check: id, share } = span.subject;
    // None takes less, and most of the words are left here.
    if (share < nothing.sure || span.words < nothing.words) continue;
    const check = lexicon.checks.get(id);
    if (check?.isToldUnasked !== true || check.check.form.kind !== 'choice' || isGiven(id))
      continue;
    const said = likeliest(span.heard, check);
    const least = leastFor({ span, check, said: said.id }, turn);
    if (said.id === undefined || least === undefined) continue;
    if (span.words < least.words || share * said.share < least.sure) continue;
    // "Bone dry" says of the battery that it is, and nothing of the tank.
    const isOfGiven = least === unnamed && taken.some((whole) => holds(whole, span));
    if (isOfGiven || isDenied(span, tokens, lexicon) || !isLeft(span, { given, turn })) continue;
    if (lexicon.alarmed()(span.heard).share >= alarming) continue;
    told.set(id, (told.get(id) ?? new Set()).add(said.id));
  }
  return [...told]
    .filter(([id, value]) => value.size === 1 || isOfSeveral(lexicon.checks.get(id)))
    .map(([id, value]) => ({ check: id, value: [...value] }));
}

/** What it takes that some words tell an answer; undefined for one that is not told so. */
function leastFor(
  by: { readonly span: Span; readonly check: CheckPhrases; readonly said: string | undefined },
  { inHand, listener: { lexicon } }: Turn,
): Least | undefined {
  const { span, check, said } = by;
  if (isOfKit(check)) return said === 'none' && deniesKit(span, lexicon) ? nothing : undefined;
  if (said === 'none') return undefined;
  const isNamed = namesCheck(span.heard, check);
  // How long was waited for a figure, and what was done for it, is no news.
  const isReading = inHand?.check.form.kind === 'reading';
  if (isReading && check.check.at === 'memory' && (isOfPast(check) || !isNamed)) return undefined;
  if (isOfPast(check) || isNamed) return named;
  const isOfItself = Object.keys(check.check.sets).length === 0 && check !== askedOfEvery(lexicon);
  return inHand !== undefined && isOfItself ? unnamed : undefined;
}

function deniesKit({ heard }: Span, { kit }: Lexicon): boolean {
  return kit.some(({ said }) =>
    said.some((phrase) => phrase.every((term) => heard.terms.includes(`!${term}`))),
  );
}

/** True where the words answer nothing that was asked, and the others still do. */
function isLeft(
  span: Span,
  by: { readonly given: readonly AnswerInput[]; readonly turn: Turn },
): boolean {
  const { inHand, tokens, listener } = by.turn;
  const { lexicon } = listener;
  if (inHand === undefined || inHand.options.length === 0) return true;
  const check = lexicon.checks.get(span.subject.check);
  if (isOfThing(inHand, check) || likeliest(span.heard, inHand).share >= notInHand) return false;
  if (inHand.check.form.kind === 'reading') return true;
  const rest = without(tokens, span);
  const left = likeliest(hearTokens(rest, lexicon), inHand);
  return (
    left.share >= leastLeft &&
    by.given.some(
      ({ check: id, value }) =>
        id === inHand.id && !('value' in value) && value.includes(left.id ?? ''),
    )
  );
}

function without(tokens: readonly Token[], { from, to }: Span): readonly Token[] {
  return tokens.filter((_, at) => at < from || at >= to);
}
