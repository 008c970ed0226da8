/**
 * The cautions that stand between a person and a check.
 */
import { holds } from '../flow/condition.ts';
import type { Caution, Check, Cover, Flow, SignalWord } from '../flow/flow.ts';
import { assess } from './assessment.ts';
import { covers, wayToAsk } from './possible.ts';
import type { CaseState } from './state.ts';

const gravity: readonly SignalWord[] = ['danger', 'warning', 'caution', 'notice'];

/** The cautions that cover each check, when done and when only remembered; gravest first. */
interface Coverage {
  readonly done: ReadonlyMap<string, readonly Caution[]>;
  readonly remembered: ReadonlyMap<string, readonly Caution[]>;
}

const coverages = new WeakMap<Flow, Coverage>();

/** True where a check may only be answered from memory as things stand. */
export function isRemembered(flow: Flow, state: CaseState, check: string): boolean {
  const asked = flow.checks[check];
  return asked !== undefined && wayToAsk(asked, assess(flow, state).stops) === 'remember';
}

/** The cautions of a check that have not been said yet, or have lapsed; gravest first. */
export function pendingCautions(flow: Flow, state: CaseState, check: string): readonly Caution[] {
  const { done, remembered } = coverageOf(flow);
  const covering = (isRemembered(flow, state, check) ? remembered : done).get(check) ?? [];
  const { known } = assess(flow, state).findings;
  return covering.filter(
    ({ id, when }) =>
      !state.cautioned.includes(id) && (when === undefined || holds(when, known) === true),
  );
}

/** Those of them that are said with the question and need no confirmation. */
export function saidWithQuestion(flow: Flow, state: CaseState, check: string): readonly Caution[] {
  const covering = coverageOf(flow).done.get(check) ?? [];
  // Most checks have none, or have said theirs; then nothing of the case need be looked at.
  if (covering.every(({ id, confirm }) => confirm || state.cautioned.includes(id))) return [];
  return pendingCautions(flow, state, check).filter(({ confirm }) => !confirm);
}

/** Those that were confirmed before everything else, and hold as things stand: a battery may burst. */
export function lastingCautions(flow: Flow, state: CaseState): readonly Caution[] {
  const said = Object.values(flow.cautions).filter(
    ({ id, confirm, before }) =>
      confirm && state.cautioned.includes(id) && before.some(isEverything),
  );
  if (said.length === 0) return [];
  const { known } = assess(flow, state).findings;
  return said.filter(({ when }) => when === undefined || holds(when, known) === true);
}

function isEverything(cover: Cover): boolean {
  return Object.keys(cover).length === 0;
}

/** Worked out once for each flow. */
function coverageOf(flow: Flow): Coverage {
  const known = coverages.get(flow);
  if (known !== undefined) return known;
  const gravest = Object.values(flow.cautions).toSorted(
    (a, b) => gravity.indexOf(a.word) - gravity.indexOf(b.word),
  );
  const covering = (as: (check: Check) => Check): ReadonlyMap<string, readonly Caution[]> =>
    new Map(
      Object.values(flow.checks).map((check) => [
        check.id,
        gravest.filter(({ before }) => covers(before, as(check))),
      ]),
    );
  const made: Coverage = {
    done: covering((check) => check),
    // Remembering cannot hurt, except by where the person stands.
    remembered: covering((check) => ({ ...check, does: [], at: 'memory' })),
  };
  coverages.set(flow, made);
  return made;
}
