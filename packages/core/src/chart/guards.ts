/**
 * The guards of a compiled flow. Each asks one question of the state, or of the event in hand.
 */
import type { CaseEvent } from '../case/event.ts';
import { boundsOfCheck, dateBand, likeliest, placeReading } from '../case/findings.ts';
import { makerLimit } from '../case/part-limits.ts';
import { assess } from '../case/assessment.ts';
import { pendingCautions } from '../case/cautions.ts';
import { isWaitOver } from '../case/wait.ts';
import { isReading, isSaid, type CaseState } from '../case/state.ts';
import type { Flow } from '../flow/flow.ts';
import { looksLikeDay } from '../policy/calendar.ts';

interface Given {
  readonly context: CaseState;
  readonly event: CaseEvent;
}

/** The guards by name. */
export function guardsOf(flow: Flow): Record<string, (given: Given, params: never) => boolean> {
  return {
    isCautioned: ({ context }, params: { check: string }) =>
      !pendingCautions(flow, context, params.check).some(({ confirm }) => confirm),
    isDue: ({ context }, params: { check: string }) => isWaitOver(context, params.check),
    isAnswer: ({ context, event }, params: { check: string; answer: string }) =>
      event.type === 'answered' &&
      event.check === params.check &&
      isFound(flow, context, { event, answer: params.answer }),
    isUnanswered: ({ event }, params: { check: string }) =>
      event.type === 'answered' && event.check === params.check && !isSaid(event.answer),
    isRaisedBefore: ({ context }, params: { before: string }) =>
      context.raised.at(-2) === params.before,
    isWithdrawn: ({ context, event }, params: { of: string; before?: string }) =>
      event.type === 'withdrawn' &&
      event.interrupt === params.of &&
      (params.before === undefined || context.raised.at(-2) === params.before),
    isInterrupt: ({ event }, params: { interrupt: string }) =>
      event.type === 'interrupted' && event.interrupt === params.interrupt,
  };
}

/** True when an answer is this choice, or its figure lies likeliest in this band. */
function isFound(
  flow: Flow,
  state: CaseState,
  given: { readonly event: Extract<CaseEvent, { type: 'answered' }>; readonly answer: string },
): boolean {
  const { answer, check } = given.event;
  const form = flow.checks[check]?.form;
  if (!isSaid(answer) || form === undefined) return false;
  if (!isReading(answer)) {
    const [day = ''] = answer;
    if (form.kind === 'date' && looksLikeDay(day)) {
      return dateBand(form.bands, { part: flow.part, state, day }) === given.answer;
    }
    const named = form.kind === 'reading' ? form.lamp : {};
    return answer.some((choice) => (named[choice] ?? choice) === given.answer);
  }
  if (form.kind !== 'reading') return false;
  const { limits } = assess(flow, state).findings;
  const bounds = boundsOfCheck(form, { limits, maker: makerLimit(state.context, check) });
  const best = likeliest(placeReading(check, answer, { bands: form.bands, bounds }).weights);
  // Where a limit cannot be given no band is found, and the last stands for "read".
  return (best?.[0] ?? form.bands.at(-1)?.id) === given.answer;
}
