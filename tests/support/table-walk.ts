/**
 * Every combination of answers to a table of decisions, gone through exactly: the table as a flow
 * has it against the same rules in plain code.
 *
 * A combination gives each check that a line names one of its answers: a choice, a band, two bands
 * that a reading is too near to tell apart, a reading without a bound to hold it to, or none; and
 * where a line asks for it, a first answer and a second. Answers are told one check at a time, and
 * only a check that the line or the rule in hand hangs on is told next. So one way through stands
 * for all combinations of the checks left, and ways that differ only in what nothing further down
 * looks at are gone once. The lines are held by the judge of the core itself.
 */
import type { CaseState, DecisionLine, Flow } from '@keyturn/core';
import { Settling } from '../../packages/core/src/case/settled.ts';
import type { Findings } from '../../packages/core/src/case/findings.ts';
import { blankState } from '../../packages/core/src/case/state.ts';
import {
  checksOf,
  fieldsOf,
  type Condition,
  type Finding,
} from '../../packages/core/src/flow/condition.ts';
import { fieldsFilled } from '../../packages/core/src/flow/fields-filled.ts';
import { optionsOf } from '../../packages/core/src/flow/options-of.ts';
import type { Decision } from './counter-rules.ts';

/** A check as it was answered: the latest answer, and how often it was answered at all. */
interface Told {
  /** The id of a choice or band, `low~normal`, `no-bound` or `unanswered`. */
  readonly latest: string;
  readonly times: 0 | 1 | 2;
  /** Answers that this stands for: all that may have come before, where it was answered twice. */
  readonly ways: bigint;
  readonly findings: readonly Finding[];
}

/** Check to how it was answered. */
type Telling = ReadonlyMap<string, Told>;

/** A part as the plain rules read it: an answer, or where a check is answered again all of them. */
type PartRead = Readonly<Record<string, string | readonly string[]>>;

/** One plain rule; undefined where it leaves the part to the next. */
export type Rule = (part: PartRead) => Decision | undefined;

/** Combinations of which a table says something else than the rules. */
interface Disagreement {
  /** Of the table; undefined where no line decides. */
  readonly line: DecisionLine | undefined;
  /** Undefined where no rule decides. */
  readonly ruled: Decision | undefined;
  /** Whatever is not in it may have any answer. */
  readonly answers: Readonly<Record<string, string>>;
}

/** Answers by which a line, counted from 1, decides whatever the others are. */
export interface Example {
  readonly line: number;
  readonly answers: Telling;
}

/** What a walk came to. */
export interface Walked {
  /** All combinations that there are. */
  readonly combinations: bigint;
  /** Position of a line, from 1, to how many of them it decides. */
  readonly decides: ReadonlyMap<number, bigint>;
  /** For each line and each answer to what is kept at least one way to get there. */
  readonly examples: readonly Example[];
  readonly disagreements: readonly Disagreement[];
}

const unanswered: Told = { latest: 'unanswered', times: 0, ways: 1n, findings: [] };

/** Thrown by a part of which a rule reads what was not told yet. */
class NotTold {
  readonly check: string;
  constructor(check: string) {
    this.check = check;
  }
}

/** Walks the table of a flow; a check that is `kept` tells examples apart to the end. */
export function walkTable(
  flow: Flow,
  rules: readonly Rule[],
  kept: readonly string[] = [],
): Walked {
  return new Walk(flow, rules, kept).walk();
}

/** How far the table and the rules have come; a line or rule counts as the one that decides. */
interface Place {
  readonly line: number;
  readonly rule: number;
  readonly isDecided: boolean;
  readonly ruled: Decision | undefined;
}

