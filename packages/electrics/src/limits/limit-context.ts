import type { StudSize } from '../tables/electrical-stud.ts';
import type { PropertyClass } from '../tables/property-class.ts';
import type { BoltSize } from '../tables/stress-area.ts';

/** How a battery is built: wet, enhanced flooded, absorbent glass mat, gel. */
export type BatteryTechnology = 'flooded' | 'efb' | 'agm' | 'gel';

/** The standard after which the cold-cranking current on the label was measured. */
export type RatingStandard = 'sae' | 'en' | 'din' | 'iec' | 'jis' | 'mca';

/** Where the battery sits. */
export type BatteryLocation = 'engine-bay' | 'boot' | 'seat';

/** How a starter drives its pinion. */
export type StarterBuild = 'direct' | 'geared';

/** How big a starter is: `heavy` over 2.5 kW. */
export type StarterClass = 'car' | 'heavy';

/** What a bolt is screwed into; cast iron counts as steel. */
export type BoltInto = 'steel' | 'aluminium';

/** What a starter's stud is made of. */
export type StudMaterial = 'copper' | 'brass' | 'steel';

/** What a battery's lead is fixed to: a tapered post with a clamp, or a bolt in an insert. */
export type PostKind = 'tapered' | 'insert-m6' | 'insert-m8' | 'insert-m10';

/**
 * What a limit may depend on. Every field is optional; what is not known widens the limit or makes
 * it unknown.
 *
 * `nominal` V (12 where absent), `temperature` Cel now, `rating` and `expectedCurrent` A,
 * `displacement` L, `batteryAge` years; `turning` is whether the engine turns while start is held.
 * `smartCharging` is whether the vehicle steers its charging. `bolt…` is a bolt of the part that is
 * fitted, `stud…` its main stud, `postKind` the battery's terminals.
 * `expectedCurrent` is the owner's own figure for a warm start and goes before general figures.
 * `restVoltage` V, `crankVoltage` V and `crankCurrent` A are measured, at the whole battery: on a
 * 24 V vehicle across both.
 */
export type LimitContext = {
  readonly nominal?: 12 | 24 | undefined;
  readonly temperature?: number | undefined;
  readonly technology?: BatteryTechnology | undefined;
  readonly rating?: number | undefined;
  readonly ratingStandard?: RatingStandard | undefined;
  readonly fuel?: 'petrol' | 'diesel' | undefined;
  readonly displacement?: number | undefined;
  readonly cylinders?: number | undefined;
  readonly batteryLocation?: BatteryLocation | undefined;
  readonly batteryAge?: number | undefined;
  readonly starterBuild?: StarterBuild | undefined;
  readonly starterClass?: StarterClass | undefined;
  readonly turning?: boolean | undefined;
  readonly smartCharging?: boolean | undefined;
  readonly boltSize?: BoltSize | undefined;
  readonly boltClass?: PropertyClass | undefined;
  readonly boltInto?: BoltInto | undefined;
  readonly studSize?: StudSize | undefined;
  readonly studMaterial?: StudMaterial | undefined;
  readonly postKind?: PostKind | undefined;
  readonly expectedCurrent?: number | undefined;
  readonly restVoltage?: number | undefined;
  readonly crankVoltage?: number | undefined;
  readonly crankCurrent?: number | undefined;
};

/** How many 12 V batteries stand in series: 2 on a 24 V vehicle, else 1. */
export function batteriesInSeries(context: LimitContext): number {
  return context.nominal === 24 ? 2 : 1;
}
