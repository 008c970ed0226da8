import type { Input } from '@keyturn/core';
import { startsAnswer, startsNow, type InterruptPhrase } from './alarms.ts';
import { chooseOption, likeliest } from './choices.ts';
import type { Fit } from './fit.ts';
import { findPhrase, hear, hearTokens, isPhrase, says, type Heard } from '../typed/heard.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import {
  type FoundInterrupt,
  criesOut,
  fewWords,
  findInterrupt,
  findJoined,
  findSound,
  findTalk,
  saysOver,
  soundsInPart,
} from './talk.ts';
import { type Turn, answers, input, optionsInHand } from './turn.ts';
import { hasPhrase } from '../readings/word-run.ts';
import { volunteered } from './volunteered.ts';
import type { Understood } from './understood.ts';

/**
 * An interrupt that the text speaks of. Where the answer in hand says more than it ("leaking" of a
 * battery), both are taken; where a whole phrase of an answer holds it ("fires, then stalls"), it
 * is the answer, unless the interrupt is said beside it. That the vehicle starts is no emergency,
 * so there an answer in hand goes first.
 */
export function readInterrupt(turn: Turn): Understood | undefined {
  const possible = possibleIn(turn);
  const dangers = possible.filter((id) => id !== startsNow);
  const isCried = isStartCried(turn) || turn.listener.asHeard?.saysStart(turn) === true;
  if (possible.includes(startsNow) && isCried)
    return input([{ type: 'interrupt', interrupt: startsNow }], startsNow);
  // "I started it and there is smoke": what does not say that it starts may still tell a danger.
  return (
    readOneOf(possible, turn) ??
    (dangers.length < possible.length ? readOneOf(dangers, turn) : undefined)
  );
}

/** True where the text is heard to say that it starts, word for word, and no answer to what was asked. */
function isStartCried({ heard, inHand, listener: { lexicon } }: Turn): boolean {
  const text = heard.words.join(' ');
  if (lexicon.cries().get(text) !== startsNow) return false;
  const isSo = ({ words }: { readonly words: readonly string[] }): boolean =>
    words.join(' ') === text;
  const isAnswer = inHand?.options.some(
    ({ id, heard: ways, spoken }) => id === startsAnswer || [...spoken, ...ways()].some(isSo),
  );
  return isAnswer !== true;
}

