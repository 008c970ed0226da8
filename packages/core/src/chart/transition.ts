/**
 * One pure step of a compiled machine: no actor runs, and nothing is executed.
 */
import { createActor, type AnyMachineSnapshot, type AnyStateMachine } from 'xstate';
import type { CaseEvent } from '../case/event.ts';
import type { CaseState } from '../case/state.ts';

type Scope = Parameters<AnyStateMachine['transition']>[2];

/**
 * Makes the step of one machine. XState's own `transition` builds an idle actor for every call,
 * which costs more than the step; here one idle actor serves them all.
 */
export function createTransition(
  machine: AnyStateMachine,
  blank: CaseState,
): (snapshot: AnyMachineSnapshot, event: CaseEvent) => AnyMachineSnapshot {
  const self = createActor(machine, { input: blank });
  const scope = {
    self,
    system: self.system,
    id: self.id,
    sessionId: self.sessionId,
    logger: nothing,
    defer: nothing,
    emit: nothing,
    stopChild: nothing,
    // XState sets one for each microstep, which collects what is to be executed: nothing here.
    get actionExecutor() {
      return nothing;
    },
    set actionExecutor(_collecting: () => void) {
      nothing();
    },
  } as unknown as Scope;
  return (snapshot, event) => machine.transition(snapshot, event, scope);
}

function nothing(): void {
  // The machine only assigns and raises; there is nothing to execute.
}
