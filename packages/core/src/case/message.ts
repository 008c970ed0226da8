/**
 * What a turn has to say: ids and quantities, never sentences. Texts are chosen at the edge.
 */
import type { CircuitLosses, Quantity, Source, UnitCode } from '@keyturn/electrics';
import type { SignalWord } from '../flow/flow.ts';
import type { Lacking, Refund } from '../policy/refund.ts';
import type { TestFigures } from './test-figures.ts';

/** A share of one, for each of several ids. */
export type Weighted = readonly [id: string, share: number];

/** A bound as drawn on a reading's scale; low and high differ where the bound is a zone. */
export interface ScaleBound {
  readonly low: number;
  readonly high: number;
  /** Where the figure comes from: a published source, or that there is none. */
  readonly source: Source;
}

/** What a reading should show on this vehicle when nothing is wrong with it. */
export interface ScaleSpan {
  readonly low: number;
  readonly best: number;
  readonly high: number;
  readonly source: Source;
}

/**
 * What settles a reading too close to a bound: to read it once more, to let time pass, or `check`;
 * with `nothing` both sides are only kept in mind.
 */
export interface Settling {
  readonly by: 'repeat' | 'time' | 'check' | 'nothing';
  readonly check?: string;
}

/** A reading on its scale. */
export interface ReadingMessage {
  readonly kind: 'reading';
  readonly check: string;
  readonly quantity: Quantity;
  /** Standard uncertainty of the figure, in its own unit. */
  readonly uncertainty: number;
  /** Band ids in ascending order; `bounds` lie between them, one fewer. */
  readonly bands: readonly string[];
  readonly bounds: readonly ScaleBound[];
  readonly unit: UnitCode;
  /** The likeliest band, and the chance of each band. */
  readonly band: string;
  readonly weights: readonly Weighted[];
  /** True when no band is at least 95 % likely. */
  readonly borderline: boolean;
  /** Where it is borderline. */
  readonly settling?: Settling;
  /** In `unit`; missing where it cannot be told. */
  readonly expected?: ScaleSpan;
}

/** The numbers behind a case: every reading taken, and where the missing volts are. */
export interface NumbersMessage {
  readonly kind: 'numbers';
  readonly readings: readonly ReadingMessage[];
  readonly losses: CircuitLosses;
}

/** What was taken of an answer that is not a reading, a day with its band; nothing where it is not known. */
export interface NotedMessage {
  readonly kind: 'noted';
  readonly check: string;
  readonly answer: readonly string[];
}

/** A caution, said before the check that it covers. */
export interface CautionMessage {
  readonly kind: 'caution';
  readonly caution: string;
  readonly word: SignalWord;
  readonly confirm: boolean;
}

/** The cautions that wait for a confirmation before `check` is asked. */
export interface ConfirmMessage {
  readonly kind: 'confirm';
  readonly check: string;
  readonly cautions: readonly string[];
}

/** A question. */
export interface AskMessage {
  readonly kind: 'ask';
  readonly check: string;
  /** `date` where the terms of the shop are known; else one of its bands is chosen. */
  readonly form: 'choice' | 'choices' | 'reading' | 'date' | 'work';
  /** Choice ids, or band ids in ascending order. */
  readonly options: readonly string[];
  /** A test lamp's answers, where the kit holds a lamp and no voltmeter. */
  readonly lamp: readonly string[];
  readonly unit?: UnitCode;
  /** Minutes it takes, waits before it not counted. */
  readonly minutes: number;
  readonly probes?: { readonly red: string; readonly black: string };
  /** 1 at first, 2 when a choice is asked once more after something was put right. */
  readonly time: number;
  /** To be answered from memory, without doing it. */
  readonly remembered: boolean;
  /** What was told of its list before it was asked, where anything was: an answer adds to it. */
  readonly mentioned?: readonly string[];
  /** What one look at the part or one run of it tells besides, where a table decides. */
  readonly beside?: AskedBeside;
  /** Figures of its tests that follow from what is known of the part; absent where none do. */
  readonly known?: TestFigures;
}

/** What can be answered together with a question: nothing of it is asked in vain. */
export interface AskedBeside {
  /** Readings, by check. */
  readonly readings: readonly string[];
  /** Choices as they are where nothing is out of the ordinary; check to its answer. */
  readonly usual: Readonly<Record<string, string>>;
}

