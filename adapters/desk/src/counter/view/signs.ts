/**
 * The cautions of a step, above all that is to be done in it.
 */
import { sign } from '@keyturn/element/pieces';
import { html, nothing, type TemplateResult } from 'lit-html';
import type { InHand } from './shown.ts';

/** The cautions that stand above the step, by id. One that was just confirmed stays where it was. */
export function cautionsOf({ laid }: InHand): readonly string[] {
  const { cautions, events } = laid.sitting;
  const last = events.at(-1);
  const confirmed = last?.type === 'confirmed' ? last.cautions : [];
  // What waits for its confirmation is said again after a reload.
  const waiting = laid.inHand.flatMap((one) => (one.kind === 'caution' ? [one.caution] : []));
  const said = cautions.map(({ caution }) => caution);
  return [...new Set([...confirmed, ...waiting, ...said])];
}

/** Draws them. */
export function signs(inHand: InHand): TemplateResult | typeof nothing {
  const { speaker, flow } = inHand;
  const ids = cautionsOf(inHand);
  if (ids.length === 0) return nothing;
  const messages = ids.flatMap((caution) => {
    const known = flow.cautions[caution];
    if (known === undefined) return [];
    const { word, confirm } = known;
    return [{ kind: 'caution', caution, word, confirm } as const];
  });
  return html`<div class="signs">
    ${speaker
      .render(messages)
      .map((one, index) =>
        one.kind === 'caution'
          ? sign(messages[index]?.word ?? 'danger', one.word, one.text)
          : nothing,
      )}
  </div>`;
}
