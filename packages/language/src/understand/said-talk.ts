import { startsNow } from './alarms.ts';
import { exactChoice } from './choices.ts';
import { hasFigure, spellNumbers } from '../numbers/numbers.ts';
import { findPhrase, hear, hearTokens, isPhrase, startsAt } from '../typed/heard.ts';
import { readLine } from '../readings/readings-line.ts';
import { readYesNo } from './said-choice.ts';
import { lineContext } from './said-figures.ts';
import type { CheckPhrases } from './lexicon.ts';
import { readStatement } from './statements.ts';
import { isOfKit, kitTold } from './kit-told.ts';
import { readSeveral } from './said-unasked.ts';
import { tellsSomething } from './told-unasked.ts';
import type { TalkHeard, TaughtTalk } from './taught.ts';
import { containsPlainTalk, cutClauses, findTalk, isDenial, saysOnly, saysOver } from './talk.ts';
import { hasPhrase, phraseAt } from '../readings/word-run.ts';
import { figureWordsOf } from '../words/words.ts';
import { type Turn, answers, input, isAsked, mostClauses, optionsInHand, unclear } from './turn.ts';
import type { HeardTalk, Hearing, Understood } from './understood.ts';

/** True where more was to come: "yes, but". */
function breaksOff({ tokens, listener }: Turn): boolean {
  const last = tokens.findLast(({ kind }) => kind === 'word');
  return last?.kind === 'word' && listener.lexicon.words.clauseBreaks.includes(last.text);
}

/** What sounds like one of these confirms nothing, however near it comes to a yes. */
const unwilling = ['no', 'cannot', 'dont-know', 'repeat', 'why', 'back'] as const;

/** What ends a confirmation, a wait, work or an interrupt. */
export function readAwaited(turn: Turn): Understood | undefined {
  const { hearing, listener, inHand } = turn;
  const { lexicon } = listener;
  switch (hearing.awaiting) {
    case 'resume':
      if (saysAllOver(turn)) return input([{ type: 'resume' }]);
      return hearing.interrupt === startsNow && saysNotStarted(turn)
        ? input([{ type: 'talk', talk: 'back' }], 'back')
        : undefined;
    case 'confirm':
      if (breaksOff(turn) || isQuestion(turn.text)) return undefined;
      switch (findTalk(turn, lexicon, [...unwilling, 'yes', 'done'])) {
        case 'yes':
        case 'done':
          return input([{ type: 'confirm' }], 'yes');
        case 'no':
          return input([{ type: 'talk', talk: 'cannot' }], 'no');
        default:
          return saysYesAndMore(turn) ? input([{ type: 'confirm' }], 'yes') : undefined;
      }
    case 'wait':
      return findTalk(turn, lexicon, ['done', 'over']) === undefined
        ? undefined
        : input([{ type: 'waited' }], 'done');
    case 'answer':
      return inHand?.check.form.kind === 'work' && saysDone(turn, inHand)
        ? answers([{ check: inHand.id, value: ['done'] }], 'done')
        : undefined;
    case 'nothing':
      return undefined;
  }
}

/** What is wanted in place of going on. */
const withheld = [...unwilling, 'person', 'stop'] as const;

/** So many words behind a yes at most say how it is meant. */
const mostBehindYes = 12;

/**
 * True for a yes with more behind it that takes nothing back: "yes, gloves on", but not "yes, but".
 */
function saysYesAndMore(turn: Turn): boolean {
  const { heard, literal, tokens, listener } = turn;
  const { lexicon } = listener;
  const { words, talk, reader, vocabulary } = lexicon;
  const yes = talk.yes.literal
    .filter((phrase) => startsAt(literal, phrase, 0))
    .reduce((most, { length }) => Math.max(most, length), 0);
  const spoken = tokens.filter(({ kind }) => kind !== 'mark');
  const behind = spoken.slice(yes);
  // The Polish "no" is a yes, and holds one up as well.
  const isWavering = phraseAt(spoken, 0, figureWordsOf(words).instead) === yes;
  if (yes === 0 || isWavering || behind.length === 0 || behind.length > mostBehindYes) return false;
  const rest = {
    heard: hearTokens(behind, lexicon),
    literal: hear(reader.literally(behind), vocabulary),
  };
  const isTakenBack =
    hasPhrase(behind, figureWordsOf(words).instead) ||
    withheld.some(
      (word) =>
        talk[word].literal.some((phrase) => startsAt(rest.literal, phrase, 0)) ||
        // "Everybody has stepped back" goes back to nothing.
        (word !== 'back' &&
          (containsPlainTalk(heard, lexicon, word) || word === talkLike({ ...turn, ...rest }))),
    );
  if (isTakenBack) return false;
  return behind.every(
    (token) =>
      token.kind !== 'word' ||
      (!isDenial(token.text, words) &&
        (!words.clauseBreaks.includes(token.text) || words.joins.includes(token.text))),
  );
}

