/**
 * "None of these": each fault is left out of the reckoning in turn and vehicles that have it are
 * drawn from the model itself.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { latentPosterior } from '@keyturn/evidence';
import { expect, test } from 'vitest';
import type { Flow } from '../flow/flow.ts';
import { loadFlow } from '../flow/load.ts';
import { chancesOf } from './answer-evidence.ts';
import { stateFindings } from './belief.ts';
import { evidenceTables } from './evidence-tables.ts';
import { findingsOf } from './findings.ts';
import { hypothesesOf } from './hypotheses.ts';
import { bearsOn } from './possible.ts';
import { blankState, type CaseState } from './state.ts';

const folder = new URL('../../../../flows/no-start/', import.meta.url);
const loaded = loadFlow(
  readdirSync(folder)
    .filter((name) => name.endsWith('.yaml'))
    .map((name) => ({ path: name, text: readFileSync(new URL(name, folder), 'utf8') })),
);
if (loaded.type === 'issues') throw new Error('the flow has issues');
const flow: Flow = loaded.flow;
const faults = Object.keys(flow.faults);

const context = {
  'vehicle.fuel': 'petrol',
  'vehicle.transmission': 'manual',
  'vehicle.ignition': 'key',
  'vehicle.nominal': 12,
  'vehicle.hybrid': 'none',
  'vehicle.displacement': 1.6,
  temperature: 15,
  kit: ['voltmeter', 'clamp-meter', 'helper', 'hand-tools', 'code-reader', 'load-tester'],
} as const;

/** Numbers from 0 to 1 that are the same each time (mulberry32). */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

function pick(random: () => number, weights: readonly number[]): number {
  let left = random() * weights.reduce((sum, one) => sum + one, 0);
  const at = weights.findIndex((one) => (left -= one) < 0);
  return at < 0 ? weights.length - 1 : at;
}

/** Checks that tell of faults, in the written order, but for what takes hours. */
const checks = flow.stages
  .flatMap(({ checks: ids }) => ids)
  .flatMap((id) => flow.checks[id] ?? [])
  .filter(({ id, minutes }) => minutes < 60 && id !== 'history' && id !== 'boost');

/** Answers of one vehicle with a fault, drawn from the model: every check that bears on the case. */
function drawCase(fault: number, random: () => number): CaseState {
  let state: CaseState = { ...blankState, context };
  const { space } = hypothesesOf(flow, findingsOf(flow, state));
  const own = [...space.owner.keys()].filter((at) => space.owner[at] === fault);
  const hidden =
    own[
      pick(
        random,
        own.map((at) => Math.exp(space.logWeights[at]!)),
      )
    ]!;
  for (const check of checks) {
    const findings = findingsOf(flow, state);
    if (!bearsOn(check, findings.known)) continue;
    const rows = chancesOf(flow, findings, check.id)?.rows;
    if (rows === undefined) continue;
    const answers = [...rows.keys()];
    const answer =
      answers[
        pick(
          random,
          answers.map((id) => rows.get(id)![hidden]!),
        )
      ]!;
    state = {
      ...state,
      answers: { ...state.answers, [check.id]: [[answer]] },
      order: [...state.order, check.id],
    };
  }
  return state;
}

/** The faults with their shares, with one of them left out. */
function rankedWithout(state: CaseState, left: number | undefined): (readonly [string, number])[] {
  const findings = findingsOf(flow, state);
  const { logPriors, pairs } = evidenceTables(flow);
  const priors = logPriors.map((log, at) => {
    const pair = pairs[at - faults.length];
    const isLeft = at === left || (pair && (pair.first === left || pair.second === left));
    return isLeft ? Number.NEGATIVE_INFINITY : log;
  });
  const { hypotheses } = latentPosterior(
    hypothesesOf(flow, findings).space,
    priors,
    stateFindings(flow, findings).map(({ logs }) => logs),
  );
  return faults
    .map((id, at) => [id, hypotheses[at]!] as const)
    .sort((one, other) => other[1] - one[1]);
}

const draws = 24;

/** A fault this likely is as good as proved. */
const asGoodAsProved = 0.95;

/** How often "none of these" comes first or second without the true fault, and how likely with it. */
function measure(): { readonly leading: number; readonly below: number } {
  const leads: boolean[] = [];
  const sinks: boolean[] = [];
  const prior = evidenceTables(flow).model.priors[faults.indexOf('unlisted')]!;
  for (const [at, fault] of faults.entries()) {
    const isElsewhere = flow.priors[fault]!.factors.some(({ times }) => times < 0.01);
    if (fault === 'unlisted' || isElsewhere) continue;
    const random = randomFrom(at + 1);
    for (let draw = 0; draw < draws; draw += 1) {
      const state = drawCase(at, random);
      leads.push(rankedWithout(state, at).findIndex(([id]) => id === 'unlisted') <= 1);
      const whole = rankedWithout(state, undefined);
      if ((whole[0]?.[1] ?? 0) < asGoodAsProved || whole[0]?.[0] === 'unlisted') continue;
      sinks.push(whole.find(([id]) => id === 'unlisted')![1] < prior);
    }
  }
  const part = (all: readonly boolean[]): number => all.filter(Boolean).length / all.length;
  return { leading: part(leads), below: part(sinks) };
}

test('none of these comes first or second where the fault is not listed, and sinks where it is', () => {
  const { leading, below } = measure();
  expect(leading).toBeGreaterThan(0.5);
  expect(below).toBeGreaterThan(0.9);
}, 60_000);
