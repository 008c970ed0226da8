/**
 * Readings told beside the one that is asked: by their own unit ("10.4 and 145 amps on the clamp"),
 * or by the moment at which they were read ("12.6, drops to 7.9 when she holds the key").
 */
import { judgeFigure } from '@keyturn/core';
import { isAlike } from '../numbers/unit.ts';
import type { Token } from '../typed/token.ts';
import { onceFor } from '../once.ts';
import type { CheckPhrases, Lexicon } from '../understand/lexicon.ts';
import { figureWordsOf } from '../words/words.ts';
import { type SaidReading, judgeReading } from './doubtful.ts';
import { type LineContext, type SaidFigure, findFigures } from './line-figures.ts';
import { namedChecks } from './line-pieces.ts';
import { isSpokenOf, isTooMuchLost, unitOf } from './line-placing.ts';
import { mostAtRest } from './told-aside.ts';
import { hasPhrase, hasStem, withoutPhrases } from './word-run.ts';
import { startsOfEach, wordsOfEach } from './words-of-each.ts';

/** With more figures than this nothing is told apart. */
const mostFigures = 6;

/** What is told beside, and the tokens that tell the rest. */
export interface ToldBeside {
  readonly told: readonly SaidReading[];
  readonly kept: readonly Token[];
}

/**
 * Takes out the figures of another unit than the one asked for. Each is taken where it is plain what
 * it was read of; where it is not it is left out.
 */
export function withoutBeside(tokens: readonly Token[], context: LineContext): ToldBeside {
  const { inHand, lexicon } = context;
  const figures = findFigures(tokens, context);
  const nothing = { told: [], kept: tokens };
  if (inHand === undefined || figures.length < 2 || figures.length > mostFigures) return nothing;
  const units = figures.map((figure) => unitMeant(figure, figures, { inHand, tokens }));
  const isOwn = units.map((unit) => isAlike(unit, unitOf(inHand)));
  if (!isOwn.includes(true) || !isOwn.includes(false)) return nothing;
  const how = { telling: joinedIn(tokens, lexicon), words: lexicon.words };
  const starts = startsOfEach(figures, tokens, how);
  const said = wordsOfEach(figures, tokens, how);
  const told = figures.flatMap((figure, index): SaidReading[] => {
    if (isOwn[index] === true) return [];
    const given = { ...figure, unit: units[index] };
    const reading = readingOf(given, said[index] ?? [], { asked: inHand, context });
    return reading === undefined ? [] : [reading];
  });
  // On a line of several readings what is not plain is placed by what is left of the others.
  const others = isOwn.filter((own) => !own).length;
  if (figures.length - others > 1 && told.length < others) return nothing;
  const kept = figures.flatMap((_, index) =>
    isOwn[index] === true
      ? [comma, ...withoutEnd(tokens.slice(starts[index], starts[index + 1]), lexicon)]
      : [],
  );
  return { told, kept: kept.slice(1) };
}

/** Words with the "and" written on to them, and without it: `والأرضي`. */
function joinedIn(tokens: readonly Token[], { reader }: Lexicon): readonly string[] {
  return tokens.flatMap((token) => {
    if (token.kind !== 'word') return [];
    const bare = reader.unjoined(token.text);
    return bare === token.text ? [] : [token.text, bare];
  });
}

/** The tokens without what leads on to another figure: "0,35 a" 410 amperios, "9 con" 180 A. */
function withoutEnd(tokens: readonly Token[], { words }: Lexicon): readonly Token[] {
  const leading = [...words.articles, ...words.point];
  const last = tokens.at(-1);
  return last?.kind === 'word' && leading.includes(last.text) ? tokens.slice(0, -1) : tokens;
}

const comma: Token = { kind: 'mark', text: ',' };

/** The unit of a figure: its own, else the one asked for; beside amperes decimals are volts. */
function unitMeant(
  { unit, decimals, value, end }: SaidFigure,
  figures: readonly SaidFigure[],
  { inHand, tokens }: { readonly inHand: CheckPhrases; readonly tokens: readonly Token[] },
): string {
  const asked = unitOf(inHand);
  if (unit !== undefined) return unit;
  // "8,7 avec 290 a qui passent": more than any volts, where the a is a word as well.
  const behind = tokens[end];
  const isAmperes = behind?.kind === 'word' && behind.text === 'a' && value > mostVolts;
  if (asked === 'V' && isAmperes) return 'A';
  return asked === 'A' && decimals > 0 && figures.some((one) => one.unit === 'A') ? 'V' : asked;
}

interface Asked {
  /** The reading beside which the figure is told. */
  readonly asked: CheckPhrases;
  readonly context: LineContext;
}

/**
 * The reading that a figure plainly is: the one that its words name, the only one with its unit, or
 * the one that is read at the same moment.
 */
function readingOf(
  figure: SaidFigure,
  words: readonly Token[],
  { asked, context }: Asked,
): SaidReading | undefined {
  const { lexicon, nominal } = context;
  const { value, unit = '' } = figure;
  const fitting = [...lexicon.checks.values()].filter(({ id, check: { form, like } }) => {
    if (id === asked.id || like !== undefined || form.kind !== 'reading') return false;
    if (!isAlike(unit, form.unit) || (form.range === 'drop' && isTooMuchLost(figure))) return false;
    return judgeFigure({ value, unit }, form, nominal).type === 'plausible';
  });
  const named = namedChecks(words, { ...context, inHand: undefined });
  const [one] =
    [
      fitting.filter((entry) => named.includes(entry)),
      fitting,
      fitting.filter((entry) => isOfTurning(entry) && asked.check.does.includes('starter')),
    ].find((those) => those.length === 1) ?? [];
  if (one === undefined) return undefined;
  if (unitOf(one) === 'a' && !isAgeOf(one, figure, { words, context })) return undefined;
  const reading = judgeReading(one, figure, context);
  return 'type' in reading ? undefined : reading;
}

