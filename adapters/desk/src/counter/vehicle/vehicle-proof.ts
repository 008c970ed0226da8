/**
 * What a no-start case of the vehicle says of a part that came back.
 */
import type { SoldPart, Strip } from '@keyturn/core';
import type { VehicleProof } from '../return/counter-return.ts';

/** The faults that are the part's own. */
const own: Readonly<Record<SoldPart, readonly string[]>> = {
  starter: ['starter-motor', 'solenoid', 'starter-drive'],
  battery: ['battery-worn', 'battery-discharged'],
};

/** Readings, and what they must be for all that feeds a starter to be good. */
const feeds: Readonly<Record<string, readonly string[]>> = {
  'battery-rest': ['ready', 'surface-charged'],
  'battery-crank': ['good'],
  'drop-positive': ['good'],
  'drop-ground': ['good'],
};

/** Findings by which the vehicle alone, and no part of it that comes back, is to blame. */
const bad: Readonly<Record<SoldPart, Readonly<Record<string, readonly string[]>>>> = {
  starter: {
    'drop-clamps': ['high'],
    'drop-positive': ['high'],
    'drop-ground': ['high'],
    'control-signal': ['absent', 'low'],
  },
  battery: { charging: ['none', 'low', 'high'], 'charging-later': ['none', 'low', 'high'] },
};

/** With the start signal there, these are no cranking. */
const noCrank = ['silent', 'single-click'];

/**
 * What the findings of a no-start case say of a part. A reading too close to a bound says nothing.
 * Against a starter: all that feeds it is good, and it turns slowly, or not at all with the start
 * signal there. Against a battery no no-start case speaks, since it does not measure the drain.
 */
export function vehicleProofOf(part: SoldPart, strip: Strip): VehicleProof {
  const found = plainFindings(strip);
  const shows = (check: string, answers: readonly string[]): boolean =>
    answers.includes(found.get(check) ?? '');
  if (part === 'starter') {
    const isFed = Object.entries(feeds).every(([check, answers]) => shows(check, answers));
    const fails =
      shows('complaint', ['slow-crank']) ||
      (shows('complaint', noCrank) && shows('control-signal', ['present']));
    if (isFed && fails) return 'against-part';
  }
  if (Object.entries(bad[part]).some(([check, answers]) => shows(check, answers))) {
    return 'points-elsewhere';
  }
  const { verdict } = strip;
  if (verdict === null || verdict.strength === 'open') return 'incomplete';
  return own[part].includes(verdict.fault) ? 'incomplete' : 'points-elsewhere';
}

/** Check to what was plainly found: its single answer, or the band of a reading that is in one. */
function plainFindings({ findings, proving }: Strip): ReadonlyMap<string, string> {
  return new Map(
    [...findings, ...proving].flatMap(({ check, message }): [string, string][] => {
      if (message.kind === 'reading') return message.borderline ? [] : [[check, message.band]];
      const [only, ...more] = message.answer;
      return only === undefined || more.length > 0 ? [] : [[check, only]];
    }),
  );
}
