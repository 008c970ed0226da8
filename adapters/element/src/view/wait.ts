/**
 * A wait as a clock that runs down.
 */
import { html, type TemplateResult } from 'lit-html';

/** Draws the time left; `from` and `due` in milliseconds of the epoch. */
export function waitClock(given: {
  readonly due: number;
  readonly clock: number;
  readonly minutes: number;
  readonly label: string;
  readonly locale: string;
}): TemplateResult {
  const left = Math.max(0, given.due - given.clock);
  const share = Math.min(1, left / (given.minutes * 60_000 || 1));
  return html`<div class="wait" role="timer" aria-label=${given.label}>
    <output class="left" dir="ltr">${formatLeft(left, given.locale)}</output>
    <svg class="bar" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
      <rect class="rail" width="100" height="6" />
      <rect class="share" width=${Math.round(share * 1000) / 10} height="6" />
    </svg>
  </div>`;
}

/** Minutes and seconds, and hours where there are any: 4:05, 1:04:05. */
function formatLeft(ms: number, locale: string): string {
  const seconds = Math.ceil(ms / 1000);
  const two = new Intl.NumberFormat(locale, { minimumIntegerDigits: 2 });
  const plain = new Intl.NumberFormat(locale, { useGrouping: false });
  const [hours, minutes] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60];
  const rest = two.format(seconds % 60);
  return hours === 0
    ? `${plain.format(minutes)}:${rest}`
    : `${plain.format(hours)}:${two.format(minutes)}:${rest}`;
}
