/**
 * Fetches updates, and confirms them only once they are kept: what was fetched by a process that
 * was stopped by force comes again.
 */
import { setTimeout as sleep } from 'node:timers/promises';
import { GrammyError, type Bot } from 'grammy';
import { apiSignal } from './api-signal.ts';

/** The kinds of updates that there is use for. */
export const updateTypes = ['message', 'edited_message', 'callback_query'] as const;

/** So long the Bot API waits for something to come in, seconds. */
const waitSeconds = 25;

/** After a failure it is tried again after so long, milliseconds. */
const pauseMs = 1_000;

/** An update that fails so often is left, since it would keep all others from coming in. */
const mostTries = 10;

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
      const last = updates.at(-1);
      if (failed < 0 || tries >= mostTries) {
        offset = last === undefined ? offset : last.update_id + 1;
        tries = 0;
        continue;
      }
      tries += 1;
      offset = updates[failed]?.update_id ?? offset;
      throw (results[failed] as PromiseRejectedResult).reason;
    } catch (error) {
      if (isOver()) return;
      if (error instanceof GrammyError && error.error_code === 401) throw error;
      onError(error);
      await sleep(pauseMs, undefined, { signal }).catch(() => undefined);
    }
  }
}
