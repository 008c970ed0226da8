/**
 * The code of a vehicle’s case, as it is scanned at the counter.
 */
import { encodeFindings } from '@keyturn/sheets';
import { shippedFlow } from '@keyturn/terminal';
import { playUntil } from './element-page.ts';

/** The flow of a vehicle that will not start. */
export const { chart } = shippedFlow('no-start', 'en');

/** A vehicle on which all that feeds the starter is good, and it still turns slowly. */
export const againstStarter = {
  context: { place: 'workshop', kit: ['voltmeter', 'helper'], vehicle: { fuel: 'petrol' } },
  choices: {
    scene: ['safe'],
    drive: ['petrol'],
    complaint: ['slow-crank'],
    'battery-look': ['sound'],
    terminals: ['clean-tight'],
  },
  readings: {
    'battery-rest': 12.65,
    'battery-crank': 10.6,
    'drop-clamps': 0.02,
    'drop-positive': 0.1,
    'drop-ground': 0.05,
    'air-temperature': 20,
  },
};

/** The code of a vehicle's case, played to its verdict. */
export function codeOf(given: Parameters<typeof playUntil>[2], at: string): string {
  const { case: kase } = playUntil(chart, ({ state }) => state.verdict !== null, { ...given, at });
  return encodeFindings(chart.flow, kase);
}
