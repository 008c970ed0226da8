/**
 * The figures that the maker gives for a part, which go before general ones.
 */
import { convert, type Bound, type Source } from '@keyturn/electrics';
import type { AnswerForm, Flow } from '../flow/flow.ts';
import type { Context, ContextFault, PartLimit, PartLimits } from './context.ts';

/** Figures that are of no reading of the flow, or in a unit that its reading does not have. */
export function limitFaults(flow: Flow, context: Context): readonly ContextFault[] {
  return Object.entries(limitsOf(context)).flatMap(([id, limit]): readonly ContextFault[] => {
    const path = `part.limits.${id}`;
    const form = flow.checks[id]?.form;
    if (form?.kind !== 'reading' || form.good === undefined) {
      return [{ path, given: limit, possible: readingsWithLimits(flow) }];
    }
    try {
      convert({ value: 0, unit: limit.unit }, form.unit);
      return [];
    } catch {
      return [{ path, given: limit, possible: [`figures in ${form.unit}`] }];
    }
  });
}

function readingsWithLimits(flow: Flow): readonly string[] {
  return Object.values(flow.checks)
    .filter(({ form }) => form.kind === 'reading' && form.good !== undefined)
    .map(({ id }) => id);
}

function limitsOf(context: Context): PartLimits {
  return (context['part.limits'] ?? {}) as PartLimits;
}

/** What the maker says of a check, if anything. */
export function makerLimit(context: Context, check: string): PartLimit | undefined {
  return limitsOf(context)[check];
}

const fromMaker: Source = { provenance: 'published', text: "the maker's figure for this part" };

/**
 * Bounds with the maker's figures in their place: on both sides of the band that is good, also where
 * there is no general figure. Other bounds move with them where they would lie on the wrong side.
 */
export function withMaker(
  bounds: readonly (Bound | undefined)[],
  form: Extract<AnswerForm, { kind: 'reading' }>,
  maker: PartLimit,
): readonly (Bound | undefined)[] {
  const { unit, good, bands, upperSpread = 0 } = form;
  const at = bands.findIndex(({ id }) => id === good);
  const inUnit = (value: number): number => convert({ value, unit: maker.unit }, unit).value;
  const low = maker.low === undefined ? undefined : inUnit(maker.low);
  const high = maker.high === undefined ? undefined : inUnit(maker.high);
  return bounds.map((bound, index): Bound | undefined => {
    if (index === at - 1 && low !== undefined) {
      return { low, high: low, unit, source: fromMaker };
    }
    if (index === at && high !== undefined) {
      return { low: high - upperSpread, high: high + upperSpread, unit, source: fromMaker };
    }
    if (bound === undefined) return undefined;
    const most = index < at ? (low ?? high ?? Infinity) : Infinity;
    const least = index < at ? -Infinity : (high ?? low ?? -Infinity);
    const within = (end: number): number => Math.max(least, Math.min(most, end));
    return { ...bound, low: within(bound.low), high: within(bound.high) };
  });
}
