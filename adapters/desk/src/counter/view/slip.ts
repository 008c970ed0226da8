/**
 * The return slip: what the customer takes home, on the page as it is printed.
 */
import type { Rendered } from '@keyturn/language';
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
    sections: (decided?.sections ?? []).filter(({ id }) => kept.includes(id)),
  };
}

/** What holds of a part whoever takes it back. */
const kept: readonly string[] = ['stops', 'measure', 'rights'];

/** Draws the slip; nothing before there is one, and its decision while it is written. */
export function slip(shown: Shown, inHand: InHand): TemplateResult | typeof nothing {
  const { words, shop } = shown;
  const { sheet } = inHand;
  if (sheet === undefined) {
    const decided = decisionOf(shown, inHand);
    return decided === undefined
      ? nothing
      : html`<article class="printed" aria-label=${words.slip}>
          <p class="slip-title">${decided.title}</p>
        </article>`;
  }
  return printedSlip(sheet, {
    label: words.slip,
    practice: shop?.isInvented === true ? words.practiceNote : '',
  });
}
