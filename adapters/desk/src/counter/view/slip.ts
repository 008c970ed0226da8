/**
 * The return slip: what the customer takes home. It is on the page as it is printed.
 */
import type { Rendered } from '@keyturn/language';
import { finding, sections } from '@keyturn/element/pieces';
import { html, nothing, type TemplateResult } from 'lit-html';
import { fill } from '../../wording.ts';
import { printedSlip } from './printed-slip.ts';
import type { InHand, Shown } from './shown.ts';

/** A decision in words. */
export type Decided = Extract<Rendered, { kind: 'verdict' }>;

/**
 * The decision of a return in words; undefined before there is one. As goodwill it is a lead's own,
 * and nothing is said of what the terms would pay.
 */
export function decisionOf(
  { words }: Pick<Shown, 'words'>,
  { back, speaker }: InHand,
): Decided | undefined {
  const { decision } = back.sitting.case.state;
  const [rendered] = decision === null ? [] : speaker.render([decision]);
  const decided = rendered?.kind === 'verdict' ? rendered : undefined;
  if (back.goodwill === null) return decided;
  return {
    kind: 'verdict',
    title: words.goodwillTitle,
    strength: fill(words.byName, { name: back.goodwill }),
    sections: (decided?.sections ?? []).filter(({ id }) => id === 'measure' || id === 'rights'),
  };
}

/** What stands on the slip above its readings, and below them in small type, in this order. */
const [printed, inSmall] = [['refund', 'rests', 'measure', 'rights'], ['change']];

/** Draws the slip; as goodwill it is printed as it is seen, since the sheet would say otherwise. */
export function slip(shown: Shown, inHand: InHand): TemplateResult {
  const { words, shop } = shown;
  const { back, sheet } = inHand;
  const decided = decisionOf(shown, inHand);
  const named = [words[back.part], back.name, back.number, back.receipt];
  const hasSheet = sheet !== undefined && back.goodwill === null;
  return html`${hasSheet ? printedSlip(sheet, shop?.isInvented === true ? words.practiceNote : '') : nothing}
    <article class=${hasSheet ? 'slip seen' : 'slip'} aria-label=${words.slip}>
      <header>
        <h3>${words.slip}</h3>
        <p><bdi>${shop?.policy.shop ?? ''}</bdi></p>
        <p>
          <bdi>${named.filter((text) => text !== '').join(' · ')}</bdi>
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

function body(shown: Shown, { laid, speaker }: InHand, decided: Decided): TemplateResult {
  const { words } = shown;
  const readings = laid.strip.findings.filter(({ message }) => message.kind === 'reading');
  return html`${sections(sectionsOf(decided, printed))}
    ${
      readings.length === 0
        ? nothing
        : html`<ul class="readings">
            ${readings.map((line) => html`<li>${finding(line, speaker)}</li>`)}
          </ul>`
    }
    ${
      decided.sections.some(({ id }) => id === 'rights')
        ? nothing
        : html`<p class="hint">${words.law}</p>`
    }
    <div class="small-print">${sections(sectionsOf(decided, inSmall))}</div>
    <div class="signatures" aria-hidden="true">
      <span>${words.customer}</span><span>${words.forShop}</span>
    </div>`;
}

function sectionsOf({ sections: all }: Decided, ids: readonly string[]): Decided['sections'] {
  return ids.flatMap((id) => all.filter((section) => section.id === id));
}

function dayIn({ locale, shop }: Shown, at: string): string {
  const how = { dateStyle: 'medium', timeZone: shop?.policy['time-zone'] } as const;
  return fill('{{day}}', { day: new Intl.DateTimeFormat(locale, how).format(new Date(at)) });
}
