import type { Check, Message } from '@keyturn/core';
import { askBack } from './render/ask-back.ts';
import { createFigures, type Figure } from './numbers/figures.ts';
import { isRightToLeft } from './numbers/isolate.ts';
import type { FlowTexts } from './flow-texts.ts';
import { createFlowWords, type CheckLikes } from './flow-words.ts';
import { keptLexicon } from './understand/kept-lexicon.ts';
import type { Lexicon } from './understand/lexicon.ts';
import { localeNames, type Locale } from './locale-names.ts';
import { renderMessage } from './render/render.ts';
import type { Rendered } from './rendered.ts';
import { createSay } from './texts/create-say.ts';
import type { en } from './texts/en.ts';
import { createLanguageNames } from './understand/language-names.ts';
import type { DrawingKey, SayDrawing } from './texts/text-key.ts';
import { understandEach, type ToldEach } from './understand/told-each.ts';
import type { Listener } from './understand/turn.ts';
import { understandText } from './understand/understand.ts';
import type { Hearing, Understood } from './understand/understood.ts';
import type { Voice } from './voice.ts';

/** A key that is not an answer, or what a channel says of itself. */
export type KeyName = keyof (typeof en)['key'];

const languageNamed = createLanguageNames(Object.keys(localeNames));

/** What a speaker is made of. */
export interface SpeakerOptions {
  /** BCP 47 tag of a language that there is: `en`, `en-GB`. */
  readonly locale: string;
  readonly flowTexts: FlowTexts;
  /** The checks of the flow, so that those that share another's words are known. */
  readonly checks?: CheckLikes;
  /** Who reads: a `driver` is given the driver's words where a remedy has them. */
  readonly role?: string;
}

/** Speaks and understands one language for one flow. */
export interface Speaker {
  /** The BCP 47 tag that it was made with. */
  readonly locale: string;
  /** Messages in words. Throws `text-missing`, naming the key, where a text does not exist. */
  readonly render: (messages: readonly Message[]) => Rendered[];
  /** What a typed text means. Pure; never throws. */
  readonly understand: (text: string, hearing: Hearing) => Understood;
  /**
   * All that a typed text tells, part by part, and the parts that were not understood; undefined
   * where it tells no answers. Pure; never throws.
   */
  readonly understandEach: (text: string, hearing: Hearing) => ToldEach | undefined;
  /** Asks back after what was not understood; nothing for what was. */
  readonly askBack: (understood: Understood) => Rendered[];
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
  /** Which way the language runs. */
  readonly direction: 'ltr' | 'rtl';
  /** A share of one as whole percent: "47%". */
  readonly formatPercent: (share: number) => string;
  /** The words in a picture, and those that tell it to who cannot see it. */
  readonly drawing: SayDrawing;
  /** Where a lead goes: "the battery’s plus post". Throws `text-missing`. */
  readonly probePlace: (place: string) => string;
}

/**
 * Creates the speaker of one conversation from a language that was brought along, as a page does
 * that carries only the one in use. Synchronous.
 */
export function speakerOf(language: Locale, options: SpeakerOptions): Speaker {
  const { texts, words } = language;
  const { locale, flowTexts, checks, role } = options;
  const say = createSay(locale, texts);
  const figures = createFigures(locale, say);
  const flow = createFlowWords(flowTexts, checks ?? {}, say);
  const voice: Voice = { say, flow, figures, role };

  const lexiconOf = (all: Readonly<Record<string, Check>>): Lexicon =>
    keptLexicon({ words, texts: flowTexts, checks: all });
  const listenerFor = ({ checks: all }: Hearing): Listener => ({
    locale,
    lexicon: lexiconOf(all),
    formatQuantity: figures.formatQuantity,
    formatDay: figures.formatDay,
    unitHere: figures.unitHere,
    unitSign: figures.unitSign,
    languages: Object.values(localeNames),
    locales: Object.keys(localeNames),
    languageNamed,
  });
  const numbers = (decimals: number): Intl.NumberFormat =>
    new Intl.NumberFormat(locale, { maximumFractionDigits: decimals });
  return {
    locale,
    render: (messages) => messages.flatMap((message) => renderMessage(message, voice)),
    understand: (text, hearing) => understandText(text, hearing, listenerFor(hearing)),
    understandEach: (text, hearing) => understandEach(text, hearing, listenerFor(hearing)),
    askBack: (understood) => askBack(understood, voice),
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
    direction: isRightToLeft(locale) ? 'rtl' : 'ltr',
    drawing: (name, ...values) => say(`drawing.${name}` as DrawingKey, ...(values as [never])),
    probePlace: flow.probe,
  };
}
