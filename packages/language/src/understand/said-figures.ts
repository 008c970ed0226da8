import type { Input } from '@keyturn/core';
import { findPhrase, hearTokens } from '../typed/heard.ts';
import type { Terms } from '../typed/terms.ts';
import { volunteered } from './volunteered.ts';
import { cutClauses } from './talk.ts';
import { spellNumbers } from '../numbers/numbers.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { onceFor } from '../once.ts';
import { isAlike } from '../numbers/unit.ts';
import type { LineResult } from '../readings/line-placing.ts';
import { leftOpen } from '../readings/one-of-figures.ts';
import { readLabel, readStandard } from '../readings/label.ts';
import { endsWithPhrase, hasPhrase, phraseAt, textOf } from '../readings/word-run.ts';
import { figureWordsOf } from '../words/words.ts';
import type { Token } from '../typed/token.ts';
import { readLine } from '../readings/readings-line.ts';
import { readTokens } from '../typed/read-tokens.ts';
import { readChoice, readClose } from './said-choice.ts';
import { readEither } from './said-either.ts';
import { readSeveral, readVolunteered, readWordsBeside } from './said-unasked.ts';
import { type Turn, cut, input, isAsked, optionsInHand, possibleOf, unclear } from './turn.ts';
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

/** True where the text names what has 24 V alone: "24.8, it's a lorry", "two batteries, 24.8". */
function speaksOf24({ heard, tokens, listener: { lexicon } }: Turn): boolean {
  const { pair } = figureWordsOf(lexicon.words);
  return hasPhrase(tokens, pair) || namesOf24(lexicon).some((name) => findPhrase(heard, name) >= 0);
}

/** What a 24 V vehicle is called and a 12 V one is not: the "lorry" of "24 V lorry". */
const namesOf24 = onceFor(({ statements, reader, words }: Lexicon): readonly Terms[] => {
  const saidOf = (volts: number): readonly Terms[] =>
    statements.flatMap(({ set, said }) => (set['vehicle.nominal'] === volts ? said : []));
  const isFigure = (term: string): boolean => /^\d+$/.test(term);
  const units = new Set((words.units['V'] ?? []).flatMap((unit) => reader.fromText(unit)));
  const plain = new Set(saidOf(12).flat());
  return saidOf(24)
    .filter((phrase) => phrase.some(isFigure))
    .map((phrase) => phrase.filter((term) => !isFigure(term) && !units.has(term)))
    .filter((name) => name.length > 0 && !name.some((term) => plain.has(term)));
});

/** Readings: of the check in hand, of others that are named, or a correction of earlier ones. */
export function readFigures(turn: Turn): Understood | undefined {
  if (isUnread(turn)) return unclear(turn, 'not-a-number');
  const label = readLabel(
    spellNumbers(turn.tokens, turn.listener.lexicon.numbers),
    lineContext(turn, turn.inHand),
  );
  if (label === undefined) return readWithStandard(turn);
  const told: Input = { type: 'context', set: label.set };
  const hasMore = label.rest.some(({ kind }) => kind === 'number');
  const understood = hasMore ? readReadings({ ...turn, tokens: label.rest }) : input([]);
  return understood?.type === 'input'
    ? input([told, ...understood.inputs], understood.talk)
    : understood;
}

/** Readings, and the standard of the label behind its rating where it is asked for as well. */
function readWithStandard(turn: Turn): Understood | undefined {
  const tokens = spellNumbers(turn.tokens, turn.listener.lexicon.numbers);
  const standard = readStandard(tokens, lineContext(turn, turn.inHand));
  if (standard === undefined) return readReadings(turn);
  const understood = readReadings({ ...turn, tokens: standard.rest });
  if (understood?.type !== 'input') return understood;
  const inputs = understood.inputs.map((one): Input => {
    const isOf = one.type === 'answers' && one.answers.some(({ check }) => check === standard.of);
    if (!isOf) return one;
    const others = one.answers.filter(({ check }) => check !== standard.answer.check);
    return { ...one, answers: [...others, standard.answer] };
  });
  return { ...understood, inputs };
}

