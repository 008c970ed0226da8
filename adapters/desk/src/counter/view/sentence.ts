/**
 * What is said above the answers of a step: the sentence, and how it is found out.
 */
import { askAgain } from '@keyturn/element/sittings';
import type { Rendered } from '@keyturn/language';
import { html, nothing, type TemplateResult } from 'lit-html';
import type { InHand } from './shown.ts';

/** A question in words. */
export type Question = Extract<Rendered, { kind: 'question' }>;

/** The large sentence, under what it belongs to where it does not say that itself. */
export function sentence(tag: string, text: string): TemplateResult {
  return html`${tag === '' ? nothing : html`<p class="tag">${tag}</p>`}
    <h2 id="asked" class="sentence" tabindex="-1">${text}</h2>`;
}

/** How it is found out, and what is to be minded: before it is done. */
export function how(lines: readonly string[]): TemplateResult | typeof nothing {
  if (lines.length === 0) return nothing;
  return html`<div class="how-to">${lines.map((line) => html`<p>${line}</p>`)}</div>`;
}

/** How a check is found out, whether or not it is asked now. */
export function howLines({ flow, speaker }: InHand, check: string): readonly string[] {
  const asked = askAgain({ flow }, check);
  const [question] = asked === undefined ? [] : speaker.render([asked]);
  return question?.kind === 'question' ? question.how : [];
}
