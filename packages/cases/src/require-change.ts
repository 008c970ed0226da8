import { CasesError } from './cases-error.ts';
import type { Change } from './change.ts';

const longestKey = 200;

/**
 * Holds a change to what every store needs of it.
 *
 * @throws CasesError `not-a-change`, naming the part that is wrong.
 */
export function requireChange(change: Change): void {
  requireInstant('at', change.at);
  if (change.received !== undefined) requireKey('received', change.received);
  if (change.case !== undefined) {
    const { expected, events, after } = change.case;
    requireKey('case.after.id', after.id);
    if (events.length === 0) wrong('case.events', 'at least one event');
    if (after.events !== expected + events.length) {
      wrong(
        'case.after',
        `a case of ${String(expected + events.length)} events, not ${String(after.events)}`,
      );
    }
  }
  if (change.conversation !== undefined) requireKey('conversation.key', change.conversation.key);
  for (const { to } of change.outgoing ?? []) requireKey('outgoing.to', to);
  for (const { conversation, name, dueAt } of change.timers ?? []) {
    requireKey('timers.conversation', conversation);
    requireKey('timers.name', name);
    if (dueAt !== undefined) requireInstant('timers.dueAt', dueAt);
  }
  if (change.personal !== undefined && change.case === undefined) {
    wrong('personal', 'the case that it belongs to in the same change');
  }
}

function requireInstant(part: string, text: string): void {
  if (Number.isNaN(Date.parse(text))) {
    wrong(part, `an instant like 2026-01-01T08:00:00Z, not “${text}”`);
  }
}

function requireKey(part: string, text: string): void {
  if (text === '' || text.length > longestKey) {
    wrong(part, `1 to ${String(longestKey)} characters, not ${String(text.length)}`);
  }
}

function wrong(part: string, expected: string): never {
  throw new CasesError('not-a-change', `${part} of the change: expected ${expected}`);
}