/**
 * True where a text says that the interrupt is over. That somebody has read of a danger ends none:
 * "ok" and "yes" do so only where the vehicle is said to run.
 */
function saysAllOver(turn: Turn): boolean {
  const { clauses, hearing, literal, listener, text } = turn;
  const { lexicon } = listener;
  if (hearing.interrupt === startsNow && findTalk(turn, lexicon, ['yes', 'done']) !== undefined)
    return true;
  if (isQuestion(text)) return false;
  return (
    findTalk(turn, lexicon, ['over']) !== undefined ||
    saysOnly(literal, { said: ['over'], beside: ['yes', 'done'] }, lexicon) ||
    clauses.some((clause) => saysOver(clause, lexicon))
  );
}

/** Not so, or no longer: "no, it does not start". */
function saysNotStarted(turn: Turn): boolean {
  const { heard, listener } = turn;
  const { lexicon } = listener;
  const denied = lexicon.interrupts
    .filter(({ interrupt }) => interrupt === startsNow)
    .flatMap(({ terms }) => terms.map((term) => `!${term}`));
  return (
    findTalk(turn, lexicon, ['no', 'back']) !== undefined ||
    heard.terms.some((term) => denied.includes(term))
  );
}

/** Work in hand of which the text says, word for word, that it is done. */
export function readWorkDone(turn: Turn): Understood | undefined {
  const { heard, inHand, text } = turn;
  if (!isAsked(turn) || inHand === undefined || isQuestion(text)) return undefined;
  return inHand.done.some(({ terms }) => isPhrase(heard, terms))
    ? answers([{ check: inHand.id, value: ['done'] }], 'done')
    : undefined;
}

/** True for a text that asks. */
export const isQuestion = (text: string): boolean => /[?؟]/u.test(text);

/**
 * True where every clause of a text says that work is done: "done, the wheels are blocked". What
 * says more may say that it is not.
 */
function saysDone(turn: Turn, { done, isWellHeard, taught }: CheckPhrases): boolean {
  const { lexicon } = turn.listener;
  const isSaid = (said: Pick<Turn, 'heard' | 'literal'>): boolean =>
    findTalk(said, lexicon, ['done', 'yes']) !== undefined;
  if (isSaid(turn) || turn.text.trim() === '1') return true;
  const { clauses } = turn;
  if (isQuestion(turn.text)) return false;
  if (isWellHeard && (taught()(turn.heard).answers[0] ?? 0) >= sure) return true;
  const isHeld = hasPhrase(turn.tokens, figureWordsOf(lexicon.words).instead);
  if (!isHeld && saysOnly(turn.literal, { said: ['done', 'yes'] }, lexicon)) return true;
  if (clauses.length < 2 || clauses.length > mostClauses) return false;
  const { reader, vocabulary } = lexicon;
  return clauses.every((clause) => {
    const heard = hear(reader.fromTokens(clause), vocabulary);
    const literal = hear(reader.literally(clause), vocabulary);
    return isSaid({ heard, literal }) || done.some(({ terms }) => isPhrase(heard, terms));
  });
}

/** Talk that the whole text is. */
export function readTalk(turn: Turn): Understood | undefined {
  const { listener } = turn;
  const talk = findTalk(turn, listener.lexicon, [
    'dont-know',
    'cannot',
    'why',
    'numbers',
    'back',
    'repeat',
    'person',
    'stop',
    'language',
    'yes',
    'no',
    'done',
  ]);
  switch (talk) {
    case undefined:
    case 'over':
    case 'false-alarm':
      return undefined;
    case 'language':
      return unclear(turn, 'which-language', talk);
    case 'yes':
    case 'no':
    case 'done':
      return optionsInHand(turn) === undefined ? noAnswer(turn, talk) : readYesNo(turn, talk);
    default: {
      // What is not said word for word may surely sound like other talk.
      const { word, share } = soundOf(turn);
      const { literal } = listener.lexicon.talk[talk];
      const isLiteral = literal.some((phrase) => isPhrase(turn.literal, phrase));
      return talkOf(isLiteral || share < sure ? talk : word, turn);
    }
  }
}

