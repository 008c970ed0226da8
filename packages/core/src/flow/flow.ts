/**
 * What a flow is once it has been read and checked: plain, frozen data, free of behaviour.
 *
 * The shape of the files it is read from is `flow-file.ts`; this is the same matter with every
 * file merged, every shorthand written out and every reference known to be good.
 */
import type { ExpectedReading, LimitName, ReadingKind, UnitCode } from '@keyturn/electrics';
import type { CircuitFigure, Quantiles } from '../circuit/figures.ts';
import type { CircuitChoice } from '../circuit/predict-choice.ts';
import type { CircuitReading } from '../circuit/predict-reading.ts';
import type { Condition } from './condition.ts';
import type { SoldPart } from '../policy/policy.ts';
import type { Payment } from '../policy/refund.ts';
import type { SaleTerm } from '../policy/sale-terms.ts';

/** Where a person must be to answer a check. */
export type Position = 'memory' | 'seat' | 'bonnet' | 'below' | 'bench';

/** Signal words as ANSI Z535.4 and ISO 3864-2 define them. */
export type SignalWord = 'danger' | 'warning' | 'caution' | 'notice';

/** The upper end of a band: a number in the check's unit, a named limit, or nothing above it. */
export type BandEnd = number | LimitName | 'above';

/** One named interval of a reading, from the end of the band before it up to its own. */
export interface Band {
  readonly id: string;
  readonly to: BandEnd;
}

/** One band of a date, up to the end of a term of the shop. */
export interface DateBand {
  readonly id: string;
  readonly to: SaleTerm | 'above';
}

/** The form an answer takes. */
export type AnswerForm =
  | {
      readonly kind: 'choice';
      readonly choices: readonly string[];
      readonly several: boolean;
      /** The choice that is found where nothing is out of the ordinary. */
      readonly usual?: string;
    }
  | {
      readonly kind: 'reading';
      readonly unit: UnitCode;
      readonly bands: readonly Band[];
      /** What a test lamp shows in place of a figure: lamp's answer to band. */
      readonly lamp: Readonly<Record<string, string>>;
      /** What a meter can show there; outside it a figure is questioned. */
      readonly range: ReadingKind;
      /** The reading of `electrics` that tells what a sound vehicle shows. */
      readonly expect?: ExpectedReading;
      /** Checks that tell the side of a reading too close to a bound, the best one first. */
      readonly settledBy: readonly string[];
      /** Bands that a later reading tells from their neighbours. */
      readonly settledInTime: readonly string[];
      /** The band that the figures of a part's maker enclose. */
      readonly good?: string;
      /** How far round a maker's upper figure a reading is borderline, in the check's unit. */
      readonly upperSpread?: number;
    }
  /** A day that has passed; its bands ascend by how long ago it was. */
  | { readonly kind: 'date'; readonly bands: readonly DateBand[] }
  | { readonly kind: 'work' };

/** Something asked, measured or done once. */
export interface Check {
  readonly id: string;
  readonly form: AnswerForm;
  readonly at: Position;
  /** Kit: every entry is needed; within an entry any one will do. */
  readonly needs: readonly (readonly string[])[];
  /** Minutes it takes, 0 included. */
  readonly minutes: number;
  /** Where the meter's leads go. */
  readonly probes?: { readonly red: string; readonly black: string };
  /** What doing it means for safety: `held-start`, `ignition-on`, `boost`, `charge`, and so on. */
  readonly does: readonly string[];
  /** Asked unless this is known to be false. */
  readonly when?: Condition;
  /** Asked only when this is known to be true. */
  readonly requires?: Condition;
  /** Answers after which something is put right and the check is asked once more. */
  readonly again: readonly string[];
  /** Checks that are asked before it, where they may be. */
  readonly after: readonly string[];
  /** Minutes to let pass before the answer is taken. */
  readonly waitMinutes?: number;
  /** What a choice says of the context: choice to context paths and values. */
  readonly sets: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  /** The context path that this check's own value is written to. */
  readonly writes?: string;
  /** True where an answer lets every confirmed caution lapse. */
  readonly lapses: boolean;
  /** The check with which it shares its words and all but when it is asked. */
  readonly like?: string;
}

/** A stage: a compound state whose checks are asked in this order. */
export interface Stage {
  readonly id: string;
  readonly checks: readonly string[];
}

/** A caution: shown before every check that it covers; confirmed where hazardous. */
export interface Caution {
  readonly id: string;
  readonly word: SignalWord;
  readonly confirm: boolean;
  /** A check that any of these matches is covered. */
  readonly before: readonly Cover[];
  /** Said only when this is known to be true, where it is given. */
  readonly when?: Condition;
}

/** Which checks a caution or a stop covers: all that match every property given here. */
export interface Cover {
  readonly does?: readonly string[];
  readonly checks?: readonly string[];
  readonly at?: readonly Position[];
}

