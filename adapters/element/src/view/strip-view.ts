/**
 * The strip: a printed line for every finding, the oldest first, as a chart recorder prints.
 */
import type { StripLine } from '@keyturn/core';
import type { Rendered, RenderedSection, Teller } from '@keyturn/language';
import { html, nothing, type TemplateResult } from 'lit-html';
import { pickedBefore } from '../case/picked-before.ts';
import { noteKey } from './drawers.ts';
import { emergencyKey } from './emergency-key.ts';
import { picture } from './pictures.ts';
import { ranking } from './ranking.ts';
import { ruler } from './ruler.ts';
import { sign } from './sign.ts';
import { fill, type Shown } from './shown.ts';

/** Prints the strip; nothing before the first finding. */
export function stripView(shown: Shown): TemplateResult | typeof nothing {
  const { strip, texts } = shown;
  const count = strip.findings.length + strip.proving.length;
  if (count === 0 && strip.verdict === null) return nothing;
  return html`<section class="strip" aria-label=${texts.found}>
    <ol class="lines" aria-label=${texts.correctHint}>
      ${strip.findings.map((line, index) => printed(line, index + 1, shown))}
    </ol>
    ${strip.verdict === null ? rankingNow(shown) : verdict(shown)}
    ${
      strip.proving.length === 0
        ? nothing
        : html`<ol class="lines" start=${strip.findings.length + 1}>
            ${strip.proving.map((line, index) =>
              printed(line, strip.findings.length + index + 1, shown),
            )}
          </ol>`
    }
    ${circuit(shown)}
  </section>`;
}

/** The start circuit with what was measured so far, folded away until it is wanted. */
function circuit({ pictures, speaker }: Shown): TemplateResult | typeof nothing {
  if (pictures.circuit === undefined) return nothing;
  return html`<details class="fits">
    <summary>${speaker.drawing('circuit')}</summary>
    ${picture(pictures.circuit)}
  </details>`;
}

function printed(line: StripLine, number: number, shown: Shown): TemplateResult {
  const { act, texts, hand, sitting } = shown;
  const isCorrecting = hand.correcting === line.check;
  return html`<li class=${isCorrecting ? 'line correcting' : 'line'}>
    <span class="number" aria-hidden="true">${String(number).padStart(2, '0')}</span>
    <div class="finding">${finding(line, shown.speaker)}</div>
    <button
      type="button"
      class="fix"
      aria-label=${`${texts.correct}: ${shown.speaker.checkName(line.check)}`}
      title=${texts.correct}
      @click=${() => {
        const picked = pickedBefore(sitting.case, line.check);
        act.hand({ correcting: line.check, figure: '', picked, open: null });
      }}
    >
      <span aria-hidden="true">✎</span>
    </button>
  </li>`;
}

/** What a line of the strip says: a reading on its ruler, an observation in its words. */
export function finding({ check, message }: StripLine, speaker: Teller): TemplateResult {
  const [rendered] = speaker.render([message]);
  if (message.kind === 'reading' && rendered?.kind === 'scale') {
    const { bandLabels, text } = rendered;
    return html`<span class="what">${speaker.checkName(check)}</span>
      <b class="value">${speaker.formatQuantity(message.quantity)}</b>
      ${message.bounds.length === 0 ? nothing : ruler(message, { speaker, text, bandLabels })}`;
  }
  return html`<span class="words">${rendered?.kind === 'text' ? rendered.text : ''}</span>`;
}

function rankingNow(shown: Shown): TemplateResult | typeof nothing {
  const { sitting, speaker, texts } = shown;
  const [first] = sitting.ranking === null ? [] : speaker.render([sitting.ranking]);
  if (first?.kind !== 'ranking' || first.faults[0] === undefined) return nothing;
  return html`<details class="fits">
    <summary>${fill(texts.fits, first.faults[0].name)}</summary>
    ${ranking(first.faults, speaker)}
  </details>`;
}

/** What is needed first comes first: who should come, what must not be done, what to do. */
const inOrder = ['send', 'stops', 'do', 'also', 'licensed', 'rests', 'roots', 'change'];

function verdict(shown: Shown): TemplateResult | typeof nothing {
  const { strip, speaker, texts } = shown;
  const [rendered] = strip.verdict === null ? [] : speaker.render([strip.verdict]);
  if (rendered?.kind !== 'verdict') return nothing;
  const place = ({ id }: RenderedSection): number => inOrder.indexOf(id);
  return html`<section class="verdict" aria-label=${texts.verdict}>
    <h2 tabindex="-1">${rendered.title}</h2>
    <p class="strength">${rendered.strength}</p>
    ${rendered.sections.toSorted((one, other) => place(one) - place(other)).map((section) => part(section, shown))}
  </section>`;
}

/** A part of the verdict: with the note beside who should come, and what can hurt before what to do. */
function part(section: RenderedSection, shown: Shown): unknown {
  switch (section.id) {
    case 'send':
      return html`${sections([section])}
      ${shown.strip.verdict?.send === 'police' ? emergencyKey(shown) : nothing}
      ${shown.position.awaiting === 'nothing' ? nothing : noteKey(shown)}`;
    case 'do':
      return html`${signs(shown)} ${sections([section])}`;
    case 'rests':
      return sections([{ ...section, lines: [...section.lines, ...weighed(shown)] }]);
    default:
      return sections([section]);
  }
}

/** Where no single finding proves it, all that were weighed stand beside the shares. */
function weighed({ strip, speaker, chart }: Shown): readonly string[] {
  if (strip.verdict === null || strip.verdict.proof.length > 0) return [];
  return strip.findings.flatMap(({ check, message }) => {
    if (chart.flow.likelihoods[check] === undefined) return [];
    if (message.kind === 'noted') {
      return message.answer.length === 0 ? [] : speaker.render([message]).flatMap(textOf);
    }
    const { quantity, band } = message;
    const label = band === '' ? '' : ` (${speaker.answerLabel(check, band)})`;
    return [`${speaker.checkName(check)}: ${speaker.formatQuantity(quantity)}${label}`];
  });
}

function textOf(one: Rendered): readonly string[] {
  return one.kind === 'text' ? [one.text] : [];
}

/** What can hurt, before what to do. */
function signs({ strip, speaker, chart }: Shown): TemplateResult | typeof nothing {
  if (strip.cautions.length === 0) return nothing;
  return html`<div class=${strip.cautions.length > 1 ? 'signs small' : 'signs'}>
    ${speaker
      .render(strip.cautions)
      .map((one) =>
        one.kind === 'caution'
          ? sign(chart.flow.cautions[one.caution]?.word ?? 'danger', one.word, one.text)
          : nothing,
      )}
  </div>`;
}

/** Headings with the lines under them. */
export function sections(
  all: Extract<Rendered, { kind: 'numbers' }>['sections'],
): readonly TemplateResult[] {
  return all.map(
    ({ heading, lines }) =>
      html`<h3>${heading}</h3>
        <ul>
          ${lines.map((line) => html`<li>${line}</li>`)}
        </ul>`,
  );
}