class Walk {
  readonly #flow: Flow;
  readonly #rules: readonly Rule[];
  readonly #kept: readonly string[];
  /** Check to the answers that it may have, in the order in which checks are asked. */
  readonly #answers: ReadonlyMap<string, readonly Told[]>;
  readonly #lineReads: readonly ReadonlySet<string>[];
  readonly #ruleReads: readonly ReadonlySet<string>[];
  readonly #gone = new Map<string, ReadonlyMap<number, bigint>>();
  readonly #examples: Example[] = [];
  readonly #disagreements: Disagreement[] = [];

  constructor(flow: Flow, rules: readonly Rule[], kept: readonly string[]) {
    this.#flow = withoutGates(flow);
    this.#rules = rules;
    this.#kept = kept;
    const every = answersTo(flow);
    this.#answers = every;
    const byLines = flow.decisions.map((line) => checksNamed(flow, line.when));
    const byRules = rules.map((rule) => this.#readBy(rule));
    this.#lineReads = readsFrom(byLines);
    this.#ruleReads = readsFrom(byRules);
    const named = new Set([...byLines, ...byRules].flatMap((checks) => [...checks]));
    this.#answers = new Map([...every].filter(([check]) => named.has(check)));
  }

  walk(): Walked {
    const combinations = this.#waysOf([...this.#answers.keys()]);
    const start: Place = { line: 0, rule: 0, isDecided: false, ruled: undefined };
    const decides = this.#goOn(new Map(), start, [...this.#answers.keys()]);
    return { combinations, decides, examples: this.#examples, disagreements: this.#disagreements };
  }

  /** How many combinations of what is not told yet of some checks each line decides. */
  #goOn(answers: Telling, before: Place, among: readonly string[]): ReadonlyMap<number, bigint> {
    const { place, hangsOn } = this.#advance(answers, before);
    const reads = this.#readLater(place);
    const key = [
      ...[place.line, place.rule, place.isDecided, place.ruled?.decision, place.ruled?.reason],
      ...reads.map((check) => nameOf(answers.get(check))),
    ].join('|');
    const counts =
      this.#gone.get(key) ??
      (hangsOn === undefined
        ? this.#arrive(answers, place)
        : this.#split(answers, { place, check: hangsOn, reads }));
    this.#gone.set(key, counts);
    // What nothing looks at further on may have any answer.
    const free = among.filter((check) => !answers.has(check) && !reads.includes(check));
    return times(counts, this.#waysOf(free));
  }

  /** Goes on as far as nothing more need be told, and says what must be. */
  #advance(answers: Telling, before: Place): { place: Place; hangsOn: string | undefined } {
    let { line, rule, isDecided, ruled } = before;
    const hangsOn: string[] = [];
    const settling = this.#settling(answers);
    while (!isDecided && line < this.#flow.decisions.length) {
      const when = this.#flow.decisions[line]?.when;
      const truth = when === undefined ? true : settling.truth(when);
      if (truth === undefined && when !== undefined) {
        hangsOn.push(...settling.hanging(when));
        break;
      }
      if (truth === true) isDecided = true;
      else line += 1;
    }
    while (ruled === undefined && rule < this.#rules.length) {
      const said = sayOf(this.#rules[rule], this.#part(answers));
      if (said instanceof NotTold) {
        hangsOn.push(said.check);
        break;
      }
      if (said === undefined) rule += 1;
      else ruled = said;
    }
    // Whichever of the two is behind goes on, so that both look at the same checks.
    const first = [...this.#answers.keys()].find((check) => hangsOn.includes(check));
    return { place: { line, rule, isDecided, ruled }, hangsOn: first };
  }

  #split(
    answers: Telling,
    { place, check, reads }: { place: Place; check: string; reads: readonly string[] },
  ): ReadonlyMap<number, bigint> {
    const all = new Map<number, bigint>();
    for (const told of this.#answers.get(check) ?? []) {
      const further = new Map(answers).set(check, told);
      for (const [line, count] of this.#goOn(further, place, reads)) {
        all.set(line, (all.get(line) ?? 0n) + count * told.ways);
      }
    }
    return all;
  }

  #arrive(answers: Telling, { line, isDecided, ruled }: Place): ReadonlyMap<number, bigint> {
    const decided = isDecided ? this.#flow.decisions[line] : undefined;
    const agrees =
      decided !== undefined &&
      ruled !== undefined &&
      decided.decide === ruled.decision &&
      ruled.reason.includes(decided.reason);
    if (!agrees) {
      this.#disagreements.push({
        line: decided,
        ruled,
        answers: Object.fromEntries([...answers].map(([check, told]) => [check, nameOf(told)])),
      });
    }
    this.#examples.push({ line: line + 1, answers });
    const kept = this.#kept.filter((check) => !answers.has(check));
    return new Map([[line + 1, this.#waysOf(kept)]]);
  }

  /** The checks that a line or a rule may still look at, or that are kept. */
  #readLater({ line, rule, isDecided, ruled }: Place): readonly string[] {
    const lines = isDecided ? undefined : this.#lineReads[line];
    const rules = ruled === undefined ? this.#ruleReads[rule] : undefined;
    return [...this.#answers.keys()].filter(
      (check) =>
        lines?.has(check) === true || rules?.has(check) === true || this.#kept.includes(check),
    );
  }

  #waysOf(checks: readonly string[]): bigint {
    return checks.reduce((ways, check) => ways * sum(this.#answers.get(check) ?? []), 1n);
  }

  /** Every check that a rule looks at, whatever it finds. */
  #readBy(rule: Rule): ReadonlySet<string> {
    const reads = new Set<string>();
    const look = (answers: Telling): void => {
      const said = sayOf(rule, this.#part(answers));
      if (!(said instanceof NotTold)) return;
      reads.add(said.check);
      for (const told of this.#answers.get(said.check) ?? []) {
        look(new Map(answers).set(said.check, told));
      }
    };
    look(new Map());
    return reads;
  }

  #part(answers: Telling): PartRead {
    return partTold(answers, (check) =>
      (this.#answers.get(check) ?? []).some(({ times: often }) => often === 2),
    );
  }

  #settling(answers: Telling): Settling {
    const state = {
      ...blankState,
      context: contextTold(this.#flow, answers),
      answers: Object.fromEntries(
        [...answers].map(([check, { latest, times: often }]) => [
          check,
          often === 0 ? (['cannot'] as const) : [[latest]],
        ]),
      ),
    };
    const findings: Findings = {
      all: new Map(),
      placed: new Map(),
      limits: {},
      known: {
        finding: (check) => answers.get(check)?.findings.at(-1),
        findings: (check) => answers.get(check)?.findings ?? [],
        context: (path) => (state.context as Record<string, unknown>)[path],
        raised: () => false,
        limit: () => undefined,
      },
    };
    return new Settling(this.#flow, state, findings);
  }
}

/** A flow any check of which may be told at any time: its table alone decides. */
function withoutGates(flow: Flow): Flow {
  const checks = Object.entries(flow.checks).map(([id, { when, requires, ...check }]) => [
    id,
    { ...check, needs: [], after: [], again: [] },
  ]);
  return { ...flow, stops: [], checks: Object.fromEntries(checks) as Flow['checks'] };
}

/** The answers to each check, in the order of the stages. */
function answersTo(flow: Flow): ReadonlyMap<string, readonly Told[]> {
  const twice = new Set(flow.decisions.flatMap(({ when }) => (when ? askedTwice(when) : [])));
  const staged = flow.stages.flatMap(({ checks }) => checks);
  return new Map(
    staged.map((check) => {
      const once = namesOf(flow, check).map((latest): Told => ({
        latest,
        times: 1,
        ways: 1n,
        findings: [findingOf(check, latest)],
      }));
      const ways = BigInt(once.length);
      const again = once.map(({ latest, findings }): Told => ({
        latest,
        times: 2,
        ways,
        findings: [earlier, ...findings],
      }));
      return [check, [unanswered, ...once, ...(twice.has(check) ? again : [])]];
    }),
  );
}

function namesOf(flow: Flow, id: string): readonly string[] {
  const check = flow.checks[id];
  if (check === undefined) return [];
  const options = optionsOf(check);
  if (check.form.kind === 'choice') return options;
  const between = options.slice(1).map((band, index) => `${options[index] ?? ''}~${band}`);
  // A day lies in one band or another.
  return [...options, ...(check.form.kind === 'reading' ? between : []), 'no-bound'];
}

/** The checks of a line, those among them that fill a field of the context. */
function checksNamed(flow: Flow, when: Condition | undefined): ReadonlySet<string> {
  if (when === undefined) return new Set();
  const fields = fieldsOf(when);
  const filling = Object.values(flow.checks)
    .filter((check) => fieldsFilled(check).some((field) => fields.includes(field)))
    .map(({ id }) => id);
  return new Set([...checksOf(when), ...filling]);
}

function askedTwice(when: Condition): readonly string[] {
  switch (when.kind) {
    case 'all':
    case 'any':
      return when.of.flatMap(askedTwice);
    case 'not':
      return askedTwice(when.of);
    default:
      return when.kind === 'twice' ? [when.check] : [];
  }
}

/** For each place what is read there or later. */
function readsFrom(reads: readonly ReadonlySet<string>[]): readonly ReadonlySet<string>[] {
  return reads.map((_, from) => new Set(reads.slice(from).flatMap((one) => [...one])));
}

/** What came before the latest answer: whoever looks at it does more than count it. */
const earlier = new Proxy({} as Finding, {
  get: () => {
    throw new Error('an answer before the latest was looked at');
  },
});

function findingOf(check: string, latest: string): Finding {
  const bands = latest === 'no-bound' ? [] : latest.split('~');
  return { check, weights: Object.fromEntries(bands.map((band) => [band, 1 / bands.length])) };
}

function contextTold(flow: Flow, answers: Telling): CaseState['context'] {
  const fields = [...answers].flatMap(([id, { latest, times: often }]) => {
    const check = flow.checks[id];
    if (check?.writes === undefined || check.form.kind !== 'choice' || often === 0) return [];
    return [[check.writes, check.form.several ? [latest] : latest] as const];
  });
  return Object.fromEntries(fields);
}

function sayOf(rule: Rule | undefined, part: PartRead): Decision | NotTold | undefined {
  try {
    return rule?.(part);
  } catch (thrown) {
    if (thrown instanceof NotTold) return thrown;
    throw thrown;
  }
}

/** A part that shows what was told of it, and stops whoever reads on. */
function partTold(answers: Telling, isAnsweredAgain: (check: string) => boolean): PartRead {
  return new Proxy<PartRead>(
    {},
    {
      get: (_, check) => {
        const told = answers.get(String(check));
        // eslint-disable-next-line @typescript-eslint/only-throw-error -- not an error: a question
        if (told === undefined) throw new NotTold(String(check));
        return isAnsweredAgain(String(check)) ? allOf(told) : told.latest;
      },
    },
  );
}

/** Every answer in order; the first of two is not told, since nothing may hang on it. */
function allOf({ latest, times: often }: Told): readonly string[] {
  if (often === 0) return [];
  if (often === 1) return [latest];
  return Object.defineProperty(['', latest], 0, { get: () => earlier.check });
}

function nameOf(told: Told | undefined): string {
  if (told === undefined) return '';
  return told.times === 2 ? `${told.latest}, read again` : told.latest;
}

function sum(answers: readonly Told[]): bigint {
  return answers.reduce((ways, one) => ways + one.ways, 0n);
}

function times(counts: ReadonlyMap<number, bigint>, ways: bigint): ReadonlyMap<number, bigint> {
  return new Map([...counts].map(([line, count]) => [line, count * ways]));
}
