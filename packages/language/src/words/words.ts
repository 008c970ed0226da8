import type { Token } from '../typed/token.ts';

/** Talk that is understood at any moment, beside the interrupts of the flow. */
export type TalkWord =
  | 'yes'
  | 'no'
  | 'done'
  | 'over'
  | 'false-alarm'
  | 'dont-know'
  | 'cannot'
  | 'why'
  | 'numbers'
  | 'back'
  | 'repeat'
  | 'person'
  | 'stop'
  | 'language';

/** Puts words that are typed in Latin letters into the letters of the language. */
export type LatinReader = (tokens: readonly Token[]) => readonly Token[];

/** How a language of other letters is typed in Latin ones. */
export interface LatinLetters {
  /** Digits that stand for letters, with the letter or its Latin one: the `3` of `3andi`. */
  readonly digits: Readonly<Record<string, string>>;
  /** Latin letters, one or two, with those that they stand for, likeliest first; `-` is none. */
  readonly reads: Readonly<Record<string, string>>;
  /** Letters that are left out in the one or the other. */
  readonly silent: string;
  /** Words that are too short to be told by their letters; nothing for the article. */
  readonly little: Readonly<Record<string, string>>;
}

/** How a language writes words together or in two ways, so far as understanding needs it. */
export interface Spelling {
  /** True where an apostrophe parts two words: the `l’` of `l’allumage`. Else it is left out. */
  readonly elides?: boolean;
  /** Words that are typed in Latin letters, by their consonants: `khms` for `khamsa`. */
  readonly latin?: Readonly<Record<string, string>>;
  /** Letters that are written in two ways, and the way that is kept: `ae` for `ä` becomes `a`. */
  readonly letters?: readonly (readonly [typed: string, kept: string])[];
  /** Digits that stand for letters in a text in Latin ones: the `3` of `3andi`. */
  readonly digits?: LatinLetters['digits'];
  /** Little words that are written on to the word behind them, longest first: `وال`, `ب`. */
  readonly attached?: readonly string[];
  /** Article and prepositions that are written on to a number: the `ل` of `لستة`, to six. */
  readonly beforeNumbers?: readonly string[];
  /** Negators that stand behind what they deny where nothing follows them: `klickt nicht`. */
  readonly denyBefore?: readonly string[];
  /** The word for its sign, where that is a little word as well: the Polish `a`, but. */
  readonly ampere?: string;
  /** Denies what stands before it at the end of a clause, and else nothing: `vide non`. */
  readonly refusals?: readonly string[];
  /** What is written before and behind a word to deny it: `ما` … `ش`. */
  readonly around?: readonly (readonly [before: string, behind: string])[];
  /** A word and a negator behind it that denies nothing: `بعد ما`, after. */
  readonly denyNothing?: readonly string[];
  /** True where words are written together as one: `Batterieklemme`, `einhundertsiebzig`. */
  readonly compounds?: boolean;
  /** Units that are written on to the number before them: `sechsjährig`. */
  readonly unitsBehind?: readonly string[];
  /** Words that say two of something, and the word for one: `شهرين`, two months. */
  readonly twoOf?: Readonly<Record<string, string>>;
  /** The word of a share in tenths: `ثمانية من عشرة`, eight of ten, which is asked back. */
  readonly outOf?: string;
  /** True where sixty and eighty are counted on from to nineteen: `soixante douze`. */
  readonly vigesimal?: boolean;
  /** True where whole number and decimals are joined as others join two numbers: `dwanaście i cztery`. */
  readonly joinsDecimals?: boolean;
  /** True where a unit may stand before its ten: `خمسة وعشرون`, `fünf und zwanzig`. */
  readonly unitsFirst?: boolean;
}

/** Words for a day that is told by how far it lies back. */
interface DayWords {
  /** A phrase, and how many days back it means: `yesterday` 1. */
  readonly back: Readonly<Record<string, number>>;
  /** Days and times of day, which say by themselves when something was: `last night`. */
  readonly times: readonly string[];
  /** The word for a day and for a week, in all its forms. */
  readonly day: readonly string[];
  readonly week: readonly string[];
  /** Stands before or behind so many days or weeks: `ago`. */
  readonly ago: readonly string[];
  /** Says of a week that it is the one before: `last`. */
  readonly last: readonly string[];
  /** Seasons and feasts, of which no day can be told: `winter`. */
  readonly seasons: readonly string[];
  /** Other forms of the days of a week than a calendar has, Sunday 0. */
  readonly weekdays: Readonly<Record<string, number>>;
}

