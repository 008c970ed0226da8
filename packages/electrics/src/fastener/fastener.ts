import type { Interval, SourcedInterval } from '../quantity/interval.ts';
import type { Quantity } from '../quantity/quantity.ts';
import { computed, type Source } from '../source.ts';
import { aluminiumThreadTorque } from '../tables/aluminium-thread.ts';
import { nutFactor, type ThreadCondition } from '../tables/nut-factor.ts';
import { proofStress, type PropertyClass } from '../tables/property-class.ts';
import { stressArea, type BoltSize } from '../tables/stress-area.ts';

/** A steel bolt: thread and property class. */
export type Bolt = { readonly size: BoltSize; readonly propertyClass: PropertyClass };

/**
 * A bolt in its joint: `condition` of the thread, not known where absent, and what the thread goes
 * `into` (steel where absent).
 */
export type BoltJoint = Bolt & {
  readonly condition?: ThreadCondition | undefined;
  readonly into?: 'steel' | 'aluminium' | undefined;
};

/** Torque in N.m with the clamp load in kN that it gives, or why there is no figure. */
export type BoltTorque =
  | {
      readonly type: 'torque';
      readonly torque: SourcedInterval;
      readonly clampLoad: SourcedInterval;
    }
  | { readonly type: 'unknown'; readonly reason: 'no-figure-for-aluminium' };

const proofPart = 0.75;
// Even a bolt tightened to the right torque has ±25 to 30 % of clamp load (from memory): the wider.
const scatter = 0.3;

/**
 * The load in kN that a bolt bears without lasting stretch.
 *
 * Source: ISO 898-1 (from memory), stress area times proof stress.
 *
 * @example
 * proofLoad({ size: 'M10', propertyClass: '8.8' }); // 33.6 kN
 */
export function proofLoad(bolt: Bolt): Quantity {
  const newtons = stressArea.rows[bolt.size].areaMm2 * proofStress.rows[bolt.propertyClass];
  return { value: newtons / 1000, unit: 'kN' };
}

/**
 * The nut factor, where `best` is the lower end: a joint that slides better than thought is not
 * overstretched then. Nobody knows whether a thread is dry or oiled unless it was said.
 */
function nutFactorOf(condition: ThreadCondition | undefined): Omit<Interval, 'unit'> {
  if (condition === undefined) {
    const { dry, oiled } = nutFactor.rows;
    return { low: oiled.low, best: dry.low, high: dry.high };
  }
  const { low, high } = nutFactor.rows[condition];
  return { low, best: low, high };
}

function torqueSource(cap: number | undefined): Source {
  const rule = `T = K·F·d with 75 % of the proof load of ISO 898-1 (from memory) and K from ${nutFactor.source.text}`;
  return computed(
    cap === undefined
      ? rule
      : `${rule}; at most ${cap} N·m after ${aluminiumThreadTorque.source.text}`,
  );
}

/**
 * Tightening torque in N.m and clamp load in kN of a steel bolt where its maker gives no figure:
 * the maker's own figure always goes first.
 *
 * T = K·F·d with F three quarters of the proof load. The torque runs over the nut factors of the
 * thread's condition, and `best` is the figure to set: the lower end, or the least for a dry thread
 * where the condition is not known. The clamp load is what that setting gives, with its scatter of
 * ±30 %. Into aluminium no figure exceeds the one published for cast aluminium, M6 to M12; there is
 * none for other sizes. Sources: ISO 898-1 and the scatter from memory, nut factors and aluminium
 * published. No electrical stud is a bolt: see `studTorque`.
 *
 * @example
 * boltTorque({ size: 'M10', propertyClass: '8.8', condition: 'dry' }); // 50 to 63 N.m, 25 kN
 */
export function boltTorque(joint: BoltJoint): BoltTorque {
  const { size, condition, into } = joint;
  const cap = into === 'aluminium' ? aluminiumThreadTorque.rows[size] : undefined;
  if (into === 'aluminium' && cap === undefined) {
    return { type: 'unknown', reason: 'no-figure-for-aluminium' };
  }
  const target = proofPart * proofLoad(joint).value;
  const { low, best, high } = nutFactorOf(condition);
  const { diameterMm } = stressArea.rows[size];
  const capped = (factor: number): number =>
    Math.min(factor * target * diameterMm, cap ?? Infinity);
  const clampKn = capped(best) / (best * diameterMm);
  return {
    type: 'torque',
    torque: {
      low: capped(low),
      best: capped(best),
      high: capped(high),
      unit: 'N.m',
      source: torqueSource(cap),
    },
    clampLoad: {
      low: clampKn * (1 - scatter),
      best: clampKn,
      high: clampKn * (1 + scatter),
      unit: 'kN',
      source: computed('F = T/(K·d) at the torque to set, ±30 % of scatter (from memory)'),
    },
  };
}