/** True for what the battery gives while the starter turns. */
function isOfTurning({ check: { form, does } }: CheckPhrases): boolean {
  return form.kind === 'reading' && ofBattery.includes(form.range) && does.includes('starter');
}

const ofBattery: readonly string[] = ['battery-voltage', 'current'];

/** An age is of the battery unless it is the vehicle's, or how long that stood. */
function isAgeOf(
  age: CheckPhrases,
  { unit }: SaidFigure,
  { words, context }: { readonly words: readonly Token[]; readonly context: LineContext },
): boolean {
  const { vehicle, standing } = figureWordsOf(context.lexicon.words);
  if (isSpokenOf(age, { words }, context)) return true;
  return unit === 'a' && !hasPhrase(words, vehicle) && !hasStem(words, standing);
}

/** V. A voltage falls by so much at least when the starter turns. */
const leastFall = 0.3;

/**
 * The voltage at rest and the lower one while the starter turns, whichever of them was asked, with
 * what else is plainly told; undefined where the text tells no such two.
 */
export function readAtRestAndTurning(
  tokens: readonly Token[],
  context: LineContext,
): readonly SaidReading[] | undefined {
  const { lexicon, inHand } = context;
  const { rest, turning } = voltagesOf(lexicon);
  if (rest === undefined || turning === undefined) return undefined;
  if (inHand !== undefined && inHand !== rest && inHand !== turning) return undefined;
  const figures = findFigures(tokens, context);
  if (figures.length < 2 || figures.length > mostFigures) return undefined;
  const { cranking, past, allOff, again } = figureWordsOf(lexicon.words);
  const isNamed = (words: readonly Token[], entry: CheckPhrases): boolean =>
    namedChecks(words, { ...context, inHand: undefined }).includes(entry);
  // "12.6 to start with" is no start.
  const isOfStart = (words: readonly Token[]): boolean =>
    hasStem(withoutPhrases(words, past), cranking) || isNamed(words, turning);
  const lead = tokens.slice(0, figures[0]?.start);
  const leads = isOfStart(lead) || isNamed(lead, rest);
  const telling = leads ? lead.flatMap((one) => (one.kind === 'word' ? [one.text] : [])) : [];
  const said = wordsOfEach(figures, tokens, { telling, words: lexicon.words });
  const volts = figures.flatMap((figure, index) => {
    const { unit = 'V', value } = figure;
    const words = said[index] ?? [];
    return unit === 'V' && value < mostVolts ? [{ figure, words }] : [];
  });
  const [high, low, more] = volts.toSorted((one, other) => other.figure.value - one.figure.value);
  if (high === undefined || low === undefined || more !== undefined) return undefined;
  // What is more is charged.
  if (high.figure.value > (mostAtRest * context.nominal) / 12) return undefined;
  // Where it fell from is no answer of its own, where that was not asked.
  const isNamedRest = isNamed(high.words, rest) || hasPhrase(high.words, allOff);
  if (high.figure.value - low.figure.value < (isNamedRest ? 0 : leastFall)) return undefined;
  // What was asked for needs no word of its own beside the other.
  const isTurningAsked = inHand === turning && isNamedRest;
  if (!(isOfStart(low.words) || isTurningAsked) || isOfStart(high.words)) return undefined;
  const isRest = isNamedRest || hasPhrase(high.words, past);
  if (inHand === turning && !isRest) {
    // "It said 11, and when he turned the key 8.5".
    const isBefore = high.figure.start < low.figure.start;
    const isOpen = hasPhrase(tokens, again) || volts.length < figures.length;
    const only = judgeReading(turning, low.figure, context);
    return isBefore && !isOpen && !('type' in only) ? [only] : undefined;
  }
  // Spanners of 10 and 13 are no voltages.
  const isVoltage = ({ decimals, unit }: SaidFigure): boolean => decimals > 0 || unit !== undefined;
  const isPlain = isRest || (isVoltage(high.figure) && isVoltage(low.figure));
  if (inHand === undefined && !isPlain) return undefined;
  const pair = [
    ...(inHand === turning && !isNamedRest ? [] : [judgeReading(rest, high.figure, context)]),
    judgeReading(turning, low.figure, context),
  ];
  const readings = pair.filter((one): one is SaidReading => !('type' in one));
  if (readings.length < pair.length) return undefined;
  const others = figures.flatMap((figure, index): readonly (SaidReading | undefined)[] => {
    if (figure === high.figure || figure === low.figure) return [];
    if (figure.unit === undefined) return [undefined];
    return [readingOf(figure, said[index] ?? [], { asked: turning, context })];
  });
  const told = others.filter((one) => one !== undefined);
  return told.length < others.length ? undefined : [...readings, ...told];
}

/** V. No battery has more. */
const mostVolts = 36;

/** The battery's voltages with nothing done to it, and while the starter turns. */
const voltagesOf = onceFor(({ checks }: Lexicon) => {
  const voltages = [...checks.values()].filter(
    ({ check: { form } }) => form.kind === 'reading' && form.range === 'battery-voltage',
  );
  return {
    rest: voltages.find(({ check }) => check.does.length === 0),
    turning: voltages.find(({ check }) => check.does.includes('starter')),
  };
});