/** What is said about figures: by it the one that is read is told from others beside it. */
export interface FigureWords {
  /** Right before a figure that is no reading: `pin`, `set to`. */
  readonly asideBefore: readonly string[];
  /** Right behind one: `tries`, `euros`, `o clock`. */
  readonly asideBehind: readonly string[];
  /** Beside the size of an engine: `engine`, `petrol`. */
  readonly engine: readonly string[];
  /** Puts the figure behind it in the place of the one before: `no wait`, `I mean`. */
  readonly instead: readonly string[];
  /** What settles which figure is to be taken: "put down". */
  readonly settles: readonly string[];
  /** Says that it was measured more than once, or asks which one holds: `second time`, `which one`. */
  readonly again: readonly string[];
  /** The meter shows now this, now that: `keeps changing`. */
  readonly unsteady: readonly string[];
  /** Of several figures nobody knows which it is: `take your pick`. */
  readonly undecided: readonly string[];
  /** Before two figures of which it was neither: `between`. */
  readonly between: readonly string[];
  /** What a figure was, and what it is: `yesterday`, `now`. */
  readonly past: readonly string[];
  readonly present: readonly string[];
  /** What a figure ought to be: `should be`, `instead of`. */
  readonly expected: readonly string[];
  /** How cold it is by the wind, not by the thermometer: `feels like`. */
  readonly felt: readonly string[];
  /** Before the figure that follows from those before it: `so`. */
  readonly concludes: readonly string[];
  /** A figure became another: `dropped`, `goes`; `from` stands before the former. */
  readonly changes: readonly string[];
  readonly from: readonly string[];
  /** Between what a figure was and what it became: de 12,6 `a` 9,5. */
  readonly onto: readonly string[];
  /** A bound that, behind a change, is where it ended: baja `hasta`. */
  readonly until: readonly string[];
  /** Bounds that, before decimals, say how little it is that was read: `niecałe` 11,8. */
  readonly barely: readonly string[];
  /** Begins what goes on while a figure is read: `while`, `when`. */
  readonly moments: readonly string[];
  /** Before what was over when the figure was read: `after`, `since`. */
  readonly after: readonly string[];
  /** The meter shows nothing that can be read: `OL`, `nothing on the display`. */
  readonly unread: readonly string[];
  /** A thousand of a unit, alone or before its name: `k`, `kilovolt`. */
  readonly thousand: readonly string[];
  /** What the figures are read off: `display`, `meter`. */
  readonly display: readonly string[];
  /** Says that a figure was measured, where something else is told as well: `measured`, `reads`. */
  readonly measured: readonly string[];
  /** Figures of another instrument: `hydrometer`, `specific gravity`. */
  readonly otherMeters: readonly string[];
  /** What the battery's label is called, by which its rating is told: `label`, `rated`. */
  readonly label: readonly string[];
  /** Between what was measured and what it is rated for: 420 `out of` 640. */
  readonly outOf: readonly string[];
  /** Behind a temperature that is not below zero: `above zero`. */
  readonly above: readonly string[];
  /** Takes a fraction from the number before it: `إلا` ربع. */
  readonly less: readonly string[];
  /** Before, or behind, a span of time of which there is one: `من` سنة, rok `temu`. */
  readonly oneBefore: readonly string[];
  readonly oneBehind: readonly string[];
  /** Stems of what says that the starter turns, and of what says that the vehicle stood. */
  readonly cranking: readonly string[];
  readonly standing: readonly string[];
  /** What the vehicle is called, whose age is not the battery's: `car`. */
  readonly vehicle: readonly string[];
  /** What the battery is called beside its own name: `akku`. */
  readonly battery: readonly string[];
  /** The greater of two losses: `worst`. */
  readonly worse: readonly string[];
  /** Before the time of day, of which nothing is read: son `las`. */
  readonly clock: readonly string[];
  /** The one or the other of two clamps: `plus`, `the other`. */
  readonly sides: readonly string[];
  /** How far two figures are apart: `difference`. */
  readonly difference: readonly string[];
  /** The meter's leads were held the other way: `wrong way round`. */
  readonly swapped: readonly string[];
  /** Before a figure that is rounded: `nearly`. */
  readonly roughly: readonly string[];
  /** Beside a whole figure, to say that it is one: twelve volts `flat`. */
  readonly round: readonly string[];
  /** Between what was measured and the volts that a battery is called by: 10.7 `on a` 12 volt one. */
  readonly ratedAt: readonly string[];
  /** Two batteries one behind the other, which make 24 V: `in series`. */
  readonly pair: readonly string[];
  /** Nothing was switched on when a figure was read: `everything off`. */
  readonly allOff: readonly string[];
  /** What a figure does not do, said of the highest that it came to: won't `go` above. */
  readonly climbs: readonly string[];
  /** Once the starter is let go, the voltage is what it was: `back` to 12.3. */
  readonly recovers: readonly string[];
}

