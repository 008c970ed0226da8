/**
 * A flow compiled to an XState machine: stages are compound states, checks are states within
 * them, bands and choices are guards, and an interrupt comes back through a history state.
 *
 * The machine only ever takes events of the case, so that folding them gives its state again. Time
 * comes with the events: due times are kept as data, since XState's own delays do not outlive a
 * restored snapshot.
 */
import { createMachine, type AnyStateMachine } from 'xstate';
import { blankState, type CaseState } from '../case/state.ts';
import type { Flow, Interrupt } from '../flow/flow.ts';
import { actionsOf, withNext } from './actions.ts';
import { guardsOf } from './guards.ts';
import { askEvent, stageState, waysInto } from './stage-state.ts';
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
      context: ({ input }: { input: CaseState }) => withNext(flow, input),
      initial: 'case',
      states: {
        case: caseState(flow),
        interrupted: interruptedState(flow),
        // Closed, and yet not final: a wrong figure may be put right, and new facts come in.
        closed: {
          id: 'closed',
          entry: 'close',
          on: {
            answered: { target: '#choosing', actions: 'answer' },
            corrected: { target: '#choosing', actions: 'correct' },
            'went-back': { target: '#choosing', actions: 'goBack' },
            'context-changed': { target: '#choosing', actions: 'changeContext' },
            withdrawn: { target: '#choosing', actions: 'withdraw' },
            interrupted: interrupts(flow, '#interrupted.'),
          },
        },
      },
    } as object,
    // XState infers nothing of a machine that is built from data; the names are checked by tests.
    { guards: guardsOf(flow), actions: actionsOf(flow) } as never,
  );
  return { flow, machine, transition: createTransition(machine, blankState) };
}

function caseState(flow: Flow): object {
  return {
    initial: 'choosing',
    on: {
      // A check that was not in hand, but was volunteered.
      answered: { actions: ['answer', 'goOn'] },
      corrected: { actions: ['correct', 'goOn'] },
      'went-back': { actions: ['goBack', 'goOn'] },
      'context-changed': { actions: ['changeContext', 'goOn'] },
      'time-passed': { actions: 'passTime' },
      withdrawn: { actions: ['withdraw', 'goOn'] },
      interrupted: interrupts(flow, '#interrupted.'),
      ...asks(flow),
      verdict: '.verdict',
      closed: '#closed',
    },
    states: {
      choosing: { id: 'choosing', entry: 'goOn' },
      ...Object.fromEntries(flow.stages.map((stage) => [stage.id, stageState(flow, stage)])),
      verdict: { id: 'verdict', entry: ['decide', 'goOn'] },
      returning: { id: 'returning', type: 'history', history: 'shallow', target: 'choosing' },
    },
  };
}

/** The ways into every check, from wherever the case stands. */
function asks(flow: Flow): Readonly<Record<string, readonly object[]>> {
  return Object.fromEntries(
    flow.stages.flatMap((stage) =>
      stage.checks.flatMap((id) => {
        const check = flow.checks[id];
        if (check === undefined) return [];
        const ways = waysInto(check).map(({ state, ...way }) => ({
          ...way,
          target: `.${stage.id}.${state}`,
        }));
        return [[askEvent(id), ways] as const];
      }),
    ),
  );
}

function interruptedState(flow: Flow): object {
  const all = Object.values(flow.interrupts);
  return {
    id: 'interrupted',
    initial: all[0]?.id ?? 'none',
    on: {
      interrupted: interrupts(flow, '.'),
      'context-changed': { actions: 'changeContext' },
      'time-passed': { actions: 'passTime' },
      withdrawn: { actions: 'withdraw' },
    },
    states: Object.fromEntries(
      all.map(({ id, then }) => [
        id,
        {
          on: {
            resumed: {
              target: then === 'prove' ? '#verdict' : '#returning',
              actions: then === 'prove' ? 'resume' : ['resume', 'goOn'],
            },
            ...(then === 'prove'
              ? { 'went-back': waysBack(all, { guard: 'isRaisedBefore', action: 'takeBack' }) }
              : { withdrawn: waysBack(all, { guard: 'isWithdrawn', of: id, action: 'withdraw' }) }),
          },
        },
      ]),
    ),
  };
}

/** The ways back from an interrupt that never was: a danger that was raised before may not be over. */
function waysBack(
  all: readonly Interrupt[],
  { guard, of, action }: { readonly guard: string; readonly of?: string; readonly action: string },
): readonly object[] {
  return [
    ...all.map(({ id: before }) => ({
      guard: { type: guard, params: { of, before } },
      target: `#interrupted.${before}`,
      actions: action,
    })),
    {
      ...(of === undefined ? {} : { guard: { type: guard, params: { of } } }),
      target: '#returning',
      actions: [action, 'goOn'],
    },
  ];
}

function interrupts(flow: Flow, prefix: string): readonly object[] {
  return Object.keys(flow.interrupts).map((interrupt) => ({
    guard: { type: 'isInterrupt', params: { interrupt } },
    target: `${prefix}${interrupt}`,
    actions: 'raise',
  }));
}
