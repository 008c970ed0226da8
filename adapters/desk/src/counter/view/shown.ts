/**
 * All that a view is made from, and all that it can do.
 */
import type { AnswerInput, AskMessage, Flow, Input } from '@keyturn/core';
import type { FlowTexts, Offer, Rendered, Speaker, VehicleListener } from '@keyturn/language';
import type { Sheet } from '@keyturn/sheets';
import type { Laid } from '../../engine/engine.ts';
import type { VehicleNames } from '../counter-pack.ts';
import type { InventedReturn } from '../demo/invented-shop.ts';
import type { HeardLine } from '../engine/counter-engine.ts';
import type { TypedFigure } from '../engine/typed-figure.ts';
import type { Measured } from '../vehicle/measured-by-hand.ts';
import type { CounterCommand } from '../keys.ts';
import type { CounterReturn, Diagnosis, VehicleCase } from '../return/counter-return.ts';
import type { Shop, ShopFault } from '../shop/shop.ts';
import type { CounterWords } from '../words/counter-words.ts';

/** What the hand has begun and not finished; nothing of it is kept. */
export interface Hand {
  /** Picked so far where several answers may hold. */
  readonly picked: readonly string[];
  /** The check whose answer is being put right. */
  readonly asking: string | null;
  /** What lies over the step in hand. */
  readonly open: 'danger' | 'goodwill' | 'camera' | null;
  /** What a line told, of which it is asked whether it is meant so. */
  readonly told: HeardLine | null;
  /** A case of a vehicle of which it is asked whether it is the right one. */
  readonly offered: VehicleCase | null;
  /** True while the readings of the vehicle are typed by hand. */
  readonly byHand: boolean;
  /** True after the first of the two presses that take a part off the counter. */
  readonly removing: boolean;
}

/** A hand that has begun nothing. */
export const emptyHand: Hand = {
  picked: [],
  asking: null,
  open: null,
  told: null,
  offered: null,
  byHand: false,
  removing: false,
};

/** The return in hand. */
export interface InHand {
  readonly back: CounterReturn;
  readonly laid: Laid;
  readonly flow: Flow;
  readonly speaker: Speaker;
  readonly texts: FlowTexts;
  /** What asks for readings of the vehicle by hand, in the words of its flow. */
  readonly vehicle: VehicleListener;
  /** The figures that are asked for now, by check. */
  readonly figures: Readonly<Record<string, TypedFigure>>;
  /** What is typed by hand of the vehicle, judged; undefined while nothing is. */
  readonly measured: Measured | undefined;
  /** The questions after the one in hand that stand on the same screen. */
  readonly ahead: readonly AskMessage[];
  /** The slip as it is printed, once there is a decision and it has been written. */
  readonly sheet: Sheet | undefined;
  /** Answers that the last line or day may have meant. */
  readonly offers: readonly Offer[];
  /** What was said last and has no place of its own. */
  readonly said: readonly Rendered[];
  readonly isBusy: boolean;
  readonly invented: InventedReturn | undefined;
}

/** What is known of the part and can be written by hand. */
export type PartField = 'name' | 'number' | 'receipt';

/** What proves a sale, with the price that was typed beside it. */
export type Proof = { readonly receipt: string } | { readonly answer: string };

/** Whose case of a vehicle it is. */
export type WhoseCase = 'this-part' | 'other-part' | 'other-vehicle';