function readReadings(turn: Turn): Understood | undefined {
  const { hearing, listener } = turn;
  const plain = readFigureLine(turn, hearing.nominal);
  // A figure that fits no other vehicle than the lorry that is spoken of is one of 24 V.
  const isAt24 = hearing.nominal === 12 && plain.type !== 'readings' && speaksOf24(turn);
  const line = isAt24 ? readFigureLine(turn, 24) : plain;
  if (line.type === 'none') return readOneUnit(turn);
  if (line.type === 'doubtful') return isAboutWords(turn) ? undefined : ofDoubt(turn, line);
  // "Coil fault on cylinder two" is an answer in words, and no reading of a coil.
  const isInWords = turn.clauses.length < 2 || onlyNumbers(turn);
  if (line.type === 'readings' && isInWords && isAboutWords(turn)) return readChoice(turn);
  if (line.type === 'readings') {
    if (!isOfEarlier(line, hearing)) {
      const told = readWordsBeside(turn, spellNumbers(turn.tokens, listener.lexicon.numbers));
      const beside = told.filter((one) => !line.readings.some(({ check }) => check === one.check));
      const given: Input = { type: 'answers', answers: [...line.readings, ...beside] };
      const inputs: readonly Input[] = isAt24
        ? [{ type: 'context', set: { 'vehicle.nominal': 24 } }, given]
        : [given];
      return { type: 'input', inputs };
    }
    const again = readLine(turn.tokens, lineContext(turn, lastReading(turn)));
    const corrected = again.type === 'readings' ? again.readings : line.readings;
    return input([{ type: 'correction', answers: corrected }], 'correction');
  }
  // A figure that belongs to nothing, while a caution waits: it was meant for the question after.
  if (hearing.awaiting === 'confirm') return unclear(turn, 'not-confirmed');
  // At a question answered in words a figure may be part of the words: "3 clicks".
  const isWords = optionsInHand(turn)?.check.form.kind === 'choice';
  const chosen = isWords
    ? (readEither(turn) ?? readSeveral(turn) ?? readChoice(turn) ?? readClose(turn))
    : tellsUnasked(turn, line);
  // One figure that is no reading is no answer either, and is said to be none.
  if (isWords && chosen === undefined && line.figures < 2) return undefined;
  return chosen ?? ofLine(turn, line);
}

/** True where a reading is in hand and the meter shows none: "it says OL", "nothing on the display". */
function isUnread({ tokens, inHand, listener }: Turn): boolean {
  const { lexicon } = listener;
  return (
    inHand?.check.form.kind === 'reading' &&
    !spellNumbers(tokens, lexicon.numbers).some(({ kind }) => kind === 'number') &&
    hasPhrase(tokens, figureWordsOf(lexicon.words).unread)
  );
}

/** What a first message tells in words, where its figures are no reading: "parked for six weeks". */
function tellsUnasked(
  turn: Turn,
  line: Extract<LineResult, { type: 'unclear' }>,
): Understood | undefined {
  if (turn.inHand !== undefined || line.code !== 'which-check' || hasMeterUnit(turn))
    return undefined;
  // "It reads 12.4" tells no more than the figure.
  const { besideFigures } = turn.listener.lexicon.words;
  if (turn.tokens.every((one) => one.kind !== 'word' || besideFigures.includes(one.text)))
    return undefined;
  const told = readVolunteered(turn);
  return told?.type === 'input' ? told : undefined;
}

/**
 * A span of time that is named without its number is one, and so is a volt that two are apart:
 * "fitted it a year ago", "سنة", "a whole volt between them".
 */
function readOneUnit({ tokens, inHand, listener }: Turn): Understood | undefined {
  const form = inHand?.check.form;
  if (inHand === undefined || form?.kind !== 'reading') return undefined;
  if (form.unit !== 'a' && form.expect !== 'battery.halves') return undefined;
  const { lexicon } = listener;
  const { words, readUnit } = lexicon;
  const { vehicle, battery } = figureWordsOf(words);
  // "The car was bought a month ago".
  if (form.unit === 'a' && hasPhrase(tokens, vehicle) && !hasPhrase(tokens, battery))
    return undefined;
  if (hasPhrase(tokens, words.vague) || hasBound(tokens, words)) return undefined;
  const spans = tokens.flatMap((_, at) => {
    const unit = readUnit(tokens, at);
    return unit !== undefined && isAlike(unit.code, form.unit) ? [{ ...unit, at }] : [];
  });
  const { oneBefore, oneBehind } = figureWordsOf(words);
  const isOne = ({ at, length }: (typeof spans)[number]): boolean =>
    endsWithPhrase(tokens, at, [...words.articles, ...oneBefore]) ||
    phraseAt(tokens, at + length, oneBehind) > 0;
  const ones = spans.filter(isOne);
  const [span, more] = ones.length > 0 ? ones : spans;
  if (span === undefined || more !== undefined) return undefined;
  const said = tokens.filter(
    (token) => token.kind !== 'mark' && !(token.kind === 'word' && isSmall(token.text, lexicon)),
  );
  if (ones.length === 0 && readUnit(said, 0)?.length !== said.length) return undefined;
  const value = { value: 1, unit: span.code, resolution: 1 };
  return input([{ type: 'answers', answers: [{ check: inHand.id, value }] }]);
}

/** True for less than something, or more: "just over" is close to it. */
function hasBound(tokens: readonly Token[], { boundsOnly, nearly }: Lexicon['words']): boolean {
  return tokens.some(
    (_, at) => phraseAt(tokens, at, boundsOnly) > 0 && !endsWithPhrase(tokens, at, nearly),
  );
}

function isSmall(word: string, { words }: Lexicon): boolean {
  return (
    words.fillers.includes(word) || words.articles.includes(word) || words.cardinals[word] === 1
  );
}

/** Units of a meter, which nothing that is told in words has. */
const electrical: ReadonlySet<string | undefined> = new Set(['V', 'mV', 'A']);

