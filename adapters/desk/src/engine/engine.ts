/**
 * What takes a case further: everything that may take a while, so that a worker can do it while the
 * page goes on taking keys. Pure; what goes in and out is plain JSON.
 */
import {
  answersFound,
  kitMissing,
  positionOf,
  sentIf,
  stripOf,
  turn,
  type AnswerInput,
  type Case,
  type CaseEvent,
  type Chart,
  type Input,
  type Message,
  type Opening,
  type Strip,
  type WhyMessage,
} from '@keyturn/core';
import type { Outcome } from '@keyturn/evidence';
import {
  messagesInHand,
  openSitting,
  takeInputs,
  takeLine,
  type Sitting,
  type Taken,
} from '@keyturn/element/sittings';
import type { Speaker } from '@keyturn/language';

/** A case laid out to be shown. */
export interface Laid {
  readonly sitting: Sitting;
  readonly strip: Strip;
  /** What the case waits for. */
  readonly inHand: readonly Message[];
  /** Kit that is not at hand and without which a check can't be made, by id. */
  readonly kitMissing: readonly string[];
}

/** A case after something came in. */
export interface Turned extends Omit<Taken, 'sitting' | 'events'> {
  readonly laid: Laid;
  readonly events: readonly CaseEvent[];
}

/** What each answer to the question in hand would change. */
export interface Why extends WhyMessage {
  /** Answer to the help that would be sent if nothing more were asked. */
  readonly sends: Readonly<Record<string, string>>;
}

/** What the page can ask for. */
export interface Engine {
  /** Opens a case, as `openCase` of core does. */
  readonly open: (opening: Opening) => Promise<Laid>;
  /** Lays a kept case out. */
  readonly lay: (sitting: Sitting) => Promise<Laid>;
  readonly take: (
    sitting: Sitting,
    given: { readonly at: string; readonly inputs: readonly Input[] },
  ) => Promise<Turned>;
  /**
   * Takes a typed line in the language of a BCP 47 tag. Where the step in hand is not asked on the
   * card, as the repair is not at what to send, nothing that answers it is taken.
   */
  readonly say: (
    sitting: Sitting,
    given: {
      readonly at: string;
      readonly line: string;
      readonly locale: string;
      /** True where left out. */
      readonly isAsked?: boolean;
    },
  ) => Promise<Turned>;
  /** What each answer to the question in hand would change; undefined where there is none. */
  readonly why: (sitting: Sitting) => Promise<Why | undefined>;
  /** What was found, as it is counted once the cause is known. */
  readonly found: (sitting: Sitting) => Promise<Outcome['answers']>;
}

/** Speaks a language; loads its words where it has not been spoken yet. */
export type SpeakerFor = (locale: string) => Promise<Speaker>;

/** The engine itself. */
export function createEngine(chart: Chart, speakerFor: SpeakerFor): Engine {
  const laid = (sitting: Sitting): Laid => ({
    sitting,
    strip: stripOf(chart, sitting.case),
    inHand: messagesInHand(chart, sitting.case),
    kitMissing: kitMissing(chart, sitting.case),
  });
  const turned = ({ sitting, ...more }: Taken): Turned => ({ laid: laid(sitting), ...more });
  return {
    open: (opening) => Promise.resolve(laid(openSitting(chart, opening))),
    lay: (sitting) => Promise.resolve(laid(sitting)),
    take: (sitting, given) => Promise.resolve(turned(takeInputs(chart, sitting, given))),
    say: async (sitting, { at, line, locale, isAsked = true }) => {
      const speaker = await speakerFor(locale);
      const taken = takeLine({ chart, speaker }, sitting, { at, line });
      if (isAsked || !answersStep(sitting.case, taken)) return turned(taken);
      const unclear = { type: 'unclear', code: 'closed', given: line, possible: [] } as const;
      return { laid: laid({ ...sitting, offers: [] }), events: [], unclear };
    },
    why: ({ case: kase }) => Promise.resolve(whyOf(chart, kase)),
    found: ({ case: kase }) => Promise.resolve(answersFound(chart, kase)),
  };
}

/** True where something answered or confirmed the step in hand. */
function answersStep(before: Case, { events }: Taken): boolean {
  const position = positionOf(before);
  const check = 'check' in position ? position.check : undefined;
  return events.some(
    (event) => event.type === 'confirmed' || (event.type === 'answered' && event.check === check),
  );
}

function whyOf(chart: Chart, kase: Case): Why | undefined {
  const { messages } = turn(chart, kase, {
    at: kase.state.at,
    input: { type: 'talk', talk: 'why' },
  });
  const why = messages.find((message) => message.kind === 'why');
  if (why === undefined) return undefined;
  const { check, outcomes } = why;
  const sends = outcomes.map(({ answer }) => [answer, sentIf(chart, kase, { check, answer })]);
  return { ...why, sends: Object.fromEntries(sends) as Why['sends'] };
}

/** An answer as it goes into a turn: a correction where the check was answered before. */
export function answering(kase: Case, check: string, value: AnswerInput['value']): Input {
  const isAnswered = kase.state.answers[check] !== undefined;
  return { type: isAnswered ? 'correction' : 'answers', answers: [{ check, value }] };
}
