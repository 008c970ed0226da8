/**
 * The states of one check: its cautions are read first, then time is let pass where it must, then
 * the question stands. There is no other way to the question.
 */
import type { Flow } from '../flow/flow.ts';
import { optionsOf } from '../flow/options-of.ts';

/** The compound state of a check. */
export function checkState(flow: Flow, id: string): object {
  const check = flow.checks[id];
  const answers = check === undefined ? [] : optionsOf(check);
  const choosing = `#${flow.id}.case.choosing`;
  return {
    initial: 'caution',
    states: {
      caution: {
        always: { guard: { type: 'isCautioned', params: { check: id } }, target: 'wait' },
        on: { confirmed: { actions: ['stamp', 'confirm'] } },
      },
      wait: {
        entry: { type: 'startWait', params: { check: id } },
        always: { guard: { type: 'isDue', params: { check: id } }, target: 'question' },
        on: { waited: { actions: ['stamp', 'endWait'] } },
      },
      question: {
        entry: { type: 'ask', params: { check: id } },
        on: {
          answered: [
            ...answers.map((answer) => ({
              guard: { type: 'isAnswer', params: { check: id, answer } },
              target: choosing,
              actions: ['stamp', 'record'],
            })),
            {
              guard: { type: 'isUnanswered', params: { check: id } },
              target: choosing,
              actions: ['stamp', 'record'],
            },
          ],
        },
      },
    },
  };
}
