/**
 * Pictures as the page shows them: drawn as text, taken in as drawings and as nothing else.
 */
import type { CircuitView, DrawingOptions } from '@keyturn/drawings';
import { html, nothing, type TemplateResult } from 'lit-html';

/** What can be drawn; loaded only after the words. */
export interface Pictures {
  readonly drawProbes: (probes: NonNullable<CircuitView['probes']>, how: DrawingOptions) => string;
  readonly drawClamp: (how: DrawingOptions) => string;
  readonly drawCircuit: (view: CircuitView, how: DrawingOptions) => string;
}

/** A picture in the page; nothing where there is none. */
export function picture(drawn: string | undefined): TemplateResult | typeof nothing {
  if (drawn === undefined) return nothing;
  const { documentElement } = new DOMParser().parseFromString(drawn, 'image/svg+xml');
  return html`<figure class="picture">${document.importNode(documentElement, true)}</figure>`;
}
