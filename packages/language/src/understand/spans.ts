import type { AnswerInput } from '@keyturn/core';
import { type Heard, hearRun, hearTokens } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { chooseOption, isOfSeveral, isUsual, likeliest } from './choices.ts';
import { isOfVehicle } from './fact-runs.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { namesCheck } from './volunteered.ts';
import { onceWith } from '../once.ts';
import { cutClauses, joinsClauses } from './talk.ts';
import type { SubjectHeard } from './taught.ts';

/** Some words of a text that stand together, with the check that they sound like. */
export interface Span {
  /** The first of its tokens, and the one after its last. */
  readonly from: number;
  readonly to: number;
  readonly words: number;
  readonly marks: number;
  readonly heard: Heard;
  readonly subject: ReturnType<SubjectHeard>;
}

/** True where a span holds all of another. */
export function holds(one: Span, other: Span): boolean {
  return one.from <= other.from && one.to >= other.to;
}

/** No span is longer than so many tokens, and no text is cut into spans beyond so many. */
const longestSpan = 12;
const mostTokens = 40;

/** Each span of the text that starts and ends with a word; none where nothing was learned. */
export const spansOf: typeof cutInSpans = onceWith((given, lexicon) =>
  lexicon.isHeard ? cutInSpans(given, lexicon) : [],
);

function cutInSpans(given: readonly Token[], lexicon: Lexicon): readonly Span[] {
  const tokens = given.slice(0, mostTokens);
  const isMark = tokens.map(({ kind }) => kind === 'mark');
  const isJoined = tokens.map(
    (token) => token.kind === 'word' && joinsClauses(token.text, lexicon),
  );
  const spans: Span[] = [];
  for (let from = 0; from < tokens.length; from += 1) {
    if (isMark[from] === true) continue;
    let marks = 0;
    let joined = 0;
    for (let to = from + 1; to <= Math.min(tokens.length, from + longestSpan); to += 1) {
      if (isMark[to - 1] === true) marks += 1;
      // What is joined by a word written on to it begins anew as behind a comma.
      if (to - 1 > from && isJoined[to - 1] === true) joined += 1;
      if (isMark[to - 1] === true) continue;
      const heard = hearRun(tokens.slice(from, to), lexicon);
      if (heard.at.length === 0) continue;
      const subject = lexicon.subject()(heard);
      spans.push({ from, to, words: to - from - marks, marks: marks + joined, heard, subject });
    }
  }
  return spans;
}

/**
 * What is lost by the logarithm where a word belongs to no answer, where a text is cut once more,
 * and where an answer goes on over a comma; set on texts that tell several things.
 */
const [noAnswer, cutOnceMore, overComma] = [0.3, 0.9, 0.5].map(Math.log) as [
  number,
  number,
  number,
];

/** Less likely of one check than this no span is. */
const leastShare = 0.3;

/** An answer that a span gives is as sure as this, of its check and of itself: where nothing was asked, and beside an answer. */
const sureTold = 0.8;
const sureBeside = 0.9;

/** A word alone that says what the vehicle is, is as sure as this. */
const sureWord = 0.9;

/** What may well answer the question in hand tells nothing beside it. */
const mostInHand = 0.1;

/** What is left beside what is told answers the question in hand as surely as this. */
const leastLeft = 0.5;

/**
 * What may answer a question from memory tells something else where it is as sure of that, hardly
 * speaks of what was asked, and what is left answers it as surely as this: "ten minutes after
 * stopping, I'm at a car park".
 */
const [surelyOther, hardlyAsked, surelyLeft] = [0.95, 0.05, 0.85];

/** A span, and how surely it tells something or answers what was asked. */
interface Part extends Span {
  /** That it tells an answer of its check. */
  readonly told: number;
  /** That it answers the question in hand. */
  readonly inHand: number;
}

/**
 * What a text tells without having been asked, several things in one breath: cut where its parts
 * are, all together, likeliest to give one answer each (the best path over all ways to cut it).
 */
