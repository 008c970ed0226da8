import { createMemoryStore, type CaseStore } from '@keyturn/cases';
import { shippedFlow, shippedTexts } from '@keyturn/flows';
import { beforeEach, describe, expect, test } from 'vitest';
import { plainText, type ChannelLimits, type Content, type Part } from './channel.ts';
import { createConversations, type Conversations } from './conversations.ts';

const { chart } = shippedFlow('no-start', 'en');
const withKeys: ChannelLimits = { textLength: 4096, keyLength: 40, keys: 90, pictures: true };
const begun = Date.parse('2026-01-05T08:00:00.000Z');

let store: CaseStore;
let conversations: Conversations;
let seconds = 0;
let cases = 0;

beforeEach(() => {
  seconds = 0;
  cases = 0;
  store = createMemoryStore();
  conversations = hold();
});

/** A process that holds the conversations of the store. */
function hold(): Conversations {
  return createConversations({
    store,
    chart,
    texts: (tag) => shippedTexts('no-start', tag),
    limits: withKeys,
    opening: { context: { role: 'driver' } },
    newId: () => {
      cases += 1;
      return `case ${String(cases)}`;
    },
  });
}

const now = (): string => new Date(begun + seconds * 1000).toISOString();

async function sent(): Promise<readonly Part[]> {
  const parts: Part[] = [];
  for (;;) {
    const [next] = await store.takeOutgoing({ now: now(), limit: 1, forMs: 1 });
    if (next === undefined) return parts;
    parts.push(next.body as unknown as Part);
    await store.settle(next.id, { type: 'over' });
  }
}

/** Something comes in; what is said to it. */
async function comes(content: Content, writtenAt?: string): Promise<readonly Part[]> {
  seconds += 1;
  await conversations.receive({
    conversation: 'c',
    key: `update ${String(seconds)}`,
    at: now(),
    ...(writtenAt === undefined ? {} : { writtenAt }),
    locale: 'en',
    content,
  });
  return sent();
}

const say = (text: string, id?: string): Promise<readonly Part[]> =>
  comes({ type: 'text', text, ...(id === undefined ? {} : { id }) });
const said = (parts: readonly Part[]): string => parts.map(plainText).join('\n');
const idOf = (parts: readonly Part[], label: string): string =>
  parts.flatMap(({ keys }) => keys.flat()).find((key) => key.label === label)?.id ?? '';

describe('what is said', () => {
  test('is one message for each turn, but for cautions', async () => {
    expect(await say('hello')).toHaveLength(1);
    expect(await say('at home')).toHaveLength(1);
    const parts = await comes({ type: 'begin' }).then(() => say('in a traffic lane'));
    expect(parts.map(({ kind }) => kind)).toEqual(['said', 'caution', 'question']);
  });

  test('offers to go back once there is an answer to go back to', async () => {
    expect(idOf(await say('hello'), 'Back')).toBe('');
    expect(idOf(await say('at home'), 'Back')).not.toBe('');
  });

  test('is in the language of the profile, or of its language alone, or in English', async () => {
    for (const [locale, words] of [
      ['pl', 'Gdzie'],
      ['de-CH', 'Wo steht'],
      ['pt-BR', 'Where is the vehicle'],
    ] as const) {
      const key = `update ${locale}`;
      const content = { type: 'text', text: '…' } as const;
      await conversations.receive({ conversation: locale, key, at: now(), locale, content });
      expect(said(await sent())).toContain(words);
    }
  });
});

describe('an edited text', () => {
  test('corrects the answer that it gave, and not the question in hand', async () => {
    for (const [text, id] of [
      ['hello', '1'],
      ['at home', '2'],
      ['yes', '3'],
      ['petrol', '4'],
      ['silent', '5'],
      ['6 years', '6'],
    ] as const) {
      await say(text, id);
    }
    expect(said(await comes({ type: 'edited', of: '6', text: '2' }))).toContain('2 years');
    expect(said(await comes({ type: 'edited', of: '4', text: 'diesel' }))).toContain('diesel');
  });

  test('that said nothing when the case began is heard for the first time', async () => {
    await say('hello', '1');
    expect(said(await comes({ type: 'edited', of: '1', text: 'hello, I am at home' }))).toContain(
      'Where the vehicle is: at home.',
    );
  });

  test('of which nothing is known changes nothing', async () => {
    await say('hello', '1');
    await say('at home', '2');
    const before = await store.conversation('c');
    const parts = await comes({ type: 'edited', of: '99', text: 'in a workshop' });
    expect(said(parts)).toMatch(/can’t tell which answer that edit changes.*is everyone safe/s);
    expect(before?.body).toMatchObject({ case: 'case 1' });
    expect((await store.events('case 1')).length).toBe(2);
  });

  test('that names a danger is a danger', async () => {
    await say('hello', '1');
    await say('at home', '2');
    expect(said(await comes({ type: 'edited', of: '2', text: 'there is smoke' }))).toContain(
      'Smoke or fire',
    );
  });
});

