/**
 * What is left to a caller for whom help is sent.
 */
import type { Flow, VerdictMessage } from '@keyturn/core';
import { forbidsWork } from './slip.ts';

/** Remedies that leave everything to whoever comes. */
const leftToHelp: readonly string[] = ['technician-visit', 'recover-vehicle'];

/**
 * True where the caller is only told to wait: whoever is sent does all there is to do, or a hard stop
 * forbids what could be done before. What a stop does instead is meant for the caller.
 */
export function isLeftToHelp(flow: Flow, { send, remedy, stops }: VerdictMessage): boolean {
  if (send === 'nothing') return false;
  if (leftToHelp.includes(remedy)) return true;
  const isInstead = flow.stops.some(({ id, instead }) => instead && stops.includes(id));
  return !isInstead && stops.some((stop) => forbidsWork(flow, stop));
}
