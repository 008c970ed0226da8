/**
 * The readings of counter cards put into the bands of the trade: enough for the cards, and apart
 * from how a flow judges them. The maker's figure of a part precedes every general one.
 */

/** A figure of the maker: the same words as in a card. */
interface Limit {
  readonly low?: number;
  readonly high?: number;
  readonly unit: string;
}

/** Of a card's context what readings are judged by. */
export interface CounterContext {
  readonly kit?: readonly string[];
  readonly temperature?: { readonly value: number; readonly unit: string };
  readonly vehicle?: {
    readonly fuel?: string;
    readonly nominal?: number;
    readonly smartCharging?: boolean;
    readonly battery?: { readonly technology?: string };
  };
  readonly part?: {
    readonly nominal?: number;
    readonly build?: string;
    readonly class?: string;
    readonly battery?: { readonly technology?: string; readonly rating?: number };
    readonly limits?: Readonly<Record<string, Limit>>;
  };
  readonly bolt?: { readonly size: string; readonly class?: string; readonly material?: string };
  readonly stud?: { readonly size: string; readonly class?: string; readonly material?: string };
}

/** A bound between two bands; a pair where the trade knows no sharp figure. */
type Bound = number | readonly [number, number];

interface Scale {
  /** Ascending; one more than bounds. */
  readonly bands: readonly string[];
  readonly bounds: readonly Bound[];
  /** How near to a bound, given as a number, a reading can't be told. */
  readonly margin: (bound: number, below: string) => number;
}

/** A hand meter of 0.5 % and two digits of 0.01 V; one-sided 95 % of a rectangular spread. */
const volts = (bound: number): number => (0.95 * (0.5 * Math.abs(bound))) / 100 + 0.019;
const percent =
  (share: number) =>
  (bound: number): number =>
    (bound * share) / 100;
const fixed = (margin: number) => (): number => margin;

/** Half of CCA for 15 s: the least volts by case temperature (BCI practice, printed by makers). */
const loadLimits = [
  [-18, 8.5],
  [-12, 8.7],
  [-7, 8.9],
  [-1, 9.1],
  [4, 9.3],
  [10, 9.4],
  [16, 9.5],
  [21, 9.6],
] as const;

/** Volts of a 12 V battery; straight lines between, the same above 21 degrees. */
export function loadLimit(celsius: number): number {
  const above = loadLimits.findIndex(([at]) => at >= celsius);
  if (above === -1) return 9.6;
  if (above === 0) return 8.5;
  const [[fromAt, from], [toAt, to]] = [loadLimits[above - 1]!, loadLimits[above]!];
  return from + ((to - from) * (celsius - fromAt)) / (toAt - fromAt);
}

/** N.m for a bolt into steel: T = K F d, F three quarters of the proof load, K 0.15 to 0.20. */
const steelBolts: Readonly<Record<string, readonly [number, number]>> = {
  'M6 8.8': [7.9, 10.5],
  'M6 10.9': [11.3, 15],
  'M8 8.8': [19.1, 25.5],
  'M8 10.9': [27.3, 36.5],
  'M10 8.8': [37.8, 50.5],
  'M10 10.9': [54.2, 72.2],
  'M12 8.8': [66, 88],
  'M12 10.9': [94.5, 125.9],
};
/** N.m into aluminium, a tenth to either side (the published figure is one number). */
const aluminiumBolts: Readonly<Record<string, readonly [number, number]>> = {
  M10: [36, 44],
  M12: [63, 77],
};
/** N.m of a nut on a copper stud, common practice. */
const copperStuds: Readonly<Record<string, readonly [number, number]>> = {
  M6: [3, 5],
  M8: [8, 12],
  M10: [15, 20],
};

function torqueOf(
  check: string,
  { bolt, stud }: CounterContext,
): readonly [number, number] | undefined {
  if (check === 'stud-nuts') return stud && copperStuds[stud.size];
  if (!bolt) return undefined;
  return bolt.material === 'aluminium'
    ? aluminiumBolts[bolt.size]
    : steelBolts[`${bolt.size} ${bolt.class}`];
}

/** Kinds whose full charge reads higher. */
const readsHigher = (technology: string | undefined): boolean =>
  technology === 'agm' || technology === 'gel';

/** Amperes that a warm engine may draw when cranked, and how many times that in the cold. */
function crankAmperes({ vehicle, temperature }: CounterContext): readonly [number, number] {
  const warm = vehicle?.fuel === 'diesel' ? [200, 350] : [120, 260];
  const celsius = temperature?.value ?? 20;
  const times = celsius > 10 ? 1 : celsius > -5 ? 1.4 : 1.8;
  return [warm[0]! * times, warm[1]! * times];
}

