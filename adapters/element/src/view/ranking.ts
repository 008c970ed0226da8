/**
 * The faults as bars, each with where it stood a turn before.
 */
import type { RenderedFault, Teller } from '@keyturn/language';
import { html, type TemplateResult } from 'lit-html';

/** Draws the ranking; the share is said in words beside each bar. */
export function ranking(faults: readonly RenderedFault[], speaker: Teller): TemplateResult {
  return html`<ul class="ranking">
    ${faults.map(
      ({ name, share, before }) =>
        html`<li>
          <span>${speaker.formatShare(name, share)}</span>
          <svg class="bar" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
            <rect class="rail" width="100" height="6" />
            <rect class="share" width=${percent(share)} height="6" />
            <rect class="before" x=${Math.max(0, percent(before) - 0.5)} width="1" height="6" />
          </svg>
        </li>`,
    )}
  </ul>`;
}

function percent(share: number): number {
  return Math.round(share * 1000) / 10;
}
