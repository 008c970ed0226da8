/**
 * The slip for the technician: a few lines to be pasted into a message or read out, taken in within ten
 * seconds. It names the person; what is kept and printed of a case does not.
 */
import { isReading, isSaid, type Case, type Flow } from '@keyturn/core';
import type { FlowTexts, Speaker } from '@keyturn/language';
import type { Caller } from './desk-case.ts';
import { listed } from '../wording.ts';
import { helpWords, isForFault } from './help.ts';

/** What is said of the spot and the vehicle, in this order. */
const spot = ['place', 'scene', 'drive', 'transmission', 'ignition'] as const;

/** What the caller has at hand is of no use to whoever comes with more. */
const leftOut = 'kit';

/** What it does at start is said first, whatever else was found. */
const complaint = 'complaint';

/** Readings in the note beside it, and other findings, at most: the latest, which tell most. */
const [mostReadings, mostOthers] = [7, 4];

/** Help of which is said what to ask the caller, and not what to bring. */
export function asksCaller(help: string): boolean {
  return help === 'flatbed' || help === 'police';
}

/** What the slip is made of. */
export interface SlipSource {
  readonly case: Case;
  readonly help: string;
  readonly caller: Caller;
  readonly speaker: Speaker;
  readonly texts: FlowTexts;
  readonly flow: Flow;
  /** The desk's words on it. */
  readonly words: { readonly noteLikely: string; readonly noteNot: string };
}

/** The lines of a technician's slip; empty ones are left out. */
export function technicianSlip(source: SlipSource): readonly string[] {
  const { caller, help, texts, words, speaker } = source;
  const { verdict, leaders, order, answers } = source.case.state;
  const ranking = verdict?.ranking ?? leaders;
  // Whoever goes for the sake of a danger does not go for a fault.
  const shares = (isForFault(source.flow, help) ? ranking : [])
    .slice(0, 2)
    .filter(([, share]) => share >= 0.05)
    .map(([id, share]) => speaker.formatShare(speaker.faultName(id), share));
  const named: readonly string[] = [...spot, complaint, leftOut];
  const told = order.filter((check) => !named.includes(check) && isSaid(answers[check]?.at(-1)));
  const isMeasured = (check: string): boolean => isReading(answers[check]?.at(-1));
  // What was measured need not be measured again; it is worth more than what was looked at.
  const readings = told.filter(isMeasured);
  const others = told.filter((check) => !isMeasured(check));
  const found = [
    said(source, complaint, true),
    ...readings.slice(-mostReadings).map((check) => said(source, check, true)),
    ...others.slice(-mostOthers).map((check) => said(source, check, true)),
  ].filter(isFilled);
  return [
    [caller.where, caller.vehicle, caller.callback, caller.name].filter(isFilled).join(' · '),
    [
      // “Yes, safe” says nothing by itself.
      ...spot.map((check) => said(source, check, check === 'scene')),
      caller.people,
      caller.rolls,
      caller.access,
      caller.trailer,
    ]
      .filter(isFilled)
      .join(' · '),
    shares.length === 0 ? '' : `${words.noteLikely} ${shares.join(' · ')}`,
    found.join(' · '),
    ...(verdict?.stops ?? [])
      .filter((stop) => forbidsWork(source.flow, stop))
      .map((stop) => `${words.noteNot} ${texts.stops[stop] ?? ''}`),
    asksCaller(help) ? '' : helpWords(texts, help).rest,
  ].filter(isFilled);
}

/** True for a stop that binds whoever does anything; one that only leaves a question out does not. */
export function forbidsWork({ stops }: Flow, id: string): boolean {
  const stop = stops.find((one) => one.id === id);
  return (
    stop?.forbids.some(({ does, at, checks }) => does !== undefined && !at && !checks) === true
  );
}

function isFilled(text: string | undefined): text is string {
  return text !== undefined && text !== '';
}

/** What was said of a check; nothing where it was not. */
function said({ case: kase, speaker }: SlipSource, check: string, isNamed: boolean): string {
  const answer = kase.state.answers[check]?.at(-1);
  if (!isSaid(answer)) return '';
  const words = isReading(answer)
    ? speaker.formatQuantity(answer)
    : listed(
        answer.map((one) => speaker.answerLabel(check, one)),
        speaker.locale,
      );
  return isNamed ? `${speaker.checkName(check)}: ${words}` : words;
}
