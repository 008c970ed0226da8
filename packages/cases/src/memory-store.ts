/**
 * A store that lives as long as the program: for tests, and for a channel that needs no more.
 */
import type { CaseEvent } from '@keyturn/core';
import type { CaseStore, Conversation, KeptCase, Taking } from './case-store.ts';
import { CasesError } from './cases-error.ts';
import type { Change, Committed, Json } from './change.ts';
import { digestOf } from './digest.ts';
import { requireChange } from './require-change.ts';

interface Sending {
  readonly id: number;
  readonly to: string;
  readonly body: Json;
  /** 0 until it was tried in vain: it is due whatever the clock says. */
  dueAt: number;
  attempts: number;
  takenUntil: number | undefined;
}

interface Timer {
  readonly conversation: string;
  readonly name: string;
  readonly dueAt: number;
  takenUntil: number | undefined;
}

/** Makes an empty store in memory. */
export function createMemoryStore(): CaseStore {
  const cases = new Map<string, { kept: KeptCase; events: readonly CaseEvent[] }>();
  const personal = new Map<string, Record<string, string>>();
  const conversations = new Map<string, Conversation>();
  const received = new Map<string, number>();
  const timers = new Map<string, Timer>();
  let outgoing: Sending[] = [];
  let lastId = 0;
  let isClosed = false;

  const refusalOf = ({ received: key, case: kase, conversation }: Change) => {
    if (key !== undefined && received.has(key)) return { type: 'repeated' } as const;
    const { version = 0 } = cases.get(kase?.after.id ?? '')?.kept ?? {};
    if (kase !== undefined && version !== kase.expected) {
      const events = cases.get(kase.after.id)?.events ?? [];
      const since = events.slice(Math.min(kase.expected, version));
      return { type: 'conflict', over: 'case', version, since } as const;
    }
    const talked = conversations.get(conversation?.key ?? '')?.version ?? 0;
    return conversation === undefined || talked === conversation.expected
      ? undefined
      : ({ type: 'conflict', over: 'conversation', version: talked } as const);
  };

  const commit = (change: Change): Committed => {
    requireChange(change);
    const refused = refusalOf(change);
    if (refused !== undefined) return refused;
    const at = Date.parse(change.at);
    if (change.received !== undefined) received.set(change.received, at);
    if (change.case !== undefined) {
      const { events, after } = change.case;
      const snapshot = JSON.stringify(after);
      const kept = { id: after.id, version: after.events, snapshot, digest: digestOf(snapshot) };
      cases.set(after.id, { kept, events: [...(cases.get(after.id)?.events ?? []), ...events] });
      if (change.personal !== undefined) {
        personal.set(after.id, { ...personal.get(after.id), ...change.personal });
      }
    }
    if (change.conversation !== undefined) {
      const { key, expected, body } = change.conversation;
      conversations.set(key, { version: expected + 1, body });
    }
    for (const { to, body } of change.outgoing ?? []) {
      lastId += 1;
      outgoing.push({ id: lastId, to, body, dueAt: 0, attempts: 0, takenUntil: undefined });
    }
    for (const { conversation, name, dueAt } of change.timers ?? []) {
      const key = JSON.stringify([conversation, name]);
      if (dueAt === undefined) timers.delete(key);
      else timers.set(key, { conversation, name, dueAt: Date.parse(dueAt), takenUntil: undefined });
    }
    return { type: 'kept' };
  };

  const asked = <Result>(work: () => Result): Promise<Result> =>
    new Promise((resolve) => {
      if (isClosed) throw new CasesError('closed', 'the store has been closed');
      resolve(work());
    });

  return {
    commit: (change) => asked(() => commit(structuredClone(change))),
    read: (id) => asked(() => cases.get(id)?.kept),
    events: (id, after = 0) => asked(() => cases.get(id)?.events.slice(after) ?? []),
    conversation: (key) => asked(() => conversations.get(key)),
    takeOutgoing: (taking) =>
      asked(() => {
        const addresses = new Set<string>();
        const oldest = outgoing.filter(({ to }) => {
          const isFirst = !addresses.has(to) && to.startsWith(taking.of ?? '');
          addresses.add(to);
          return isFirst;
        });
        return take(oldest, taking).map(({ one, wasTaken }) => {
          one.attempts += 1;
          const { id, to, body, attempts } = one;
          return { id, to, body, attempts: attempts - 1, isUnsure: wasTaken };
        });
      }),
    settle: (id, delivery) =>
      asked(() => {
        if (delivery.type === 'over') outgoing = outgoing.filter((one) => one.id !== id);
        const again = outgoing.find((one) => one.id === id);
        if (delivery.type === 'over' || again === undefined) return;
        again.dueAt = Date.parse(delivery.notBefore);
        again.takenUntil = undefined;
      }),
    takeDue: (taking) =>
      asked(() =>
        take(
          [...timers.values()]
            .filter(({ conversation }) => conversation.startsWith(taking.of ?? ''))
            .toSorted(byTime),
          taking,
        ).map(({ one }) => ({
          conversation: one.conversation,
          name: one.name,
          dueAt: new Date(one.dueAt).toISOString(),
        })),
      ),
    nextDue: () =>
      asked(() => {
        const times = [...timers.values(), ...outgoing].map(({ dueAt }) => dueAt);
        return times.length === 0 ? undefined : new Date(Math.min(...times)).toISOString();
      }),
    personal: (id) => asked(() => personal.get(id) ?? {}),
    erasePersonal: (id) => asked(() => void personal.delete(id)),
    forgetReceived: (before) =>
      asked(() => {
        for (const [key, at] of received) if (at < Date.parse(before)) received.delete(key);
      }),
    inspect: () => asked(() => []),
    close: () => {
      isClosed = true;
      return Promise.resolve();
    },
  };
}

/** Takes what is due and free, up to a limit. */
function take<One extends { readonly dueAt: number; takenUntil: number | undefined }>(
  all: readonly One[],
  { now, limit, forMs }: Taking,
): readonly { readonly one: One; readonly wasTaken: boolean }[] {
  const time = Date.parse(now);
  return all
    .filter(({ dueAt, takenUntil = 0 }) => dueAt <= time && takenUntil <= time)
    .slice(0, limit)
    .map((one) => {
      const wasTaken = one.takenUntil !== undefined;
      one.takenUntil = time + forMs;
      return { one, wasTaken };
    });
}

function byTime(one: Timer, other: Timer): number {
  return (
    one.dueAt - other.dueAt ||
    (one.conversation < other.conversation ? -1 : 1) *
      Number(one.conversation !== other.conversation) ||
    (one.name < other.name ? -1 : 1)
  );
}
