/**
 * Answers turned into findings: which choice holds, or how likely the true value lies in each band.
 */
import {
  bandWeights,
  convert,
  internalResistance,
  limit,
  type Bound,
  type LimitContext,
  type LimitName,
  type Quantity,
  type Source,
} from '@keyturn/electrics';
import type { Finding, Known } from '../flow/condition.ts';
import type { Band, Check, Computed, DateBand, Flow } from '../flow/flow.ts';
import { looksLikeDay } from '../policy/calendar.ts';
import { lastDayOf, shopDay } from '../policy/term.ts';
import type { PartLimit } from './context.ts';
import { limitContext } from './limit-context.ts';
import { makerLimit, withMaker } from './part-limits.ts';
import { isReading, isSaid, type CaseState } from './state.ts';

/** A reading placed among its bands. */
export interface Placed {
  readonly check: string;
  readonly quantity: Quantity;
  readonly bands: readonly Band[];
  /** One fewer than bands; undefined where a limit cannot be given for want of the context. */
  readonly bounds: readonly Bound[] | undefined;
  readonly weights: Readonly<Record<string, number>>;
}

// A bare figure in a flow is one that the trade itself has fixed.
const writtenInFlow: Source = { provenance: 'common practice', text: '' };

/** Volts that a battery must fall for its resistance to be told: four times the meters' error. */
const leastFall = 0.3;

/** A resistance worked out from three readings means nothing below a tenth of a milliohm. */
const leastStep = 0.1;

/** All that has been found in a case. */
export interface Findings {
  /** Check, or computed reading, to its findings, oldest first. */
  readonly all: ReadonlyMap<string, readonly Finding[]>;
  /** The readings taken by a meter, by check: the latest of each. */
  readonly placed: ReadonlyMap<string, Placed>;
  readonly limits: LimitContext;
  readonly known: Known;
}

/** Works out every finding of a case. No side effects. */
export function findingsOf(flow: Flow, state: CaseState): Findings {
  const all = new Map<string, readonly Finding[]>();
  const read: string[] = [];
  for (const check of state.order) {
    if (flow.checks[check]?.form.kind === 'reading') read.push(check);
    else note(all, check, namedFindings(flow, state, check));
  }
  // Whether the engine turns is known from answers alone; the limits of readings depend on it.
  const limits = limitContext(flow, state, new KnownFacts(all, state, {}));
  const placed = new Map<string, Placed>();
  for (const check of read) note(all, check, placeAnswers(flow, state, { check, limits, placed }));
  for (const computed of Object.values(flow.computed)) {
    const place = placeComputed(computed, limits);
    if (place === undefined) continue;
    placed.set(computed.id, place);
    note(all, computed.id, [findingAt(place, computed.unit)]);
  }
  return { all, placed, limits, known: new KnownFacts(all, state, limits) };
}

/** The findings if a check had been answered so, and so only: limits stay as they are. */
export function findingsWith(
  findings: Findings,
  state: CaseState,
  { check, answer }: { readonly check: string; readonly answer: string },
): Findings {
  const { all, limits } = findings;
  const others = (all.get(check) ?? []).slice(0, -1);
  const found: Finding = { check, weights: { [answer]: 1 } };
  const supposed = new Map(all).set(check, [...others, found]);
  return { ...findings, all: supposed, known: new KnownFacts(supposed, state, limits) };
}

function note(
  all: Map<string, readonly Finding[]>,
  check: string,
  found: readonly Finding[],
): void {
  if (found.length > 0) all.set(check, found);
}

function namedFindings(flow: Flow, state: CaseState, check: string): readonly Finding[] {
  const found: Finding[] = [];
  for (const answer of state.answers[check] ?? []) {
    if (isSaid(answer) && !isReading(answer)) {
      found.push(namedFinding(flow.checks[check], namedOf(flow, state, { check, answer })));
    }
  }
  return found;
}

/** Choices and bands as they were named; a day by the band in which it lies. */
function namedOf(
  flow: Flow,
  state: CaseState,
  { check, answer }: { readonly check: string; readonly answer: readonly string[] },
): readonly string[] {
  const form = flow.checks[check]?.form;
  const [day = ''] = answer;
  if (form?.kind !== 'date' || !looksLikeDay(day)) return answer;
  const band = dateBand(form.bands, { part: flow.part, state, day });
  return band === undefined ? [] : [band];
}

/** The band of a day by the terms of the shop; undefined where it has no such terms. */
export function dateBand(
  bands: readonly DateBand[],
  sale: { readonly part: Flow['part']; readonly state: CaseState; readonly day: string },
): string | undefined {
  const { part, state, day: sold } = sale;
  const { policy } = state;
  if (policy === null || part === undefined) return undefined;
  const today = shopDay(policy, state.opened);
  for (const { id, to } of bands) {
    if (to === 'above') return id;
    const last = lastDayOf(to, { policy, part, sold });
    if (last === undefined) return undefined;
    if (today <= last) return id;
  }
  return undefined;
}

/** The findings of a reading; the latest one taken by a meter is kept where it was placed. */
function placeAnswers(
  flow: Flow,
  state: CaseState,
  scope: {
    readonly check: string;
    readonly limits: LimitContext;
    readonly placed: Map<string, Placed>;
  },
): readonly Finding[] {
  const { check, limits, placed } = scope;
  const asked = flow.checks[check];
  const form = asked?.form;
  if (form?.kind !== 'reading') return [];
  const bounds = boundsOfCheck(form, {
    limits: asked?.like === undefined ? limits : afterRepair(limits),
    maker: makerLimit(state.context, check),
  });
  return (state.answers[check] ?? []).flatMap((answer): readonly Finding[] => {
    if (!isSaid(answer)) return [];
    if (!isReading(answer)) return [namedFinding(flow.checks[check], answer)];
    const place = placeReading(check, answer, { bands: form.bands, bounds });
    placed.set(check, place);
    return [findingAt(place, form.unit)];
  });
}

