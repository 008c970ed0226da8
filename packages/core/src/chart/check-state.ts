/**
 * The states of one check: its cautions are read first, then time is let pass where it must, then
 * the question stands. Every way to the question is guarded by `isCautioned` or `isNextCautioned`.
 */
import type { Flow } from '../flow/flow.ts';
import { optionsOf } from '../flow/options-of.ts';

/** The ways into a check that comes next: past its cautions where none waits to be confirmed. */
export function waysInto(flow: Flow, id: string): readonly object[] {
  const params = { check: id };
  const onwards = flow.checks[id]?.waitMinutes === undefined ? 'question' : 'wait';
  return [
    { guard: { type: 'isNextCautioned', params }, target: `${id}.${onwards}` },
    { guard: { type: 'isNextCheck', params }, target: id },
  ];
}

/** The compound state of a check; an answer leads on to the state named by `choosing`. */
export function checkState(flow: Flow, id: string, choosing: string): object {
  const check = flow.checks[id];
  const params = { check: id };
  const waits = check?.waitMinutes !== undefined;
  const answers = check === undefined ? [] : optionsOf(check);
  return {
    initial: 'caution',
    states: {
      caution: {
        always: { guard: { type: 'isCautioned', params }, target: waits ? 'wait' : 'question' },
        on: { confirmed: { actions: 'confirm' } },
      },
      ...(waits ? { wait: waitState(params) } : {}),
      question: {
        on: {
          answered: [
            ...answers.map((answer) => ({
              guard: { type: 'isAnswer', params: { check: id, answer } },
              target: choosing,
              actions: 'answer',
            })),
            {
              guard: { type: 'isUnanswered', params },
              target: choosing,
              actions: 'answer',
            },
          ],
        },
      },
    },
  };
}

function waitState(params: { readonly check: string }): object {
  return {
    entry: { type: 'startWait', params },
    always: { guard: { type: 'isDue', params }, target: 'question' },
    on: { waited: { actions: 'endWait' } },
  };
}
