/**
 * What the technician reads on the way: four lines, ten seconds.
 */
import { isReading, isSaid, type Case, type Flow } from '@keyturn/core';
import type { FlowTexts, Speaker } from '@keyturn/language';
import type { Caller } from './desk-case.ts';
import { listed } from '../wording.ts';
import { helpWords } from './help.ts';

/** What is said of the spot and the vehicle, in this order. */
const spot = ['place', 'scene', 'drive', 'transmission', 'ignition'] as const;

/** What it does at start is said first, whatever else was found. */
const complaint = 'complaint';

/** Findings in the note beside it, at most: the latest, which were asked because they tell most. */
const latest = 4;

/** What the note is made of. */
export interface NoteSource {
  readonly case: Case;
  readonly help: string;
  readonly caller: Caller;
  readonly speaker: Speaker;
  readonly texts: FlowTexts;
  readonly flow: Flow;
  /** The desk's words of a note. */
  readonly words: { readonly noteLikely: string; readonly noteNot: string };
}

/** The lines of a technician's note; empty ones are left out. */
export function technicianNote(source: NoteSource): readonly string[] {
  const { caller, help, texts, words, speaker } = source;
  const { verdict, leaders, order, answers } = source.case.state;
  const ranking = verdict?.ranking ?? leaders;
  const shares = ranking
    .slice(0, 2)
    .filter(([, share]) => share >= 0.05)
    .map(([id, share]) => speaker.formatShare(texts.faults[id]?.name ?? id, share));
  const named: readonly string[] = [...spot, complaint];
  const others = order.filter((check) => !named.includes(check) && isSaid(answers[check]?.at(-1)));
  const found = [
    said(source, complaint, true),
    ...others.slice(-latest).map((check) => said(source, check, true)),
  ].filter(isFilled);
  return [
    [caller.where, caller.vehicle, caller.callback, caller.name].filter(isFilled).join(' · '),
    [
      ...spot.map((check) => said(source, check, false)),
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
    helpWords(texts, help).rest,
  ].filter(isFilled);
}

/** True for a stop that binds whoever comes; one that only leaves a question out does not. */
function forbidsWork({ stops }: Flow, id: string): boolean {
  const stop = stops.find((one) => one.id === id);
  return (
    stop?.forbids.some(({ does, at, checks }) => does !== undefined && !at && !checks) === true
  );
}

function isFilled(text: string | undefined): text is string {
  return text !== undefined && text !== '';
}

/** What was said of a check; nothing where it was not. */
function said({ case: kase, speaker }: NoteSource, check: string, isNamed: boolean): string {
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