/** After a repair the engine turns, and what was measured before it no longer holds. */
function afterRepair(limits: LimitContext): LimitContext {
  const measured = { restVoltage: undefined, crankVoltage: undefined, crankCurrent: undefined };
  return { ...limits, ...measured, turning: true };
}

function findingAt({ check, quantity, weights }: Placed, unit: Quantity['unit']): Finding {
  return { check, weights, value: convert(quantity, unit).value };
}

/** Places a reading among bands; with a limit missing nothing is said of any band. */
export function placeReading(
  check: string,
  quantity: Quantity,
  scale: {
    readonly bands: readonly Band[];
    readonly bounds: readonly Bound[] | undefined;
  },
): Placed {
  const { bounds } = scale;
  const shares = bounds === undefined ? [] : bandWeights(quantity, bounds);
  const weights = Object.fromEntries(
    scale.bands.flatMap((band, index) => {
      const share = shares[index];
      return share === undefined ? [] : [[band.id, share] as const];
    }),
  );
  return { check, quantity, bands: scale.bands, bounds, weights };
}

/** The bounds of a check, where the maker's figures for the part go before general ones. */
export function boundsOfCheck(
  form: Extract<Check['form'], { kind: 'reading' }>,
  given: { readonly limits: LimitContext; readonly maker?: PartLimit | undefined },
): readonly Bound[] | undefined {
  const general = eachBound(form.bands, form.unit, given.limits);
  return allOf(given.maker === undefined ? general : withMaker(general, form, given.maker));
}

/** The bounds between bands in the present context; undefined where one cannot be given. */
export function boundsOf(
  bands: readonly Band[],
  unit: Quantity['unit'],
  limits: LimitContext,
): readonly Bound[] | undefined {
  return allOf(eachBound(bands, unit, limits));
}

/** Each bound between bands, in their order; undefined where it cannot be given. */
function eachBound(
  bands: readonly Band[],
  unit: Quantity['unit'],
  limits: LimitContext,
): readonly (Bound | undefined)[] {
  const bounds: (Bound | undefined)[] = [];
  for (const { to } of bands) {
    if (to === 'above') continue;
    if (typeof to === 'number') {
      bounds.push({ low: to, high: to, unit, source: writtenInFlow });
      continue;
    }
    const result = limit(to, limits);
    bounds.push(result.type === 'bound' ? result.bound : undefined);
  }
  return bounds;
}

function allOf(bounds: readonly (Bound | undefined)[]): readonly Bound[] | undefined {
  const given = bounds.filter((bound) => bound !== undefined);
  return given.length === bounds.length ? given : undefined;
}

/** The band or answer that is likeliest, and how likely. */
export function likeliest(
  weights: Readonly<Record<string, number>>,
): readonly [answer: string, share: number] | undefined {
  let best: readonly [string, number] | undefined;
  for (const entry of Object.entries(weights)) {
    if (best === undefined || entry[1] > best[1]) best = entry;
  }
  return best;
}

/** A class rather than an object of functions: one is made for every turn. */
class KnownFacts implements Known {
  readonly #all: ReadonlyMap<string, readonly Finding[]>;
  readonly #state: CaseState;
  readonly #limits: LimitContext;

  constructor(
    all: ReadonlyMap<string, readonly Finding[]>,
    state: CaseState,
    limits: LimitContext,
  ) {
    this.#all = all;
    this.#state = state;
    this.#limits = limits;
  }

  finding(check: string): Finding | undefined {
    return this.#all.get(check)?.at(-1);
  }

  findings(check: string): readonly Finding[] {
    return this.#all.get(check) ?? [];
  }

  context(path: string): unknown {
    return this.#state.context[path];
  }

  raised(interrupt: string): boolean {
    return this.#state.raised.includes(interrupt);
  }

  limit(name: LimitName): number | undefined {
    const result = limit(name, this.#limits);
    return result.type === 'bound' ? (result.bound.low + result.bound.high) / 2 : undefined;
  }
}

/** A choice, a test lamp's answer, or a band given by its id. */
function namedFinding(check: Check | undefined, answers: readonly string[]): Finding {
  const lamp = check?.form.kind === 'reading' ? check.form.lamp : undefined;
  const weights: Record<string, number> = {};
  for (const answer of answers) weights[lamp?.[answer] ?? answer] = 1;
  return { check: check?.id ?? '', weights };
}

function placeComputed(computed: Computed, limits: LimitContext): Placed | undefined {
  const { restVoltage, crankVoltage, crankCurrent } = limits;
  if (restVoltage === undefined || crankVoltage === undefined || crankCurrent === undefined) {
    return undefined;
  }
  // Without a load that the meter can tell from none there is no resistance to speak of.
  if (crankCurrent <= 0 || restVoltage - crankVoltage < leastFall) return undefined;
  const { best, unit } = internalResistance(restVoltage, crankVoltage, crankCurrent);
  const quantity: Quantity = { value: best, unit, resolution: leastStep };
  const bounds = boundsOf(computed.bands, computed.unit, limits);
  return placeReading(computed.id, quantity, { bands: computed.bands, bounds });
}
