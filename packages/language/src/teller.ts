import type { Message, ReadingMessage } from '@keyturn/core';
import { askBack } from './render/ask-back.ts';
import { createFigures, type Figure, type Figures } from './numbers/figures.ts';
import { isRightToLeft } from './numbers/isolate.ts';
import type { ToldTexts } from './flow-texts.ts';
import { createFlowWords, type CheckLikes } from './flow-words.ts';
import { renderMessage } from './render/render.ts';
import type { Rendered } from './rendered.ts';
import { createSay } from './texts/create-say.ts';
import type { en } from './texts/en.ts';
import type {
  DrawingKey,
  GeneralTexts,
  SayDrawing,
  SayVehicle,
  VehicleKey,
} from './texts/text-key.ts';
import type { Understood } from './understand/understood.ts';
import type { Voice } from './voice.ts';

/** A key that is not an answer, or what a channel says of itself. */
export type KeyName = keyof (typeof en)['key'];

/** What a teller is made of. */
export interface TellerOptions {
  /** BCP 47 tag of a language that there is: `en`, `en-GB`. */
  readonly locale: string;
  readonly flowTexts: ToldTexts;
  /** The checks of the flow, so that those that share another's words are known. */
  readonly checks?: CheckLikes;
  /** Who reads: a `driver` is given the driver's words where a remedy has them. */
  readonly role?: string;
}

/** Speaks one language for one flow. */
export interface Teller {
  /** The BCP 47 tag that it was made with. */
  readonly locale: string;
  /** Messages in words. Throws `text-missing`, naming the key, where a text does not exist. */
  readonly render: (messages: readonly Message[]) => Rendered[];
  /** Asks back after what was not understood; nothing for what was. */
  readonly askBack: (understood: Understood) => Rendered[];
  /** Numbers, units, days and lists as the language writes them. */
  readonly figures: Figures;
  /** A figure with its unit's sign: "12.40 V". Throws `unit-unknown`. */
  readonly formatQuantity: (figure: Figure) => string;
  /** An amount in minor units of a currency, ISO 4217: "€12.90". */
  readonly formatMoney: (minor: number, currency: string) => string;
  /** A day, ISO 8601, as a date. */
  readonly formatDay: (day: string) => string;
  /** How likely something is: "Worn-out battery: 47 %". `share` of one. */
  readonly formatShare: (name: string, share: number) => string;
  /** The label of a key that is not an answer, or what a channel says of itself. */
  readonly key: (name: KeyName) => string;
  /** A bare figure, as under a tick of a scale: to so many decimals at most. */
  readonly formatNumber: (value: number, decimals: number) => string;
  /** Two bare figures as a range. */
  readonly formatRange: (low: number, high: number, decimals: number) => string;
  /** What a check is called. Throws `text-missing`. */
  readonly checkName: (check: string) => string;
  /** What the flow is called: "The vehicle will not start". */
  readonly flowName: string;
  /** What a fault is called. Throws `text-missing`. */
  readonly faultName: (fault: string) => string;
  /** What is picked for an answer. Throws `text-missing`. */
  readonly answerLabel: (check: string, answer: string) => string;
  /** What a reading is found to be, in a word; empty where that cannot be told. */
  readonly readingFound: (reading: ReadingMessage) => string;
  /** Which way the language runs. */
  readonly direction: 'ltr' | 'rtl';
  /** A share of one as whole percent: "47%". */
  readonly formatPercent: (share: number) => string;
  /** The words in a picture, and those that tell it to who cannot see it. */
  readonly drawing: SayDrawing;
  /** What is said of the case of a vehicle that a part comes from. */
  readonly vehicle: SayVehicle;
  /** Where a lead goes: "the battery’s plus post". Throws `text-missing`. */
  readonly probePlace: (place: string) => string;
}

/** Creates the teller of one conversation, from general texts that were brought along. */
export function tellerOf(texts: GeneralTexts, options: TellerOptions): Teller {
  const { locale, flowTexts, checks, role } = options;
  const say = createSay(locale, texts);
  const figures = createFigures(locale, say);
  const flow = createFlowWords(flowTexts, checks ?? {}, say);
  const voice: Voice = { say, flow, figures, role };
  const numbers = (decimals: number): Intl.NumberFormat =>
    new Intl.NumberFormat(locale, { maximumFractionDigits: decimals });
  return {
    locale,
    render: (messages) => messages.flatMap((message) => renderMessage(message, voice)),
    askBack: (understood) => askBack(understood, voice),
    figures,
    formatQuantity: figures.formatQuantity,
    formatMoney: figures.formatMoney,
    formatDay: figures.formatDay,
    formatShare: (name, share) => `${name}: ${figures.formatShare(share)}`,
    formatPercent: figures.formatShare,
    key: (name) => say(`key.${name}`),
    formatNumber: (value, decimals) => numbers(decimals).format(value),
    formatRange: (low, high, decimals) => numbers(decimals).formatRange(low, high),
    checkName: flow.checkName,
    flowName: flowTexts.name,
    faultName: flow.fault,
    answerLabel: flow.answerLabel,
    readingFound: ({ check, band, borderline }) =>
      borderline ? say('decision.borderline') : band === '' ? '' : flow.answerLabel(check, band),
    direction: isRightToLeft(locale) ? 'rtl' : 'ltr',
    drawing: (name, ...values) => say(`drawing.${name}` as DrawingKey, ...(values as [never])),
    vehicle: (name, ...values) => say(`vehicle.${name}` as VehicleKey, ...(values as [never])),
    probePlace: flow.probe,
  };
}
