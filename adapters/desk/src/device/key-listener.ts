/**
 * The keyboard, wherever in the page the focus is; not while something is typed.
 */
import { readEmptyLine, readKey, type Command, type Pressing } from '../keys.ts';

/** What the keys lead to. */
export interface KeyActions {
  /** False where keys of one character are switched off. */
  readonly hasKeys: () => boolean;
  readonly entry: () => Pressing['entry'];
  readonly number: (key: string) => void;
  /** Moves the focus into the line. */
  readonly line: () => void;
  readonly command: (command: Command) => void;
}

/** Listens; gives what ends that. */
export function listenToKeys(to: KeyActions): () => void {
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
    const pressed = readKey(event.key, { entry: to.entry() });
    if (pressed === undefined) return;
    switch (pressed.type) {
      case 'number':
        to.number(pressed.key);
        return;
      case 'line':
        // What was pressed is typed there, but for the key that only leads there.
        if (event.key === 'Enter') event.preventDefault();
        to.line();
        return;
      default:
        event.preventDefault();
        to.command(pressed.type);
    }
  };
  window.addEventListener('keydown', press);
  return () => {
    window.removeEventListener('keydown', press);
  };
}