/** The scale of a reading; `undefined`: nothing to hold it to. */
function scaleOf(check: string, context: CounterContext, celsius: number): Scale | undefined {
  const { part, vehicle } = context;
  const own = part?.limits?.[check];
  const truck = part?.nominal === 24;
  const times = vehicle?.nominal === 24 ? 2 : 1;
  switch (check) {
    case 'bench-supply':
      return {
        bands: ['low', 'ready'],
        bounds: [own?.low ?? (truck ? 20 : 11)],
        margin: volts,
      };
    case 'no-load-current': {
      const most = truck ? 110 : part?.class === 'heavy' ? 130 : 95;
      return {
        bands: ['none', 'low', 'normal', 'high'],
        bounds: [5, own?.low ?? 30, own?.high ?? most],
        margin: (bound, below) => (below === 'normal' ? 10 : percent(2)(bound)),
      };
    }
    case 'no-load-speed': {
      const general = { geared: 2500, direct: 5500 }[part?.build ?? ''];
      const least = own?.low ?? general;
      return least === undefined
        ? undefined
        : { bands: ['low', 'normal'], bounds: [least], margin: percent(5) };
    }
    case 'case-temperature':
      return { bands: ['too-cold', 'usable', 'too-hot'], bounds: [0, 45], margin: fixed(0.5) };
    case 'received-volts':
      return {
        bands: ['reversed', 'deep', 'discharged', 'charged'],
        bounds: [0, 10.5, readsHigher(part?.battery?.technology) ? 12.6 : 12.4],
        margin: volts,
      };
    case 'battery-recharged':
      return {
        bands: ['cell-down', 'low', 'full'],
        bounds: [11, own?.low ?? (readsHigher(part?.battery?.technology) ? 12.7 : 12.5)],
        margin: volts,
      };
    case 'battery-load-test':
      return {
        bands: ['failed', 'passed'],
        bounds: [own?.low ?? loadLimit(celsius)],
        margin: volts,
      };
    case 'battery-tester': {
      const rating = part?.battery?.rating;
      return rating === undefined
        ? undefined
        : {
            bands: ['poor', 'middle', 'strong'],
            bounds: [0.6 * rating, 0.8 * rating],
            margin: percent(2),
          };
    }
    case 'cell-spread':
      return { bands: ['even', 'recheck', 'uneven'], bounds: [0.025, 0.05], margin: fixed(0.002) };
    case 'stand-loss':
      return { bands: ['normal', 'high'], bounds: [own?.high ?? 0.1], margin: volts };
    case 'stud-dead':
      return { bands: ['dead', 'live'], bounds: [0.5], margin: volts };
    case 'bolts-tight':
    case 'stud-nuts': {
      const [low, high] = own ? [own.low!, own.high!] : (torqueOf(check, context) ?? []);
      return low === undefined || high === undefined
        ? undefined
        : { bands: ['under', 'right', 'over'], bounds: [low, high], margin: percent(4) };
    }
    // Ready or above is all that a fitting goes by.
    case 'battery-rest': {
      const ready = readsHigher(vehicle?.battery?.technology) ? 12.6 : 12.4;
      return { bands: ['discharged', 'ready'], bounds: [ready * times], margin: volts };
    }
    case 'battery-crank': {
      const limit = loadLimit(context.temperature?.value ?? 20) * times;
      const deeper = vehicle?.fuel === 'diesel' || (context.temperature?.value ?? 20) < -5;
      const bound: Bound = deeper ? [limit - 0.7 * times, limit] : limit;
      return { bands: ['low', 'good'], bounds: [bound], margin: volts };
    }
    case 'drop-positive':
    case 'drop-ground': {
      const [least, most] = crankAmperes(context);
      return {
        bands: ['good', 'high'],
        bounds: [[0.002 * least, 0.002 * most]],
        margin: volts,
      };
    }
    case 'charging':
      return vehicle?.smartCharging
        ? undefined
        : {
            bands: ['none', 'low', 'right', 'high'],
            bounds: [13 * times, 13.5 * times, 14.8 * times],
            margin: volts,
          };
    default:
      throw new RangeError(`There is no scale for the reading ${check}.`);
  }
}

/** A figure as typed, in the unit of its check. */
export function figureOf(typed: string): number {
  const found = /[-−]?\d+(?:[.,]\d+)?/u.exec(typed)?.[0];
  if (found === undefined) throw new RangeError(`There is no figure in “${typed}”.`);
  const figure = Number(found.replace('−', '-').replace(',', '.'));
  if (/\d\s*F$/u.test(typed)) return (figure - 32) / 1.8;
  return /ft-lb/u.test(typed) ? figure * 1.355_818 : figure;
}

/**
 * The band of a reading: its id, `low~normal` too near a bound to be told, `no-bound` with nothing
 * to hold it to. `celsius` is the case temperature, where a limit goes by it.
 */
export function bandOf(
  check: string,
  typed: string,
  context: CounterContext,
  celsius = 21,
): string {
  const scale = scaleOf(check, context, celsius);
  if (!scale) return 'no-bound';
  const figure = figureOf(typed);
  for (const [index, bound] of scale.bounds.entries()) {
    const [from, to] = typeof bound === 'number' ? [bound, bound] : bound;
    const below = scale.bands[index]!;
    if (figure < from - scale.margin(from, below)) return below;
    if (figure <= to + scale.margin(to, below)) return `${below}~${scale.bands[index + 1]}`;
  }
  return scale.bands.at(-1)!;
}