function readOneOf(possible: readonly string[], turn: Turn): Understood | undefined {
  const { clauses, hearing, listener, heard, tokens } = turn;
  const { lexicon } = listener;
  const isResumed = hearing.awaiting === 'resume';
  const live = isResumed ? clauses.filter((clause) => !saysOver(clause, lexicon)) : clauses;
  const found =
    findInterrupt(live, lexicon, possible) ??
    (isResumed
      ? undefined
      : (findJoined(tokens, lexicon, possible) ??
        findSound(
          turn,
          lexicon,
          possible.filter((id) => id === startsNow),
        )));
  if (found === undefined) {
    return possible.includes(startsNow) && isUntried(turn) && triedToStart(turn)
      ? input([{ type: 'interrupt', interrupt: startsNow }], startsNow)
      : undefined;
  }
  const { interrupt, isPlain } = found;
  const isCalm = interrupt === startsNow;
  const starts = isCalm ? soundsStarted(turn) : 0;
  // Word for word that it starts, and so no "starts, then stops".
  const isWhole =
    isCalm && isPlain && lexicon.interrupts.some((one) => isSaidAlone(one, interrupt, heard));
  if (isCalm && !isWhole && starts < (isPlain ? leastPlain : leastStarted)) return undefined;
  // What only sounds like an interrupt is the talk that it is word for word, or more surely.
  if (!isPlain && findTalk(turn, lexicon, plainTalk) !== undefined) return undefined;
  if (isRatherTalk(turn, isPlain ? hardlyAlarmed : 1)) return undefined;
  const raised: Input = { type: 'interrupt', interrupt };
  const check = optionsInHand(turn);
  if (check === undefined) {
    if (isWhole) return input([raised], interrupt);
    const [told] = volunteered(heard, turn);
    const isAnswer =
      told !== undefined &&
      told.check.check.at === 'memory' &&
      (isPlain
        ? isTold(interrupt, told.fit, turn) ||
          (isCalm && starts < leastStarted && told.fit.coverage >= mostCoverage)
        : told.fit.recall === 1 && told.fit.coverage === 1);
    return isAnswer ? undefined : input([raised], interrupt);
  }
  // Word for word an answer, if of more than one.
  if (check.options.some(({ phrasesIn }) => phrasesIn(heard).some((one) => isPhrase(heard, one))))
    return undefined;
  // What was tried made it start, unless it came of itself.
  if (isCalm && check.options.some(({ id }) => id === startsAnswer))
    return isUntried(turn)
      ? input([raised], interrupt)
      : answers([{ check: check.id, value: [startsAnswer] }]);
  if (isWhole || (isCalm && isUntried(turn))) return input([raised], interrupt);
  if (!isCalm && isAnsweredInstead(found, check, turn)) return undefined;
  const choice = chooseOption(heard, check);
  if (!isPlain && choice.type === 'close' && (choice.fits[0]?.coverage ?? 0) >= wholeCoverage)
    return undefined;
  if (choice.type !== 'one') return input([...answersOfClause(check, turn), raised], interrupt);
  const answer: Input = {
    type: 'answers',
    answers: [{ check: check.id, value: [choice.fit.id] }],
  };
  // What only sounds like an interrupt is the answer that it plainly is, or both in two breaths.
  if (
    !isPlain &&
    isCalm &&
    starts >= mostlyStarted &&
    likeliest(heard, check).share < surelyAnswered
  )
    return input([raised], interrupt);
  if (!isPlain)
    return !isCalm && isRaisedBeside(interrupt, check, turn)
      ? input([answer, raised], interrupt)
      : undefined;
  if (isTold(interrupt, choice.fit, turn)) return input([answer]);
  if (isCalm && isRatherAnswered(interrupt, choice.fit, { turn, check, starts }))
    return input([answer]);
  return findPhrase(heard, choice.fit.phrase) < 0
    ? input([raised], interrupt)
    : input([answer, raised], interrupt);
}

/** What one clause of several surely answers: "down, and the van is rolling back". */
function answersOfClause(check: CheckPhrases, { clauses, listener }: Turn): readonly Input[] {
  const told = clauses.flatMap((clause) => {
    const heard = hearTokens(clause, listener.lexicon);
    const choice = chooseOption(heard, check);
    const isSure = likeliest(heard, check).share >= surelyAnswered;
    return choice.type === 'one' && isSure ? [choice.fit.id] : [];
  });
  const [id, more] = told;
  if (id === undefined || more !== undefined || clauses.length < 2) return [];
  return [{ type: 'answers', answers: [{ check: check.id, value: [id] }] }];
}

/** What is nothing else is a danger from here on. */
const leastUneasy = 0.45;

/** A danger that a text sounds like, where it is understood as nothing else and no talk likelier. */
export function readUneasy(turn: Turn): Understood | undefined {
  const { heard, hearing, listener } = turn;
  const { alarmed, isHeard, talkHeard } = listener.lexicon;
  if (!isHeard || hearing.awaiting === 'resume' || heard.terms.length < fewWords) return undefined;
  const { interrupt, share } = alarmed()(heard);
  if (interrupt === startsNow || share < leastUneasy || talkHeard()(heard).share > share)
    return undefined;
  return possibleIn(turn).includes(interrupt) &&
    soundsInPart(turn.clauses, interrupt, listener.lexicon)
    ? input([{ type: 'interrupt', interrupt }], interrupt)
    : undefined;
}

/** The interrupts that there are now and that the text makes no ordinary matter of. */
function possibleIn(turn: Turn): readonly string[] {
  const { hearing, heard, listener, inHand } = turn;
  const { ordinary } = listener.lexicon;
  return hearing.interrupts.filter(
    (id) =>
      ordinary.get(id)?.some((phrase) => findPhrase(heard, phrase) >= 0) !== true &&
      (id !== startsNow || !isOfRunning(inHand)),
  );
}

/** Those of them that are dangers, and not that the vehicle starts. */
export function dangersPossible(turn: Turn): readonly string[] {
  return possibleIn(turn).filter((id) => id !== startsNow);
}

