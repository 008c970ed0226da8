/** Speaking and understanding. */
export { createSpeaker } from './create-speaker.ts';
export { speakerOf, type Speaker, type SpeakerOptions } from './speaker.ts';
export { tellerOf, type KeyName, type Teller, type TellerOptions } from './teller.ts';
export {
  hearingByHand,
  readingsSaid,
  sayGrounds,
  textsByHand,
  type JudgedReadings,
  type ReadingsSaid,
  type VehicleListener,
} from './readings-by-hand.ts';
export { understandingOf, type Understanding } from './understand/understanding.ts';
export { generalTexts, localeTags } from './locale.ts';
export { localeNames, type Locale } from './locale-names.ts';
export type { Spelling, Words } from './words/words.ts';
export { pseudoText, pseudoTexts } from './texts/pseudo.ts';
export type { DrawingName, GeneralTexts, SayDrawing } from './texts/text-key.ts';

/** What is said. */
export type { Rendered, RenderedFault, RenderedOption, RenderedSection } from './rendered.ts';

/** What is understood. */
export type {
  Hearing,
  HeardTalk,
  AnswerOffer,
  DangerOffer,
  Offer,
  UnclearCode,
  Understood,
} from './understand/understood.ts';
export type { LeftPart, ToldEach } from './understand/told-each.ts';

/** The texts of a flow. */
export type {
  AnswerTexts,
  CheckTexts,
  DecisionTexts,
  DriverLine,
  FlowTexts,
  HeardTexts,
  InterruptTexts,
  ReasonTexts,
  RemedyTexts,
  ToldTexts,
} from './flow-texts.ts';
export { driverLines } from './driver-lines.ts';

/** Figures, and the one error. */
export type { Figure } from './numbers/figures.ts';
export { roundedEnds } from './render/bound.ts';
export { LanguageError, type LanguageErrorCode } from './language-error.ts';