/** What only sounds like a correction may be an answer: nothing is undone for it. */
function talkOf(talk: TaughtTalk | 'numbers', turn: Turn): Understood {
  return talk === 'correction'
    ? unclear(turn, 'which-check', talk)
    : input([{ type: 'talk', talk }], talk);
}

/** The talk that a text sounds most like; a courtesy alone is none. */
function soundOf({ heard, literal, listener: { lexicon } }: Turn): ReturnType<TalkHeard> {
  const sound = lexicon.talkHeard()(heard);
  const isCourtesy = lexicon.courtesies.some((said) => isPhrase(literal, said));
  return isCourtesy ? { ...sound, share: 0 } : sound;
}

/** A text that is talk as surely as this is no answer that it is not likely to be. */
const surely = 0.95;

/** Talk that a text surely is, at a question of which it is likely no answer: "get me a person". */
export function readSureTalk(turn: Turn): Understood | undefined {
  const { word, share } = soundOf(turn);
  const sense = optionsInHand(turn)?.taught()(turn.heard);
  const isAnswer = sense === undefined || Math.max(...sense.answers) >= sure;
  return share < surely || isAnswer ? undefined : talkOf(word, turn);
}

/** Talk that a text may open with and go on behind. */
const openingTalk = ['dont-know', 'why', 'repeat', 'cannot'] as const;

/** So many words at most stand before it: "well honestly". */
const mostBefore = 2;

/** What opens with talk and is less an answer than this is the talk. */
const hardlyAnswered = 0.5;

/** Talk that a text opens with, word for word, where what follows is no answer: "dunno, it's my mum's car". */
export function readOpeningTalk(turn: Turn): Understood | undefined {
  const { heard, tokens, inHand, listener } = turn;
  if (!isAsked(turn) || inHand === undefined || inHand.check.form.kind === 'work') return undefined;
  if (tokens.some(({ kind }) => kind === 'number')) return undefined;
  if (Math.max(0, ...inHand.taught()(heard).answers) >= hardlyAnswered) return undefined;
  const { talk } = listener.lexicon.words;
  const { word, share } = soundOf(turn);
  for (let at = 0; at <= mostBefore; at += 1) {
    const meant = openingTalk.find((one) => {
      const length = phraseAt(tokens, at, talk[one]);
      // The Spanish "cómo" asks once more, and compares.
      return length > (one === 'repeat' ? 1 : 0);
    });
    if (meant !== undefined)
      return word !== meant && share >= otherwise ? undefined : talkOf(meant, turn);
  }
  return undefined;
}

function noAnswer(turn: Turn, talk: HeardTalk): Understood {
  const { hearing, inHand } = turn;
  if (hearing.awaiting === 'confirm') return unclear(turn, 'not-confirmed', talk);
  if (hearing.awaiting === 'wait') return unclear(turn, 'waiting', talk);
  if (hearing.awaiting === 'resume') return unclear(turn, 'not-over', talk);
  if (hearing.awaiting === 'nothing') return unclear(turn, 'closed', talk);
  if (inHand?.check.form.kind === 'reading') return unclear(turn, 'not-a-number', talk);
  if (inHand?.check.form.kind === 'work') return unclear(turn, 'not-done', talk);
  return unclear(turn, 'nothing-to-confirm', talk);
}

