/** Answers that a text leaves open: between two of them, or whether it is one at all. */
import { endsWithPhrase, hasPhrase, phraseAt, withoutPhrases } from '../readings/word-run.ts';
import { hearTokens } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { chooseOption, fitsOf, isOfSeveral } from './choices.ts';
import type { Fit } from './fit.ts';
import { offersOf } from './found-answer.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { joinClauses } from './named-things.ts';
import { cutClauses } from './talk.ts';
import { type Turn, answers, input, optionsInHand } from './turn.ts';
import type { Understood } from './understood.ts';

/**
 * "It grinds or does nothing" leaves it open, "sometimes it grinds, sometimes not" and "maybe" twice
 * too; so does who cannot say whether it does.
 */
export function readEither(turn: Turn): Understood | undefined {
  const check = optionsInHand(turn);
  if (check === undefined || isOfSeveral(check)) return undefined;
  const { lexicon } = turn.listener;
  const beside = besideWhether(turn);
  if (beside !== undefined) {
    const fit = chosen(joinClauses(beside), check, lexicon);
    if (fit !== undefined) return answers([{ check: check.id, value: [fit.id] }]);
    return beside.every((clause) => isNothing(clause, check, lexicon))
      ? input([{ type: 'talk', talk: 'dont-know' }], 'dont-know')
      : undefined;
  }
  const either = saidEither(turn, check, turn.listener.lexicon.words.alternatives ?? []);
  return either.length > 0 ? offer(either, check) : undefined;
}

/** "Petrol or diesel, I don't know", "lit or not": what may be is still offered. */
export function readWhich(turn: Turn): Understood | undefined {
  const check = optionsInHand(turn);
  const { tokens, listener } = turn;
  const { alternatives = [], norOr = [], talk } = listener.lexicon.words;
  if (check === undefined || isOfSeveral(check)) return undefined;
  if (!hasPhrase(tokens, talk['dont-know']) || besideWhether(turn) !== undefined) return undefined;
  const either = saidEither(turn, check, [...alternatives, ...norOr]);
  return either.length > 0 ? offer(either, check) : undefined;
}

function offer(fits: readonly Fit[], check: CheckPhrases): Understood {
  return offersOf(fits.map((fit) => ({ check, fit })));
}

/** "Maybe it clicks, maybe not", which without its small words is the answer that it does not. */
export function readPerhaps(turn: Turn): Understood | undefined {
  const { tokens, listener } = turn;
  const { perhaps = [] } = listener.lexicon.words;
  return cutAt(tokens, perhaps).length > mostPerhaps ? readEither(turn) : undefined;
}

/** One "maybe" cuts a text in two and is a hedge. */
const mostPerhaps = 2;

/** Each of two clauses says another answer as surely as this, and the text none more surely than that. */
const [sureOfEach, unsureOfAll] = [0.85, 0.9];

/** Of something that was tried the end says as surely as this what came of it. */
const sureOfEnd = 0.95;

/** "It goes dim but stays bright", "fast clicks and the key won't turn": of two answers both are offered. */
export function readBoth(turn: Turn): Understood | undefined {
  const { tokens, clauses, listener } = turn;
  const { lexicon } = listener;
  const check = optionsInHand(turn);
  if (check === undefined || isOfSeveral(check) || clauses.length !== 2) return undefined;
  // Behind a comma it is often the same in other words: "one big clunk, then silence".
  if (tokens.some(({ kind }) => kind === 'mark')) return undefined;
  if ((chosen(tokens, check, lexicon)?.score ?? 0) >= unsureOfAll) return undefined;
  const fits = clauses.flatMap((clause) => chosen(clause, check, lexicon) ?? []);
  const [one, other] = fits.filter(({ score }) => score >= sureOfEach);
  if (one?.id === other?.id || other === undefined || one === undefined) return undefined;
  // What was tried stands before what came of it: "gave it a few taps and nothing changed".
  const isOfTrial = !check.isToldUnasked && one.score < unsureOfAll && other.score >= sureOfEnd;
  return isOfTrial ? answers([{ check: check.id, value: [other.id] }]) : offer(fits, check);
}

/** What is said beside not knowing whether it is so: nothing beside "no idea if it was on". */
function besideWhether({
  tokens,
  listener: { lexicon },
}: Turn): readonly (readonly Token[])[] | undefined {
  const { talk, whether = [], alternatives = [] } = lexicon.words;
  if (tokens.some(({ kind }) => kind === 'number')) return undefined;
  const at = tokens.findIndex((_, index) => phraseAt(tokens, index, talk['dont-know']) > 0);
  if (at < 0 || at > mostBefore) return undefined;
  const behind = at + phraseAt(tokens, at, talk['dont-know']);
  if (phraseAt(tokens, behind, whether) === 0) return undefined;
  // "If it dims or if it goes out" goes on.
  const goesOn = (index: number): boolean =>
    phraseAt(tokens, index, whether) > 0 && endsWithPhrase(tokens, index, alternatives);
  const end = tokens.findIndex(
    (token, index) => index > behind && isBreak(token, lexicon) && !goesOn(index),
  );
  return end < 0 ? [] : cutClauses(tokens.slice(end), lexicon);
}

function isNothing(clause: readonly Token[], check: CheckPhrases, lexicon: Lexicon): boolean {
  return chooseOption(hearTokens(clause, lexicon), check).type === 'none';
}

/** So many words at most are said before: "well honestly". */
const mostBefore = 3;

