/**
 * When a part that is put aside can be looked at again, as far as the question that waits says how
 * long that takes.
 */
import { positionOf, testFigures, type Case, type CaseState } from '@keyturn/core';
import { fill } from '../words/sheet-words-in.ts';
import type { ToldCase } from './told-case.ts';

/** What must have passed before a question can be answered. */
interface Rest {
  readonly hours: number;
  /** From when on: since the part was put aside, or since its charge was full, which may be later. */
  readonly since: 'aside' | 'full-charge';
}

/** How long a part must stand for the question that waits; undefined where no test says so. */
function restFor(check: string, { context }: CaseState): Rest | undefined {
  switch (check) {
    case 'charge-take':
      return { hours: 1, since: 'aside' };
    case 'battery-recharged':
      return {
        hours: testFigures(context).rest?.value ?? 2,
        since: 'full-charge',
      };
    case 'stand-loss':
      return { hours: 24, since: 'full-charge' };
    case 'case-temperature': {
      // Without a thermometer it is the room's, once the battery has taken it on.
      const { kit } = context;
      const isOfRoom = Array.isArray(kit) && !kit.includes('thermometer');
      return isOfRoom ? { hours: 8, since: 'aside' } : undefined;
    }
    default:
      return undefined;
  }
}

/**
 * From when on, ISO 8601, the question that waits can be answered at the earliest, of a part that
 * stands since an instant; undefined where it hangs on nothing but the shop. Pure.
 */
export function readyFrom(kase: Case, since: string): string | undefined {
  const rest = restOf(kase);
  return rest === undefined
    ? undefined
    : new Date(Date.parse(since) + rest.hours * 3_600_000).toISOString();
}

function restOf(kase: Case): Rest | undefined {
  const position = positionOf(kase);
  return 'check' in position ? restFor(position.check, kase.state) : undefined;
}

/** The earliest time in words, a line; none where it hangs on nothing but the shop. */
export function earliestAgain(told: ToldCase, format: (time: Date) => string): readonly string[] {
  const { aside, case: kase, speaker, words } = told;
  const rest = restOf(kase);
  const ready = aside === undefined ? undefined : readyFrom(kase, aside);
  if (rest === undefined || ready === undefined) return [];
  const { locale, direction } = speaker;
  const time = format(new Date(ready));
  const length = { style: 'unit', unit: 'hour', unitDisplay: 'long' } as const;
  const hours = new Intl.NumberFormat(locale, length).format(rest.hours);
  const text = rest.since === 'aside' ? words.asideEarliest : words.asideRests;
  return [fill(text, { time, hours }, direction)];
}
