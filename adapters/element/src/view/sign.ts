/**
 * A caution as a safety sign: its signal word on its panel, with the alert symbol, and its text.
 */
import type { SignalWord } from '@keyturn/core';
import { html, svg, type TemplateResult } from 'lit-html';

/** Draws a caution. Colour, word and symbol say the same thing. */
export function sign(word: SignalWord, name: string, text: string): TemplateResult {
  return html`<div class="sign ${word}" role="note">
    <p class="word">${word === 'notice' ? '' : symbol} <span>${name}</span></p>
    <p class="text">${text}</p>
  </div>`;
}

/** The safety alert symbol: an exclamation mark in a triangle. */
const symbol = html`<svg class="alert" viewBox="0 0 24 22" aria-hidden="true">
  ${svg`<path d="M12 1 23 21H1Z" /><path class="mark" d="M10.9 8h2.2l-.4 6.4h-1.4zM10.9 16h2.2v2.2h-2.2z" />`}
</svg>`;
