import { commonPractice, published } from '../source.ts';
import type { Table } from '../table.ts';

/**
 * Minutes undisturbed until a drain counts: a reading before `leastMin` says nothing, and one above
 * the limit counts from `waitMin` on.
 */
export type ModuleSleepWait = { readonly leastMin: number; readonly waitMin: number };

/** How long a vehicle is left alone before its drain is judged. Opening a door starts it again. */
export const moduleSleepWait: Table<ModuleSleepWait> = {
  title: 'Wait before judging the key-off current',
  source: commonPractice('60 min, at least 30; trade texts advise 10 to 60 min'),
  rows: { leastMin: 30, waitMin: 60 },
};

/** The times, in min from `leastMin` to `mostMin`, after which vehicles are said to sleep. */
export const moduleSleepRange: Table<{ readonly leastMin: number; readonly mostMin: number }> = {
  title: 'Times for modules to sleep',
  source: published("vehicle makers' service manuals: 2 min to 75 min"),
  rows: { leastMin: 2, mostMin: 75 },
};
