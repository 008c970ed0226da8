import { hear, hearMost, hearTokens } from '../typed/heard.ts';
import { spellNumbers } from '../numbers/numbers.ts';
import { withoutExceptions } from '../typed/exceptions.ts';
import type { Token } from '../typed/token.ts';
import { keepingAnswers } from './keeping-answers.ts';
import { withOwnFuel } from './own-fuel.ts';
import { readChoice, readClose, readExact, readOptionKeys } from './said-choice.ts';
import { startsNow } from './alarms.ts';
import { readCorrection } from './said-correction.ts';
import { noDay, readDay } from './said-day.ts';
import { readBoth, readEither, readPerhaps, readWhich } from './said-either.ts';
import { readFalseAlarm } from './said-false-alarm.ts';
import { readPutRight } from './put-right.ts';
import { readFigures } from './said-figures.ts';
import { readInterrupt, readUneasy } from './said-interrupt.ts';
import { readLanguage } from './said-language.ts';
import { readMeter } from './said-meter.ts';
import {
  readAwaited,
  readContext,
  readLooseTalk,
  readOpeningTalk,
  readSureTalk,
  readTalk,
  readWorkDone,
} from './said-talk.ts';
import { readNothing } from './said-nothing.ts';
import { readSeveral, readVolunteered } from './said-unasked.ts';
import { tellsAll, toldInFigures, withAside } from './told-in-figures.ts';
import { cutClauses } from './talk.ts';
import { withDangerBeside, withFigureBeside } from './cried-beside.ts';
import { hasWord, isBlank, leavingOut, withoutPhrases } from '../readings/word-run.ts';
import { readTokens } from '../typed/read-tokens.ts';
import { contextTold, toldVehicle } from './told-vehicle.ts';
import {
  type Listener,
  type Reading,
  type Turn,
  cut,
  input,
  unclear,
  withAnswers,
} from './turn.ts';
import type { Hearing, Understood } from './understood.ts';

/** The longest text that is taken in, in UTF-16 code units. */
const longestText = 2000;

/** An answer in more terms than this is not held against the phrases as a whole. */
const mostTerms = 80;

/**
 * What a typed text means to a case that waits for `hearing`. Pure, linear in the length of the
 * text, and never throws. Interrupts come before everything but an answer word for word.
 */
export function understandText(text: string, hearing: Hearing, listener: Listener): Understood {
  const { lexicon } = listener;
  if (text.length > longestText)
    return { type: 'unclear', code: 'too-long', given: cut(text), possible: [] };
  const { words } = lexicon;
  const typed = lexicon.mend(readTokens(text, words));
  const meant = listener.asHeard?.asMeant(typed, lexicon, hearing) ?? typed;
  const tokens = leavingOut(withoutExceptions(meant, words), words.asides ?? []);
  const vehicle = toldVehicle(tokens, lexicon);
  if (vehicle === undefined)
    return inDanger(understandRest({ text, tokens, hearing, listener }), text, hearing);
  const { nominal = hearing.nominal, rest } = vehicle;
  const understood = understandRest({
    text,
    tokens: rest,
    hearing: { ...hearing, nominal },
    listener,
  });
  if (understood.type === 'input') {
    const { inputs } = understood;
    return { ...understood, inputs: [...contextTold(vehicle, inputs), ...inputs] };
  }
  return isBlank(rest) ? input(contextTold(vehicle, [])) : inDanger(understood, text, hearing);
}

/** While a danger lasts nothing is asked back but whether it is over. */
function inDanger(understood: Understood, text: string, { awaiting }: Hearing): Understood {
  return awaiting === 'resume' && (understood.type === 'offers' || understood.type === 'unclear')
    ? { type: 'unclear', code: 'not-over', given: cut(text), possible: [] }
    : understood;
}

