/** What a channel is, takes in and sends. */
export { plainText } from './channel.ts';
export type { ChannelLimits, Incoming, Key, Part, PartKind } from './channel.ts';

/** A typed line taken through a case, without a store. */
export { dueOf, hearInputs, hearLine, offerLetter } from './hear-line.ts';
export type { Heard, Listener, Standing as LineStanding } from './hear-line.ts';

/** What is said to what came in, without a store. */
export { respond } from './respond.ts';
export type { Arrival, Held, Responding, Response } from './respond.ts';
export { blankStanding } from './standing.ts';
export type { Standing } from './standing.ts';
