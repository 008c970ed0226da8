/**
 * Conditions of a table of decisions. They are not known while a check that they hang on may still
 * be answered; afterwards they hold or they do not. What was not answered, or lies too close to a
 * bound, is no answer: so "not passed" takes in a borderline reading and one that was never taken.
 * A choice is otherwise only where it was made.
 */
import {
  holds,
  isAmong,
  isBorderline,
  within,
  type Condition,
  type Truth,
} from '../flow/condition.ts';
import { fieldsFilled } from '../flow/fields-filled.ts';
import type { Check, Flow } from '../flow/flow.ts';
import type { Findings } from './findings.ts';
import { isAskedAgain } from './open-checks.ts';
import { covers, hasKit, wayToAsk, stopsInForce } from './possible.ts';
import type { CaseState } from './state.ts';

/** What a table is gone through with: answers, and what may still be asked. */
export class Settling {
  readonly #flow: Flow;
  readonly #state: CaseState;
  readonly #findings: Findings;
  readonly #gates = new Map<string, Gate>();

  constructor(flow: Flow, state: CaseState, findings: Findings) {
    this.#flow = flow;
    this.#state = state;
    this.#findings = findings;
  }

  /** Whether a condition holds; undefined while that hangs on what may still be asked. */
  truth(condition: Condition, isWanted = true): Truth {
    switch (condition.kind) {
      case 'not':
        return this.truth(condition.of, !isWanted);
      case 'all':
      case 'any': {
        const parts = condition.of.map((part) => this.truth(part, isWanted));
        // Denied, all of several is any of their opposites.
        const decisive = (condition.kind === 'any') === isWanted;
        if (parts.includes(decisive)) return decisive;
        return parts.includes(undefined) ? undefined : !decisive;
      }
      default:
        return this.#hangsOn(condition).length > 0 ? undefined : this.#settled(condition, isWanted);
    }
  }

  /** The checks that may be asked now and that a condition hangs on. */
  hanging(condition: Condition, isWanted = true): readonly string[] {
    if (this.truth(condition, isWanted) !== undefined) return [];
    switch (condition.kind) {
      case 'not':
        return this.hanging(condition.of, !isWanted);
      case 'all':
      case 'any':
        return condition.of.flatMap((part) => this.hanging(part, isWanted));
      default:
        return this.#hangsOn(condition).flatMap((check) => this.#askedFirst(check));
    }
  }

  /** True for a check that may be asked at this moment, were it to be. */
  isAskable(check: Check): boolean {
    const stops = stopsInForce(this.#flow, this.#findings.known);
    return this.#gate(check).type === 'open' && wayToAsk(check, stops) !== 'never';
  }

  /** Open checks that a condition without parts hangs on. */
  #hangsOn(condition: Condition): readonly string[] {
    switch (condition.kind) {
      case 'answer':
      case 'answered':
      case 'borderline':
      case 'reading':
        return this.#isOpen(condition.check) ? [condition.check] : [];
      case 'context':
      case 'context-number':
      case 'context-known':
        return this.#state.context[condition.path] === undefined
          ? Object.values(this.#flow.checks)
              .filter((check) => fieldsFilled(check).includes(condition.path))
              .map(({ id }) => id)
              .filter((id) => this.#isOpen(id))
          : [];
      default:
        return [];
    }
  }

  #settled(condition: Condition, isWanted: boolean): boolean {
    const { known } = this.#findings;
    switch (condition.kind) {
      case 'answer': {
        if (condition.ever) return (holds(condition, known) ?? false) === isWanted;
        const finding = known.finding(condition.check);
        const found = finding !== undefined && isAmong(finding, condition.among);
        if (isWanted) return found === true;
        const isChoice = this.#flow.checks[condition.check]?.form.kind === 'choice';
        return isChoice ? finding !== undefined && found === false : found !== true;
      }
      case 'borderline':
        return (isBorderline(known.finding(condition.check)) ?? false) === isWanted;
      case 'reading': {
        const { value } = known.finding(condition.check) ?? {};
        return (within(value, condition.range, known) ?? false) === isWanted;
      }
      case 'context':
      case 'context-number': {
        const truth = holds(condition, known);
        return truth !== undefined && truth === isWanted;
      }
      default:
        return (holds(condition, known) ?? false) === isWanted;
    }
  }

  /** True for a check that has no answer yet, or is to be answered again, and may be. */
  #isOpen(id: string): boolean {
    const check = this.#flow.checks[id];
    if (check === undefined) return false;
    const isUnanswered =
      this.#state.answers[id] === undefined && this.#findings.known.finding(id) === undefined;
    if (!isUnanswered && !isAskedAgain(this.#state, check, this.#findings)) return false;
    return this.#gate(check).type !== 'shut';
  }

  /** A check itself where it may be asked now, else what is asked before it. */
  #askedFirst(id: string): readonly string[] {
    const check = this.#flow.checks[id];
    if (check === undefined) return [];
    const gate = this.#gate(check);
    return gate.type === 'behind' ? gate.checks : [id];
  }

  /** Whether a check may be asked: now, never as things stand, or only behind others. */
  #gate(check: Check): Gate {
    const known = this.#gates.get(check.id);
    if (known !== undefined) return known;
    // Two checks that wait for each other are never asked.
    this.#gates.set(check.id, { type: 'shut' });
    const gate = this.#makeGate(check);
    this.#gates.set(check.id, gate);
    return gate;
  }

  #makeGate(check: Check): Gate {
    if (!hasKit(this.#flow, check, this.#state)) return { type: 'shut' };
    if (check.when !== undefined && this.truth(check.when) === false) return { type: 'shut' };
    const behind = check.after
      .filter((id) => this.#isOpen(id))
      .flatMap((id) => this.#askedFirst(id));
    // What is not known of a stop does not forbid; what it hangs on is asked first.
    for (const { when, forbids, except } of this.#flow.stops) {
      if (!covers(forbids, check) || except.includes(check.id)) continue;
      const truth = this.truth(when);
      if (truth === true) return { type: 'shut' };
      if (truth === undefined) behind.push(...this.hanging(when));
    }
    if (check.requires !== undefined) {
      const truth = this.truth(check.requires);
      if (truth === false) return { type: 'shut' };
      if (truth === undefined) behind.push(...this.hanging(check.requires));
    }
    return behind.length === 0 ? { type: 'open' } : { type: 'behind', checks: behind };
  }
}

type Gate =
  | { readonly type: 'open' | 'shut' }
  | { readonly type: 'behind'; readonly checks: readonly string[] };