/** What a text means, with what is counted in it or without. */
function understandRest(given: Pick<Turn, 'text' | 'tokens' | 'hearing' | 'listener'>): Understood {
  const understood = understandAside(given);
  const isOfOther =
    (understood.type === 'unclear' && understood.code === 'unknown-unit') ||
    (understood.type === 'offers' && understood.doubt?.given.resolution === 1);
  if (!isOfOther || given.hearing.check !== null) return understood;
  // Of a first message the words tell what they tell: "it died after 200 metres".
  const words = understandAside({ ...given, tokens: withoutCounts(given) });
  return words.type === 'input' ? words : understood;
}

/** The tokens without years, and whole numbers of what is no unit of a reading: "200 metres". */
function withoutCounts({ tokens, listener }: Pick<Turn, 'tokens' | 'listener'>): readonly Token[] {
  const { numbers, readUnit } = listener.lexicon;
  const spelled = spellNumbers(tokens, numbers);
  const bareAt = (at: number): string => {
    const token = spelled[at];
    const isBare = readUnit(spelled, at + 1) === undefined;
    return token?.kind === 'number' && isBare ? token.digits : '';
  };
  const isYear = (at: number): boolean => /^(?:19|20)\d\d$/.test(bareAt(at));
  const isCount = (at: number): boolean =>
    /^\d+$/.test(bareAt(at)) && !isYear(at) && spelled[at + 1]?.kind === 'word';
  return spelled.filter((_, at) => !isYear(at) && !isCount(at) && !isCount(at - 1));
}

/** What a text means beside what its figures tell by the way. */
function understandAside(
  given: Pick<Turn, 'text' | 'tokens' | 'hearing' | 'listener'>,
): Understood {
  const aside = toldInFigures(given);
  const whole = understandTokens(given);
  // What was read in its place needs nothing taken out of the text.
  if (tellsAll(whole, aside, given.hearing)) return withAside(whole, aside, given);
  const rest = withAside(understandTokens({ ...given, tokens: aside.rest }), aside, given);
  return rest.type === 'input' ? rest : withAside(whole, aside, given);
}

function understandTokens(
  given: Pick<Turn, 'text' | 'tokens' | 'hearing' | 'listener'>,
): Understood {
  const { text, tokens, hearing, listener } = given;
  const turn = turnOf(given);
  if (isBlank(tokens)) {
    return unclear(turn, text.trim() === '' ? 'empty' : 'not-understood');
  }
  const understood = withDangerBeside(withFigureBeside(firstUnderstood(turn), turn), turn);
  const withoutDanger = (danger: string): Hearing => ({
    ...hearing,
    interrupts: hearing.interrupts.filter((id) => id !== danger),
  });
  const ofSaying = dangerOfSaying(understood, given);
  if (ofSaying !== undefined)
    return understandTokens({ ...given, hearing: withoutDanger(ofSaying) });
  const withoutIt = (raised: string): Understood =>
    firstUnderstood({ ...turn, hearing: withoutDanger(raised) });
  return listener.asHeard?.asAnswered(understood, turn, withoutIt) ?? understood;
}

function turnOf(given: Pick<Turn, 'text' | 'tokens' | 'hearing' | 'listener'>): Turn {
  const { tokens, hearing, listener } = given;
  const { lexicon } = listener;
  return {
    ...given,
    clauses: cutClauses(tokens, lexicon),
    heard:
      tokens.length > mostTerms
        ? hearMost(tokens, lexicon, mostTerms)
        : hearTokens(tokens, lexicon),
    literal: hear(lexicon.reader.literally(tokens).slice(0, mostTerms), lexicon.vocabulary),
    inHand: hearing.check === null ? undefined : lexicon.checks.get(hearing.check),
  };
}

/** That it starts, where words that tell nothing beside that are left out: "never mind, it started lol". */
function readStarted(turn: Turn): Understood | undefined {
  const { tokens, hearing, listener } = turn;
  const { exclaims = [], untried = [] } = listener.lexicon.words;
  if (!hearing.interrupts.includes(startsNow)) return undefined;
  const rest = withoutPhrases(tokens, [...exclaims, ...untried]);
  if (rest.length === tokens.length || isBlank(rest)) return undefined;
  const understood = readInterrupt(
    turnOf({ ...turn, tokens: rest, hearing: { ...hearing, interrupts: [startsNow] } }),
  );
  return understood?.type === 'input' && understood.talk === startsNow ? understood : undefined;
}

