/**
 * How far the probabilities of verdicts could be taken at their word.
 */
import { forecastRecord, verdictTable, type ReliabilityBin } from '@keyturn/evidence';
import { html, nothing, svg, type TemplateResult } from 'lit-html';
import { keyView } from './key.ts';
import type { Shown } from './shown.ts';
import { fill } from './wording.ts';

/** Draws the report. */
export function calibration(shown: Shown): TemplateResult {
  const { words, outcomes, speaker, act } = shown;
  const { cases, right, brier, log } = forecastRecord(outcomes);
  const table = verdictTable(outcomes).filter(({ count }) => count > 0);
  return html`<section class="report">
    <h2 id="asked" tabindex="-1">${words.howSure}</h2>
    <p>${words.calibrationIntro}</p>
    ${
      cases === 0
        ? html`<p class="sure">${words.calibrationNone}</p>`
        : html`<p class="sure">${fill(words.calibrationRecord, { right, cases })}</p>
            <p>
              ${fill(words.calibrationScores, {
                brier: speaker.formatNumber(brier, 3),
                log: Number.isFinite(log) ? speaker.formatNumber(log, 3) : '∞',
              })}
            </p>
            <p class="hint">${words.calibrationKey}</p>
            <ul class="bins">
              ${table.map((bin) => binView(shown, bin))}
            </ul>`
    }
    <div class="keys row">
      ${keyView({
        label: words.backToDesk,
        at: 'Esc',
        isMain: true,
        press: () => {
          act.go('desk');
        },
      })}
      ${
        cases === 0
          ? nothing
          : html`${keyView({
              label: words.savePicture,
              press: () => {
                act.save('diagram');
              },
            })}
            ${keyView({
              label: words.saveCounts,
              press: () => {
                act.save('counts');
              },
            })}`
      }
    </div>
  </section>`;
}

/** One tenth of what was said: the mean of it, and how often it came true, on one rule. */
function binView({ words, speaker }: Shown, bin: ReliabilityBin): TemplateResult {
  const { meanForecast, observedFrequency, came, count } = bin;
  const [said, seen] = [100 * (meanForecast ?? 0), 100 * (observedFrequency ?? 0)];
  return html`<li>
    <span
      >${fill(words.calibrationBin, { said: speaker.formatPercent(said / 100), came, count })}</span
    >
    <svg class="bin" viewBox="-3 0 106 14" aria-hidden="true">
      ${svg`<line class="axis" x1="0" x2="100" y1="9" y2="9" />
        ${[0, 25, 50, 75, 100].map((x) => svg`<line class="axis" x1=${x} x2=${x} y1="7" y2="11" />`)}
        <line class="gap" x1=${said} x2=${seen} y1="9" y2="9" />
        <circle class="seen" cx=${seen} cy="9" r="2.6" />
        <circle class="said" cx=${said} cy="9" r="2.6" />`}
    </svg>
  </li>`;
}