function isBreak(token: Token, { words }: Lexicon): boolean {
  if (token.kind === 'mark') return !'-/'.includes(token.text);
  return token.kind === 'word' && words.clauseBreaks.includes(token.text);
}

/** All of the text says as surely as this what comes in turns. */
const sureOfTurns = 0.95;

/** The answers between which a text leaves it open. */
function saidEither(
  turn: Turn,
  check: CheckPhrases,
  alternatives: readonly string[],
): readonly Fit[] {
  const { tokens, listener } = turn;
  const { lexicon } = listener;
  const { turns = [], perhaps = [] } = lexicon.words;
  // Once is no turn: "now and then it clicks"; and what is said before belongs to none.
  const [, ...byTurns] = cutAt(tokens, turns);
  const [, ...byPerhaps] = cutAt(tokens, perhaps);
  const [inTurns] = [byTurns, byPerhaps].filter(({ length }) => length > 1);
  const parts = inTurns ?? cutAt(tokens, alternatives);
  if (parts.length < 2) return [];
  const isInTurns = parts === byTurns;
  const fits = parts.flatMap((part, at) => openOf(part, at, { parts, check, lexicon }));
  // What comes in turns is an answer itself to how evenly it turns: "now fast, now slow".
  const whole = isInTurns ? chosen(tokens, check, lexicon) : undefined;
  const isPart = fits.some(({ id, score }) => id === whole?.id && score >= whole.score);
  if (!isPart && (whole?.score ?? 0) >= sureOfTurns) return [];
  const each = fits.filter(({ id }, at) => fits.findIndex((fit) => fit.id === id) === at);
  // "Maybe it clicks, maybe not"; what comes in turns is none of the answers.
  const isOrNot = !isInTurns && isOpenToNot(parts, check, lexicon);
  return each.length > 1 || isOrNot ? each : [];
}

/** True where "or not" stands right behind an answer: not of "no light, starting or not". */
function isOpenToNot(
  parts: readonly (readonly Token[])[],
  check: CheckPhrases,
  lexicon: Lexicon,
): boolean {
  return parts.some((part, at) => {
    if (at === 0 || !isBareDenial(part, lexicon)) return false;
    const [near = [], more] = cutClauses(parts[at - 1] ?? [], lexicon);
    return more === undefined && chosen(near, check, lexicon) !== undefined;
  });
}

/** "Or not": nothing but what denies, and small words. */
function isBareDenial(part: readonly Token[], lexicon: Lexicon): boolean {
  const { words } = lexicon;
  const [first = []] = cutClauses(withoutPhrases(part, words.talk['dont-know']), lexicon);
  const isNo = (token: Token): boolean =>
    isNegator(token, lexicon) || (token.kind === 'word' && words.talk.no.includes(token.text));
  const isSmall = (token: Token): boolean =>
    token.kind === 'word' && words.fillers.includes(token.text);
  return first.some(isNo) && first.every((token) => isNo(token) || isSmall(token));
}

/** The words before, between and behind these phrases. */
function cutAt(
  tokens: readonly Token[],
  phrases: readonly string[],
): readonly (readonly Token[])[] {
  const parts: Token[][] = [[]];
  for (let at = 0; at < tokens.length; at += 1) {
    const length = phraseAt(tokens, at, phrases);
    const token = tokens[at];
    if (length > 0) {
      parts.push([]);
      at += length - 1;
    } else if (token !== undefined) parts.at(-1)?.push(token);
  }
  return parts;
}

/** A text that is cut where it leaves an answer open. */
interface Parts {
  readonly parts: readonly (readonly Token[])[];
  readonly check: CheckPhrases;
  readonly lexicon: Lexicon;
}

/** What the words next to an "or" may say, without who does not know. */
function openOf(part: readonly Token[], at: number, by: Parts): readonly Fit[] {
  const { parts, check, lexicon } = by;
  const fitting = (said: readonly Token[]): readonly Fit[] => mayMean(said, by);
  const isFirst = parts.slice(0, at).every(({ length }) => length === 0);
  const clauses = cutClauses(withoutPhrases(part, lexicon.words.talk['dont-know']), lexicon);
  const near = (isFirst ? clauses.at(-1) : clauses[0]) ?? [];
  // "It does not click or turn" leaves nothing open.
  if (isFirst && deniesSome(near, lexicon)) return [];
  const own = fitting(near);
  if (own.length > 0) return own;
  const whole = fitting(part);
  const others = joinClauses(clauses.filter((clause) => clause !== near));
  return chosen(others, check, lexicon) === undefined ? whole : [];
}

function isNegator(token: Token, { words }: Lexicon): boolean {
  return token.kind === 'word' && words.negators.includes(token.text);
}

function deniesSome(tokens: readonly Token[], { reader }: Lexicon): boolean {
  return reader.fromTokens(tokens).some((term) => term.startsWith('!'));
}

function chosen(tokens: readonly Token[], check: CheckPhrases, lexicon: Lexicon): Fit | undefined {
  const choice = chooseOption(hearTokens(tokens, lexicon), check);
  return choice.type === 'one' ? choice.fit : undefined;
}

/** Answers that words come as close to as this may be meant: "it clicks" may be either of two. */
const closeTo = 0.4;

/** The answer that words say, or those that they may. */
function mayMean(
  tokens: readonly Token[],
  { check, lexicon }: Pick<Parts, 'check' | 'lexicon'>,
): readonly Fit[] {
  const choice = chooseOption(hearTokens(tokens, lexicon), check);
  const fits = fitsOf(choice);
  return choice.type === 'one' || fits.some(({ score }) => score >= closeTo) ? fits : [];
}
