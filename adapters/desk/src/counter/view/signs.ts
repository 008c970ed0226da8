/**
 * The cautions of a step, above all that is to be done in it.
 */
import { sign } from '@keyturn/element/pieces';
import { html, nothing, type TemplateResult } from 'lit-html';
import type { InHand } from './shown.ts';

/** The cautions that stand above the step, by id. A confirmed one stays above all that it is for. */
export function cautionsOf({ laid, flow, back }: InHand): readonly string[] {
  const { cautions, events } = laid.sitting;
  const last = events.at(-1);
  const just = last?.type === 'confirmed' ? last.cautions : [];
  const asked = laid.inHand.find((one) => one.kind === 'ask')?.check ?? '';
  const does = flow.checks[asked]?.does ?? [];
  const confirmed = back.sitting.case.state.cautioned.filter(
    (id) =>
      flow.cautions[id]?.confirm === true &&
      flow.cautions[id].before.some((cover) => cover.does?.some((one) => does.includes(one))),
  );
  // What waits for its confirmation is said again after a reload.
  const waiting = laid.inHand.flatMap((one) => (one.kind === 'caution' ? [one.caution] : []));
  const said = cautions.map(({ caution }) => caution);
  return [...new Set([...just, ...confirmed, ...waiting, ...said])];
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
