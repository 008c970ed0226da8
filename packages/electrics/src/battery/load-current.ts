import { ElectricsError } from '../electrics-error.ts';
import type { SourcedInterval } from '../quantity/interval.ts';
import { computed, fromMemory, type Source } from '../source.ts';
import { accessoryLoads, type AccessoryKind } from '../tables/accessory-loads.ts';
import { lampRatings, type LampKind } from '../tables/lamp-ratings.ts';

/** Lamps that cannot load a battery: their electronics hold the power, whatever the voltage. */
export type ConstantPowerKind = 'led-lamp' | 'gas-discharge-lamp';

/** What can be switched on. */
export type LoadKind = LampKind | AccessoryKind | ConstantPowerKind;

/** What is switched on, and how many of it: a whole number from 1, 1 where absent. */
export type Load = { readonly kind: LoadKind; readonly count?: number | undefined };

/**
 * The current of the loads in A, or the load that cannot be reckoned with: a lamp of constant
 * power takes more current as the voltage falls and has no figure to go by.
 */
export type LoadCurrent =
  | { readonly type: 'current'; readonly current: SourcedInterval }
  | {
      readonly type: 'refused';
      readonly kind: ConstantPowerKind;
      readonly reason: 'constant-power';
    };

const ratedV = 12;
const filamentExponent = 0.55;
const filamentSource = fromMemory('filament current goes with the voltage to the power of 0.55');

type OneLoad = {
  readonly low: number;
  readonly best: number;
  readonly high: number;
  readonly sources: readonly Source[];
};

/**
 * Texts leave open at which voltage a lamp takes its rated watts. The low end takes it at the test
 * voltage, which also leaves room for what the wiring to the lamp loses; the high end is the
 * greater of the greatest watts and of the rated ones at 12 V.
 */
function lampCurrent(kind: LampKind, voltageV: number): OneLoad {
  const { ratedW, greatestW, testV, ratedSource, greatestSource } = lampRatings.rows[kind];
  const at = (watts: number, volts: number): number =>
    (watts / volts) * (voltageV / volts) ** filamentExponent;
  const greatest = at(greatestW, testV);
  const rated = at(ratedW, ratedV);
  return {
    low: at(ratedW, testV),
    best: (Math.min(rated, greatest) + greatest) / 2,
    high: Math.max(rated, greatest),
    sources: [ratedSource, greatestSource, filamentSource],
  };
}

function accessoryCurrent(kind: AccessoryKind, voltageV: number): OneLoad {
  const { low, best, high, atV, exponent, source } = accessoryLoads.rows[kind];
  const factor = (voltageV / atV) ** exponent;
  return { low: low * factor, best: best * factor, high: high * factor, sources: [source] };
}

function isLamp(kind: LampKind | AccessoryKind): kind is LampKind {
  return Object.hasOwn(lampRatings.rows, kind);
}

function requireCount(count: number): void {
  if (!(Number.isInteger(count) && count >= 1)) {
    throw new ElectricsError('value-out-of-range', { count: String(count), low: 1 });
  }
}

function sourceOf(sources: readonly Source[]): Source {
  const texts = sources.map(({ provenance, text }) => `${text} (${provenance})`);
  return computed([...new Set(texts)].join('; '));
}

/**
 * The current that switched-on loads draw together from a 12 V battery at a voltage (V, 8 to 16).
 *
 * The ends are the sums of the ends, since lamps of one make err alike. Sources: `lampRatings`,
 * `accessoryLoads`; filament current as V^0.55, from memory. Throws `value-out-of-range`, also
 * where nothing is switched on.
 *
 * @example
 * const load = loadCurrent([{ kind: 'h4-dipped', count: 2 }, { kind: 'w5w', count: 4 }], 12.5);
 * // 9.5 to 11.7 A, best 11.2 A
 */
export function loadCurrent(loads: readonly Load[], voltageV: number): LoadCurrent {
  if (!(voltageV >= 8 && voltageV <= 16)) {
    const facts = { voltageV: String(voltageV), low: 8, high: 16 };
    throw new ElectricsError('value-out-of-range', facts);
  }
  if (loads.length === 0) {
    throw new ElectricsError('value-out-of-range', { loads: 0, low: 1 });
  }
  const current = { low: 0, best: 0, high: 0 };
  const sources: Source[] = [];
  for (const { kind, count = 1 } of loads) {
    requireCount(count);
    if (kind === 'led-lamp' || kind === 'gas-discharge-lamp') {
      return { type: 'refused', kind, reason: 'constant-power' };
    }
    const one = isLamp(kind) ? lampCurrent(kind, voltageV) : accessoryCurrent(kind, voltageV);
    current.low += count * one.low;
    current.best += count * one.best;
    current.high += count * one.high;
    sources.push(...one.sources);
  }
  return { type: 'current', current: { ...current, unit: 'A', source: sourceOf(sources) } };
}
