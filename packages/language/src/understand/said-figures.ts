import { spellNumbers } from '../numbers/numbers.ts';
import type { CheckPhrases } from './lexicon.ts';
import type { LineResult } from '../readings/line-placing.ts';
import { readLine } from '../readings/readings-line.ts';
import { readChoice, readClose } from './said-choice.ts';
import { readWordsBeside } from './said-unasked.ts';
import {
  type Turn,
  answers,
  cut,
  input,
  isAsked,
  optionsInHand,
  possibleOf,
  unclear,
} from './turn.ts';
import type { HeardTalk, Hearing, Understood } from './understood.ts';

/** The reading that "not 12.5, 12.1" is about: the last one given, else the one in hand. */
export function lastReading({ hearing, listener, inHand }: Turn): CheckPhrases | undefined {
  const id = hearing.answered.findLast(
    (check) => listener.lexicon.checks.get(check)?.check.form.kind === 'reading',
  );
  return id === undefined ? inHand : listener.lexicon.checks.get(id);
}

/** What a line of readings is read against. */
export function lineContext(
  turn: Turn,
  inHand: CheckPhrases | undefined,
): Parameters<typeof readLine>[1] {
  const { lexicon, unitHere } = turn.listener;
  const { kit, nominal } = turn.hearing;
  const reading = inHand?.check.form.kind === 'reading' ? inHand : undefined;
  return { lexicon, inHand: reading, kit, nominal, unitHere };
}

/** Readings: of the check in hand, of others that are named, or a correction of earlier ones. */
export function readFigures(turn: Turn): Understood | undefined {
  const { hearing, inHand, listener } = turn;
  const line = readLine(turn.tokens, lineContext(turn, isAsked(turn) ? inHand : undefined));
  if (line.type === 'none') return undefined;
  if (line.type === 'doubtful') return isAboutWords(turn) ? undefined : ofDoubt(turn, line);
  if (line.type === 'readings') {
    if (!isOfEarlier(line, hearing)) {
      const beside = readWordsBeside(turn, spellNumbers(turn.tokens, listener.lexicon.numbers));
      return answers([...line.readings, ...beside]);
    }
    const again = readLine(turn.tokens, lineContext(turn, lastReading(turn)));
    const corrected = again.type === 'readings' ? again.readings : line.readings;
    return input([{ type: 'correction', answers: corrected }], 'correction');
  }
  // A figure that belongs to nothing, while a caution waits: it was meant for the question after.
  if (hearing.awaiting === 'confirm') return unclear(turn, 'not-confirmed');
  // At a question answered in words a figure may be part of the words: "3 clicks".
  const isWords = optionsInHand(turn)?.check.form.kind === 'choice';
  const chosen = isWords ? (readChoice(turn) ?? readClose(turn)) : undefined;
  // One figure that is no reading is no answer either, and is said to be none.
  if (isWords && chosen === undefined && line.figures < 2) return undefined;
  return chosen ?? ofLine(turn, line);
}

/** True where a question answered in words is in hand, to which a figure may belong: "3 clicks". */
function isAboutWords(turn: Turn): boolean {
  return optionsInHand(turn)?.check.form.kind === 'choice' && readChoice(turn) !== undefined;
}

/** Questions figures that are no readings as they stand, and offers what may be meant. */
export function ofDoubt(
  { listener }: Turn,
  { readings, doubt }: Extract<LineResult, { type: 'doubtful' }>,
): Understood {
  const offers = readings.map(({ check, value }) => ({
    check,
    value,
    label: listener.formatQuantity(value),
  }));
  return { type: 'offers', offers, ...(doubt === undefined ? {} : { doubt }) };
}

/**
 * Whether a line that speaks of earlier answers corrects one: a denied figure always does; a "was"
 * where that check has been answered.
 */
function isOfEarlier(line: Extract<LineResult, { type: 'readings' }>, hearing: Hearing): boolean {
  const { answered } = hearing;
  if (line.earlier === undefined) return false;
  if (line.earlier === 'denied') return answered.length > 0;
  return line.readings.some((one) => answered.includes(one.check));
}

/** Asks back about a line of which nothing was taken. */
export function ofLine(
  turn: Turn,
  line: Extract<LineResult, { type: 'unclear' }>,
  talk?: HeardTalk,
): Understood {
  const given = cut(line.pieces.map((piece) => `“${piece}”`).join(', '));
  const isNames = line.code === 'which-check';
  const possible = isNames ? line.names.slice(0, mostNames) : possibleOf(turn);
  const said = {
    type: 'unclear',
    code: line.code,
    given: isNames ? given : cut(line.pieces.join(', ')),
    possible,
  } as const;
  return talk === undefined ? said : { ...said, talk };
}

/** A list longer than this is no help. */
const mostNames = 8;
