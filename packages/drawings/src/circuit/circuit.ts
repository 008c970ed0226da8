/**
 * What a circuit on paper consists of. Places are on a grid, whose unit is `gridUnit` of the
 * picture: x to the right, y downwards.
 */
import type { DrawingName } from '@keyturn/language';
import type { Point } from '../svg/pen.ts';

/** A circuit's grid in units of the picture. */
export const gridUnit = 10;

/** What is known of a vehicle, so far as it changes its circuit. */
export interface CircuitVehicle {
  readonly nominal?: 12 | 24;
  readonly transmission?: 'manual' | 'automatic';
  readonly ignition?: 'key' | 'button';
}

/** What a part is drawn as. */
export type PartKind =
  | 'battery'
  | 'battery-pair'
  | 'clamp'
  | 'fuse'
  | 'switch'
  | 'relay'
  | 'solenoid'
  | 'motor'
  | 'housing'
  | 'block';

/** A name without values to fill in. */
type PlainName = Exclude<DrawingName, 'reading' | 'expected' | 'was' | 'share' | 'suspect'>;

/** The name of a part or wire: its first baseline, and how wide it may be. */
interface CircuitName {
  readonly says: PlainName | ((vehicle: CircuitVehicle) => PlainName);
  readonly at: Point;
  readonly width: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** The baseline given is that of the last line. */
  readonly upwards?: true;
  /** It stands on the part itself, so that no line runs behind it. */
  readonly inside?: true;
}

/** A part of the circuit. */
export interface CircuitPart {
  readonly id: string;
  readonly kind: PartKind;
  /** Its middle, and its whole width and height. */
  readonly at: Point;
  readonly size: readonly [width: number, height: number];
  readonly name?: CircuitName;
  /** Which vehicles have it; without, all. */
  readonly on?: (vehicle: CircuitVehicle) => boolean;
}

/** A wire, or a thick cable, from joint to joint. */
export interface CircuitWire {
  readonly id: string;
  readonly thick?: true;
  readonly through: readonly Point[];
  readonly name?: CircuitName;
}

/** A place where a lead of a meter can be held, and where there is room for the lead's tag. */
export interface CircuitPlace {
  readonly at: Point;
  readonly tag: Point;
  /** Where both leads are held, one place after the other: which of the two it is. */
  readonly says?: 'first' | 'second';
}

/** Where what was measured is written in: between which two places, or with a clamp meter. */
export interface CircuitSpot {
  readonly between: readonly [red: string, black: string] | 'clamp';
  /** The middle of the first figure; further ones stand below it. */
  readonly at: Point;
  /** How many figures there is room for. */
  readonly most: number;
}

/** A circuit as data. */
export interface Circuit {
  readonly height: number;
  readonly parts: readonly CircuitPart[];
  readonly wires: readonly CircuitWire[];
  readonly joints: readonly Point[];
  /** By the ids that checks give for their probes. */
  readonly places: Readonly<Record<string, CircuitPlace>>;
  readonly spots: readonly CircuitSpot[];
  /** Fault to the parts and wires that are then under suspicion, and where the sign stands. */
  readonly suspects: Readonly<
    Record<string, { readonly of: readonly string[]; readonly sign: Point }>
  >;
}
