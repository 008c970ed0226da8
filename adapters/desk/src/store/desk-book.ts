/**
 * The cases on the desk as this window holds them, each change handed on to the store.
 */
import type { Flow } from '@keyturn/core';
import type { Caller, CallerField, DeskCase } from '../case/desk-case.ts';
import type { DeskOutcome } from '../case/outcome.ts';
import type { DeskStore } from './desk-store.ts';

/** What became of a case that was to be kept: another desk may have gone on with it, or closed it. */
export type Held = 'kept' | 'theirs' | 'gone';

/** The cases of one desk. */
export class DeskBook {
  readonly #store: DeskStore;
  readonly #flow: Flow;
  readonly #cases = new Map<string, DeskCase>();
  #callers: Readonly<Record<string, Caller>> = {};
  #outcomes: readonly DeskOutcome[] = [];
  #unfit = 0;
  /** The case that was closed last, with its outcome's id: it may have been the wrong key. */
  #closed:
    | {
        readonly kase: DeskCase;
        readonly caller: Caller;
        readonly outcome: string | undefined;
      }
    | undefined;
  /** Cases on their way into the store: not read from there yet. */
  readonly #underWay = new Set<string>();

  constructor(store: DeskStore, flow: Flow) {
    this.#store = store;
    this.#flow = flow;
  }

  /** Every open case. */
  get cases(): readonly DeskCase[] {
    return [...this.#cases.values()];
  }

  /** What cases turned out to be. */
  get outcomes(): readonly DeskOutcome[] {
    return this.#outcomes;
  }

  /** How many kept cases belong to another version of the flow. They stay kept. */
  get unfit(): number {
    return this.#unfit;
  }

  /** An open case. */
  case(id: string | undefined): DeskCase | undefined {
    return id === undefined ? undefined : this.#cases.get(id);
  }

  /** Who called. */
  caller(id: string): Caller {
    return this.#callers[id] ?? {};
  }

  /** Takes in what is kept, where it is newer than what is held. */
  async read(): Promise<void> {
    const { cases, callers, outcomes } = await this.#store.read();
    const { id, version } = this.#flow;
    const fit = cases.filter(({ sitting }) => {
      const { flow } = sitting.case;
      return flow.id === id && flow.version === version;
    });
    this.#unfit = cases.length - fit.length;
    const kept = new Set(fit.map((kase) => kase.id));
    for (const held of this.#cases.keys()) {
      if (!kept.has(held) && !this.#underWay.has(held)) this.#cases.delete(held);
    }
    for (const kase of fit) {
      if ((this.#cases.get(kase.id)?.version ?? 0) < kase.version) this.#cases.set(kase.id, kase);
    }
    this.#callers = callers;
    this.#outcomes = outcomes;
  }

  /** Holds a case without keeping it: nothing of it has changed but what was said last. */
  hold(kase: DeskCase): void {
    this.#cases.set(kase.id, kase);
  }

  /** Keeps a case; where another desk was first, theirs counts. */
  async keep(kase: DeskCase): Promise<Held> {
    this.#cases.set(kase.id, kase);
    this.#underWay.add(kase.id);
    const kept = await this.#store.keep(kase).finally(() => this.#underWay.delete(kase.id));
    if (kept.type === 'kept') return 'kept';
    if (kept.theirs === undefined) {
      this.#cases.delete(kase.id);
      return 'gone';
    }
    this.#cases.set(kase.id, kept.theirs);
    return 'theirs';
  }

  /** Keeps what is known of the person who calls. */
  async keepCaller(id: string, caller: Caller): Promise<void> {
    this.#callers = { ...this.#callers, [id]: caller };
    await this.#store.keepCaller(id, caller);
  }

  /** Keeps one thing more of the person who calls. */
  tell(id: string, field: CallerField, text: string): Promise<void> {
    return this.keepCaller(id, { ...this.caller(id), [field]: text });
  }

  /** True where the case that was closed last can still be put back. */
  get canReopen(): boolean {
    return this.#closed !== undefined;
  }

  /** Takes a case off the desk; the person is forgotten, here once another case is taken up. */
  async close(kase: DeskCase, outcome: DeskOutcome | undefined): Promise<void> {
    const { id } = kase;
    const caller = this.caller(id);
    await this.#store.close(id, outcome);
    this.#closed = { kase, caller, outcome: outcome?.id };
    this.#cases.delete(id);
    this.#callers = Object.fromEntries(Object.entries(this.#callers).filter(([one]) => one !== id));
    if (outcome === undefined) return;
    this.#outcomes = [...this.#outcomes.filter((one) => one.id !== outcome.id), outcome];
  }

  /** Forgets the case that was closed last, and the person. */
  forgetClosed(): void {
    this.#closed = undefined;
  }

  /** Puts the case that was closed last back, and takes its outcome out of the count; gives its id. */
  async reopen(): Promise<string | undefined> {
    if (this.#closed === undefined) return undefined;
    const { kase, caller, outcome } = this.#closed;
    await this.#store.reopen(kase, caller, outcome);
    this.#cases.set(kase.id, kase);
    this.#callers = { ...this.#callers, [kase.id]: caller };
    this.#outcomes = this.#outcomes.filter(({ id }) => id !== outcome);
    return kase.id;
  }
}
