/**
 * A flow compiled to an XState machine: stages are compound states, checks are states within
 * them, bands and choices are guards, and an interrupt comes back through a history state.
 *
 * The machine only ever takes events of the case, so that folding them gives its state again. Time
 * comes with the events: due times are kept as data, since XState's own delays do not outlive a
 * restored snapshot.
 */
import { createMachine, type AnyStateMachine } from 'xstate';
import type { Flow } from '../flow/flow.ts';
import { blankState, type CaseState } from '../case/state.ts';
import { actionsOf, withNext } from './actions.ts';
import { guardsOf } from './guards.ts';
import { stageState } from './stage-state.ts';
import { createTransition } from './transition.ts';

/** What a case runs on: the flow and its machine. */
export interface Chart {
  readonly flow: Flow;
  /**
   * States `case.<stage>.<check>`, with `--caution` and `--wait` before it, `interrupted.<interrupt>`
   * and `closed`.
   */
  readonly machine: AnyStateMachine;
  /** One pure step of the machine. */
  readonly transition: ReturnType<typeof createTransition>;
}

/** Compiles a flow. The result holds no state and may be shared by any number of cases. */
export function compileFlow(flow: Flow): Chart {
  const machine = createMachine(
    {
      id: flow.id,
      context: ({ input }) => withNext(flow, input as CaseState),
      initial: 'case',
      states: {
        case: {
          initial: 'choosing',
          on: {
            // A check that was not in hand, but was volunteered.
            answered: { target: '.choosing', actions: 'answer' },
            corrected: { target: '.choosing', actions: 'correct' },
            'went-back': { target: '.choosing', actions: 'goBack' },
            'context-changed': { target: '.choosing', actions: 'changeContext' },
            'time-passed': { actions: 'passTime' },
            interrupted: Object.values(flow.interrupts).map(({ id }) => ({
              guard: { type: 'isInterrupt', params: { interrupt: id } },
              target: `#interrupted.${id}`,
              actions: 'raise',
            })),
          },
          states: {
            choosing: {
              always: [
                ...flow.stages.map(({ id }) => ({
                  guard: { type: 'isNextStage', params: { stage: id } },
                  target: id,
                })),
                { guard: 'isVerdictDue', target: 'verdict' },
                { target: `#${flow.id}.closed` },
              ],
            },
            ...Object.fromEntries(flow.stages.map((stage) => [stage.id, stageState(flow, stage)])),
            verdict: { entry: 'decide', always: 'choosing' },
            returning: { type: 'history', history: 'shallow', target: 'choosing' },
          },
        },
        interrupted: {
          id: 'interrupted',
          on: {
            interrupted: Object.values(flow.interrupts).map(({ id }) => ({
              guard: { type: 'isInterrupt', params: { interrupt: id } },
              target: `.${id}`,
              actions: 'raise',
            })),
            'context-changed': { actions: 'changeContext' },
            'time-passed': { actions: 'passTime' },
          },
          initial: Object.keys(flow.interrupts)[0] ?? 'none',
          states: Object.fromEntries(
            Object.values(flow.interrupts).map(({ id, then }) => [
              id,
              {
                on: {
                  resumed: {
                    target:
                      then === 'prove' ? `#${flow.id}.case.verdict` : `#${flow.id}.case.returning`,
                    actions: 'resume',
                  },
                },
              },
            ]),
          ),
        },
        // Closed, and yet not final: a wrong figure may be corrected afterwards.
        closed: {
          entry: 'close',
          on: {
            corrected: { target: `#${flow.id}.case.choosing`, actions: 'correct' },
            'went-back': { target: `#${flow.id}.case.choosing`, actions: 'goBack' },
          },
        },
      },
    },
    // XState infers nothing of a machine that is built from data; the names are checked by tests.
    { guards: guardsOf(flow), actions: actionsOf(flow) } as never,
  );
  return { flow, machine, transition: createTransition(machine, blankState) };
}