/** The danger that only a saying seems to tell: "it costs an arm and a leg". */
function dangerOfSaying(
  understood: Understood,
  given: Pick<Turn, 'text' | 'tokens' | 'hearing' | 'listener'>,
): string | undefined {
  const [danger] = dangersIn(understood);
  if (danger === undefined) return undefined;
  const { sayings = [] } = given.listener.lexicon.words;
  const tokens = withoutPhrases(given.tokens, sayings);
  if (tokens.length === given.tokens.length) return undefined;
  return dangersIn(understandTokens({ ...given, tokens })).includes(danger) ? undefined : danger;
}

/** The dangers that are raised, or asked about. */
export function dangersIn(understood: Understood): readonly string[] {
  const found =
    understood.type === 'input'
      ? [...understood.inputs.filter(({ type }) => type === 'interrupt'), understood.doubted]
      : understood.type === 'offers'
        ? understood.offers
        : [];
  return found.flatMap((one) =>
    one !== undefined && 'interrupt' in one && one.interrupt !== startsNow ? [one.interrupt] : [],
  );
}

/** What the first way of understanding that fits makes of a text. */
function firstUnderstood(turn: Turn): Understood {
  for (const read of readings) {
    const understood = read(turn);
    if (understood !== undefined)
      return keepingAnswers(withTold(understood, turn), turn) ?? notUnderstood(turn);
  }
  return notUnderstood(turn);
}

/** What was understood, with what is told beside it. */
function withTold(understood: Understood, turn: Turn): Understood {
  if (understood.type !== 'input') return understood;
  const { asHeard } = turn.listener;
  const inputs = withAnswers(understood.inputs, (answers) => {
    const told = withOwnFuel(asHeard?.withMore(answers, turn) ?? answers, turn);
    return asHeard?.withoutDoubtful(told, turn) ?? told;
  });
  return inputs.length === 0 ? notUnderstood(turn) : { ...understood, inputs };
}

/** The ways of understanding, the first that fits is taken. */
const readings: readonly Reading[] = [
  readPerhaps,
  readExact,
  readWorkDone,
  readInterrupt,
  readStarted,
  readFalseAlarm,
  readAwaited,
  readWhich,
  readDay,
  readOptionKeys,
  readCorrection,
  readLanguage,
  readPrice,
  readNothing,
  readTalk,
  readMeter,
  readContext,
  readSureTalk,
  readPutRight,
  readFigures,
  readEither,
  readSeveral,
  readBoth,
  readOpeningTalk,
  readChoice,
  readUneasy,
  readLooseTalk,
  readClose,
  readVolunteered,
];

/** So many terms at most ask what it costs. */
const mostOfPrice = 8;

/** "What's this going to cost me": nothing that is asked, and no talk that can be answered. */
function readPrice(turn: Turn): Understood | undefined {
  const { tokens, clauses, heard, listener } = turn;
  const { price = [] } = listener.lexicon.words;
  const isFigure = tokens.some(({ kind }) => kind === 'number');
  if (isFigure || clauses.length > 1 || heard.terms.length > mostOfPrice) return undefined;
  return hasWord(tokens, price) ? notUnderstood(turn) : undefined;
}

function notUnderstood(turn: Turn): Understood {
  const { hearing, inHand } = turn;
  const codes = {
    confirm: 'not-confirmed',
    wait: 'waiting',
    resume: 'not-over',
    nothing: 'closed',
    choice: 'unknown-choice',
    reading: 'not-a-number',
    date: noDay(turn),
    work: 'not-done',
  } as const;
  if (hearing.awaiting !== 'answer') return unclear(turn, codes[hearing.awaiting]);
  return unclear(turn, inHand === undefined ? 'not-understood' : codes[inHand.check.form.kind]);
}
