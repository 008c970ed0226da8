import { scaleBound, sharpBound, type Bound } from '../conformance/bound.ts';
import { boltTorque } from '../fastener/fastener.ts';
import { studTorque, terminalTorque } from '../fastener/stud-torque.ts';
import type { SourcedInterval } from '../quantity/interval.ts';
import { commonPractice, published } from '../source.ts';
import { aluminiumThreadTorque } from '../tables/aluminium-thread.ts';
import type { StudSize } from '../tables/electrical-stud.ts';
import type { PropertyClass } from '../tables/property-class.ts';
import type { LimitContext } from './limit-context.ts';
import { knownLimit, unknownLimit, type LimitResult } from './limit-result.ts';

/** Which end of what a joint takes. */
type End = 'low' | 'high';

/** Below it a bolt is not tight yet. */
export function boltUnder(context: LimitContext): LimitResult {
  return boltEnd('low', context);
}

/** Up to it a bolt is tight, above it overstretched or its thread harmed. */
export function boltRight(context: LimitContext): LimitResult {
  return boltEnd('high', context);
}

/**
 * One end of what a bolt takes where its maker gives no figure. Into steel it runs over the nut
 * factors 0.15 to 0.20 of an oiled to a dry thread; into aluminium it is the published figure. A
 * class or a thread that is not known widens the end to a zone over those that hold starters.
 */
function boltEnd(end: End, context: LimitContext): LimitResult {
  const { boltSize, boltClass, boltInto } = context;
  if (boltSize === undefined) return unknownLimit('boltSize');
  const aluminium = boltInto === 'steel' ? undefined : aluminiumEnd(end, context);
  if (boltInto === 'aluminium') {
    return aluminium === undefined ? unknownLimit('torque into aluminium') : knownLimit(aluminium);
  }
  const classes: readonly PropertyClass[] = boltClass === undefined ? ['8.8', '10.9'] : [boltClass];
  const steel = classes.flatMap((propertyClass) => {
    const found = boltTorque({ size: boltSize, propertyClass, condition: 'oiled' });
    return found.type === 'torque' ? [endOf(found.torque, end)] : [];
  });
  return knownLimit(zoneOver([...steel, ...(aluminium === undefined ? [] : [aluminium])]));
}

/** How far round the one published figure a bolt into aluminium is right: a tenth. */
const aluminiumSpread = { low: 0.9, high: 1.1 };

function aluminiumEnd(end: End, { boltSize = 'M5' }: LimitContext): Bound | undefined {
  const { rows, source } = aluminiumThreadTorque;
  const figure = rows[boltSize];
  if (figure === undefined) return undefined;
  const text = `${source.text}; a tenth to either side is common practice`;
  return scaleBound(sharpBound(figure, 'N.m', published(text)), aluminiumSpread[end]);
}

/** The bound from the least to the most of several, with the source of the first. */
function zoneOver([first, ...others]: readonly Bound[]): Bound {
  if (first === undefined) throw new Error('a zone goes over one bound at the least');
  const low = Math.min(first.low, ...others.map((bound) => bound.low));
  const high = Math.max(first.high, ...others.map((bound) => bound.high));
  return { ...first, low, high };
}

function endOf(torque: SourcedInterval, end: End): Bound {
  return sharpBound(torque[end], 'N.m', torque.source);
}

/** Below it the nut on a starter's stud is not tight yet. */
export function studUnder(context: LimitContext): LimitResult {
  return studEnd('low', context);
}

/** Up to it the nut on a starter's stud is tight, above it the stud is harmed. */
export function studRight(context: LimitContext): LimitResult {
  return studEnd('high', context);
}

/** A stud whose metal nobody knows counts as soft. For one of steel there is no figure by its size. */
function studEnd(end: End, { studSize, studMaterial = 'copper' }: LimitContext): LimitResult {
  if (studSize === undefined) return unknownLimit('studSize');
  if (studMaterial === 'steel') return unknownLimit('torque of steel studs');
  return knownLimit(endOf(studTorque({ size: studSize, material: studMaterial }).torque, end));
}

/** Below it the clamp or lug at a battery is not tight yet. */
export function postUnder(context: LimitContext): LimitResult {
  return postEnd('low', context);
}

/** Up to it the clamp or lug at a battery is tight, above it post, insert or clamp is harmed. */
export function postRight(context: LimitContext): LimitResult {
  return postEnd('high', context);
}

function postEnd(end: End, { postKind }: LimitContext): LimitResult {
  if (postKind === undefined) return unknownLimit('postKind');
  const { torque } =
    postKind === 'tapered'
      ? terminalTorque('battery-clamp')
      : studTorque({ size: insertSize[postKind], material: 'battery-insert' });
  return knownLimit(endOf(torque, end));
}

const insertSize: Readonly<Record<'insert-m6' | 'insert-m8' | 'insert-m10', StudSize>> = {
  'insert-m6': 'M6',
  'insert-m8': 'M8',
  'insert-m10': 'M10',
};

/** Up to it a stud carries no voltage, above it some battery still feeds it: 0.5 V, at 24 V too. */
export function studDead(): LimitResult {
  const source = commonPractice('what meter and leads pick up, far below any battery');
  return knownLimit(sharpBound(0.5, 'V', source));
}