/** True for a check that is made while the engine runs anyway. */
function isOfRunning(check: CheckPhrases | undefined): boolean {
  const form = check?.check.form;
  return form?.kind === 'reading' && form.expect === 'charging';
}

/** True where something is said to have come by itself, or what was asked for to be called off. */
function isUntried({ tokens, listener }: Turn): boolean {
  return hasPhrase(tokens, listener.lexicon.words.untried ?? []);
}

/** True where the text says of what was to be tried that it starts. */
function triedToStart(turn: Turn): boolean {
  const check = optionsInHand(turn);
  if (check?.options.some(({ id }) => id === startsAnswer) !== true) return false;
  const choice = chooseOption(turn.heard, check);
  return choice.type === 'one' && choice.fit.id === startsAnswer;
}

/**
 * Talk as sure as this is no danger that a part of it sounds like, or that it has the words of and
 * hardly sounds like: "I'm alone and can't see the back".
 */
const [sureTalk, hardlyAlarmed] = [0.9, 0.5];

function isRatherTalk({ heard, listener: { lexicon } }: Turn, mostAlarmed: number): boolean {
  if (!lexicon.isHeard) return false;
  const { share } = lexicon.talkHeard()(heard);
  return share >= sureTalk && lexicon.alarmed()(heard).share < Math.min(share, mostAlarmed);
}

/**
 * What has the words of a danger and hardly sounds like it, or only sounds like it and not surely,
 * is the answer in hand that it is as surely as this: a fuse's wire that has melted.
 */
const [hardlyRaised, notSurelyRaised, sureAnswer] = [0.15, 0.9, 0.6];

function isAnsweredInstead(
  { interrupt, isPlain }: FoundInterrupt,
  check: CheckPhrases,
  { clauses, listener: { lexicon } }: Turn,
): boolean {
  // Where it stands, and whether all are safe, is told in the words of danger itself.
  const { again, sets } = check.check;
  const isOfDanger = again.length > 0 || Object.keys(sets).length > 0;
  if (!lexicon.isHeard || isOfDanger) return false;
  const raising = clauses.filter(
    (clause) => findInterrupt([clause], lexicon, [interrupt]) !== undefined,
  );
  return (
    raising.length > 0 &&
    raising.every((clause) => {
      const heard = hearTokens(clause, lexicon);
      const { share } = lexicon.alarmed()(heard);
      const answered = likeliest(heard, check).share;
      const most = isPlain ? hardlyRaised : Math.min(notSurelyRaised, answered);
      return answered >= sureAnswer && share < most;
    })
  );
}

/** A part of a text that is as sure of the danger as this, and less sure of any answer than that. */
const [sureRaised, notAnswered] = [0.8, 0.85];

/** As sure is enough where the danger has a clause of its own. */
const raisedAlone = 0.6;

/** A part of fewer terms raises a danger only where it sounds like it as surely as that. */
const [leastRaised, shortRaised] = [3, 0.95];

/** True where a part of the text sounds like the danger more than like any answer in hand. */
function isRaisedBeside(interrupt: string, check: CheckPhrases, turn: Turn): boolean {
  const { lexicon } = turn.listener;
  const isRaisedBy = (part: Heard, least: number): boolean => {
    if (part.at.length < 2) return false;
    const alarm = lexicon.alarmed()(part);
    const isShort = part.at.length < leastRaised;
    if (alarm.interrupt !== interrupt || alarm.share < (isShort ? shortRaised : least))
      return false;
    return Math.max(...check.taught()(part).answers) < notAnswered;
  };
  const clauses = turn.clauses.map((clause) => hearTokens(clause, lexicon));
  return (
    isRaisedBy(turn.heard, sureRaised) ||
    clauses.some(
      (clause) =>
        isRaisedBy(clause, clauses.length > 1 ? raisedAlone : sureRaised) ||
        (Math.max(...check.taught()(clause).answers) < notAnswered &&
          criesOut(clause, { lexicon, possible: [interrupt] }) !== undefined),
    )
  );
}

