/**
 * A case as it is printed: every finding that holds now, and the verdict. Worked out from the case
 * alone, so that a correction, another language or a reload print it anew.
 */
import type { Chart } from '../chart/compile.ts';
import type { Case } from './case.ts';
import type {
  CautionMessage,
  NotedMessage,
  NumbersMessage,
  ReadingMessage,
  VerdictMessage,
} from './message.ts';
import { planOf } from './plan.ts';
import { isReading, isSaid } from './state.ts';
import { cautionsOfVerdict, notedMessage } from './tell.ts';
import { lossesOf, readingMessage } from './tell-reading.ts';

/** One printed finding. */
export interface StripLine {
  readonly check: string;
  readonly message: ReadingMessage | NotedMessage;
}

/** The strip: what was found, what follows from it, and what was found since. */
export interface Strip {
  readonly findings: readonly StripLine[];
  readonly verdict: VerdictMessage | null;
  /** What can hurt in doing what the verdict says. */
  readonly cautions: readonly CautionMessage[];
  /** Where the missing volts are. */
  readonly losses: NumbersMessage['losses'];
  readonly proving: readonly StripLine[];
}

/** Works out the strip of a case. Pure. */
export function stripOf({ flow }: Pick<Chart, 'flow'>, { state }: Case): Strip {
  const lines = state.order.map((check): StripLine => {
    const answer = state.answers[check]?.at(-1);
    const [reading] = isReading(answer) ? readingMessage(flow, state, check) : [];
    const said = isSaid(answer) && !isReading(answer) ? answer : [];
    return { check, message: reading ?? notedMessage(flow, state, { check, answer: said }) };
  });
  const later = new Set(planOf(flow).afterwards.map(({ check }) => check.id));
  return {
    findings: lines.filter(({ check }) => !later.has(check)),
    verdict: state.verdict,
    cautions: cautionsOfVerdict(flow, state),
    losses: lossesOf(flow, state),
    proving: lines.filter(({ check }) => later.has(check)),
  };
}
