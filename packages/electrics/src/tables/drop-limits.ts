import type { Figure, FigureTable } from '../figure.ts';
import { commonPractice, published } from '../source.ts';

/** The part of the starting circuit that a drop is measured over. */
export type DropPath =
  'cable' | 'positive' | 'ground' | 'joint' | 'contacts' | 'isolator' | 'control' | 'circuit';

/** A printed limit of a voltage drop while cranking, for a system of 12 V or 24 V. */
export type DropLimit = Figure & { readonly path: DropPath; readonly nominal: 12 | 24 };

const truck = published('TM 9-2320-211-20, starter circuit tests');
const liftTruck = published('TM 10-3930-671-24 pp. F-299 to F-309');
const roller = published('TM 5-3895-382-24, Table 30, for engines of 2000 h and more');
const control = published('TM 5-2420-230-24-2 p. 13-33');
const manual = published("a vehicle maker's service manual");
const handbooks = commonPractice('handbooks of the trade');

/**
 * Every printed limit of a voltage drop in the starting circuit. They rival each other: for the
 * ground side 0.2 V against 0.7 V. A flat 0.2 V fails a perfect cable: 1.5 m of 25 mm2 alone drop
 * 0.234 V at 200 A. So the limits in use go by 0.20 V for 100 A, and by the flat figures for what
 * does not grow with the length of a cable.
 */
export const dropLimits: FigureTable<DropLimit> = {
  title: 'Limits of voltage drop while cranking',
  rows: [
    {
      path: 'circuit',
      of: 'for each 100 A, 0.20 V',
      nominal: 12,
      high: 2,
      unit: 'mOhm',
      source: liftTruck,
    },
    {
      path: 'cable',
      of: 'battery to solenoid',
      nominal: 24,
      high: 0.2,
      unit: 'V',
      source: truck,
    },
    {
      path: 'cable',
      of: 'battery cable before it',
      nominal: 24,
      high: 0.2,
      unit: 'V',
      source: truck,
    },
    {
      path: 'positive',
      of: "battery post to the solenoid's battery stud, at 180 to 220 A",
      nominal: 12,
      high: 0.4,
      unit: 'V',
      source: liftTruck,
    },
    {
      path: 'positive',
      of: 'battery post to starter (the text is cut off in the copy)',
      nominal: 12,
      high: 0.5,
      unit: 'V',
      source: roller,
    },
    {
      path: 'positive',
      of: 'battery post to starter (the text is cut off in the copy)',
      nominal: 24,
      high: 1,
      unit: 'V',
      source: roller,
    },
    {
      path: 'positive',
      of: "battery post to the motor's terminal, with the contacts",
      nominal: 12,
      high: 0.5,
      unit: 'V',
      source: manual,
    },
    { path: 'positive', of: 'cable', nominal: 12, high: 0.2, unit: 'V', source: handbooks },
    { path: 'positive', of: 'whole side', nominal: 12, high: 0.5, unit: 'V', source: handbooks },
    {
      path: 'ground',
      of: 'battery post to starter',
      nominal: 12,
      high: 0.7,
      unit: 'V',
      source: roller,
    },
    {
      path: 'ground',
      of: 'battery post to starter',
      nominal: 24,
      high: 1.4,
      unit: 'V',
      source: roller,
    },
    { path: 'ground', of: 'cable', nominal: 12, high: 0.2, unit: 'V', source: handbooks },
    { path: 'ground', of: 'whole side', nominal: 12, high: 0.2, unit: 'V', source: handbooks },
    { path: 'joint', of: 'post to clamp', nominal: 12, high: 0, unit: 'V', source: liftTruck },
    { path: 'joint', of: 'each connection', nominal: 12, high: 0.1, unit: 'V', source: handbooks },
    {
      path: 'circuit',
      of: 'a large drop: clean or replace',
      nominal: 12,
      low: 0.4,
      high: 1,
      unit: 'V',
      source: liftTruck,
    },
    {
      path: 'contacts',
      of: "the solenoid's contacts",
      nominal: 12,
      low: 0.2,
      high: 0.3,
      unit: 'V',
      source: handbooks,
    },
    {
      path: 'isolator',
      of: 'battery disconnect switch',
      nominal: 12,
      high: 0.5,
      unit: 'V',
      source: roller,
    },
    {
      path: 'isolator',
      of: 'battery disconnect switch',
      nominal: 24,
      high: 1,
      unit: 'V',
      source: roller,
    },
    {
      path: 'control',
      of: 'both windings drawing, 20 Cel',
      nominal: 12,
      high: 1,
      unit: 'V',
      source: control,
    },
    {
      path: 'control',
      of: 'both windings drawing, 20 Cel',
      nominal: 24,
      high: 2,
      unit: 'V',
      source: control,
    },
    {
      path: 'control',
      of: 'solenoid circuit, good',
      nominal: 12,
      low: 0.1,
      high: 1.25,
      unit: 'V',
      source: liftTruck,
    },
    {
      path: 'control',
      of: 'solenoid circuit, suspect (excessive above it)',
      nominal: 12,
      low: 1.25,
      high: 2,
      unit: 'V',
      source: liftTruck,
    },
    {
      path: 'control',
      of: 'few contacts, up to many',
      nominal: 12,
      low: 0.5,
      high: 0.9,
      unit: 'V',
      source: handbooks,
    },
  ],
};
