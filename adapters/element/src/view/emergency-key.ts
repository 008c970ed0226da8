import { html, type TemplateResult } from 'lit-html';
import { fill, type Shown } from './shown.ts';

/** Calls the emergency number: nobody has to leave the page and type it. */
export function emergencyKey({ texts, emergency }: Shown): TemplateResult {
  return html`<a class="key emergency" href=${`tel:${emergency}`}>
    <span class="label">${fill(texts.emergency, emergency)}</span>
  </a>`;
}
