/** The bot as a plugin of grammY. */
export { keyturn, type Keyturn, type KeyturnOptions } from './keyturn.ts';
export type { RateLimit } from './rate-limit.ts';

/** Updates fetched, each confirmed only once it is kept. */
export { pollUpdates, updateTypes } from './poll-updates.ts';
export { serveWebhook } from './serve-webhook.ts';

/** The code of a vehicle's case, for flows that take a part back. */
export { vehicleSaid } from './vehicle-code.ts';

/** Errors without the token. */
export { describeError } from './describe-error.ts';
