import type { RankingMessage, Weighted, WhyMessage } from '@keyturn/core';
import type { Rendered } from '../rendered.ts';
import type { Voice } from '../voice.ts';
import { sayBound, sayExpected } from './bound.ts';
import { sayDecision } from './decision.ts';
import { mostLikely } from './most-likely.ts';

/** The faults by probability, most likely first, with how they stood before. */
export function renderRanking({ faults, before }: RankingMessage, voice: Voice): Rendered[] {
  const earlier = new Map(before);
  const ranked = mostLikely(faults, faults.length);
  return [
    {
      kind: 'ranking',
      heading: voice.say('ranking.heading', { count: ranked.length }),
      faults: ranked.map(([id, share]) => ({
        id,
        name: voice.flow.fault(id),
        share,
        before: earlier.get(id) ?? 0,
      })),
    },
  ];
}

/** The most likely faults in one phrase: "battery worn out (62%) and ground cable (20%)". */
export function sayFaults(weighted: readonly Weighted[], voice: Voice): string {
  const { say, flow, figures } = voice;
  return figures.listAll(
    mostLikely(weighted, saidFaults).map(([id, share]) =>
      say('why.fault', { name: flow.fault(id), share: figures.formatShare(share) }),
    ),
  );
}

/** More names than this in one sentence are not taken in. */
const saidFaults = 3;

/** Why a check is asked: what each outcome would mean, and where its bounds come from. */
export function renderWhy(message: WhyMessage, voice: Voice): Rendered[] {
  const { say, flow } = voice;
  const { check, outcomes } = message;
  const why = flow.check(check).why ?? say('why.none', { name: flow.checkName(check) });
  const lines = outcomes.map(({ answer, faults, decision }) => {
    const line = (label: string): string => {
      if (flow.texts.decisions !== undefined) {
        return decision === undefined
          ? say('why.goesOn', { label })
          : say('why.decides', { label, decision: sayDecision(decision, voice) });
      }
      const said = sayFaults(faults, voice);
      return said === ''
        ? say('why.nothing', { label })
        : say('why.outcome', { label, faults: said });
    };
    return { label: flow.answerLabel(check, answer), line };
  });
  const apart = grouped(lines, voice);
  return [why, ...worth(message, voice), ...apart, ...numbers(message, voice)].map((text) => ({
    kind: 'text',
    text,
  }));
}

/** What answers would mean: those that mean the same in one line, and nothing where all do. */
function grouped(
  all: readonly { readonly label: string; readonly line: (label: string) => string }[],
  { figures }: Voice,
): readonly string[] {
  const groups = new Map<string, { labels: string[]; line: (label: string) => string }>();
  for (const { label, line } of all) {
    const means = line('');
    const group = groups.get(means) ?? { labels: [], line };
    group.labels.push(label);
    groups.set(means, group);
  }
  if (groups.size === 1 && all.length > 1) return [];
  return [...groups.values()].map(({ labels, line }) => line(figures.listAny(labels)));
}

/** Why this check comes now. */
function worth({ worth: now }: WhyMessage, { say, figures }: Voice): string[] {
  if (now === undefined) return [];
  const minutes = figures.formatMinutes(now.minutes);
  return now.saves >= 0.5
    ? [say('why.worth', { minutes, saves: figures.formatMinutes(Math.round(now.saves)) })]
    : [say('why.proves', { minutes })];
}

function numbers(message: WhyMessage, voice: Voice): string[] {
  const { bounds, expected, unit } = message;
  if (unit === undefined) return [];
  return [
    ...(expected === undefined ? [] : [sayExpected(expected, unit, voice)]),
    ...bounds.map((bound) => sayBound(bound, unit, voice)),
  ];
}
