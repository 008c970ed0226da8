/**
 * The return slip: what the customer takes home. It is on the page as it is printed.
 */
import type { Rendered } from '@keyturn/language';
import { finding, sections } from '@keyturn/element/pieces';
import { html, nothing, type TemplateResult } from 'lit-html';
import { fill } from '../../wording.ts';
import type { InHand, Shown } from './shown.ts';

type Decided = Extract<Rendered, { kind: 'verdict' }>;

/** The decision of a return in words; undefined before there is one. */
export function decisionOf({ back, speaker }: InHand): Decided | undefined {
  const { decision } = back.sitting.case.state;
  const [decided] = decision === null ? [] : speaker.render([decision]);
  return decided?.kind === 'verdict' ? decided : undefined;
}

/** What stands on the slip, in this order. */
const printed = ['rests', 'refund', 'measure', 'change', 'rights'];

/** Draws the slip. */
export function slip(shown: Shown, inHand: InHand): TemplateResult {
  const { words, shop } = shown;
  const { back } = inHand;
  const decided = decisionOf(inHand);
  const named = [back.name, back.number, back.receipt].filter((text) => text !== '');
  return html`<article class="slip" aria-label=${words.slip}>
    <header>
      <h3>${words.slip}</h3>
      <p dir="auto">${shop?.policy.shop ?? ''}</p>
      <p>
        <bdi>${named.length === 0 ? words[back.part] : named.join(' · ')}</bdi>
        · ${dayIn(shown, back.openedAt)}
      </p>
      ${shop?.isInvented === true ? html`<p class="invented">${words.practiceNote}</p>` : nothing}
    </header>
    ${
      decided === undefined
        ? html`<p class="hint">${words.slipOpen}</p>`
        : html`<p class="slip-title">${decided.title}</p>
            <p>${decided.strength}</p>
            ${body(shown, inHand, decided)}`
    }
  </article>`;
}

function body(shown: Shown, { back, laid, speaker }: InHand, decided: Decided): TemplateResult {
  const { words, shop } = shown;
  const readings = laid.strip.findings.filter(({ message }) => message.kind === 'reading');
  const pays = back.sitting.case.state.decision;
  const isPaid = pays?.refund !== undefined;
  return html`${sections(decided.sections.filter(({ id }) => printed.includes(id)))}
    ${
      isPaid || pays?.decide !== 'accept'
        ? nothing
        : html`<p class="hint">${words.noAmount}</p>`
    }
    ${
      readings.length === 0
        ? nothing
        : html`<ul class="readings">
            ${readings.map((line) => html`<li>${finding(line, speaker)}</li>`)}
          </ul>`
    }
    ${shop === null ? html`<p class="hint">${words.law}</p>` : nothing}
    <div class="signatures" aria-hidden="true">
      <span>${words.customer}</span><span>${words.forShop}</span>
    </div>`;
}

function dayIn({ locale, shop }: Shown, at: string): string {
  const how = { dateStyle: 'medium', timeZone: shop?.policy['time-zone'] } as const;
  return fill('{{day}}', { day: new Intl.DateTimeFormat(locale, how).format(new Date(at)) });
}
