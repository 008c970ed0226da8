/**
 * The list of a day: what came back, what was decided and why, what was paid, and the sums.
 */
import { html, nothing, type TemplateResult } from 'lit-html';
import { fill, timeOfDay } from '../../wording.ts';
import { isEnded, shopDayOf, sumsOf, type EndedReturn } from '../return/day.ts';
import { nameOf } from '../return/part-name.ts';
import { printedSlip } from './printed-slip.ts';
import { backKey } from './keys-help.ts';
import type { Shown } from './shown.ts';

/** Draws the list. */
export function dayList(shown: Shown): TemplateResult {
  const { words, shop, returns, day, act } = shown;
  const policy = shop?.policy ?? null;
  const ended = returns
    .filter(isEnded)
    .filter(({ closed }) => shopDayOf(closed.at, policy) === day)
    .toSorted((one, other) => (one.closed.at < other.closed.at ? -1 : 1));
  // What practice laid there ready is never counted with what somebody did.
  const own = ended.filter(({ practice }) => practice === null);
  const played = ended.filter(({ practice }) => practice !== null);
  const { again } = shown;
  return html`<section class=${again === undefined ? 'report day-list' : 'report day-list again'}>
    ${
      again === undefined
        ? nothing
        : printedSlip(again, {
            label: words.slip,
            practice: shop?.isInvented === true ? words.practiceNote : '',
          })
    }
    <h2 id="asked" tabindex="-1">${words.dayList}</h2>
    ${shop?.isInvented === true ? html`<p class="invented">${words.practiceNote}</p>` : nothing}
    <label class="field day-pick">
      <span>${words.day}</span>
      <input
        type="date"
        name="list-day"
        .value=${day}
        @change=${(event: Event) => {
          act.pickDay((event.currentTarget as HTMLInputElement).value);
        }}
      />
    </label>
    ${ended.length === 0 ? html`<p class="sure">${words.dayNone}</p>` : nothing}
    ${own.length === 0 ? nothing : list(shown, own)}
    ${
      played.length === 0
        ? nothing
        : html`${own.length === 0 ? nothing : html`<h3 class="played">${words.played}</h3>`}
          ${list(shown, played)}`
    }
    <div class="keys row">${backKey(shown)}</div>
  </section>`;
}

function list(shown: Shown, ended: readonly EndedReturn[]): TemplateResult {
  const { words } = shown;
  return html`<div class="wide" role="region" aria-label=${words.dayList} tabindex="0">
      <table>
        <thead>
          <tr>
            <th scope="col">${words.time}</th>
            <th scope="col">${words.part}</th>
            <th scope="col">${words.decision}</th>
            <th scope="col">${words.reason}</th>
            <th scope="col">${words.amount}</th>
          </tr>
        </thead>
        <tbody>
          ${ended.map((back) => row(shown, back))}
        </tbody>
      </table>
    </div>
    ${sums(shown, ended)}`;
}

function row(shown: Shown, back: EndedReturn): TemplateResult {
  const { words, locale, act } = shown;
  const { closed, part } = back;
  const { at, refund, by } = closed;
  const amount =
    refund === null || refund === undefined
      ? '–'
      : shown.speakerFor(part).formatMoney(refund.total, refund.currency);
  return html`<tr>
    <td>${timeOfDay(at, locale)}</td>
    <td>
      <button
        type="button"
        class="slip-again"
        title=${words.printSlip}
        aria-label=${`${nameOf(shown, back)}: ${words.printSlip}`}
        @click=${() => {
          act.printAgain(back.id);
        }}
      >
        <bdi>${nameOf(shown, back)}</bdi>
      </button>
    </td>
    <td>${decisionName(shown, closed.decide, part)}</td>
    <td>
      ${reasonName(shown, closed.reason, part)}
      ${by === null ? nothing : fill(words.byName, { name: by })}
    </td>
    <td class="amount">${amount}</td>
  </tr>`;
}

function sums(shown: Shown, ended: readonly EndedReturn[]): TemplateResult {
  const { words } = shown;
  const { decisions, reasons, paid } = sumsOf(ended);
  const speaker = shown.speakerFor('starter');
  const counted = (what: string, count: number): TemplateResult =>
    html`<li>${fill(words.sumCount, { what, count })}</li>`;
  return html`<section class="sums">
    <h3>${words.sums}</h3>
    <ul>
      ${decisions.map(([decide, count]) => counted(decisionName(shown, decide, 'starter'), count))}
      ${paid.map(
        ({ currency, total, deposits }) =>
          html`<li class="paid">
            ${fill(words.paidBack, {
              currency,
              total: speaker.formatMoney(total, currency),
              deposits: speaker.formatMoney(deposits, currency),
            })}
          </li>`,
      )}
    </ul>
    <h3>${words.reason}</h3>
    <ul>
      ${reasons.map(([reason, count]) => counted(anyReasonName(shown, reason), count))}
    </ul>
  </section>`;
}

function decisionName({ textsFor }: Shown, decide: string, part: EndedReturn['part']): string {
  return textsFor(part).decisions?.[decide]?.name ?? decide;
}

function reasonName({ words, textsFor }: Shown, reason: string, part: EndedReturn['part']): string {
  if (reason === 'goodwill') return words.goodwillReason;
  return textsFor(part).reasons?.[reason]?.name ?? reason;
}

/** A reason may be of either part. */
function anyReasonName(shown: Shown, reason: string): string {
  const isStarters = shown.textsFor('starter').reasons?.[reason] !== undefined;
  return reasonName(shown, reason, isStarters ? 'starter' : 'battery');
}