/** Time must pass before `check` can be answered. */
export interface WaitMessage {
  readonly kind: 'wait';
  readonly check: string;
  readonly minutes: number;
  /** When it is over, ISO 8601. */
  readonly due: string;
}

/** The faults by probability, and how they stood a turn before. */
export interface RankingMessage {
  readonly kind: 'ranking';
  readonly faults: readonly Weighted[];
  readonly before: readonly Weighted[];
}

/** What each outcome of a check would mean. */
export interface WhyMessage {
  readonly kind: 'why';
  readonly check: string;
  readonly outcomes: readonly {
    readonly answer: string;
    readonly faults: readonly Weighted[];
    /** Where a table decides: what it would come to at once. */
    readonly decision?: { readonly decide: string; readonly reason: string };
  }[];
  readonly bounds: readonly ScaleBound[];
  readonly expected?: ScaleSpan;
  readonly unit?: UnitCode;
  /** Where it was chosen by its worth. */
  readonly worth?: Worth;
}

/** Why a check is asked now: minutes, money counted as minutes. */
export interface Worth {
  /** What it takes now, the way to it included. */
  readonly minutes: number;
  /** What acting without any further check is expected to cost more than going on by the plan. */
  readonly saves: number;
}

/** What one finding weighs for a fault, in decibans: 10 is ten to one for it, -10 against. */
export interface FindingWeightMessage {
  readonly decibans: number;
  /** Missing for what was known of the vehicle, the place and the weather. */
  readonly check?: string;
  readonly answer?: string;
  /** The fault that would lead without this finding, where it is another. */
  readonly otherwise?: string;
}

/** How much each finding weighs for the fault of the verdict, the heaviest first. */
export interface WeightsMessage {
  readonly kind: 'weights';
  readonly fault: string;
  readonly findings: readonly FindingWeightMessage[];
}

/** How strong a verdict is. */
export type Strength = 'proved' | 'likely' | 'open';

/** Which part is at fault, how surely, and what to do. */
export interface VerdictMessage {
  readonly kind: 'verdict';
  readonly fault: string;
  readonly strength: Strength;
  readonly probability: number;
  readonly ranking: readonly Weighted[];
  readonly remedy: string;
  readonly send: string;
  /** Where two faults are likelier together than anything else: the other, to be put right next. */
  readonly also?: { readonly fault: string; readonly remedy: string; readonly probability: number };
  /** True where a hard stop forbids all work on the vehicle: whoever is there waits for help. */
  readonly waits: boolean;
  readonly licensed: boolean;
  readonly roots: readonly string[];
  /** The findings that prove it, as check and answer; empty unless proved. */
  readonly proof: readonly (readonly [check: string, answer: string])[];
  /** Checks that would prove it, and the kit that they need and the case lacks. */
  readonly settle: readonly { readonly check: string; readonly lacks: readonly string[] }[];
  /** The hard stops in force, but for those that only leave out checks beside the point. */
  readonly stops: readonly string[];
}

/** An answer that would have led elsewhere, and where to. */
export interface OtherDecision {
  readonly check: string;
  readonly answers: readonly string[];
  readonly decide: string;
  readonly reason: string;
}

/** What a table of decisions comes to, and why. */
export interface DecisionMessage {
  readonly kind: 'decision';
  /** What the end of such a case is called. */
  readonly called: 'decision' | 'outcome';
  /** Which line of the table decided, from 1. */
  readonly line: number;
  readonly decide: string;
  readonly reason: string;
  /** The words by which the reason is told, where they are not its own. */
  readonly says?: string;
  /** What it rests on, as check and what was found: an answer, `borderline` or `unanswered`. */
  readonly rests: readonly (readonly [check: string, found: string])[];
  /** Single answers that would have led to another decision. */
  readonly changes: readonly OtherDecision[];
  /** What to measure on the vehicle before another part is fitted: checks of the no-start flow. */
  readonly measure: readonly string[];
  /** What is said besides the reason; absent where nothing is. */
  readonly besides?: readonly string[];
  /** The hard stops in force; a decision tells of none that nobody has looked at. */
  readonly stops: readonly string[];
  /** Checks to be answered once more; until then the case stays open. */
  readonly again: readonly string[];
  /** Checks that were answered, do not count, and are asked anew after those; absent where none. */
  readonly voids?: readonly string[];
  /** What is paid back, where the shop's terms and the sale say so. */
  readonly refund?: Refund;
  /** What an amount lacks that would be paid back; absent where nothing is lacking. */
  readonly lacking?: readonly Lacking[];
  /**
   * True where the shop takes a deposit for the old unit, and nobody knows whether it is still held:
   * no amount has it in it.
   */
  readonly isDepositOpen?: true;
  /** Figures of its tests that follow from what is known of the part; absent where none do. */
  readonly known?: TestFigures;
}

