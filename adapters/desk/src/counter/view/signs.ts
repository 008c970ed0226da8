/**
 * The cautions of a step, above all that is to be done in it.
 */
import { lastingCautions } from '@keyturn/core';
import { sign } from '@keyturn/element/pieces';
import { html, nothing, type TemplateResult } from 'lit-html';
import type { InHand } from './shown.ts';

/** The cautions that stand above the step, by id. Each stays above all that it is for. */
export function cautionsOf({ laid, flow, back }: InHand): readonly string[] {
  const { cautions, events } = laid.sitting;
  const last = events.at(-1);
  const just = last?.type === 'confirmed' ? last.cautions : [];
  const ask = laid.inHand.find((one) => one.kind === 'ask');
  const asked = ask?.check ?? '';
  const does = flow.checks[asked]?.does ?? [];
  const confirmed = back.sitting.case.state.cautioned.filter(
    (id) =>
      flow.cautions[id]?.confirm === true &&
      flow.cautions[id].before.some((cover) => cover.does?.some((one) => does.includes(one))),
  );
  const { readings = [], usual = {} } = ask?.beside ?? {};
  const together = [asked, ...readings, ...Object.keys(usual)];
  const unconfirmed = Object.values(flow.cautions)
    .filter(({ confirm, when }) => !confirm && when === undefined)
    .filter(({ before }) => before.some(({ checks = [] }) => checks.some(isIn(together))))
    .map(({ id }) => id);
  // What waits for its confirmation is said again after a reload.
  const waiting = laid.inHand.flatMap((one) => (one.kind === 'caution' ? [one.caution] : []));
  const said = cautions.map(({ caution }) => caution);
  // What lasts stands above every card already.
  const lasting = lastingOf({ flow, back });
  const all = [...just, ...confirmed, ...waiting, ...said, ...unconfirmed];
  return [...new Set(all)].filter((id) => !lasting.includes(id));
}

function isIn(some: readonly string[]): (one: string) => boolean {
  return (one) => some.includes(one);
}

/** The cautions that stand as long as the part lies here, by id. */
function lastingOf({ flow, back }: Pick<InHand, 'flow' | 'back'>): readonly string[] {
  return lastingCautions(flow, back.sitting.case.state).map(({ id }) => id);
}

/** Draws those of the step. */
export function signs(inHand: InHand): TemplateResult | typeof nothing {
  return drawn(inHand, cautionsOf(inHand));
}

/** Draws those that stand above every card. */
export function lastingSigns(inHand: InHand): TemplateResult | typeof nothing {
  return drawn(inHand, lastingOf(inHand));
}

function drawn({ speaker, flow }: InHand, ids: readonly string[]): TemplateResult | typeof nothing {
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
