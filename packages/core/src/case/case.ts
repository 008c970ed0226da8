/**
 * A case as it is kept between turns, and the fold that makes it from its events.
 */
import { createActor, type AnyMachineSnapshot } from 'xstate';
import type { Chart } from '../chart/compile.ts';
import type { CaseEvent, LaterEvent, OpenedEvent } from './event.ts';
import { eventFormat } from './event.ts';
import { blankState, type Answer, type CaseState } from './state.ts';

/**
 * A case between turns: plain JSON of a size that does not grow with the number of turns. Its
 * events are kept beside it, appended as they happen; from them alone it can be made again.
 */
export interface Case {
  readonly id: string;
  readonly format: typeof eventFormat;
  readonly flow: { readonly id: string; readonly version: string };
  /** How many events have been folded into it. */
  readonly events: number;
  /** Where the machine stands. */
  readonly value: unknown;
  readonly state: CaseState;
}

/** A case cannot be used with this chart, or its events are not those of a case. */
export class CaseError extends Error {
  /** What is wrong. */
  readonly code: 'other-flow' | 'other-format' | 'not-opened' | 'not-a-case';

  constructor(code: CaseError['code'], message: string) {
    super(message);
    this.name = 'CaseError';
    this.code = code;
  }
}

/** The case that an opening event makes. */
export function foldOpening(chart: Chart, event: OpenedEvent): Case {
  requireFit(chart, event);
  const notAsked = event.notAsked.map((check): [string, readonly Answer[]] => [check, ['cannot']]);
  const state: CaseState = {
    ...blankState,
    at: event.at,
    opened: event.at,
    policy: event.policy ?? null,
    given: event.context,
    context: event.context,
    answers: Object.fromEntries(notAsked),
  };
  const snapshot = createActor(chart.machine, { input: state }).getSnapshot() as AnyMachineSnapshot;
  return kept(chart, event.id, { snapshot, events: 1 });
}

/** The case after one more event. */
export function foldEvent(chart: Chart, before: Case, event: LaterEvent): Case {
  const snapshot = chart.machine.resolveState({
    value: before.value as string,
    context: before.state,
  }) as AnyMachineSnapshot;
  return kept(chart, before.id, {
    snapshot: chart.transition(snapshot, event),
    events: before.events + 1,
  });
}

/**
 * Makes a case from all its events. Same events, same state, on every machine.
 *
 * @throws CaseError when the events do not begin with an opening, or belong to another flow, flow
 *   version or format.
 */
export function foldCase(chart: Chart, events: readonly CaseEvent[]): Case {
  const [first, ...rest] = events;
  if (first?.type !== 'opened') {
    throw new CaseError('not-opened', 'a case begins with the event "opened"');
  }
  return rest.reduce<Case>(
    (before, event) => {
      if (event.type === 'opened') throw new CaseError('not-a-case', 'a case is opened once');
      return foldEvent(chart, before, event);
    },
    foldOpening(chart, first),
  );
}

/** Refuses a case of another flow, version or format with words that say which it is. */
export function requireFit(
  chart: Chart,
  of: { readonly format: number; readonly flow: Case['flow'] },
): void {
  if (of.format !== eventFormat) {
    throw new CaseError(
      'other-format',
      `the case has format ${String(of.format)}; this version reads format ${String(eventFormat)}`,
    );
  }
  const { id, version } = chart.flow;
  if (of.flow.id !== id || of.flow.version !== version) {
    throw new CaseError(
      'other-flow',
      `the case belongs to ${of.flow.id} ${of.flow.version}; this is ${id} ${version}`,
    );
  }
}

function kept(
  chart: Chart,
  id: string,
  at: { readonly snapshot: AnyMachineSnapshot; readonly events: number },
): Case {
  return {
    id,
    format: eventFormat,
    flow: { id: chart.flow.id, version: chart.flow.version },
    events: at.events,
    value: at.snapshot.value,
    state: at.snapshot.context as CaseState,
  };
}
