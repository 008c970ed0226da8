/**
 * What a starting circuit goes by when its hidden state is drawn. Resistances are in mOhm and may be
 * infinite: open.
 */

/** The figures that `electrics` knows of a sound vehicle from its context. */
export const knownFigures = [
  'rating',
  'health',
  'temperature',
  'displacement',
  'drag',
  'positive-clamp',
  'negative-clamp',
  'positive',
  'ground',
  'contacts',
] as const;

/**
 * The figures that only a flow declares: charge (%), volts below an empty battery, dead cells, the
 * charge (%) that a full charge reaches, volts above rest that recent charging left; resistance
 * from the clamp to the lamps and the start circuit, in the start circuit, of brushes beyond usual;
 * of the usual: the motor's field and the windings' resistance; the starter's own drag (A); volts at
 * which the solenoid pulls in and lets go, for each 12 V; the speed (/min) below which compression
 * stops the engine; of 1, how often an engine starts once it cranks as usual; what wakes with a start
 * (A), where the drive's computers turn the engine.
 */
export const declaredFigures = [
  'charge',
  'emptied',
  'dead-cells',
  'taken',
  'surface',
  'supply',
  'control',
  'brushes',
  'field',
  'windings',
  'friction',
  'operate',
  'release',
  'stall',
  'starts',
  'wake',
] as const;

/** Every figure that a hidden state has. */
export const circuitFigures = [...knownFigures, ...declaredFigures] as const;

/** The name of a figure. */
export type CircuitFigure = (typeof circuitFigures)[number];

/** One value of every figure. */
export type CircuitFigures = Readonly<Record<CircuitFigure, number>>;

/**
 * How a figure is distributed: values that least, most and equal steps of vehicles between have.
 * `[0, 10, 40]`: half of the vehicles are below 10, none above 40.
 */
export type Quantiles = readonly number[];

/** The value below which `share` (0 to 1) of the vehicles are. */
export function quantile(values: Quantiles, share: number): number {
  const steps = values.length - 1;
  const at = Math.min(steps - 1, Math.floor(share * steps));
  if (steps < 1) return values[0] ?? 0;
  const low = values[at] ?? 0;
  const high = values[at + 1] ?? low;
  // Between something and open there is nothing: that step of vehicles is open.
  if (!Number.isFinite(high)) return high;
  return low + (share * steps - at) * (high - low);
}
