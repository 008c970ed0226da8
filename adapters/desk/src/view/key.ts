/**
 * A key: what it is pressed by, what it is called, and what more is said of it.
 */
import { html, nothing, type TemplateResult } from 'lit-html';
import { keyOf } from '../keys.ts';

/** What a key is drawn from. */
export interface KeyLook {
  readonly label: string;
  /** What it is pressed by, where it can be. */
  readonly at?: string;
  /** True where that is a number of the card, and not a command. */
  readonly isNumber?: boolean;
  /** True where the number is typed into a field, which is taken by a key of its own. */
  readonly isTyped?: boolean;
  /** Quiet lines under the label. */
  readonly more?: readonly (string | TemplateResult)[];
  /** One of several that hold: whether it is picked. */
  readonly isPicked?: boolean;
  readonly isMain?: boolean;
  readonly isSmall?: boolean;
  /** What a command finds it by. */
  readonly name?: string;
  readonly press: () => void;
}

/** Draws a key. */
export function keyView(look: KeyLook): TemplateResult {
  const {
    label,
    at,
    isNumber = false,
    isTyped,
    more = [],
    isPicked,
    isMain,
    isSmall,
    name = '',
    press,
  } = look;
  const pressed = isTyped === true ? `${at ?? ''} ${keyOf.take}` : at;
  const looks = [
    'key',
    isMain === true ? 'take' : '',
    isSmall === true ? 'small' : '',
    isPicked === undefined ? '' : 'pick',
    name,
  ];
  return html`<button
    type="button"
    class=${looks.filter(Boolean).join(' ')}
    data-key=${isNumber && at !== undefined ? at : nothing}
    aria-keyshortcuts=${isNumber && isTyped !== true && at !== undefined ? at : nothing}
    aria-pressed=${isPicked === undefined ? nothing : String(isPicked)}
    @click=${press}
  >
    ${at === undefined ? nothing : html`<kbd class="at" aria-hidden="true">${pressed}</kbd>`}
    <span class="label"
      >${label}${more.map((line) => html`<span class="more">${line}</span>`)}</span
    >
    ${
      isPicked === undefined
        ? nothing
        : html`<span class="tick" aria-hidden="true">${isPicked ? '✓' : ''}</span>`
    }
  </button>`;
}

/** What the key that goes back needs, of whichever page it stands on. */
interface Leaving {
  readonly words: { readonly leave: string };
  readonly act: { readonly command: (command: 'leave') => void };
}

/** The key that goes back from what was begun, with nothing changed. */
export function leaveKey({ words, act }: Leaving): TemplateResult {
  return html`<div class="keys row">
    ${keyView({
      label: words.leave,
      at: keyOf.leave,
      isSmall: true,
      press: () => {
        act.command('leave');
      },
    })}
  </div>`;
}

/** Keys that are pressed by the numbers from 1. */
export function numbered(looks: readonly Omit<KeyLook, 'at' | 'isNumber'>[]): TemplateResult {
  return html`<div class="keys">
    ${looks.map((look, index) => keyView({ ...look, at: String(index + 1), isNumber: true }))}
  </div>`;
}
