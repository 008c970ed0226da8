/**
 * A key that has to be held, for what can hurt someone. It is taken when the finger is lifted, so that
 * nothing new lies under it; a keyboard or a screen reader presses it twice instead.
 */
import { html, type TemplateResult } from 'lit-html';

/** How long it is held. */
const holdMs = 800;

/** Keys that are held just now. A page that is drawn anew meanwhile lets go of none. */
const held = new WeakMap<Element, ReturnType<typeof setTimeout>>();

/** Draws the key. `armed` is true after the first of two presses. */
export function holdKey(given: {
  readonly label: string;
  readonly again: string;
  readonly lift: string;
  readonly hint: string;
  readonly armed: boolean;
  readonly arm: () => void;
  readonly done: () => void;
}): TemplateResult {
  const press = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    const key = event.currentTarget as Element;
    markShort(key, false);
    key.classList.add('held');
    held.set(
      key,
      setTimeout(() => {
        key.classList.add('full');
      }, holdMs),
    );
  };
  const lift = (event: PointerEvent): void => {
    const key = event.currentTarget as Element;
    if (!key.classList.contains('held')) return;
    const isFull = key.classList.contains('full');
    letGo(event);
    if (isFull) given.done();
    else markShort(key, true);
  };
  // A press without a pointer has no length: it comes from a keyboard or a screen reader.
  const click = ({ detail }: MouseEvent): void => {
    if (detail !== 0) return;
    if (given.armed) given.done();
    else given.arm();
  };
  const stay = (event: Event): void => {
    event.preventDefault();
  };
  return html`<button
      type="button"
      class="key hold"
      aria-describedby="hold-hint"
      @pointerdown=${press}
      @pointerup=${lift}
      @pointerleave=${letGo}
      @pointercancel=${letGo}
      @contextmenu=${stay}
      @click=${click}
    >
      <span class="fill" aria-hidden="true"></span>
      <span class="label">${given.armed ? given.again : given.label}</span>
      <span class="label lift" aria-hidden="true">${given.lift}</span>
    </button>
    <p class="hint" id="hold-hint">${given.hint}</p>`;
}

function letGo({ currentTarget }: Event): void {
  const key = currentTarget as Element;
  clearTimeout(held.get(key));
  key.classList.remove('held', 'full');
}

/** Says how long it is to be held to whoever only tapped. */
function markShort(key: Element, isShort: boolean): void {
  key.nextElementSibling?.classList.toggle('short', isShort);
}
