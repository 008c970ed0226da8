/** What a channel is, takes in and sends. */
export { plainText } from './channel.ts';
export type { ChannelLimits, Content, Incoming, Key, Line, Part, PartKind } from './channel.ts';

export type { Picture } from './picture.ts';

/** What was found, to be passed on as it is. */
export { summaryDraft } from './summary.ts';

/** A typed line taken through a case, without a store. */
export {
  asksOfDanger,
  beforeDanger,
  dueOf,
  hearInputs,
  hearLine,
  offerInput,
  offerLetter,
} from './hear-line.ts';
export type {
  HearByHand,
  Heard,
  Listener,
  Standing as LineStanding,
  Unclear,
} from './hear-line.ts';

/** Readings of the vehicle that a part comes from. */
export { hearsByHand } from './hear-by-hand.ts';

/** What is heard of a language, learned between the lines. */
export { createLearner } from './learner.ts';
export type { Learner } from './learner.ts';