export function toldIn(
  tokens: readonly Token[],
  spans: readonly Span[],
  { lexicon, inHand }: { readonly lexicon: Lexicon; readonly inHand: CheckPhrases | undefined },
): AnswerInput[] {
  const { checks } = lexicon;
  const least = inHand === undefined ? sureTold : sureBeside;
  const mayTell = ({ subject }: Span): boolean =>
    subject.share >= least && subject.check !== inHand?.id;
  if (!spans.some(mayTell)) return [];
  const told = new Map<string, Set<string>>();
  const parts = bestCut(tokens, spans, { lexicon, inHand }).filter((part) => {
    const check = checks.get(part.subject.check);
    if (check === undefined || check === inHand) return false;
    // What is seen only by looking for it is named, or plain.
    const isPlain = check.check.at === 'memory' || namesCheck(part.heard, check);
    return part.told >= (inHand === undefined && isPlain ? sureTold : sureBeside);
  });
  for (const part of parts) {
    const check = checks.get(part.subject.check);
    if (check === undefined) continue;
    if (inHand !== undefined && !isBeside(part, parts, { tokens, lexicon, inHand })) continue;
    const given = answersOf(part, check, { tokens, lexicon });
    if (given.length > 0) told.set(check.id, new Set([...(told.get(check.id) ?? []), ...given]));
  }
  if (inHand === undefined) {
    for (const { id, answer } of parts.flatMap((part) =>
      withinPart(part, spans, { tokens, lexicon }),
    ))
      if (!told.has(id)) told.set(id, new Set([answer]));
  }
  return [...told]
    .filter(([id, given]) => given.size === 1 || isOfSeveral(checks.get(id)))
    .map(([id, given]) => ({ check: id, value: [...given] }));
}

/**
 * What is told by some words within a part as surely as this, where the part hardly speaks of it, and
 * what is left says the answer of the part as surely as that: "after changing the starter it grinds".
 */
const [sureWithin, hardlyOfPart, sureAround] = [0.95, 0.05, 0.9];

function withinPart(
  part: Part,
  spans: readonly Span[],
  { tokens, lexicon }: { readonly tokens: readonly Token[]; readonly lexicon: Lexicon },
): { readonly id: string; readonly answer: string }[] {
  const own = lexicon.checks.get(part.subject.check);
  const ownId = own === undefined ? undefined : likeliest(part.heard, own).id;
  // Where something was done before is not where it stands.
  if (own === undefined || ownId === undefined || isOfSeveral(own)) return [];
  return spans.flatMap((span) => {
    const isWithin = span.from >= part.from && span.to <= part.to && span.words < part.words;
    const check = lexicon.checks.get(span.subject.check);
    if (!isWithin || span.words < 2 || check === undefined || check === own) return [];
    // What is said with an answer anyway tells nothing else: "at the workshop" of what was changed.
    if (check.check.at !== 'memory' || isUsual(span.heard.terms, own)) return [];
    const { id, share } = likeliest(span.heard, check);
    if (id === undefined || nothingTold.includes(id) || span.subject.share * share < sureWithin)
      return [];
    if ((span.subject.shareOf(own.id) ?? 1) > hardlyOfPart || isDenied(span, tokens, lexicon))
      return [];
    const rest = [...tokens.slice(part.from, span.from), ...tokens.slice(span.to, part.to)];
    const around = hearTokens(rest, lexicon);
    const left = lexicon.subject()(around).shareOf(own.id) ?? 0;
    return left * answerShare(around, own, ownId) >= sureAround
      ? [{ id: check.id, answer: id }]
      : [];
  });
}

/** True where a part says nothing to the question in hand, and what all such parts leave still answers it alike. */
function isBeside(
  part: Part,
  parts: readonly Part[],
  by: {
    readonly tokens: readonly Token[];
    readonly lexicon: Lexicon;
    readonly inHand: CheckPhrases;
  },
): boolean {
  const { tokens, lexicon, inHand } = by;
  // What is said to this question anyway tells nothing else: "while driving" of a lamp.
  const isOfClause = !isCutOff(part, tokens, lexicon);
  if (isOfClause && isUsual(part.heard.terms, inHand)) return false;
  const isOther = part.told >= surelyOther && (part.subject.shareOf(inHand.id) ?? 1) < hardlyAsked;
  if (part.inHand > mostInHand && !isOther) return false;
  const whole = likeliest(hearTokens(tokens, lexicon), inHand);
  const isLeft = (others: readonly Part[]): boolean => {
    const rest = tokens.filter((_, at) => !others.some(({ from, to }) => at >= from && at < to));
    const left = likeliest(hearTokens(rest, lexicon), inHand);
    const least = part.inHand > mostInHand ? surelyLeft : leastLeft;
    return left.share >= least && left.id === whole.id;
  };
  return isLeft([part]) || isLeft(parts);
}

/** True for words that begin or end where a clause does, or by an "and". */
function isCutOff(
  { from, to }: Span,
  tokens: readonly Token[],
  { words: { joins, clauseBreaks } }: Lexicon,
): boolean {
  const isCut = (token: Token | undefined): boolean =>
    token?.kind === 'mark' ||
    (token?.kind === 'word' && [...joins, ...clauseBreaks].includes(token.text));
  return [tokens[from - 1], tokens[from]].some(isCut) || isCut(tokens[to]);
}

