/**
 * The compound state of a stage. A check is a state named by its id: the question stands. Beside
 * it stand the states in which its cautions wait to be confirmed and in which time must pass.
 * Every way to a question is guarded by `isCautioned` or `isNextCautioned`, or leads through them.
 */
import type { Flow, Stage } from '../flow/flow.ts';
import { optionsOf } from '../flow/options-of.ts';

/** The state in which the cautions of a check wait to be confirmed. */
const cautionOf = (check: string): string => `${check}--caution`;

/** The state in which time passes before a check can be answered. */
const waitOf = (check: string): string => `${check}--wait`;

/** The compound state of a stage; what no check of it takes leads back to the whole case. */
export function stageState(flow: Flow, { checks }: Stage): object {
  const pastCautions = (check: string): string => (waits(flow, check) ? waitOf(check) : check);
  return {
    initial: 'choosing',
    states: {
      choosing: {
        always: [
          // Usually no caution waits, so that way is looked for first.
          ...checks.map((check) => ({
            guard: { type: 'isNextCautioned', params: { check } },
            target: pastCautions(check),
          })),
          ...checks.map((check) => ({
            guard: { type: 'isNextCheck', params: { check } },
            target: cautionOf(check),
          })),
          { target: `#${flow.id}.case.choosing` },
        ],
      },
      ...Object.fromEntries(
        checks.flatMap((check) => [
          [cautionOf(check), cautionState(check, pastCautions(check))],
          ...(waits(flow, check) ? [[waitOf(check), waitState(check)]] : []),
          [check, questionState(flow, check)],
        ]),
      ),
    },
  };
}

function waits(flow: Flow, check: string): boolean {
  return flow.checks[check]?.waitMinutes !== undefined;
}

function cautionState(check: string, onwards: string): object {
  return {
    always: { guard: { type: 'isCautioned', params: { check } }, target: onwards },
    on: { confirmed: { actions: 'confirm' } },
  };
}

function waitState(check: string): object {
  return {
    entry: { type: 'startWait', params: { check } },
    always: { guard: { type: 'isDue', params: { check } }, target: check },
    on: { waited: { actions: 'endWait' } },
  };
}

/** One guarded way for each band or choice, and one for "don't know" and "can't". */
function questionState(flow: Flow, id: string): object {
  const check = flow.checks[id];
  const answers = check === undefined ? [] : optionsOf(check);
  const onwards = { target: 'choosing', actions: 'answer' };
  return {
    on: {
      answered: [
        ...answers.map((answer) => ({
          guard: { type: 'isAnswer', params: { check: id, answer } },
          ...onwards,
        })),
        { guard: { type: 'isUnanswered', params: { check: id } }, ...onwards },
      ],
    },
  };
}