describe('a confirmation', () => {
  test('written before its caution is not one; said once more it is', async () => {
    await say('hello');
    await say('in a traffic lane');
    const early = new Date(begun).toISOString();
    expect(said(await comes({ type: 'text', text: 'yes' }, early))).toMatch(
      /before this caution.*Stay away from traffic.*is it safe to go on/s,
    );
    // A clock that is wrong must not ask for ever.
    expect(said(await comes({ type: 'text', text: 'yes' }, early))).toContain('is everyone safe');
  });
});

describe('what may not have arrived', () => {
  test('is not known to have been read, so that what stands is said anew', async () => {
    await say('hello');
    const parts = await say('in a traffic lane');
    await conversations.unsure({ id: 9, to: 'c' }, now());
    await conversations.unsure({ id: 9, to: 'c' }, now());
    const anew = await sent();
    expect(said(anew)).toMatch(/can’t tell whether.*Stay away from traffic.*is it safe to go on/s);
    expect(anew.filter(({ kind }) => kind === 'question')).toHaveLength(1);
    const old = await comes({ type: 'key', id: idOf(parts, 'Yes, it is safe') });
    expect(said(old)).toContain('That key belongs to an earlier question');
    const confirmed = await comes({ type: 'key', id: idOf(anew, 'Yes, it is safe') });
    expect(said(confirmed)).toContain('is everyone safe');
  });

  test('of a conversation that never began says nothing', async () => {
    await conversations.unsure({ id: 1, to: 'c' }, now());
    await conversations.goOn({ conversation: 'c', name: 'wait', dueAt: now() }, now());
    expect(await sent()).toEqual([]);
  });
});

describe('keys', () => {
  test('that nobody has shown answer nothing', async () => {
    await say('hello');
    for (const id of ['', '1', '1.99', '-1.0', '1.0.0', 'x'.repeat(64)]) {
      expect(said(await comes({ type: 'key', id }))).toContain('earlier question');
    }
  });

  test('of several answers wait until one of them is picked', async () => {
    await say('hello');
    for (const text of ['at home', 'yes', 'petrol', 'silent']) await say(text);
    const asked = await say('4 years');
    const take = { type: 'key', id: idOf(asked, 'That is all') } as const;
    expect(said(await comes(take))).toContain('Pick at least one first');
    const [first] = asked.flatMap(({ keys }) => keys.flat());
    const [shown] = await comes({ type: 'key', id: first?.id ?? '', on: 7 });
    expect(shown).toMatchObject({ replaces: 7 });
    expect(shown?.keys.flat()[0]).toMatchObject({ isPicked: true });
    expect(said(await comes(take))).toContain('voltmeter');
  });
});

test('whether a conversation has a case that is open is known', async () => {
  expect(await conversations.isOpen('c')).toBe(false);
  await say('hello');
  expect(await conversations.isOpen('c')).toBe(true);
});

test('two processes that take turns in one conversation each go on where the other left it', async () => {
  const [one, other] = [conversations, hold()];
  await say('my car does not start');
  conversations = other;
  expect(said(await say('at home'))).toContain('is everyone safe');
  conversations = one;
  expect(said(await say('yes'))).toContain('fuel');
  conversations = other;
  expect(said(await say('back'))).toContain('is everyone safe');
  const kept = await store.events('case 1');
  expect(kept.filter(({ type }) => type === 'answered')).toHaveLength(2);
});

test('that those picked are all is taken in the words of its key as well', async () => {
  let parts = await say('hello');
  while (idOf(parts, 'That is all') === '') parts = await say('I don’t know');
  expect(said(await say('that is all'))).toContain('Pick at least one first');
  const [first] = parts.flatMap(({ keys }) => keys.flat());
  await comes({ type: 'key', id: first?.id ?? '' });
  const taken = said(await say('that is all'));
  expect(taken).toContain('What you have with you: voltmeter.');
});

test.each([
  ['👍', 'answer'],
  ['👍🏽', 'answer'],
  ['👌', 'answer'],
  ['👎', 'cannot'],
])('a thumb answers a caution: %s', async (thumb, gives) => {
  await say('hello');
  expect(said(await say('in a traffic lane'))).toContain('is it safe to go on');
  const answered = said(await say(thumb));
  expect(answered).not.toContain('Please answer yes');
  expect(answered.includes('is everyone safe')).toBe(gives === 'answer');
});

describe('a danger that there may be beside an answer', () => {
  beforeEach(async () => {
    await comes({ type: 'begin' });
  });

  const told = 'at home and my wife feels odd';

  test('is asked about with two keys, before the next question', async () => {
    const parts = await say(told);
    expect(said(parts)).toMatch(/at home[\s\S]*Somebody is hurt/);
    expect(parts.flatMap(({ keys }) => keys.flat()).map(({ label }) => label)).toEqual([
      'Somebody is hurt',
      'No, nothing of that',
    ]);
    const next = await comes({ type: 'key', id: idOf(parts, 'No, nothing of that') });
    expect(said(next)).toContain('is everyone safe');
  });

  test('is raised by its key', async () => {
    const parts = await say(told);
    const raised = await comes({ type: 'key', id: idOf(parts, 'Somebody is hurt') });
    expect(said(raised)).toContain('emergency number');
  });

  test('is asked about where it comes with the first message', async () => {
    store = createMemoryStore();
    conversations = hold();
    expect(said(await say(told))).toContain('Somebody is hurt');
  });
});