/** The parts of a text, in its order, where it is cut best. */
function bestCut(
  tokens: readonly Token[],
  spans: readonly Span[],
  by: { readonly lexicon: Lexicon; readonly inHand: CheckPhrases | undefined },
): Part[] {
  const end = Math.min(tokens.length, mostTokens);
  const parts = partsOf(tokens, spans, by);
  const best = [0];
  const cameBy: (Part | undefined)[] = [];
  for (let to = 1; to <= end; to += 1) {
    const skipped = tokens[to - 1]?.kind === 'mark' ? 0 : noAnswer;
    best[to] = (best[to - 1] ?? 0) + skipped;
    for (const part of parts) {
      if (part.to !== to) continue;
      const sure = Math.log(Math.max(part.told, part.inHand));
      const whole =
        (best[part.from] ?? 0) + part.words * sure + cutOnceMore + part.marks * overComma;
      if (whole > (best[to] ?? 0)) {
        best[to] = whole;
        cameBy[to] = part;
      }
    }
  }
  const cut: Part[] = [];
  for (let to = end; to > 0; to = cameBy[to]?.from ?? to - 1) {
    const part = cameBy[to];
    if (part !== undefined) cut.unshift(part);
  }
  return cut;
}

/** The spans that may be a part. */
function partsOf(
  tokens: readonly Token[],
  spans: readonly Span[],
  { lexicon, inHand }: { readonly lexicon: Lexicon; readonly inHand: CheckPhrases | undefined },
): Part[] {
  const { checks } = lexicon;
  return spans.flatMap((span) => {
    const check = checks.get(span.subject.check);
    // A word alone is what the vehicle is, or nothing.
    const isWord = span.words === 1;
    const mayBeTold = isWord
      ? check !== undefined && isOfVehicle(check)
      : span.subject.share >= leastShare;
    if (!mayBeTold && inHand === undefined) return [];
    if (isDenied(span, tokens, lexicon)) return [];
    const { share } =
      check === undefined || !mayBeTold ? { share: 0 } : likeliest(span.heard, check);
    const told = span.subject.share * share;
    const own = inHand === undefined ? 0 : likeliest(span.heard, inHand).share;
    const isTold = isWord ? told >= sureWord : told > 0;
    return isTold || own >= leastShare ? [{ ...span, told: isTold ? told : 0, inHand: own }] : [];
  });
}

/** True for words behind the word that denies them, or before one at the end: "war nicht an". */
export function isDenied(
  { from, to }: Span,
  tokens: readonly Token[],
  { words: { negators, spelling } }: Lexicon,
): boolean {
  const isAmong = (token: Token | undefined, denials: readonly string[] = []): boolean =>
    token?.kind === 'word' && denials.includes(token.text);
  if (isAmong(tokens[from - 1], negators)) return true;
  const isAtEnd = tokens[to + 1]?.kind !== 'word' || tokens[to + 2]?.kind !== 'word';
  return isAtEnd && spelling?.compounds === true && isAmong(tokens[to], spelling.denyBefore);
}

/** Said of what was asked, it tells nothing unasked. */
const nothingTold: readonly string[] = ['none', 'other'];

/** The answers that a span gives plainly. */
function answersOf(
  span: Span,
  check: CheckPhrases,
  { tokens, lexicon }: { readonly tokens: readonly Token[]; readonly lexicon: Lexicon },
): readonly string[] {
  const parts = isOfSeveral(check)
    ? cutClauses(tokens.slice(span.from, span.to), lexicon).map((part) => hearTokens(part, lexicon))
    : [span.heard];
  return parts.flatMap((heard) => {
    const choice = chooseOption(heard, check);
    if (choice.type !== 'one' || nothingTold.includes(choice.fit.id)) return [];
    const { id } = choice.fit;
    const share = lexicon.subject()(heard).shareOf(check.id) ?? 0;
    return share * answerShare(heard, check, id) >= sureTold ? [id] : [];
  });
}

/** How likely it is that a text gives an answer to its check. */
export function answerShare(heard: Heard, check: CheckPhrases, id: string): number {
  return check.taught()(heard).answers[check.options.findIndex((one) => one.id === id)] ?? 0;
}

/**
 * An answer told by the way has some words that give it as surely as this, where nothing was asked
 * and beside an answer to something else.
 */
const leastSupport = 0.5;
const leastBeside = 0.9;

/**
 * True where some words of the text, so many at least, say the answer on their own. Nothing is said
 * against a check of which nothing was learned.
 */
export function isSupported(
  { check: id, value }: AnswerInput,
  spans: readonly Span[],
  by: { readonly lexicon: Lexicon; readonly isAsked: boolean; readonly leastWords: number },
): boolean {
  const { lexicon, isAsked, leastWords } = by;
  const least = isAsked ? leastBeside : leastSupport;
  const check = lexicon.checks.get(id);
  if (check === undefined || 'value' in value || spans.length === 0) return true;
  return value.every((answer) =>
    spans.some((span) => {
      const share = span.subject.shareOf(id);
      if (share === undefined) return true;
      if (share < least || span.words < leastWords) return false;
      return share * answerShare(span.heard, check, answer) >= least;
    }),
  );
}
