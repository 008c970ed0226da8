/**
 * Who has to be seen to first: those in danger, then those who are to be called back, then whoever
 * has waited longest.
 */
import { positionOf, type Case, type Flow } from '@keyturn/core';
import type { DeskCase } from './desk-case.ts';

/** Why a case is where it is among the others, the most urgent first. */
const urgencies = ['danger', 'traffic', 'call-back', 'waits', 'under-way'] as const;

/** One of them. */
export type Urgency = (typeof urgencies)[number];

/** Minutes between two times, ISO 8601 and milliseconds of the epoch; never negative. */
export function minutesSince(at: string, now: number): number {
  return Math.max(0, (now - Date.parse(at)) / 60_000);
}

/** True where the caller said that somebody is not safe. */
export function isUnsafe({ state }: Case): boolean {
  const scene = state.answers['scene']?.at(-1);
  return Array.isArray(scene) && scene.includes('unsafe');
}

/** True where traffic passes close by. */
export function isByTraffic({ state }: Case): boolean {
  return state.context['place'] === 'live-lane' || state.context['place'] === 'shoulder';
}

/** How urgent a case is at a time, in milliseconds of the epoch. */
function urgencyOf({ sitting, sent }: DeskCase, flow: Flow, now: number): Urgency {
  const { context } = sitting.case.state;
  const position = positionOf(sitting.case);
  const interrupt =
    position.awaiting === 'resume' ? flow.interrupts[position.interrupt]?.word : undefined;
  if (isUnsafe(sitting.case) || (interrupt !== undefined && interrupt !== 'notice'))
    return 'danger';
  // Whoever is being helped is no longer alone, but stands where they stood.
  if (context['place'] === 'live-lane') return 'danger';
  if (sent !== null) return Date.parse(sent.callBackAt) <= now ? 'call-back' : 'under-way';
  return context['place'] === 'shoulder' ? 'traffic' : 'waits';
}

/** Cases in the order in which they are to be seen to. */
export function inOrder(
  cases: readonly DeskCase[],
  flow: Flow,
  now: number,
): readonly { readonly kase: DeskCase; readonly urgency: Urgency }[] {
  return cases
    .map((kase) => ({ kase, urgency: urgencyOf(kase, flow, now) }))
    .toSorted(
      (one, other) =>
        urgencies.indexOf(one.urgency) - urgencies.indexOf(other.urgency) ||
        Date.parse(waitsSince(one.kase)) - Date.parse(waitsSince(other.kase)),
    );
}

/** Since when a caller waits: for the call back where help is under way. */
function waitsSince({ sent, touchedAt }: DeskCase): string {
  return sent?.callBackAt ?? touchedAt;
}
