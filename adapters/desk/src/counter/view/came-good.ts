/**
 * Which diagnoses led to parts that came back good, as a chart: a mark for every part, so that
 * nothing is said of few parts that only many could say.
 */
import { html, svg, type TemplateResult } from 'lit-html';
import { fill } from '../../wording.ts';
import { isEnded } from '../return/day.ts';
import { ledToGoodParts, type Led } from '../return/good-parts.ts';
import { backKey } from './keys-help.ts';
import { diagnosisWords } from './ledger.ts';
import type { Shown } from './shown.ts';

/** Draws the report. */
export function cameGood(shown: Shown): TemplateResult {
  const { words, shop } = shown;
  const rows = ledToGoodParts(shown.returns.filter(isEnded));
  return html`<section class="report">
    <h2 id="asked" tabindex="-1">${words.cameGood}</h2>
    ${shop?.isInvented === true ? html`<p class="invented">${words.practiceNote}</p>` : ''}
    <p>${words.cameGoodIntro}</p>
    ${
      rows.length === 0
        ? html`<p class="sure">${words.cameGoodNone}</p>`
        : html`<p class="hint">${words.cameGoodKey}</p>
            <ul class="led">
              ${rows.map((row) => led(shown, row))}
            </ul>`
    }
    <div class="keys row">${backKey(shown)}</div>
  </section>`;
}

/** Marks of one diagnosis: as many in a row as there is room for. */
const [inRow, step] = [20, 14];

function led(shown: Shown, { diagnosis, good, failed }: Led): TemplateResult {
  const count = good + failed;
  const marks = Array.from({ length: count }, (_, index) => index);
  const high = Math.ceil(count / inRow) * step;
  return html`<li>
    <b>${diagnosisWords(shown, diagnosis)}</b>
    <span>${fill(shown.words.cameGoodRow, { good, failed })}</span>
    <svg
      class="marks"
      viewBox="0 0 ${inRow * step} ${high}"
      width=${inRow * step}
      aria-hidden="true"
    >
      ${marks.map((index) => {
        const x = (index % inRow) * step + step / 2;
        const y = Math.floor(index / inRow) * step + step / 2;
        return svg`<circle class=${index < good ? 'good' : 'failed'} cx=${x} cy=${y} r="4.5" />`;
      })}
    </svg>
  </li>`;
}
