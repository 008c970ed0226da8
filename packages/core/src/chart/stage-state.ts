/**
 * The compound state of a stage. A check is a state named by its id: the question stands. Beside
 * it stand the states in which its cautions wait to be confirmed and in which time must pass.
 * Every way into a question is guarded by `isCautioned`, or leads out of its wait.
 */
import type { Check, Flow, Stage } from '../flow/flow.ts';
import { optionsOf } from '../flow/options-of.ts';

/** The event by which a case goes on to a check. */
export function askEvent(check: string): string {
  return `ask:${check}`;
}

/** The ways into a check: past its cautions where none waits to be confirmed, else to them. */
export function waysInto(check: Check): readonly {
  readonly guard?: object;
  readonly state: string;
}[] {
  return [
    { guard: { type: 'isCautioned', params: { check: check.id } }, state: pastCautions(check) },
    { state: cautionOf(check) },
  ];
}

/** The compound state of a stage. */
export function stageState(flow: Flow, { checks }: Stage): object {
  const states = checks.flatMap((id) => {
    const check = flow.checks[id];
    return check === undefined ? [] : checkStates(check);
  });
  return {
    initial: 'choosing',
    states: { choosing: {}, ...Object.fromEntries(states) },
  };
}

function checkStates(check: Check): readonly (readonly [name: string, state: object])[] {
  const params = { check: check.id };
  return [
    [
      cautionOf(check),
      {
        always: { guard: { type: 'isCautioned', params }, target: pastCautions(check) },
        on: { confirmed: { actions: 'confirm' } },
      },
    ],
    ...(check.waitMinutes === undefined ? [] : [[waitOf(check), waitState(check.id)] as const]),
    [check.id, questionState(check)],
  ];
}

function cautionOf({ id }: Check): string {
  return `${id}--caution`;
}

function waitOf({ id }: Check): string {
  return `${id}--wait`;
}

function pastCautions(check: Check): string {
  return check.waitMinutes === undefined ? check.id : waitOf(check);
}

function waitState(check: string): object {
  return {
    entry: { type: 'startWait', params: { check } },
    always: { guard: { type: 'isDue', params: { check } }, target: check },
    on: { waited: { actions: 'endWait' } },
  };
}

/** One guarded way on for each band or choice, and one for "don't know" and "can't". */
function questionState(check: Check): object {
  const actions = ['answer', 'goOn'];
  return {
    on: {
      answered: [
        ...optionsOf(check).map((answer) => ({
          guard: { type: 'isAnswer', params: { check: check.id, answer } },
          actions,
        })),
        { guard: { type: 'isUnanswered', params: { check: check.id } }, actions },
      ],
    },
  };
}