function isSaidAlone(phrase: InterruptPhrase, interrupt: string, heard: Heard): boolean {
  return phrase.interrupt === interrupt && isPhrase(heard, phrase.terms);
}

/**
 * How much the text as a whole says that the vehicle starts, 0 to 1: not that it does at times, with
 * help, or that somebody tries.
 */
function soundsStarted({ heard, listener: { lexicon } }: Turn): number {
  const { interrupt, share } = lexicon.alarmed()(heard);
  return interrupt === startsNow ? share : 0;
}

/**
 * From here on a text that has the words says that it starts, from there on one without them, or one
 * that an answer accounts for as well; and then no answer in hand says it better.
 */
const [leastPlain, leastStarted, surelyStarted] = [0.15, 0.55, 0.8];

/** A text without the words that sounds as if it had started as surely as this is no other answer. */
const mostlyStarted = 0.95;

/** So surely it is the answer in hand where it does not surely sound as if it had started. */
const surelyAnswered = 0.9;

/** True where what has the words of having started rather answers what was asked: "it turns over now". */
function isRatherAnswered(
  interrupt: string,
  fit: Fit,
  by: { readonly turn: Turn; readonly check: CheckPhrases; readonly starts: number },
): boolean {
  const { turn, check, starts } = by;
  if (starts >= surelyStarted) return false;
  if (likeliest(turn.heard, check).share >= surelyAnswered) return true;
  return (
    saysMore(interrupt, fit, turn) && (starts < leastStarted || !isMoreThan(fit, interrupt, turn))
  );
}

/** True where a phrase of the interrupt that the text has says more than the answer in hand. */
function isMoreThan({ id }: Fit, interrupt: string, { heard, inHand, listener }: Turn): boolean {
  const terms = inHand?.options.find((one) => one.id === id)?.terms;
  return listener.lexicon.interrupts.some(
    (phrase) =>
      phrase.interrupt === interrupt &&
      phrase.terms.every((term) => says(heard, term)) &&
      phrase.terms.some((term) => terms?.has(term) !== true),
  );
}

/** From here on an answer accounts for what a text says. */
const mostCoverage = 0.8;

/** From here on the answers in hand account for all of a text. */
const wholeCoverage = 0.85;

/** Talk that is said at any moment. */
const plainTalk = [
  'dont-know',
  'cannot',
  'why',
  'numbers',
  'back',
  'repeat',
  'person',
  'stop',
  'yes',
  'no',
  'done',
] as const;

/** True where the answer in hand is said that way as well, or by a word that the interrupt has not. */
function saysMore(interrupt: string, { id }: Fit, { heard, inHand, listener }: Turn): boolean {
  const option = inHand?.options.find((one) => one.id === id);
  const own = listener.lexicon.interrupts
    .filter((phrase) => phrase.interrupt === interrupt)
    .map(({ terms }) => terms.join(' '));
  if (option?.phrases.some((phrase) => own.includes(phrase.join(' '))) === true) return true;
  const known = new Set(own.flatMap((phrase) => phrase.split(' ')));
  return [...(option?.terms ?? [])].some((term) => !known.has(term) && says(heard, term));
}

/** True where a whole phrase of an answer holds the interrupt, and nothing beside it says it. */
function isTold(interrupt: string, fit: Fit, { heard, listener }: Turn): boolean {
  const { lexicon } = listener;
  const start = findPhrase(heard, fit.phrase);
  if (start < 0 || !isWithin(interrupt, fit, lexicon)) return false;
  const isBeside = (_: unknown, at: number): boolean =>
    at < start || at >= start + fit.phrase.length;
  const beside = hear(heard.terms.filter(isBeside), lexicon.vocabulary);
  return !lexicon.interrupts.some(
    ({ interrupt: id, terms }) => id === interrupt && terms.every((term) => says(beside, term)),
  );
}

/** True where the answer's phrase holds the interrupt's and says more: "starts, then stops". */
function isWithin(interrupt: string, { phrase }: Fit, { interrupts }: Lexicon): boolean {
  return interrupts.some(
    ({ interrupt: id, terms }) =>
      id === interrupt &&
      terms.length < phrase.length &&
      terms.every((term) => phrase.includes(term)),
  );
}