/**
 * True where a question answered in words is in hand, to which a figure may belong: "3 clicks". One
 * with a unit is a reading all the same: "rest 124 V".
 */
function isAboutWords(turn: Turn): boolean {
  if (hasMeterUnit(turn)) return false;
  return optionsInHand(turn)?.check.form.kind === 'choice' && readChoice(turn) !== undefined;
}

/** True where the figures of a text are none but numbers of things: "cylinder 3". */
function onlyNumbers({ tokens, listener: { lexicon } }: Turn): boolean {
  const { asideBefore } = figureWordsOf(lexicon.words);
  return spellNumbers(tokens, lexicon.numbers).every(
    (token, at, all) =>
      token.kind !== 'number' ||
      (/^\d+$/.test(token.digits) && endsWithPhrase(all, at, asideBefore)),
  );
}

function hasMeterUnit({ tokens, listener }: Turn): boolean {
  return tokens.some(
    ({ kind }, at) =>
      kind === 'number' && electrical.has(listener.lexicon.readUnit(tokens, at + 1)?.code),
  );
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

/** The line of readings; where words beside it are in the way, the clauses with figures alone. */
function readFigureLine(turn: Turn, nominal: 12 | 24): LineResult {
  const { lexicon } = turn.listener;
  const context = { ...lineContext(turn, isAsked(turn) ? turn.inHand : undefined), nominal };
  const line = readLine(withoutTold(turn), context);
  if (line.type !== 'unclear') return line;
  // What asks which of two holds may stand behind a comma.
  if (leftOpen(spellNumbers(turn.tokens, lexicon.numbers), context) !== undefined) return line;
  // A bound is none the less one for what stands behind a comma.
  if (line.code === 'not-exact') return line;
  const clauses = cutClauses(spellNumbers(turn.tokens, lexicon.numbers), lexicon);
  const withFigures = clauses.filter((clause) => clause.some(({ kind }) => kind === 'number'));
  if (withFigures.length === clauses.length) return line;
  const comma = { kind: 'mark', text: ',' } as const;
  const alone = readLine(
    withFigures.flatMap((clause) => [...clause, comma]),
    context,
  );
  return alone.type === 'readings' ? alone : line;
}

/**
 * The tokens of a first message, where the figure has a word of its own, without the clauses that
 * tell an answer: "slow when cranking, battery measured at 12.65" is no voltage while cranking.
 */
function withoutTold(turn: Turn): readonly Token[] {
  const { tokens, listener, inHand } = turn;
  const { lexicon } = listener;
  if (inHand !== undefined) return tokens;
  const clauses = cutClauses(spellNumbers(tokens, lexicon.numbers), lexicon);
  const hasFigure = (clause: readonly Token[]): boolean =>
    clause.some(({ kind }) => kind === 'number');
  const isTold = (clause: readonly Token[]): boolean =>
    volunteered(hearTokens(clause, lexicon), turn).length === 1;
  const beside = clauses.filter((clause) => !hasFigure(clause));
  const withFigures = clauses.filter(hasFigure);
  if (withFigures.length !== 1 || !withFigures.some((clause) => namesMeasured(clause, lexicon)))
    return tokens;
  const told = beside.filter(isTold);
  if (told.length === 0) return tokens;
  const comma = { kind: 'mark', text: ',' } as const;
  return clauses.filter((clause) => !told.includes(clause)).flatMap((clause) => [...clause, comma]);
}

/** True where a clause names a thing that is measured: the battery. */
function namesMeasured(clause: readonly Token[], { checks, reader }: Lexicon): boolean {
  const terms = reader.fromTokens(clause);
  return [...checks.values()].some(
    ({ check, topic }) => check.form.kind === 'reading' && terms.some((term) => topic.has(term)),
  );
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
  const pieces = line.pieces.map((piece) => quoted(piece, turn));
  const given = cut([...new Set(pieces)].map((piece) => `“${piece}”`).join(', '));
  const isNames = line.code === 'which-check';
  const possible = isNames ? line.names.slice(0, mostNames) : possibleOf(turn);
  const said = {
    type: 'unclear',
    code: line.code,
    given: isNames ? given : cut([...new Set(pieces)].join(', ')),
    possible,
  } as const;
  return talk === undefined ? said : { ...said, talk };
}

/** The words of a text that were read as this piece, as they were written; else the whole of it. */
function quoted(piece: string, { text, listener }: Turn): string {
  const written = text.trim().split(/\s+/);
  const spelled = written.flatMap((word, at) =>
    readTokens(word, listener.lexicon.words).map((token) => ({ said: textOf([token]), at })),
  );
  const wanted = piece.split(' ');
  const start = spelled.findIndex((_, from) =>
    wanted.every((said, index) => spelled[from + index]?.said === said),
  );
  const [first, last] = [spelled[start], spelled[start + wanted.length - 1]];
  if (first === undefined || last === undefined) return text.trim();
  return written.slice(first.at, last.at + 1).join(' ');
}

/** A list longer than this is no help. */
const mostNames = 8;
