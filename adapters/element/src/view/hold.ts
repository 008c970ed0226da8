/**
 * A key that has to be held, for what can hurt someone. A keyboard or a screen reader presses it
 * twice instead.
 */
import { html, type TemplateResult } from 'lit-html';

/** How long it is held. */
const holdMs = 800;

/** Draws the key. `armed` is true after the first of two presses. */
export function holdKey(given: {
  readonly label: string;
  readonly again: string;
  readonly hint: string;
  readonly armed: boolean;
  readonly arm: () => void;
  readonly done: () => void;
}): TemplateResult {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const release = (event: Event): void => {
    clearTimeout(timer);
    (event.currentTarget as Element).classList.remove('held');
  };
  const press = (event: PointerEvent): void => {
    if (event.button !== 0) return;
    const key = event.currentTarget as Element;
    key.classList.add('held');
    timer = setTimeout(() => {
      key.classList.remove('held');
      given.done();
    }, holdMs);
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
      @pointerup=${release}
      @pointerleave=${release}
      @pointercancel=${release}
      @contextmenu=${stay}
      @click=${click}
    >
      <span class="fill" aria-hidden="true"></span>
      <span class="label">${given.armed ? given.again : given.label}</span>
    </button>
    <p class="hint" id="hold-hint">${given.hint}</p>`;
}
