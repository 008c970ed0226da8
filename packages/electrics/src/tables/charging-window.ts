import { commonPractice, published, type Source } from '../source.ts';
import type { Table } from '../table.ts';

/** A window of charging voltage of a 12 V system, from `lowV` to `highV`, and where it is from. */
export type ChargingWindowRow = {
  readonly lowV: number;
  readonly highV: number;
  readonly source: Source;
};

/**
 * What a window is for: any conventional regulator when warm, one maker's cars, a trailer-mounted
 * set whose regulator can be adjusted, a generator that the engine computer commands.
 */
export type ChargingWindowName = 'conventional' | 'passenger-car' | 'trailer-set' | 'smart';

/**
 * Windows of charging voltage that need no temperature. A generator that is commanded is judged by
 * the commanded value: its window only tells what may be commanded.
 */
export const chargingWindow: Table<Readonly<Record<ChargingWindowName, ChargingWindowRow>>> = {
  title: 'Charging voltage by kind of regulator',
  source: commonPractice('collected from several texts; each row names its own source'),
  rows: {
    conventional: {
      lowV: 13.5,
      highV: 14.8,
      source: commonPractice('warm, with a conventional regulator'),
    },
    'passenger-car': {
      lowV: 13.5,
      highV: 14.5,
      source: published("a vehicle maker's service manual"),
    },
    'trailer-set': {
      lowV: 13.6,
      highV: 14.2,
      source: published('TM 9-2330-356-14, regulator: above 14.2 V is suspect'),
    },
    smart: {
      lowV: 12.2,
      highV: 15,
      source: commonPractice('what the computer of a start-stop car commands'),
    },
  },
};
