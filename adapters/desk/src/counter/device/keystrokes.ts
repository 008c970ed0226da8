/**
 * The keyboard, wherever in the page the focus is, and the scanner that is plugged in as one: it
 * types a code and presses Enter, faster than any hand.
 *
 * No digit or sign of a code may answer a question, however slow the scanner is: letters go into
 * the line, and what follows them is typed there.
 */

/** Milliseconds between two keys of a scanner, at most. Common practice, no source. */
const scannerGapMs = 55;

/** Milliseconds after which a key can no longer be the first of a scanner's. */
const heldMs = 70;

/** The shortest code that is taken for scanned. */
const shortest = 4;

/** What keys lead to. */
export interface Keystrokes {
  /** A key pressed outside a field. */
  readonly pressed: (key: string) => void;
  /** The field into which a key is to be typed that was pressed outside one. */
  readonly fieldFor: (key: string) => HTMLInputElement | undefined;
  /** Whether nothing is to be typed into a field now: its keys count as pressed outside one. */
  readonly isShut: (field: HTMLInputElement) => boolean;
  /** Whether a key that is pressed in a field is a command there all the same. */
  readonly isCommandIn: (field: HTMLInputElement, key: string) => boolean;
  /** Whether a text is a code that is known here: only such a one is taken out of a field again. */
  readonly isCode: (text: string) => boolean;
  readonly scanned: (text: string) => void;
}

/** Keys that followed one another at the pace of a scanner. */
interface Run {
  text: string;
  at: number;
  readonly field: HTMLInputElement | undefined;
  /** What stood in the field before. */
  readonly before: string;
  /** Whether nobody had the focus in a field when it began. */
  readonly isFree: boolean;
}

/** Listens; gives what ends that. */
export function listenToKeystrokes(to: Keystrokes): () => void {
  let run: Run | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;

  /** A code that began with a letter outside a field, or one that is known, wherever it is typed. */
  const isOfCode = ({ isFree, text }: Run): boolean =>
    (isFree && /^\p{L}/u.test(text)) || to.isCode(text);

  /** What was held back after all came from a hand. */
  const release = (): void => {
    clearTimeout(timer);
    const held = run?.field === undefined ? (run?.text ?? '') : '';
    run = undefined;
    for (const key of held) to.pressed(key);
  };

  const down = (event: KeyboardEvent): void => {
    if (event.ctrlKey || event.altKey || event.metaKey || event.isComposing) return;
    const { key, timeStamp: at } = event;
    // A key that is held down says it once.
    if (event.repeat && fieldOf(event) === undefined) return;
    const focused = fieldOf(event);
    const isShut = focused !== undefined && to.isShut(focused);
    if (isShut && (key.length === 1 || key === 'Enter' || key === 'Backspace')) {
      event.preventDefault();
    }
    const isFast = run !== undefined && at - run.at <= scannerGapMs;
    if (key === 'Enter' && run !== undefined && isFast && run.text.length >= shortest) {
      if (run.field === undefined || isOfCode(run)) {
        const { text, before } = run;
        clearTimeout(timer);
        event.preventDefault();
        event.stopImmediatePropagation();
        putBack(run.field, before);
        run = undefined;
        to.scanned(text);
        return;
      }
    }
    if (key.length === 1 && isFast && run !== undefined) {
      run.text += key;
      run.at = at;
      if (run.field !== undefined) return;
      event.preventDefault();
      clearTimeout(timer);
      timer = setTimeout(release, heldMs);
      return;
    }
    release();
    // What was held back may have gone into a field: this key is typed behind it.
    const field = isShut ? undefined : fieldInFocus();
    if (field !== undefined && to.isCommandIn(field, key)) {
      event.preventDefault();
      to.pressed(key);
    } else if (key === '-' && field !== undefined && isBehindMinus(field)) {
      // A second minus says nothing that the first did not.
      event.preventDefault();
    } else if (key.length === 1) begin(event, field);
    else if (key === 'Escape' || /^F\d/u.test(key)) to.pressed(key);
    else if (field === undefined && !isPressedByBrowser(event)) {
      if (key === 'Enter') event.preventDefault();
      to.pressed(key);
    }
  };

  const begin = (event: KeyboardEvent, field: HTMLInputElement | undefined): void => {
    const { key, timeStamp: at } = event;
    if (field === undefined && (isPicking(event) || (key === ' ' && isPressedByBrowser(event)))) {
      return;
    }
    const into = field ?? to.fieldFor(key);
    if (field === undefined) into?.focus();
    const isFree = field === undefined;
    run = { text: key, at, field: into, before: into?.value ?? '', isFree };
    if (into === undefined) timer = setTimeout(release, heldMs);
  };

  window.addEventListener('keydown', down, true);
  return () => {
    clearTimeout(timer);
    window.removeEventListener('keydown', down, true);
  };
}

function fieldOf(event: KeyboardEvent): HTMLInputElement | undefined {
  const [target] = event.composedPath();
  return target instanceof HTMLInputElement ? target : undefined;
}

/** The field that has the focus, in whatever shadow tree. */
function fieldInFocus(): HTMLInputElement | undefined {
  let { activeElement } = document;
  while (activeElement?.shadowRoot) activeElement = activeElement.shadowRoot.activeElement;
  return activeElement instanceof HTMLInputElement ? activeElement : undefined;
}

/** Whether a minus was typed last into the field of a figure or a day. */
function isBehindMinus(field: HTMLInputElement): boolean {
  return field.inputMode !== '' && field.value.endsWith('-');
}

/** Letters pick in a list. */
function isPicking(event: KeyboardEvent): boolean {
  return event.composedPath()[0] instanceof HTMLSelectElement;
}

/** A button that has the focus is pressed by the browser, a list opened. */
function isPressedByBrowser(event: KeyboardEvent): boolean {
  const [target] = event.composedPath();
  return (
    isPicking(event) || target instanceof HTMLButtonElement || target instanceof HTMLAnchorElement
  );
}

/** Takes a code out of a field again: what stood there before stands there now. */
function putBack(field: HTMLInputElement | undefined, before: string): void {
  if (field === undefined) return;
  field.value = before;
  field.dispatchEvent(new Event('input', { bubbles: true }));
}