const noFigureWords: FigureWords = {
  asideBefore: [],
  asideBehind: [],
  engine: [],
  instead: [],
  settles: [],
  again: [],
  unsteady: [],
  undecided: [],
  between: [],
  past: [],
  present: [],
  expected: [],
  felt: [],
  concludes: [],
  changes: [],
  from: [],
  onto: [],
  until: [],
  barely: [],
  moments: [],
  after: [],
  unread: [],
  thousand: [],
  display: [],
  measured: [],
  otherMeters: [],
  label: [],
  outOf: [],
  above: [],
  less: [],
  oneBefore: [],
  oneBehind: [],
  cranking: [],
  standing: [],
  vehicle: [],
  battery: [],
  worse: [],
  clock: [],
  sides: [],
  difference: [],
  swapped: [],
  roughly: [],
  round: [],
  ratedAt: [],
  pair: [],
  allOff: [],
  climbs: [],
  recovers: [],
};

/** What is said about figures in a language, nothing where it has none of it yet. */
export function figureWordsOf({ figureWords }: Pick<Words, 'figureWords'>): FigureWords {
  return figureWords ?? noFigureWords;
}

/**
 * The words that one language needs for understanding what is typed. Every entry is written as
 * people type it; case, accents and apostrophes do not matter. A phrase is words with spaces.
 */
