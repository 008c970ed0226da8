/**
 * A channel of plain text messages, as a gateway for them would want it: no keys, no bold, parts of
 * at most 160 characters (GSM 03.38 alphabet) or 70 (UCS-2), answers by number or in words.
 *
 * The gateway here is an invented driver who writes a few messages; nothing is really sent.
 */
import { randomUUID } from 'node:crypto';
import { createMemoryStore } from '@keyturn/cases';
import { plainText, type Part } from '@keyturn/conversation';
import { createConversations } from '@keyturn/conversation/kept';
import { shippedFlow, shippedTexts } from '@keyturn/flows';

/** The 7-bit alphabet of 3GPP TS 23.038; the second row takes two places each. */
const single =
  '@£$¥èéùìòÇ\nØø\rÅåΔ_ΦΓΛΩΠΨΣΘΞÆæßÉ !"#¤%&\'()*+,-./0123456789:;<=>?¡ABCDEFGHIJKLMNOPQRSTUVWXYZÄÖÑÜ§¿abcdefghijklmnopqrstuvwxyzäöñüà';
const double = '^{}\\[~]|€';

/** Signs that the alphabet lacks and that have a plain form. */
const plainer: readonly (readonly [RegExp, string])[] = [
  [/[‘’]/g, "'"],
  [/[“”„«»]/g, '"'],
  [/[–—]/g, '-'],
  [/…/g, '...'],
  [/[\u00A0\u202F]/g, ' '],
];

/** How a text is sent: in which alphabet, and in how many parts it is charged. */
export function countParts(text: string): { alphabet: 'GSM-7' | 'UCS-2'; parts: number } {
  const signs = Array.from(text);
  const isGsm = signs.every((sign) => single.includes(sign) || double.includes(sign));
  const places = signs.map((sign) => (isGsm ? (double.includes(sign) ? 2 : 1) : sign.length));
  const [one, each] = isGsm ? [160, 153] : [70, 67];
  const alphabet = isGsm ? 'GSM-7' : 'UCS-2';
  if (places.reduce((sum, size) => sum + size, 0) <= one) return { alphabet, parts: 1 };
  let parts = 1;
  let room = each;
  for (const size of places) {
    // What takes two places is never cut in two.
    if (size > room) [parts, room] = [parts + 1, each];
    room -= size;
  }
  return { alphabet, parts };
}

/** The text of a part as it is sent. */
export function messageText(part: Part): string {
  return plainer.reduce((text, [sign, plain]) => text.replaceAll(sign, plain), plainText(part));
}

/** A channel of plain text messages: `receive` a message, and get what is to be sent back. */
export function createTextMessages(locale: string) {
  const store = createMemoryStore();
  const { chart } = shippedFlow('no-start', locale);
  const conversations = createConversations({
    store,
    chart,
    texts: (tag) => shippedTexts('no-start', tag),
    // Ten parts in one message are the most that most networks put together again.
    limits: { textLength: 10 * 67, keyLength: 0, keys: 0, pictures: false },
    opening: { context: { role: 'driver' } },
    newId: randomUUID,
  });
  const sendAll = async (now: string): Promise<readonly string[]> => {
    const sent: string[] = [];
    for (;;) {
      const [next] = await store.takeOutgoing({ now, limit: 1, forMs: 60_000 });
      if (next === undefined) return sent;
      sent.push(messageText(next.body as unknown as Part));
      await store.settle(next.id, { type: 'over' });
    }
  };
  return {
    /** Takes a message; what is to be sent. `key` names it, so that it is taken once. */
    async receive(from: string, key: string, text: string): Promise<readonly string[]> {
      const at = new Date().toISOString();
      const content = { type: 'text', text } as const;
      await conversations.receive({ conversation: `text ${from}`, key, at, locale, content });
      return sendAll(at);
    },
    /** Goes on with whatever has waited for this time; what is to be sent. */
    async goOn(now: Date): Promise<readonly string[]> {
      const at = now.toISOString();
      const due = await store.takeDue({ now: at, limit: 10, forMs: 60_000 });
      for (const timer of due) await conversations.goOn(timer, at);
      return sendAll(at);
    },
  };
}

const written = ['hello, my car will not start', '4', 'yes', 'petrol', 'just clicks fast', 'stop'];

if (process.argv[1] === import.meta.filename) {
  const channel = createTextMessages('en');
  for (const [index, text] of written.entries()) {
    process.stdout.write(`> ${text}\n`);
    for (const answer of await channel.receive(
      'an invented number',
      `message ${String(index)}`,
      text,
    )) {
      const { alphabet, parts } = countParts(answer);
      process.stdout.write(`${answer}\n(${alphabet}, parts: ${String(parts)})\n\n`);
    }
  }
}
