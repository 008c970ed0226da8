/**
 * Fetches updates, and confirms them only once they are kept: what was fetched by a process that
 * was stopped by force comes again.
 */
import { setTimeout as sleep } from 'node:timers/promises';
import { CasesError, type CasesErrorCode } from '@keyturn/cases';
import { BotError, GrammyError, type Bot } from 'grammy';
import { apiSignal } from './api-signal.ts';

/** The kinds of updates that there is use for. */
export const updateTypes = ['message', 'edited_message', 'callback_query'] as const;

/** So long the Bot API waits for something to come in, seconds. */
const waitSeconds = 25;

/** After a failure it is tried again after so long, milliseconds. */
const pauseMs = 1_000;

/** An update that fails so often is left, since it would keep all others from coming in. */
const mostTries = 10;

/** While the store can keep nothing at all, no update is at fault, and none is left. */
const storeIsAway: ReadonlySet<CasesErrorCode> = new Set([
  'full',
  'busy',
  'read-only',
  'unreachable',
]);

/**
 * Hands updates to the bot until the signal is given.
 *
 * @throws GrammyError where the token is wrong.
 */
export async function pollUpdates(
  bot: Bot,
  { signal, onError }: { readonly signal: AbortSignal; readonly onError: (error: unknown) => void },
): Promise<void> {
  let offset = 0;
  let tries = 0;
  const isOver = (): boolean => signal.aborted;
  while (!isOver()) {
    try {
      const updates = await bot.api.getUpdates(
        { offset, limit: 100, timeout: waitSeconds, allowed_updates: updateTypes },
        apiSignal(signal),
      );
      const results = await Promise.allSettled(updates.map((update) => bot.handleUpdate(update)));
      const failed = results.findIndex(({ status }) => status === 'rejected');
      const isLeft = failed >= 0 && tries >= mostTries;
      // What comes after one that failed may have failed as well, and comes again.
      const done = failed < 0 ? updates : updates.slice(0, isLeft ? failed + 1 : failed);
      const last = done.at(-1);
      if (last !== undefined) {
        offset = last.update_id + 1;
        tries = 0;
      }
      if (failed < 0 || isLeft) continue;
      const reason = (results[failed] as PromiseRejectedResult).reason as unknown;
      if (!isStoreAway(reason)) tries += 1;
      throw reason;
    } catch (error) {
      if (isOver()) return;
      if (error instanceof GrammyError && error.error_code === 401) throw error;
      onError(error);
      await sleep(pauseMs, undefined, { signal }).catch(() => undefined);
    }
  }
}

function isStoreAway(reason: unknown): boolean {
  const error = reason instanceof BotError ? reason.error : reason;
  return error instanceof CasesError && storeIsAway.has(error.code);
}
