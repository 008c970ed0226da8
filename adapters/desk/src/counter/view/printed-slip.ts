/**
 * The slip as it is seen and as it goes to the printer: the sheet of the return, with its figures,
 * its terms and the code of its findings.
 */
import { picture } from '@keyturn/element/pieces';
import { noteParts, type Block, type Fact, type Sheet } from '@keyturn/sheets';
import { html, nothing, type TemplateResult } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';

/** Draws a sheet. `practice` says that it is one of practice; empty where it is not. */
export function printedSlip(
  sheet: Sheet,
  { label, practice }: { readonly label: string; readonly practice: string },
): TemplateResult {
  return html`<article class="printed" aria-label=${label}>
    ${guard([sheet, practice], () => whole(sheet, practice))}
  </article>`;
}

function whole({ title, head, lead, blocks, code, foot }: Sheet, practice: string): TemplateResult {
  return html`<header>
      <div>
        <h3>${title}</h3>
        ${practice === '' ? nothing : html`<p>${practice}</p>`} ${factList(head)}
      </div>
      <figure class="code">
        ${picture(code.picture.svg)}
        <figcaption>${code.caption}</figcaption>
      </figure>
    </header>
    <p class="lead slip-title">${lead.title}</p>
    ${lead.text === '' ? nothing : html`<p>${lead.text}</p>`}
    ${blocks.map(
      (block) =>
        html`<section class=${`block ${block.kind}-block`}>
          ${block.heading === '' ? nothing : html`<h4>${block.heading}</h4>`} ${inside(block)}
        </section>`,
    )}
    ${foot.map((line) => html`<p class="last">${line}</p>`)}`;
}

/** A note in small type, what is cited in English marked so. */
function small(note: string, cited: readonly string[]): TemplateResult {
  const parts = noteParts(note, cited).map(({ text, isCited }) =>
    isCited ? html`<bdi lang="en" dir="ltr">${text}</bdi>` : text,
  );
  return html`<small>${parts}</small>`;
}

function inside(block: Block): unknown {
  switch (block.kind) {
    case 'facts':
      return factList(block.facts);
    case 'lines':
      return lineList(block.lines);
    case 'rows':
      return block.rows.map(({ label, lines }) => html`<p><b>${label}</b> ${lines.join(' ')}</p>`);
    case 'strip':
      return html`<ol>
        ${block.findings.map(
          ({ name, said, means, notes, cited, reading }) =>
            html`<li>
              ${name}: <b><bdi>${said}</bdi></b> ${means} ${notes.map((note) => small(note, cited))}
              ${reading?.ruler === undefined ? nothing : picture(reading.ruler.svg)}
            </li>`,
        )}
      </ol>`;
    case 'ranking':
      return lineList(block.faults.map(({ said }) => said));
    case 'cautions':
      return lineList(block.cautions.map(({ said, text }) => `${said}: ${text}`));
    case 'picture':
      return picture(block.picture.svg);
    case 'fields':
      return html`<div class="to-sign">
        ${block.fields.map(({ label }) => html`<span>${label}</span>`)}
      </div>`;
  }
}

function factList(facts: readonly Fact[]): TemplateResult {
  return html`<dl>
    ${facts.map(
      ({ label, text }) =>
        html`<div>
          <dt>${label}</dt>
          <dd>${text}</dd>
        </div>`,
    )}
  </dl>`;
}

function lineList(lines: readonly string[]): TemplateResult {
  return html`<ul>
    ${lines.map((line) => html`<li>${line}</li>`)}
  </ul>`;
}
