/**
 * What a key does at the counter. Everything lies on a numeric pad: the other hand holds the part.
 */

/** What can be done with one key. */
export type CounterCommand =
  | 'new'
  | 'kit'
  | 'next'
  | 'aside'
  | 'correct'
  | 'danger'
  | 'dont-know'
  | 'cannot'
  | 'how'
  | 'take'
  | 'scan'
  | 'leave';

/** The key of each command, as a page shows it. */
export const keyOf: Readonly<Record<CounterCommand, string>> = {
  new: '+',
  kit: 'F7',
  next: 'F8',
  aside: 'F9',
  correct: '-',
  danger: '!',
  'dont-know': '0',
  cannot: '/',
  how: '?',
  take: '↵',
  scan: '*',
  leave: 'Esc',
};

const commands: Readonly<Record<string, CounterCommand>> = {
  '+': 'new',
  F7: 'kit',
  F8: 'next',
  F9: 'aside',
  '-': 'correct',
  '!': 'danger',
  '0': 'dont-know',
  Delete: 'dont-know',
  '?': 'how',
  '/': 'cannot',
  '*': 'scan',
  Enter: 'take',
  Escape: 'leave',
};

/** What a key means outside a field: an answer by its number, or a command; undefined: nothing. */
export function readKey(key: string): CounterCommand | { readonly number: string } | undefined {
  if (/^[1-9]$/u.test(key)) return { number: key };
  return Object.hasOwn(commands, key) ? commands[key] : undefined;
}

/** The key for what is not known where a 0 begins a figure or a day. */
export const unknownInField = 'Del';

/** Signs that begin no code, no sentence, no figure and no day; a minus begins a figure below zero. */
const besideText = ['+', '/', '*', '!', '?', 'Delete', 'F7', 'F8', 'F9'];

/** Whether a key pressed in a field with nothing in it is a command, and is not typed. */
export function isCommandInField(key: string): boolean {
  return besideText.includes(key);
}
