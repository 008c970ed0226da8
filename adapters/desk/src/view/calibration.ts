/**
 * How far the probabilities of verdicts could be taken at their word.
 */
import { forecastRecord, verdictTable, type ReliabilityBin } from '@keyturn/evidence';
import { html, nothing, svg, type TemplateResult } from 'lit-html';
import { isForecast, type DeskOutcome } from '../case/outcome.ts';
import { realOutcomes } from '../case/saved.ts';
import { keyView } from './key.ts';
import type { Shown } from './shown.ts';
import { fill } from '../wording.ts';

/** Draws the report: calls at this desk, and practice apart from them. */
export function calibration(shown: Shown): TemplateResult {
  const { words, outcomes, act } = shown;
  const real = realOutcomes(outcomes);
  const practice = outcomes.filter(({ channel }) => channel === 'practice');
  return html`<section class="report">
    <h2 id="asked" tabindex="-1">${words.howSure}</h2>
    <p>${words.calibrationIntro}</p>
    ${group(shown, words.calibrationReal, real)}
    ${practice.length === 0 ? nothing : group(shown, words.practiceNote, practice)}
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
        real.length === 0
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

function group(shown: Shown, heading: string, outcomes: readonly DeskOutcome[]): TemplateResult {
  const { words, speaker } = shown;
  const forecast = outcomes.filter(isForecast);
  const others = outcomes.length - forecast.length;
  const unsaid =
    others === 0 ? nothing : html`<p>${fill(words.calibrationUnsaid, { count: others })}</p>`;
  const { cases, right, brier, log } = forecastRecord(forecast);
  if (cases === 0) {
    return html`<h3>${heading}</h3>
      ${others === 0 ? html`<p class="sure">${words.calibrationNone}</p>` : unsaid}`;
  }
  const figures = {
    brier: speaker.formatNumber(brier, 3),
    log: Number.isFinite(log) ? speaker.formatNumber(log, 3) : '∞',
  };
  return html`<h3>${heading}</h3>
    <p class="sure">${fill(words.calibrationRecord, { right, cases })}</p>
    <p>${fill(words.calibrationScores, figures)}</p>
    ${unsaid}
    <p class="hint">${words.calibrationKey}</p>
    <ul class="bins">
      ${verdictTable(forecast)
        .filter(({ count }) => count > 0)
        .map((bin) => binView(shown, bin))}
    </ul>`;
}

/** One tenth of what was said: the mean of it, and how often it came true, on one rule. */
function binView({ words, speaker }: Shown, bin: ReliabilityBin): TemplateResult {
  const { meanForecast, observedFrequency, came, count } = bin;
  const [said, seen] = [100 * (meanForecast ?? 0), 100 * (observedFrequency ?? 0)];
  return html`<li>
    <span
      >${fill(words.calibrationBin, { said: speaker.formatPercent(said / 100), came, count })}</span
    >
    <svg class="bin" viewBox="-3 3 106 12" aria-hidden="true">
      ${svg`<line class="axis" x1="0" x2="100" y1="9" y2="9" />
        ${[0, 25, 50, 75, 100].map((x) => svg`<line class="axis" x1=${x} x2=${x} y1="7" y2="11" />`)}
        <line class="gap" x1=${said} x2=${seen} y1="9" y2="9" />
        <circle class="seen" cx=${seen} cy="9" r="2" />
        <circle class="said" cx=${said} cy="9" r="2" />`}
    </svg>
  </li>`;
}