/** A statement that is an answer to some check is left to be that answer. */
export function readContext(turn: Turn): Understood | undefined {
  const { heard, listener, hearing, inHand } = turn;
  const { checks, kit } = listener.lexicon;
  const isKitAsked = inHand?.options.some(({ id }) => kit.some((item) => item.id === id)) === true;
  if (isKitAsked) return undefined;
  const stated = readStatement(heard, listener.lexicon, {
    kit: hearing.kit,
    toBeAsked: kitToBeAsked(hearing),
  });
  if (stated === undefined) return undefined;
  const isAnswer = [...checks.values()].some(
    ({ options }) => exactChoice(heard, options) !== undefined,
  );
  if (isAnswer) return undefined;
  const set = stated.type === 'context' ? stated.set : { kit: stated.answers };
  // "I had it jumped the other day" tells what was done with leads, and not that they are at hand.
  const isGot = 'kit' in set && Array.isArray(set.kit) && set.kit.length >= hearing.kit.length;
  if (isGot && kitTold(turn.clauses, listener.lexicon).flat().length === 0) return undefined;
  const meant = optionThatSets(inHand, set);
  if (inHand !== undefined && meant !== undefined && optionsInHand(turn) !== undefined)
    return answers([{ check: inHand.id, value: [meant] }]);
  const isBesideFigure = hasFigure(turn.tokens, listener.lexicon.numbers);
  if ('kit' in set && isBesideFigure && inHand === undefined) return undefined;
  // "Three hours after the charge I've got 12.78": what is at hand is told apart from a figure.
  if ('kit' in set && inHand?.check.form.kind === 'reading' && !tellsKitApart(turn))
    return undefined;
  const several = 'kit' in set && !isBesideFigure ? readSeveral(turn) : undefined;
  if (several?.type === 'input') {
    const tellsKit = several.inputs.some(
      (one) =>
        one.type === 'answers' && one.answers.some(({ check }) => isOfKit(checks.get(check))),
    );
    return tellsKit ? several : input([stated, ...several.inputs]);
  }
  // What is at hand is often told together with what was read: "12.4, got a charger".
  const asked = inHand?.check.form.kind === 'reading' ? inHand : undefined;
  const line = 'kit' in set ? readLine(turn.tokens, lineContext(turn, asked)) : undefined;
  if (line?.type !== 'readings') return input([stated]);
  return stated.type === 'answers'
    ? answers([...line.readings, ...stated.answers])
    : input([stated, { type: 'answers', answers: line.readings }]);
}

/** True where a clause without a figure says what is at hand, or there is no figure at all. */
function tellsKitApart({ tokens, listener: { lexicon } }: Turn): boolean {
  if (!hasFigure(tokens, lexicon.numbers)) return true;
  const clauses = cutClauses(spellNumbers(tokens, lexicon.numbers), lexicon);
  return kitTold(clauses, lexicon).flat().length > 0;
}

/** Talk that a longer sentence may hold, the first that fits is taken. */
const looseTalk = ['dont-know', 'person', 'repeat', 'cannot', 'back', 'stop'] as const;

/** From here on a sentence is the talk, or the work done, that it is likeliest to be. */
const sure = 0.7;

/** The check that asks for the kit, where it still will. */
function kitToBeAsked({ awaiting, answered, checks, kit }: Hearing): string | undefined {
  if (awaiting === 'nothing' || kit.length > 0) return undefined;
  return Object.values(checks).find(({ id, writes }) => writes === 'kit' && !answered.includes(id))
    ?.id;
}

/** A text that is as likely as this to be other talk than its words say is asked back. */
const otherwise = 0.25;

/** Talk as it is put in a longer sentence: "I would like to talk to a person, please". */
export function readLooseTalk(turn: Turn): Understood | undefined {
  const { heard, listener } = turn;
  const { lexicon } = listener;
  const like = talkLike(turn);
  const meant = like ?? looseTalk.find((word) => containsPlainTalk(heard, lexicon, word));
  if (meant !== undefined) {
    // "I can't turn the key" tells what is wrong, and "I can't get it started" that something is.
    const isUnable = meant === 'cannot' || meant === 'dont-know';
    if (isUnable && (turn.hearing.check === null || tellsSomething(turn))) return undefined;
    const { word, share } = soundOf(turn);
    const isOpen = like === undefined && word !== meant && share >= otherwise;
    return isOpen ? undefined : talkOf(meant, turn);
  }
  const asksWhy = lexicon.talk.why.said.some((phrase) => findPhrase(heard, phrase) === 0);
  return asksWhy ? talkOf('why', turn) : undefined;
}

/** No word is learned from that is as short as this. */
const shortest = 2;

/** The talk that a text plainly sounds like. */
function talkLike(turn: Turn): TaughtTalk | undefined {
  const { heard } = turn;
  // A letter or two are told by the lists.
  if (heard.terms.every((term) => term.length <= shortest)) return undefined;
  const { word, share } = soundOf(turn);
  const inPlace = optionsInHand(turn)?.taught()(heard).talk ?? 0;
  return Math.max(share, inPlace) >= sure ? word : undefined;
}

/** The answer in hand that says the same of the vehicle: "diesel engine" to what drives it. */
function optionThatSets(
  inHand: CheckPhrases | undefined,
  stated: Readonly<Record<string, unknown>>,
): string | undefined {
  const wanted = JSON.stringify(stated);
  return Object.entries(inHand?.check.sets ?? {}).find(
    ([, set]) => JSON.stringify(set) === wanted,
  )?.[0];
}
