/**
 * What is asked after the question in hand, as far as it belongs to the same look at the part or the
 * same run of it: it stands on the screen before its turn comes.
 */
import {
  positionOf,
  turn,
  type AskMessage,
  type Case,
  type Chart,
  type Input,
} from '@keyturn/core';
import { messagesInHand } from '@keyturn/element/sittings';

/** So many questions stand on one screen at most. */
const most = 4;

/**
 * The questions after the one in hand, or from the one on that a caution is confirmed for. Each is
 * supposed to be answered as usual, or else by what stands first; the case stays as it is.
 */
export function askedAhead(chart: Chart, kase: Case): readonly AskMessage[] {
  const { awaiting } = positionOf(kase);
  if (awaiting !== 'answer' && awaiting !== 'confirm') return [];
  const asked: AskMessage[] = [];
  let supposed = kase;
  while (asked.length <= most) {
    const input = inputSupposed(chart, supposed, asked);
    if (input === undefined) break;
    ({ case: supposed } = turn(chart, supposed, { at: kase.state.at, input }));
  }
  return awaiting === 'answer' ? asked.slice(1) : asked;
}

/** What is put in to get on; notes the question. Undefined where the next one is of another kind. */
function inputSupposed(chart: Chart, kase: Case, asked: AskMessage[]): Input | undefined {
  const { awaiting } = positionOf(kase);
  if (awaiting === 'confirm') return asked.length === 0 ? { type: 'confirm' } : undefined;
  const ask = messagesInHand(chart, kase).find((message) => message.kind === 'ask');
  if (awaiting !== 'answer' || ask === undefined) return undefined;
  const stageOf = (check: string): string | undefined =>
    chart.flow.stages.find(({ checks }) => checks.includes(check))?.id;
  const [first] = asked;
  if (first !== undefined && stageOf(first.check) !== stageOf(ask.check)) return undefined;
  asked.push(ask);
  if (ask.form !== 'choice') return undefined;
  const usual = Object.entries(ask.beside?.usual ?? {});
  if (usual.length > 0) {
    return {
      type: 'answers',
      answers: usual.map(([check, answer]) => ({ check, value: [answer] })),
    };
  }
  const [option] = ask.options;
  if (option === undefined) return undefined;
  return { type: 'answers', answers: [{ check: ask.check, value: [option] }] };
}