/** A hard stop: while `when` is true the covered checks are never asked. */
export interface Stop {
  readonly id: string;
  readonly when: Condition;
  readonly forbids: readonly Cover[];
  /** Checks that stay allowed. */
  readonly except: readonly string[];
  /** Checks asked from memory instead of being done. */
  readonly remembered: readonly string[];
  /** What is to be done whatever the fault is, and whom to send. */
  readonly instead?: { readonly remedy: string; readonly send: string };
}

/** Something that can happen at any moment. */
export interface Interrupt {
  readonly id: string;
  /** `return` to where the case was, or `prove` that the vehicle runs. */
  readonly then: 'return' | 'prove';
  /** Checks that are asked again once it is over. */
  readonly reopens: readonly string[];
  readonly word: SignalWord;
  /** With `prove`: the checks to make, with the answers that count as good. */
  readonly prove: Readonly<Record<string, readonly string[]>>;
}

/** What a fault asks for, where conditions may choose between several. */
export interface Remedy {
  readonly remedy: string;
  /** What doing it means for safety; where a stop forbids that, it is passed over. */
  readonly does: readonly string[];
  /** How strong the verdict must be at the least: no part is fitted on a guess. */
  readonly from?: 'proved' | 'likely';
  readonly when?: Condition;
  /** Whom to send with this remedy, where it is not whom the fault asks for. */
  readonly send?: string;
  /** What proves this remedy, where that is not what the fault asks for. */
  readonly prove?: Readonly<Record<string, readonly string[]>>;
}

/** A fault of the catalogue. */
export interface Fault {
  readonly id: string;
  /** The strongest verdict that the trade allows. */
  readonly best: 'proved' | 'likely' | 'open';
  /** Any one of these, known to be true, proves it. */
  readonly proofs: readonly Condition[];
  readonly remedies: readonly Remedy[];
  readonly send: string;
  /** Cautions said with the remedy. */
  readonly cautions: readonly string[];
  /** Checks after the repair that prove it worked, with the answers that count as good. */
  readonly prove: Readonly<Record<string, readonly string[]>>;
  /** True where the work is licensed or needs a specialist. */
  readonly licensed: boolean;
}

/** A root cause reported beside a verdict. */
export interface RootCause {
  readonly id: string;
  readonly faults: readonly string[];
  readonly when: Condition;
}

/** A fault's prior weight and what multiplies it. */
export interface Prior {
  readonly weight: number;
  readonly source: string;
  readonly factors: readonly { readonly when: Condition; readonly times: number }[];
}

/** Of 100 vehicles with a fault, how many give each answer; the first table whose `given` holds. */
export interface LikelihoodTable {
  readonly given?: Condition;
  /** How often, of 1, an answer is mistaken, and for which; left out, for any. */
  readonly mistaken?: {
    readonly share: number;
    readonly for?: Readonly<Record<string, readonly string[]>>;
  };
  /** Fault to answer to likelihood, mistakes counted in. Every fault of the flow has a row. */
  readonly rows: Readonly<Record<string, Readonly<Record<string, number>>>>;
  /** Where answers hang on the circuit's state: fault to the part of them that does, and how. */
  readonly byCircuit?: {
    readonly parts: Readonly<Record<string, number>>;
    /** P(reported answer | true answer): true answer to reported answer to likelihood. */
    readonly reported: Readonly<Record<string, Readonly<Record<string, number>>>>;
  };
}

/** Figures of a circuit, each with its distribution. */
export type FigureRanges = Readonly<Partial<Record<CircuitFigure, Quantiles>>>;

/** One way in which a fault shows itself in the circuit. */
export interface CircuitMode {
  /** How often, against the fault's other modes. */
  readonly share: number;
  readonly when?: Condition;
  readonly figures: FigureRanges;
}

/** How faults shape the starting circuit, whose hidden state readings and signs have in common. */
export interface CircuitEvidence {
  /** What is usual on any vehicle; of those whose condition holds a later one comes first. */
  readonly usual: readonly { readonly when?: Condition; readonly figures: FigureRanges }[];
  /**
   * Check to what it reads, the model's spread (V or A, and of the load), and, of 1, the vehicles
   * of which the model is only roughly right, and odd readings.
   */
  readonly readings: Readonly<
    Record<
      string,
      {
        readonly reads: CircuitReading;
        readonly spread: number;
        readonly part: number;
        readonly rough: number;
        readonly odd: number;
      }
    >
  >;
  /** Check to what is seen. */
  readonly choices: Readonly<Record<string, CircuitChoice>>;
  /**
   * Ways of being of the faults that share them, and of how many states they are drawn; `fails`
   * where the circuit is why the engine does not start.
   */
  readonly sets: readonly {
    readonly fails: boolean;
    readonly states: number;
    readonly modes: readonly CircuitMode[];
  }[];
  /** Fault to the position of its set. */
  readonly setOf: Readonly<Record<string, number>>;
  readonly pairs: readonly FaultPair[];
}