/** What a view can do. */
export interface Actions {
  readonly take: (...inputs: readonly Input[]) => void;
  /** An answer to a check, or another one in its place. */
  readonly answer: (check: string, value: AnswerInput['value']) => void;
  /** A battery has stood here long enough to have the warmth of the room. */
  readonly stood: () => void;
  /** All lines of a list. */
  readonly takeList: (answers: readonly AnswerInput[]) => void;
  /** What was scanned, or typed into the line. */
  readonly enter: (text: string) => void;
  readonly hand: (change: Partial<Hand>) => void;
  /** Marks what is picked by what stands in a field now; what was said stays. */
  readonly mark: (picked: Hand['picked']) => void;
  readonly command: (command: CounterCommand) => void;
  readonly choose: (id: string) => void;
  /** Begins with a part of which nothing is known yet. */
  readonly begin: (part: CounterReturn['part']) => void;
  readonly practise: () => void;
  readonly type: (check: string, text: string) => void;
  readonly takeFigures: () => void;
  /** Goes on from the field of a figure to the next one, or takes them; one that is none stays. */
  readonly nextFigure: (check: string) => void;
  readonly tell: (field: PartField, text: string) => void;
  /** Fills in what the shop knows of a part by its number or the receipt of its sale. */
  readonly fetchPart: (number: string) => void;
  /** Proof of the sale: the number of the receipt that is shown, or another answer. */
  readonly proof: (given: Proof) => void;
  readonly price: (text: string) => void;
  readonly oldUnit: (told: 'returned' | 'owed') => void;
  readonly boughtOn: (by: Exclude<Diagnosis['by'], 'case'>) => void;
  readonly caseFile: (file: File) => void;
  /** Whose the offered case is: measured with this part in the vehicle, with another, or not its. */
  readonly useCase: (which: WhoseCase) => void;
  /** What a line told is meant so. */
  readonly takeTold: () => void;
  /** The part waits, and its slip says since when. */
  readonly putAside: () => void;
  readonly intoList: () => void;
  /** A lead takes it back, by name; null: not after all. */
  readonly goodwill: (name: string | null) => void;
  readonly remove: () => void;
  readonly shopFile: (file: File) => void;
  readonly forgetShop: () => void;
  readonly go: (screen: Shown['screen']) => void;
  /** A day typed as the answer to a check. */
  readonly day: (check: string, text: string) => void;
  readonly pickDay: (day: string) => void;
  readonly notice: (text: string) => void;
  readonly switchKeys: () => void;
  readonly language: (tag: string) => void;
  readonly print: () => void;
  /** Prints the slip of a return that has ended once more. */
  readonly printAgain: (id: string) => void;
}

/** What a view is made from. */
export interface Shown {
  readonly words: CounterWords;
  /** BCP 47 tag. */
  readonly locale: string;
  readonly locales: Readonly<Record<string, string>>;
  /** The speaker and the texts of a part's flow. */
  readonly speakerFor: (part: CounterReturn['part']) => Speaker;
  readonly textsFor: (part: CounterReturn['part']) => FlowTexts;
  readonly vehicleNames: VehicleNames;
  readonly shop: Shop | null;
  readonly shopFaults: readonly ShopFault[];
  readonly screen: 'counter' | 'day' | 'came-good' | 'shop' | 'keys';
  readonly inHand: InHand | undefined;
  /** The other returns on the counter, the oldest first. */
  readonly waiting: readonly CounterReturn[];
  /** Every return of the shop in use, ended ones too. */
  readonly returns: readonly CounterReturn[];
  /** Today where the shop is, and the day whose list is shown; ISO 8601. */
  readonly today: string;
  readonly day: string;
  readonly notices: readonly string[];
  /** What is wrong with the price that was typed last; undefined where nothing is. */
  readonly priceWrong: string | undefined;
  /** That the shop's list does not have the receipt in hand; undefined where it does. */
  readonly receiptUnlisted: string | undefined;
  /** What else came back on the receipt in hand, a sentence for each. */
  readonly receiptElsewhere: readonly string[];
  /** The slip of a return of the day's list, written anew to be printed; undefined without one. */
  readonly again: Sheet | undefined;
  readonly hasKeys: boolean;
  /** Whether a list has been taken since the page was opened: how is known by then. */
  readonly hasListed: boolean;
  /** Whether it is told how each thing is found out. */
  readonly hasHow: boolean;
  readonly hasCamera: boolean;
  readonly hand: Hand;
  readonly act: Actions;
}
