/**
 * Returns of the shipped flows, played with answers by their ids: a band, two bands joined by `~`
 * where a reading is too near the bound between them, or nothing where a check can't be done.
 */
import {
  compileFlow,
  openCase,
  positionOf,
  turn,
  type AnswerInput,
  type Case,
  type Chart,
  type DecisionMessage,
  type Step,
} from '@keyturn/core';
import { shippedFlow } from '@keyturn/terminal';

/** Check to its answers in order; a check that is not there can't be done. */
export type Returned = Readonly<Record<string, readonly string[]>>;

/** Figures that lie in each band, and in between, of a car's geared 12 V starter or battery. */
const figures: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  'bench-supply': { low: 10.2, 'low~ready': 11, ready: 11.8 },
  'no-load-current': {
    none: 0,
    'none~low': 5,
    low: 15,
    'low~normal': 30,
    normal: 70,
    'normal~high': 95,
    high: 140,
  },
  'no-load-speed': { low: 1500, 'low~normal': 2500, normal: 3000 },
  'case-temperature': {
    'too-cold': -10,
    'too-cold~usable': 0,
    usable: 25,
    'usable~too-hot': 45,
    'too-hot': 60,
  },
  'received-volts': {
    reversed: -11.8,
    'reversed~deep': 0,
    deep: 8,
    'deep~discharged': 10.5,
    discharged: 12,
    'discharged~charged': 12.4,
    charged: 12.7,
  },
  'battery-recharged': {
    'cell-down': 10.5,
    'cell-down~low': 11,
    low: 12,
    'low~full': 12.5,
    full: 12.8,
  },
  'battery-load-test': { failed: 8.2, 'failed~passed': 9.6, passed: 10.4 },
  'battery-tester': {
    poor: 240,
    'poor~middle': 360,
    middle: 420,
    'middle~strong': 480,
    strong: 590,
  },
  'cell-spread': {
    even: 0.01,
    'even~recheck': 0.025,
    recheck: 0.035,
    'recheck~uneven': 0.05,
    uneven: 0.07,
  },
  'stand-loss': { normal: 0.03, 'normal~high': 0.1, high: 0.4 },
};

/** Everything is at hand, and what limits go by is known. */
const contexts: Readonly<Record<string, Readonly<Record<string, unknown>>>> = {
  'starter-return': {
    kit: ['bench-tester', 'speed-meter'],
    part: { nominal: 12, class: 'car', build: 'geared' },
  },
  'battery-return': {
    kit: ['voltmeter', 'charger', 'load-tester', 'electronic-tester', 'hydrometer', 'thermometer'],
    part: { nominal: 12, battery: { technology: 'flooded', rating: 600, standard: 'en' } },
  },
};

const at = '2026-01-01T08:00:00.000Z';

/** A part that came back, as it was judged. */
export interface Judged {
  readonly decision: DecisionMessage;
  readonly case: Case;
  /** Checks in the order in which they were asked, each as often as it was. */
  readonly asked: readonly string[];
  readonly cautions: ReadonlySet<string>;
}

/** A shipped flow that judges returns. */
export class Counter {
  readonly chart: Chart;
  readonly #name: string;
  readonly #opened = new Map<string, Step>();
  /** What a step came to when it was last gone on with: many parts begin alike, and a turn is pure. */
  readonly #cameTo = new WeakMap<Step, { readonly input: string; readonly step: Step }>();

  constructor(name: 'starter-return' | 'battery-return') {
    this.#name = name;
    this.chart = compileFlow(shippedFlow(name, 'en').chart.flow);
  }

  /** Judges a part of which everything is told at once, before a question is put. */
  judgeTold(part: Returned, context: Readonly<Record<string, unknown>> = {}): Judged {
    const told = Object.entries(part).flatMap(([check, [first]]) =>
      first === undefined ? [] : [this.#answer(check, first)],
    );
    const later = Object.fromEntries(
      Object.entries(part).map(([check, answers]) => [check, answers.slice(1)]),
    );
    const opened = this.#open(context);
    const step =
      told.length === 0 ? opened : this.#goOn(opened, { type: 'answers', answers: told });
    return this.#askOn(step, later);
  }

  /** Judges a part question by question. */
  judgeAsked(part: Returned, context: Readonly<Record<string, unknown>> = {}): Judged {
    return this.#askOn(this.#open(context), part);
  }

  #open(context: Readonly<Record<string, unknown>>): Step {
    const key = JSON.stringify(context);
    const known = this.#opened.get(key);
    if (known !== undefined) return known;
    const { flow } = this.chart;
    const facts = Object.values(flow.checks)
      .filter(({ sets, writes }) => writes !== undefined || Object.keys(sets).length > 0)
      .map(({ id }) => id)
      .filter((id) => id !== 'case-temperature');
    const opened = openCase(this.chart, {
      id: 'r',
      at,
      context: { ...contexts[this.#name], ...context },
      notAsked: facts,
    });
    this.#opened.set(key, opened);
    return opened;
  }

  #goOn(from: Step, given: unknown): Step {
    const input = JSON.stringify(given);
    const known = this.#cameTo.get(from);
    if (known?.input === input) return known.step;
    const step = turn(this.chart, from.case, { at, input: given });
    this.#cameTo.set(from, { input, step });
    return step;
  }

  #askOn(begun: Step, part: Returned): Judged {
    const given = new Map<string, number>();
    const asked: string[] = [];
    const cautions = new Set<string>();
    let step = begun;
    for (let turns = 0; turns < 200; turns += 1) {
      for (const message of step.messages) {
        if (message.kind === 'caution') cautions.add(message.caution);
      }
      const position = positionOf(step.case);
      const { decision } = step.case.state;
      if (position.awaiting === 'nothing' && decision !== null) {
        return { decision, case: step.case, asked, cautions };
      }
      if (!('check' in position)) break;
      step = this.#goOn(
        step,
        position.awaiting === 'confirm'
          ? { type: 'confirm' }
          : this.#input(position.check, part, given),
      );
      if (position.awaiting === 'answer') asked.push(position.check);
    }
    throw new Error(`${this.#name} comes to no decision on ${JSON.stringify(part)}`);
  }

  #input(check: string, part: Returned, given: Map<string, number>): unknown {
    const time = given.get(check) ?? 0;
    given.set(check, time + 1);
    const said = part[check]?.[time];
    return said === undefined
      ? { type: 'talk', talk: 'cannot' }
      : { type: 'answers', answers: [this.#answer(check, said)] };
  }

  #answer(check: string, said: string): AnswerInput {
    const form = this.chart.flow.checks[check]?.form;
    if (form?.kind !== 'reading') return { check, value: [said] };
    const value = figures[check]?.[said];
    if (value === undefined) throw new Error(`no figure of ${check} is ${said}`);
    return { check, value: { value, unit: form.unit, resolution: value > 100 ? 1 : 0.001 } };
  }
}
