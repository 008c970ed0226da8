/**
 * What is left to a caller for whom help is sent.
 */
import type { CautionMessage, ContextValue, Flow, VerdictMessage } from '@keyturn/core';
import { driverLines, type FlowTexts, type Speaker } from '@keyturn/language';
import { forbidsWork } from './slip.ts';

/** Remedies that leave everything to whoever comes. */
const leftToHelp: readonly string[] = ['technician-visit', 'recover-vehicle'];

/**
 * True where the caller is only told to wait: whoever is sent does all there is to do, the caller is
 * known to have no leads for a boost, or a hard stop forbids what could be done before. What a stop does instead is meant for the caller.
 */
export function isLeftToHelp(
  flow: Flow,
  { send, remedy, stops }: VerdictMessage,
  kit: ContextValue | undefined,
): boolean {
  if (send === 'nothing') return false;
  if (leftToHelp.includes(remedy)) return true;
  if (remedy === 'boost' && Array.isArray(kit) && !kit.includes('boost-source')) return true;
  const isInstead = flow.stops.some(({ id, instead }) => instead && stops.includes(id));
  return !isInstead && stops.some((stop) => forbidsWork(flow, stop));
}

/**
 * In a caller's words; who may not work on the vehicle is only told how to wait, and whom help is
 * sent to is told to call nobody.
 */
export function callerLines(
  told: { readonly flow: Flow; readonly texts: FlowTexts; readonly speaker: Speaker },
  verdict: VerdictMessage,
  {
    warned,
    kit,
  }: { readonly warned: readonly CautionMessage[]; readonly kit?: ContextValue | undefined },
): readonly string[] {
  const { flow, texts, speaker } = told;
  if (verdict.waits) {
    const [rendered] = speaker.render([verdict]);
    const sections = rendered?.kind === 'verdict' ? rendered.sections : [];
    return sections.find(({ id }) => id === 'do')?.lines ?? [];
  }
  const words = texts.remedies[verdict.remedy];
  const isSentHelp = verdict.send !== 'nothing';
  if (isLeftToHelp(flow, verdict, kit)) {
    // A stop of which a caution of the same name warns is not told twice.
    const stops = verdict.stops.filter(
      (stop) => forbidsWork(flow, stop) && !warned.some(({ caution }) => caution === stop),
    );
    return [
      ...stops.map((stop) => texts.stops[stop] ?? ''),
      ...driverLines(words?.waiting ?? [], { isSentHelp }),
    ];
  }
  return driverLines(words?.driver ?? words?.do ?? [], { isSentHelp });
}
