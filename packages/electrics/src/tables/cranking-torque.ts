import { commonPractice } from '../source.ts';
import type { Table } from '../table.ts';

/**
 * The mean torque in N.m for each litre that turns a warm engine over at `referenceSpeed` /min with
 * 5W-30 oil, and the share of it that the oil's friction takes.
 */
export type CrankingTorqueRow = { readonly torquePerLitre: number; readonly oilShare: number };

/** Mean torque of cranking by how the mixture is lit: a diesel compresses far more. */
export const crankingTorque: Table<Readonly<Record<'petrol' | 'diesel', CrankingTorqueRow>>> = {
  title: 'Mean cranking torque by displacement',
  source: commonPractice(
    'such that sound vehicles draw their usual cranking currents, warm, at 0 and at -18 °C',
  ),
  rows: {
    petrol: { torquePerLitre: 22, oilShare: 0.6 },
    diesel: { torquePerLitre: 38, oilShare: 0.55 },
  },
};

/** The speed in /min and the temperature in Cel for which the torques are given. */
export const crankingReference: { readonly speed: number; readonly temperature: number } = {
  speed: 240,
  temperature: 20,
};