/** An interrupt has been raised. */
export interface InterruptMessage {
  readonly kind: 'interrupt';
  readonly interrupt: string;
  readonly word: SignalWord;
  readonly then: 'return' | 'prove';
}

/** Why an input was not taken. The case is unchanged. */
export type RefusalCode =
  | 'unknown-check'
  | 'unknown-choice'
  | 'unknown-unit'
  | 'wrong-unit'
  | 'not-a-number'
  | 'implausible'
  /** A voltage read under another load than that of the test. */
  | 'wrong-load'
  /** A text in the form of a day that the calendar does not have. */
  | 'no-such-day'
  /** A day after that of the case. */
  | 'day-to-come'
  /** A day so far back that nobody sold the part then. */
  | 'day-long-ago'
  /** A day, where no terms of a shop say what it means. */
  | 'no-terms'
  | 'one-choice'
  | 'not-this-kind'
  | 'not-answered-yet'
  | 'unknown-interrupt'
  | 'unknown-context'
  | 'nothing-to-confirm'
  | 'nothing-to-resume'
  | 'resume-first'
  | 'nothing-before'
  | 'too-early'
  | 'closed'
  | 'not-an-input'
  | 'clock-back';

/** A load that is not the one of the test; all in A. */
export interface WrongLoad {
  readonly told: number;
  readonly rating: number;
  /** The load of the test. */
  readonly half: number;
}

/** An input that was not taken, with what was wrong and what is possible. */
export interface RefusedMessage {
  readonly kind: 'refused';
  readonly code: RefusalCode;
  readonly check?: string;
  /** What was given, cut to 80 characters. */
  readonly given: string;
  /** What would have been taken: choice ids, units, checks. */
  readonly possible: readonly string[];
  /** The range that a figure must lie in. */
  readonly range?: { readonly low: number; readonly high: number; readonly unit: UnitCode };
  /** What the figure may have been meant as. */
  readonly likely?: Quantity;
  /** `nominal-24` where it would be right for a 24 V system. */
  readonly hint?: 'nominal-24';
  /** The load that was told, of `wrong-load`. */
  readonly load?: WrongLoad;
}

/** Answers set aside since they no longer hold after a correction. */
export interface SetAsideMessage {
  readonly kind: 'set-aside';
  readonly checks: readonly string[];
}

/** Something said that needs only an id. */
export interface TellMessage {
  readonly kind: 'tell';
  readonly tell:
    | 'opening'
    | 'person'
    | 'stopped'
    | 'resumed'
    | 'withdrawn'
    | 'returned'
    | 'restored'
    | 'learned'
    | 'check-again'
    | 'doubt';
  /** The check that it is about. */
  readonly about?: string;
}

/** The case is closed. */
export interface DoneMessage {
  readonly kind: 'done';
  readonly outcome:
    'proved-repaired' | 'unproved' | 'still-failing' | 'handed-over' | 'ended' | 'decided';
  /** Checks that the proof of the repair still lacks, where it is not proved; absent where none. */
  readonly lacks?: readonly string[];
}

/** Any message. */
export type Message =
  | ReadingMessage
  | NumbersMessage
  | NotedMessage
  | CautionMessage
  | ConfirmMessage
  | AskMessage
  | WaitMessage
  | RankingMessage
  | WhyMessage
  | WeightsMessage
  | VerdictMessage
  | DecisionMessage
  | InterruptMessage
  | RefusedMessage
  | SetAsideMessage
  | TellMessage
  | DoneMessage;