export interface Words {
  readonly spelling?: Spelling;
  /** What reads a text in Latin letters, given all that is said; a page, for its size, has none. */
  readonly readLatin?: (said: unknown, words: Words) => LatinReader;
  /**
   * Numbers from zero up: `twelve`, `forty`, and those of several words that their parts do not
   * add up to: `quatre vingt`. A number that is no whole one may be among them: `anderthalb`.
   */
  readonly cardinals: Readonly<Record<string, number>>;
  /** Words for nought among decimals only: `oh`. */
  readonly decimalZero: readonly string[];
  /** Words that multiply what stands before them: `hundred`. */
  readonly scales: Readonly<Record<string, number>>;
  /** Words between the whole number and its decimals: `point`. */
  readonly point: readonly string[];
  /** Words that join a fraction or a lower number to a number: `and`. */
  readonly joins: readonly string[];
  /** Words that may stand before a scale, a fraction or a unit and add nothing: `a`. */
  readonly articles: readonly string[];
  /** Small words between a number in words and its unit: `de` of `une trentaine de mois`. */
  readonly partitive?: readonly string[];
  readonly fractions: Readonly<Record<string, number>>;
  readonly minus: readonly string[];
  /** Words behind a figure that put it below zero, the longest first: `below zero`. */
  readonly below?: readonly string[];
  readonly days: DayWords;
  readonly ordinals: Readonly<Record<string, number>>;
  /** What stands between groups of thousands when written in digits. */
  readonly grouping: ',' | '.' | ' ';
  /** UCUM code to the ways in which it is typed. */
  readonly units: Readonly<Record<string, readonly string[]>>;
  /** Words that are a unit only together with the check's own: `degrees`. */
  readonly bareUnits: readonly string[];
  /** Words that give only a bound: `less than`. */
  readonly boundsOnly: readonly string[];
  /** Words before a bound that make of it a figure close by: `just` of `just under`. */
  readonly nearly: readonly string[];
  /** What is said behind a figure for more that nobody has read: `and a bit`, `point something`. */
  readonly vague: readonly string[];
  /** Words that may follow a figure without being a unit. */
  readonly besideFigures: readonly string[];
  /** What is said about figures. */
  readonly figureWords?: FigureWords;
  /** Words that turn round what follows: `not`. */
  readonly negators: readonly string[];
  /** What excepts something behind a denial, with no other words between: the `que` of `je n'ai que`. */
  readonly exceptives?: {
    readonly behind: readonly string[];
    readonly between: readonly string[];
    readonly words: readonly string[];
  };
  /** Words that begin what is said anew where there is no comma: `we` of "nobody hurt we are safe". */
  readonly subjects?: readonly string[];
  /** Says of another thing what was just said: `too`, `the same`. */
  readonly likewise?: readonly string[];
  /** Says that what was asked for was not done, or no longer matters: `by itself`, `forget it`. */
  readonly untried?: readonly string[];
  /** What is exclaimed beside anything: `lol`, `hang on`. */
  readonly exclaims?: readonly string[];
  /** Before the fuel that the vehicle runs on, where another one was put in: `in my`, `instead of`. */
  readonly runsOn?: readonly string[];
  /** Stems of what it costs, which nobody here can say: `price`. */
  readonly price?: readonly string[];
  /** What comes along there swerves for nobody: `train`, `tracks`. */
  readonly rails?: readonly string[];
  /** Words between two things of which only one may be: `or`. */
  readonly alternatives?: readonly string[];
  /** Means "nor" as well, and "or" where somebody does not know which: `ولا`. */
  readonly norOr?: readonly string[];
  /** Each begins one of what comes in turns: `sometimes` it clicks, `sometimes` it cranks. */
  readonly turns?: readonly string[];
  /** Each begins one of what may be: `maybe` it clicks, `maybe` not. */
  readonly perhaps?: readonly string[];
  /** Begins what somebody does not know: no idea `whether`. */
  readonly whether?: readonly string[];
  /** Words at which a negation ends: `but`. */
  readonly clauseBreaks: readonly string[];
  /** Words that carry no meaning of their own, hedges among them: `about`. */
  readonly fillers: readonly string[];
  /** What is said beside a fact and adds nothing to it: `by the way`, `if that helps`. */
  readonly asides?: readonly string[];
  /** Sayings in the words of a danger, which tell none: an arm and a leg, my late father. */
  readonly sayings?: readonly string[];
  /** What is said beside a yes or no and adds nothing: `thank you`, `mate`. */
  readonly courtesies?: readonly string[];
  /** Endings that do not change what a word means here, longest first: `ing`. */
  readonly endings: readonly string[];
  /** Words that may stand before an option's number: `option`. */
  readonly optionWords: readonly string[];
  readonly talk: Readonly<Record<TalkWord, readonly string[]>>;
  /** Beginnings that say that an earlier answer was wrong: `correction`. */
  readonly corrections: readonly string[];
  /** Says of a danger that has just been taken from a text that it was not meant: `nonsense`. */
  readonly retractions?: readonly string[];
  /** Says of what is denied beside it that it never was, not that it is no more: `there was no`. */
  readonly neverWas?: readonly string[];
  /** Words that, between a reading's name and its figure, speak of an earlier answer: `was`. */
  readonly earlier: readonly string[];
  /** Whole statements about the vehicle, with what they set in the context. */
  readonly statements: readonly {
    readonly set: Readonly<Record<string, string | number | boolean>>;
    readonly said: readonly string[];
  }[];
  /** Words of a meter's accuracy: what it is called, `%`, and the size of its display. */
  readonly accuracy: Readonly<Record<'meter' | 'clamp' | 'percent' | 'counts', readonly string[]>>;
  /** Words right before a language's name by which it is asked for: `speak`, `into`. */
  readonly speaking: readonly string[];
  /** Words that say that kit is at hand now: `have`. */
  readonly having: readonly string[];
  /** Kit id to what people call it. */
  readonly kit: Readonly<Record<string, readonly string[]>>;
}
