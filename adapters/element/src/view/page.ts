import { html, type TemplateResult } from 'lit-html';
import { directionOf } from '../host.ts';
import { card } from './card.ts';
import { foot, head } from './drawers.ts';
import type { Shown } from './shown.ts';
import { stripView } from './strip-view.ts';

/** The whole element: the head of the strip, the strip, the card, and what is always possible. */
export function page(shown: Shown): TemplateResult {
  return html`<div class="page" lang=${shown.locale} dir=${directionOf(shown.locale)}>
    ${head(shown)} ${stripView(shown)} ${card(shown)} ${foot(shown)}
  </div>`;
}