/** Two faults that the trade sees on one vehicle; `first` is put right first. */
interface FaultPair {
  readonly first: string;
  readonly second: string;
  /** How many times as often as chance has it. */
  readonly times: number;
}

/** Findings that measure one cause more than once, so that they count less. */
export interface CommonCause {
  readonly checks: readonly string[];
  /** Mean correlation, 0 included to 1 included. */
  readonly correlation: number;
}

/** A reading worked out from others instead of being asked. */
export interface Computed {
  readonly id: string;
  readonly formula: 'internal-resistance';
  readonly unit: UnitCode;
  readonly bands: readonly Band[];
  readonly expect?: ExpectedReading;
}

/** What acting on a remedy, or sending someone, costs: minutes, money counted as minutes. */
interface ActingCost {
  readonly cost: number;
  /** More where it was the wrong thing. */
  readonly wrong: number;
  /** True where it helps whatever the fault is. */
  readonly always: boolean;
}

/** What there is to weigh when the next check is chosen. */
export interface Costs {
  readonly source: string;
  /** Minutes to fetch an item of kit, or to get to a place, once in a case. */
  readonly setups: Readonly<Record<string, number>>;
  readonly remedies: Readonly<Record<string, ActingCost>>;
  readonly sends: Readonly<Record<string, ActingCost>>;
  /** How many times dearer a mistake is for a role; 1 where it is not named. */
  readonly wrongTimes: Readonly<Record<string, number>>;
}

/** When the findings of a case speak against a part, and when they point to something else. */
export interface PartSigns {
  /** The faults that are of this part. */
  readonly faults: readonly string[];
  readonly against?: Condition;
  readonly elsewhere?: Condition;
  /** What is asked for where nobody has a case of the vehicle. */
  readonly byHand: {
    /** Checks, in the order of their fields. */
    readonly readings: readonly string[];
    /** What is said of the part to what the vehicle does, where it can mean one thing alone. */
    readonly complaint: Readonly<Record<string, string>>;
  };
}

/** A line of a table of decisions: the first one that holds decides. */
export interface DecisionLine {
  /** Missing in the last line alone, which always holds. */
  readonly when?: Condition;
  readonly decide: string;
  readonly reason: string;
  /** The words by which it tells its reason, where they are not the reason's own. */
  readonly says?: string;
  /** Checks to be answered once more, after which the table is gone through anew. */
  readonly again: readonly string[];
  /** Checks whose answers so far do not count: they go once one of `again` is answered. */
  readonly voids: readonly string[];
  /** By what of the terms of the shop it is paid back. */
  readonly pays?: Payment;
  /** What to measure on the vehicle before another part is fitted. */
  readonly measure: readonly string[];
  /** What is said besides the reason where its condition holds. */
  readonly besides: readonly { readonly id: string; readonly when: Condition }[];
}

/** A whole flow. */
export interface Flow {
  readonly id: string;
  readonly version: string;
  readonly stages: readonly Stage[];
  /** The stage at whose end the verdict is given; the last where the flow ends in a decision. */
  readonly verdictAfter: string;
  /** Stages whose checks are asked by their worth, not as written. */
  readonly byWorth: readonly string[];
  readonly checks: Readonly<Record<string, Check>>;
  readonly computed: Readonly<Record<string, Computed>>;
  readonly cautions: Readonly<Record<string, Caution>>;
  readonly stops: readonly Stop[];
  readonly interrupts: Readonly<Record<string, Interrupt>>;
  /** A table in place of faults and their evidence; empty where there are faults. */
  readonly decisions: readonly DecisionLine[];
  readonly endsIn: 'decision' | 'outcome';
  /** The part whose terms of sale count. */
  readonly part?: SoldPart;
  readonly faults: Readonly<Record<string, Fault>>;
  readonly roots: readonly RootCause[];
  readonly priors: Readonly<Record<string, Prior>>;
  readonly likelihoods: Readonly<Record<string, readonly LikelihoodTable[]>>;
  /** Role to how many times as often it is mistaken; 1 where it is not named. */
  readonly mistakenTimes: Readonly<Record<string, number>>;
  readonly commonCauses: readonly CommonCause[];
  /** Missing where no reading hangs on a circuit. */
  readonly circuit?: CircuitEvidence;
  /** Missing where no stage goes by worth. */
  readonly costs?: Costs;
  readonly parts: Readonly<Partial<Record<SoldPart, PartSigns>>>;
  /** Which check supplies each measured quantity that limits depend on. */
  readonly measured: Readonly<Record<string, string>>;
  /** When the engine is known to turn, and when it is known not to. */
  readonly turning?: Condition;
}
