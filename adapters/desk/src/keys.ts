/**
 * What a key does on the desk. Everything lies on a numeric pad, so that one hand is enough while
 * the other holds the telephone; whoever types letters is writing the line.
 */

/** What a key means. */
export type Pressed =
  /** The key with this number in the card. */
  | { readonly type: 'number'; readonly key: string }
  | { readonly type: Command }
  /** To be typed into the line. */
  | { readonly type: 'line' };

/** What can be done with one key. */
export type Command =
  | 'new'
  | 'next'
  | 'correct'
  | 'words'
  | 'send-now'
  | 'danger'
  | 'dont-know'
  | 'cannot'
  | 'take'
  | 'caller'
  | 'leave';

/** Where the desk stands when a key is pressed. */
export interface Pressing {
  /** What the card takes: a figure, several answers to be taken together, or one. */
  readonly entry: 'figure' | 'several' | 'one' | 'nothing';
  /** True where the figure may be below zero, so that a minus begins it. */
  readonly isSigned?: boolean;
  /** True where one answer was offered for what was typed, and may be taken as it is. */
  readonly isOffered?: boolean;
}

const commands: Readonly<Record<string, Command>> = {
  '+': 'new',
  '/': 'next',
  '-': 'correct',
  '*': 'words',
  '=': 'send-now',
  '!': 'danger',
  '?': 'dont-know',
  // On a pad whose digits are switched off these are the keys of 0 and of the decimal sign.
  Insert: 'dont-know',
  Delete: 'cannot',
  Backspace: 'correct',
  F2: 'caller',
  Escape: 'leave',
};

/** The key of each command, as a page shows it. */
export const keyOf: Readonly<Record<Command, string>> = {
  new: '+',
  next: '/',
  correct: '-',
  words: '*',
  'send-now': '=',
  danger: '!',
  'dont-know': '0',
  cannot: '.',
  take: '↵',
  caller: 'F2',
  leave: 'Esc',
};

/** The keys of what is said in place of a figure, where digits, a decimal sign or a minus begin one. */
export const besideFigure: Readonly<Record<'dont-know' | 'cannot' | 'correct', string>> = {
  'dont-know': '?',
  cannot: 'Del',
  correct: '⌫',
};

/** The keys of answers beyond nine, and of what is done with a note. */
export const furtherKeys = ['F8', 'F9'] as const;

/** Signs that begin no sentence and no figure; a minus begins one below zero. */
const besideText = ['+', '/', '*', '=', '!', '?'];

/** Reads a key that was pressed in the line with nothing in it; undefined where it is typed. */
export function readEmptyLine(key: string): Command | undefined {
  return besideText.includes(key) ? commands[key] : undefined;
}

/** True for a key that answers where it stands alone, and begins a text where more is typed behind it. */
export function mayBeginText(key: string): boolean {
  return /^[\d.,]$/u.test(key);
}

/** True for a key that goes on with a text: "12.1", "2 children". */
export function goesOn(key: string): boolean {
  return /^[\p{L}\p{Nd} .,]$/u.test(key);
}

/** Reads a key that was pressed outside a field; undefined where it is the browser's own. */
export function readKey(
  key: string,
  { entry, isSigned = false, isOffered = false }: Pressing,
): Pressed | undefined {
  // A figure may begin with any of these, and is typed.
  const beginsFigure = /^[\d.,]$/u.test(key) || (isSigned && key === '-');
  if (entry === 'figure' && beginsFigure) return { type: 'line' };
  if (Object.hasOwn(commands, key)) return { type: commands[key] as Command };
  if (key === '0') return { type: 'dont-know' };
  if (key === '.' || key === ',') return { type: 'cannot' };
  if (/^[1-9]$/u.test(key) || furtherKeys.some((one) => one === key))
    return { type: 'number', key };
  if (key === 'Enter') return { type: entry === 'several' || isOffered ? 'take' : 'line' };
  return /^\p{L}$/u.test(key) ? { type: 'line' } : undefined;
}
