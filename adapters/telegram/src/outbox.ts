/**
 * Sends what waits in the store, in order to each chat and to many chats at once, and goes on with
 * conversations whose time has come.
 */
import type { CaseStore, Outgoing } from '@keyturn/cases';
import type { Part } from '@keyturn/conversation';
import type { Conversations } from '@keyturn/conversation/kept';
import type { Api } from 'grammy';
import { fateOf } from './fate.ts';
import { createPictures } from './pictures.ts';
import { sendPart } from './send-part.ts';

/** What is sent with. */
export interface OutboxOptions {
  readonly store: CaseStore;
  readonly conversations: Conversations;
  readonly api: Api;
  /** Which addresses are sent to: those that begin so. */
  readonly of: string;
  readonly now: () => Date;
  /** Told of what went wrong and could not be helped. */
  readonly onError: (error: unknown) => void;
}

/** Sends until it is stopped. */
export interface Outbox {
  /** Says that there may be something to send. */
  readonly wake: () => void;
  /** Resolves once what was being sent is sent, and nothing more will be. */
  readonly stop: () => Promise<void>;
}

/** So many are sent at once. */
const mostAtOnce = 100;

/**
 * Nobody else is given what was taken for so long, milliseconds: longer than sending may take. What
 * a process was sending when it was stopped by force is found out after that time.
 */
const leaseMs = 15_000;

/** What others put into the store, and what is due, is looked for so often, milliseconds. */
const pollMs = 1_000;

/** Updates are delivered for a day; their names need not be known for longer, milliseconds. */
const [rememberedMs, forgetEveryMs] = [3 * 86_400_000, 3_600_000];

/** Begins to send. */
export function startOutbox(options: OutboxOptions): Outbox {
  const { store, conversations, api, of, now, onError } = options;
  const pictures = createPictures(conversations.speakerOf);
  const sending = new Set<Promise<void>>();
  const inHand = new Set<number>();
  const over = new AbortController();
  let isWoken = false;
  let onWake: () => void = () => undefined;
  let forgottenAt = 0;

  const wake = (): void => {
    isWoken = true;
    onWake();
  };

  const deliver = async (outgoing: Outgoing): Promise<void> => {
    const { id, to, attempts } = outgoing;
    if (outgoing.isUnsure) {
      await conversations.unsure(outgoing, now().toISOString());
      await store.settle(id, { type: 'over' });
      return;
    }
    try {
      await sendPart({ api, pictures }, to, outgoing.body as unknown as Part);
      await store.settle(id, { type: 'over' });
    } catch (error) {
      const fate = fateOf(error, attempts);
      if (fate.type !== 'gone') onError(error);
      const notBefore =
        fate.type === 'again' ? new Date(now().getTime() + fate.afterMs).toISOString() : undefined;
      await store.settle(
        id,
        notBefore === undefined ? { type: 'over' } : { type: 'again', notBefore },
      );
    }
  };

  const begin = (work: Promise<void>): void => {
    const ended = work.catch(onError).then(() => {
      sending.delete(ended);
      wake();
    });
    sending.add(ended);
  };

  /** Takes what can be sent now; false where there is nothing. */
  const takeSome = async (): Promise<boolean> => {
    const at = now();
    const limit = mostAtOnce - sending.size;
    if (limit <= 0) return false;
    const taking = { now: at.toISOString(), limit, forMs: leaseMs, of };
    const taken = await store.takeOutgoing(taking);
    for (const outgoing of taken) {
      // A clock that is set on, or a machine that was asleep, ends the time of what is in hand.
      if (inHand.has(outgoing.id)) continue;
      inHand.add(outgoing.id);
      begin(deliver(outgoing).finally(() => inHand.delete(outgoing.id)));
    }
    return taken.length > 0;
  };

  const takeTimers = async (): Promise<void> => {
    const at = now();
    const taking = { now: at.toISOString(), limit: mostAtOnce, forMs: leaseMs, of };
    for (const timer of await store.takeDue(taking)) {
      begin(conversations.goOn(timer, at.toISOString()).then(() => undefined));
    }
    if (at.getTime() - forgottenAt < forgetEveryMs) return;
    forgottenAt = at.getTime();
    await store.forgetReceived(new Date(at.getTime() - rememberedMs).toISOString());
  };

  const idle = async (): Promise<void> => {
    if (isWoken || over.signal.aborted) return;
    await new Promise<void>((resolve) => {
      const timer = setTimeout(resolve, pollMs);
      onWake = () => {
        clearTimeout(timer);
        resolve();
      };
    });
  };

  const isOver = (): boolean => over.signal.aborted;
  const running = (async () => {
    let timersAt = 0;
    while (!isOver()) {
      isWoken = false;
      try {
        const time = now().getTime();
        if (Math.abs(time - timersAt) >= pollMs) {
          timersAt = time;
          await takeTimers();
        }
        if (await takeSome()) continue;
      } catch (error) {
        onError(error);
        isWoken = false;
      }
      await idle();
    }
  })();

  return {
    wake,
    stop: async () => {
      over.abort();
      wake();
      await running;
      while (sending.size > 0) await Promise.all(sending);
    },
  };
}
