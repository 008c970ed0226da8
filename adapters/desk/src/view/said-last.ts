import { besideKeys } from '@keyturn/element/sittings';
import type { Rendered, Speaker } from '@keyturn/language';
import type { Laid, Turned } from '../engine/engine.ts';

/** What was said last and has no place of its own: what was asked back, and what a turn had to say. */
export function saidLast(
  { laid, unclear }: { readonly laid: Laid; readonly unclear?: Turned['unclear'] },
  speaker: Speaker,
): readonly Rendered[] {
  const said = laid.sitting.said.filter(
    (message) => message.kind !== 'tell' || message.tell !== 'opening',
  );
  return [
    ...(unclear === undefined ? [] : speaker.askBack(besideKeys(unclear))),
    ...speaker.render(said),
  ];
}
