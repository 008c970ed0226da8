/**
 * The keyboard, wherever in the page the focus is; not while something is typed.
 */
import {
  goesOn,
  keyOf,
  mayBeginText,
  readEmptyLine,
  readKey,
  type Command,
  type Pressed,
  type Pressing,
} from '../keys.ts';
import { typingMs } from './settle.ts';

/** What the keys lead to. */
export interface KeyActions {
  /** False where keys of one character are switched off. */
  readonly hasKeys: () => boolean;
  readonly pressing: () => Pressing;
  /** False while what is pressed can only be meant for a sentence that stood there before. */
  readonly canAnswer: () => boolean;
  readonly number: (key: string) => void;
  /** A key that would have answered and was not taken. */
  readonly tooSoon: (key: string) => void;
  /** Moves the focus into the line, which may have been begun before. */
  readonly line: (begun: string) => void;
  readonly command: (command: Command) => void;
}

/** Listens; gives what ends that. */
export function listenToKeys(to: KeyActions): () => void {
  /** A digit that waits for whether more is typed behind it. */
  let waiting: { readonly key: string; readonly timer: ReturnType<typeof setTimeout> } | undefined;
  const endWait = (): string | undefined => {
    const key = waiting?.key;
    clearTimeout(waiting?.timer);
    waiting = undefined;
    return key;
  };
  const act = (pressed: Pressed): void => {
    if (pressed.type === 'number') to.number(pressed.key);
    else if (pressed.type !== 'line') to.command(pressed.type);
  };
  const answerAlone = (): boolean => {
    const key = endWait();
    const pressed = key === undefined ? undefined : readKey(key, to.pressing());
    if (pressed !== undefined) act(pressed);
    return pressed !== undefined;
  };
  const press = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.altKey || event.metaKey || event.isComposing) return;
    // A key that is held down says it once.
    if (event.repeat) return;
    const [target] = event.composedPath();
    if (target instanceof HTMLInputElement || target instanceof HTMLSelectElement) {
      const isEmptyLine = target.name === 'line' && target.value === '' && to.hasKeys();
      const command = isEmptyLine ? readEmptyLine(event.key) : undefined;
      if (command !== undefined) {
        event.preventDefault();
        to.command(command);
      } else if (event.key === 'Escape') to.command('leave');
      else if (event.key === 'F2') to.command('caller');
      return;
    }
    if (!to.hasKeys() && event.key.length === 1) return;
    // A key that has the focus is pressed by the browser.
    if (target instanceof HTMLButtonElement && event.key === 'Enter') return;
    if (waiting !== undefined && goesOn(event.key)) {
      to.line(endWait() ?? '');
      return;
    }
    // Whoever ends a number with Enter has said it once.
    if (answerAlone() && event.key === 'Enter') {
      event.preventDefault();
      return;
    }
    const pressing = to.pressing();
    const pressed = readKey(event.key, pressing);
    if (pressed === undefined) return;
    if (pressed.type === 'line') {
      // What was pressed is typed there, but for the key that only leads there.
      if (event.key === 'Enter') event.preventDefault();
      to.line('');
      return;
    }
    event.preventDefault();
    const isEnter = pressed.type === 'take' && pressing.isOffered === true;
    if ((mayBeginText(event.key) || isEnter) && !to.canAnswer()) {
      to.tooSoon(isEnter ? keyOf.take : event.key);
      return;
    }
    if (mayBeginText(event.key)) {
      // Ticks take nothing yet, and come one right after another.
      if (pressing.entry !== 'several') {
        waiting = { key: event.key, timer: setTimeout(answerAlone, typingMs) };
        return;
      }
    }
    act(pressed);
  };
  window.addEventListener('keydown', press);
  return () => {
    endWait();
    window.removeEventListener('keydown', press);
  };
}
