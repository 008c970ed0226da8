/**
 * The texts of one flow in one language, as `flows/<flow>/texts/<locale>.json` holds them. The ids
 * are those of the flow; which of them must exist follows from the flow.
 */

/** The words of one answer: a choice, a band or what a test lamp shows. */
export interface AnswerTexts {
  /** Short: what is picked. */
  readonly label: string;
  /** What it says about the vehicle. */
  readonly means?: string;
  /** Other ways in which people say it. */
  readonly said?: readonly string[];
}

/**
 * A line that names figures of the part, `{{load}}` of the tests of a battery, and what is said where
 * one of them is not known.
 */
export type KnowingLine = string | { readonly knowing: string; readonly else: string };

/** The words of one check. */
export interface CheckTexts {
  readonly name: string;
  readonly ask?: string;
  /** How to do it, a step a line. */
  readonly how?: readonly KnowingLine[];
  /** How to answer where a day is asked in words: no terms of a shop tell. */
  readonly withoutTerms?: string;
  readonly why?: string;
  /** How it is asked once more after something was put right. */
  readonly again?: string;
  /** What to let pass where time settles a reading too close to a bound. */
  readonly settle?: string;
  /** What a figure means where there is nothing to hold it to. */
  readonly unjudged?: string;
  /** How it is asked where it must not be done, only remembered. */
  readonly remembered?: string;
  readonly answers?: Readonly<Record<string, AnswerTexts>>;
  /** Words by which people name this reading when they give several on one line. */
  readonly said?: readonly string[];
}

/** The words of one interrupt. */
export interface InterruptTexts {
  readonly name: string;
  /** What to do at once, a step a line. */
  readonly do: readonly string[];
  /** How to say that it is over. */
  readonly over?: string;
  readonly said: readonly string[];
  /** What makes an ordinary matter of it: the "cigarette" of "it smokes", "yesterday". */
  readonly unless?: readonly string[];
}

/** A line for a driver; `call` has somebody called, which is nothing for whom help is sent to. */
export type DriverLine = string | { readonly call: string };

/** The words of one remedy: for anyone, and for a driver where that differs. */
export interface RemedyTexts {
  readonly do: readonly string[];
  readonly driver?: readonly DriverLine[];
  /** What else whoever may not work on the vehicle is told, who waits for help. */
  readonly waiting?: readonly DriverLine[];
}

/** The words of one thing that a table may decide. */
export interface DecisionTexts {
  /** Short: "accept". */
  readonly name: string;
  /** The decision in one sentence. */
  readonly title: string;
}

/** The words of one reason, which may be given for several decisions. */
export interface ReasonTexts {
  /** Short: "no fault found". */
  readonly name: string;
  /** Decision to what is read out to the customer, a sentence a line. */
  readonly say: Readonly<Record<string, readonly string[]>>;
  /** What to do now, a step a line. */
  readonly do?: readonly KnowingLine[];
}

/**
 * What people are heard to say, beside what the texts list: from it is learned, and nothing of it is
 * ever shown. `flows/<flow>/heard/<locale>.json` holds it.
 */
export interface HeardTexts {
  /** Check to answer to what says it. */
  readonly answers: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>>;
  /** Interrupt to what raises it. */
  readonly interrupts: Readonly<Record<string, readonly string[]>>;
  /** Interrupt to what is said with its words and raises nothing: "the smell is gone". */
  readonly harmless: Readonly<Record<string, readonly string[]>>;
  /** Interrupt to the things and what they do that tell it: "petrol, fuel | drips | ! mower". */
  readonly signs?: Readonly<Record<string, readonly string[]>>;
  /** What is said in place of an answer, by the word of talk that it is. */
  readonly talk: Readonly<Record<string, readonly string[]>>;
  /** What stands around an answer and tells nothing: "as far as i can see", "any ideas". */
  readonly asides?: readonly string[];
  /** Check to what comes in and answers nothing. */
  readonly unclear: Readonly<Record<string, readonly string[]>>;
}

/** All texts of a flow. */
export interface FlowTexts {
  readonly name: string;
  readonly opening: string;
  readonly stages: Readonly<Record<string, string>>;
  readonly checks: Readonly<Record<string, CheckTexts>>;
  readonly computed?: Readonly<
    Record<
      string,
      { readonly name: string; readonly answers: Readonly<Record<string, AnswerTexts>> }
    >
  >;
  /** What a test lamp shows: `dark`, `dim`, `bright`; needed where a flow reads with one. */
  readonly lamp?: Readonly<Record<string, AnswerTexts>>;
  readonly cautions: Readonly<Record<string, string>>;
  readonly stops: Readonly<Record<string, string>>;
  readonly interrupts: Readonly<Record<string, InterruptTexts>>;
  /** Of a flow that ends in decisions: these, their reasons, and what to measure on the vehicle. */
  readonly decisions?: Readonly<Record<string, DecisionTexts>>;
  readonly reasons?: Readonly<Record<string, ReasonTexts>>;
  readonly measures?: Readonly<Record<string, string>>;
  /** What a decision says besides its reason, a sentence or two each. */
  readonly besides?: Readonly<Record<string, string>>;
  readonly faults: Readonly<Record<string, { readonly name: string; readonly means?: string }>>;
  readonly roots: Readonly<Record<string, string>>;
  readonly remedies: Readonly<Record<string, RemedyTexts>>;
  readonly send: Readonly<Record<string, string>>;
  readonly kit: Readonly<Record<string, string>>;
  readonly probes: Readonly<Record<string, string>>;
  /** Where there is any. */
  readonly heard?: HeardTexts;
}

/** The texts of a flow so far as they are told: how people say things may be missing. */
export type ToldTexts = Omit<FlowTexts, 'interrupts'> & {
  readonly interrupts: Readonly<Record<string, Omit<InterruptTexts, 'said'>>>;
};
