import { besideKeys } from '@keyturn/element/sittings';
import type { Rendered, Speaker } from '@keyturn/language';
import type { Laid, Turned } from '../engine/engine.ts';
import type { DeskWords } from '../words/desk-words.ts';

/** What was said last and has no place of its own: what was asked back, and what a turn had to say. */
export function saidLast(
  { laid, unclear }: { readonly laid: Laid; readonly unclear?: Turned['unclear'] },
  { speaker, words }: { readonly speaker: Speaker; readonly words: DeskWords },
): readonly Rendered[] {
  const { answers } = laid.sitting.case.state;
  const said = laid.sitting.said.filter(
    (message) => message.kind !== 'tell' || message.tell !== 'opening',
  );
  // The questions are done, but the call is not: an answer that is put right goes on with it.
  const settled: Rendered = { kind: 'refused', text: words.settled };
  const isSettled = unclear?.type === 'unclear' && ['closed', 'not-done'].includes(unclear.code);
  return [
    ...(unclear === undefined ? [] : isSettled ? [settled] : speaker.askBack(besideKeys(unclear))),
    ...said.flatMap((message): readonly Rendered[] =>
      message.kind === 'refused' && message.code === 'closed'
        ? [settled]
        : message.kind === 'noted' && answers[message.check]?.at(-1) === 'cannot'
          ? [{ kind: 'text', text: `${speaker.checkName(message.check)}: ${words.keyCannot}` }]
          : speaker.render([message]),
    ),
  ];
}
