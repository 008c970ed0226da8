/**
 * The case cards, written from the trade alone, against the no-start flow.
 */
import { compileFlow, type Chart, type Flow } from '@keyturn/core';
import { replayCard, type Card } from '@keyturn/terminal';
import { describe, expect, test } from 'vitest';
import { cards, noStart, playedCard, speaker } from './support/no-start.ts';
import { crossedStops } from './support/hard-stops.ts';

const { flow } = noStart.chart;
const named = cards.map((card) => [card.id, card] as const);

test('there are at least 80 cards, and every fault has two', () => {
  expect(cards.length).toBeGreaterThanOrEqual(80);
  const first = cards.map(({ accept }) => accept.fault?.[0]);
  for (const fault of Object.keys(flow.faults)) {
    expect(first.filter((one) => one === fault).length, fault).toBeGreaterThanOrEqual(2);
  }
});

test('every fault that the trade can prove is demanded proved by some card', () => {
  const demanded = new Set(
    cards.flatMap(({ accept }) =>
      accept.strength?.includes('proved') ? (accept.fault ?? []) : [],
    ),
  );
  for (const { id, best } of Object.values(flow.faults)) {
    if (best === 'proved') expect(demanded, id).toContain(id);
  }
});

describe('every card comes to a verdict that it accepts', () => {
  test.each(named)('%s', (_, card) => {
    const { accept, forbid } = card;
    const { fault, remedy, strength, send, asked } = playedCard(card);
    if (accept.fault) expect(accept.fault).toContain(fault);
    if (accept.remedy) expect(accept.remedy).toContain(remedy);
    if (accept.strength) expect(accept.strength).toContain(strength);
    if (accept.send) expect(accept.send).toContain(send);
    expect(asked.filter((check) => forbid.includes(check))).toEqual([]);
  });
});

describe('no hard stop is crossed, and no caution left out', () => {
  test.each(named)('%s', (_, card) => {
    expect(crossedStops(card, playedCard(card))).toEqual([]);
  });
});

describe('a card fails once what its verdict rests on is broken', () => {
  test.each(named)('%s', (_, card) => {
    const { fault = [] } = card.accept;
    const broken = isStopped(card)
      ? brokenOnce('stops', () => withoutStops(flow))
      : brokenOnce(`faults ${fault.join()}`, () => withoutFaults(flow, fault));
    expect(replayCard(broken, speaker, card).ok).toBe(false);
  });

  const provedOnly = named.filter(([, { accept }]) => accept.strength?.join() === 'proved');
  test.each(provedOnly)('%s, with the proof alone broken', (_, card) => {
    const { fault = [] } = card.accept;
    const broken = brokenOnce(`proofs ${fault.join()}`, () => withoutProofs(flow, fault));
    expect(replayCard(broken, speaker, card).ok).toBe(false);
  });
});

/** What is broken in the flow to the chart of what is left. */
const brokenCharts = new Map<string, Chart>();

/** Many cards rest on the same: the flow without it is compiled, and its states drawn, once. */
function brokenOnce(what: string, without: () => Flow): Chart {
  const chart = brokenCharts.get(what) ?? compileFlow(without());
  brokenCharts.set(what, chart);
  return chart;
}

/** Where nothing may be asked, the verdict rests on the stop. */
function isStopped(card: Card): boolean {
  return card.context['place'] === 'live-lane' || card.answers['scene'] === 'unsafe';
}

function withoutStops(whole: Flow): Flow {
  return { ...whole, stops: whole.stops.map(({ instead: _, ...stop }) => stop) };
}

function withoutProofs(whole: Flow, faults: readonly string[]): Flow {
  return {
    ...whole,
    faults: Object.fromEntries(
      Object.entries(whole.faults).map(([id, fault]) => [
        id,
        faults.includes(id) ? { ...fault, proofs: [] } : fault,
      ]),
    ),
  };
}

/** The accepted faults can no longer be proved, and are all but ruled out from the start. */
function withoutFaults(whole: Flow, faults: readonly string[]): Flow {
  return {
    ...withoutProofs(whole, faults),
    priors: Object.fromEntries(
      Object.entries(whole.priors).map(([id, prior]) => [
        id,
        faults.includes(id) ? { ...prior, weight: 1e-30 } : prior,
      ]),
    ),
  };
}
