import { createMemoryStore, readCase } from '@keyturn/cases';
import { compileFlow, positionOf } from '@keyturn/core';
import type { Part } from '@keyturn/conversation';
import { createConversations } from '@keyturn/conversation/kept';
import { shippedFlow, shippedTexts } from '@keyturn/flows';
import { createSpeaker, localeTags } from '@keyturn/language';
import { describe, expect, test } from 'vitest';
import { limits, messageOf } from './message-of.ts';

const { chart } = shippedFlow('no-start', 'en');
const part = (more: Partial<Part>): Part => ({
  kind: 'said',
  lines: [],
  keys: [],
  locale: 'en',
  ...more,
});

test('titles are bold by their place, counted in UTF-16 code units', () => {
  const { text, entities } = messageOf(
    part({ lines: [{ text: '🔋 a' }, { text: '' }, { text: 'Title', isTitle: true }] }),
  );
  expect(text).toBe('🔋 a\n\nTitle');
  expect(entities).toEqual([{ type: 'bold', offset: 6, length: 5 }]);
});

test('half a character becomes the sign for what cannot be shown', () => {
  expect(messageOf(part({ lines: [{ text: 'a\uD800b' }] })).text).toBe('a\uFFFDb');
});

test('keys carry their question, and a pick is marked', () => {
  const keys = [
    [{ id: '3.0', label: 'one', isPicked: true } as const, { id: '3.1', label: 'two' }],
  ];
  expect(messageOf(part({ keys })).reply_markup?.inline_keyboard).toEqual([
    [
      { text: '✓ one', callback_data: 'keyturn:3.0' },
      { text: 'two', callback_data: 'keyturn:3.1' },
    ],
  ]);
});

describe.each(localeTags)('in %s', (locale) => {
  const speaker = createSpeaker({ locale, flowTexts: shippedTexts('no-start', locale) });

  test('every key that is not an answer has room, and an alert does', () => {
    const names = [
      ...(['confirm', 'cannot', 'dontKnow', 'why', 'take', 'done'] as const),
      ...(['over', 'begin', 'back'] as const),
    ];
    for (const name of names) {
      expect(speaker.key(name).length, name).toBeLessThanOrEqual(limits.keyLength);
    }
    // The Bot API takes 200 characters in an alert, 256 to describe a command.
    expect(speaker.key('tooFast').length).toBeLessThanOrEqual(200);
  });

  test('every question of the flow keeps to the limits of the Bot API', async () => {
    for (const check of Object.keys(chart.flow.checks)) {
      const first = firstAsked(check);
      const store = createMemoryStore();
      const conversations = createConversations({
        store,
        chart: first,
        texts: (tag) => shippedTexts('no-start', tag),
        limits,
        opening: { context: { kit: Object.keys(shippedTexts('no-start', 'en').kit) } },
        newId: () => check,
      });
      const at = '2026-01-05T08:00:00.000Z';
      const content = { type: 'begin' } as const;
      await conversations.receive({ conversation: 'c', key: 'k', at, locale, content });
      const asked = (await readCase(store, first, check))?.case;
      expect(asked && positionOf(asked)).toMatchObject({ check });
      let count = 0;
      for (;;) {
        const [next] = await store.takeOutgoing({ now: at, limit: 1, forMs: 1 });
        if (next === undefined) break;
        await store.settle(next.id, { type: 'over' });
        count += 1;
        const { text, reply_markup } = messageOf(next.body as unknown as Part);
        const keys = reply_markup?.inline_keyboard ?? [];
        expect(text.length, check).toBeLessThanOrEqual(4096);
        expect(keys.flat().length, check).toBeLessThanOrEqual(100);
        for (const row of keys) expect(row.length, check).toBeLessThanOrEqual(8);
        for (const { callback_data, text: label } of keys.flat()) {
          expect(new TextEncoder().encode(callback_data).length).toBeLessThanOrEqual(64);
          expect(label, check).not.toBe('');
        }
      }
      expect(count, check).toBeGreaterThan(0);
    }
    // A flow is compiled and weighed anew for every check.
  }, 60_000);
});

/** The flow with one check before all others, so that its question is put first. */
function firstAsked(check: string): ReturnType<typeof compileFlow> {
  const { flow } = chart;
  const [stage, ...stages] = flow.stages.map((one) => ({
    ...one,
    checks: one.checks.filter((id) => id !== check),
  }));
  if (stage === undefined) throw new Error('the flow has no stage');
  const {
    when: _when,
    requires: _requires,
    ...bare
  } = flow.checks[check] as object as Record<string, unknown>;
  return compileFlow({
    ...flow,
    checks: { ...flow.checks, [check]: bare as never },
    stages: [{ ...stage, checks: [check, ...stage.checks] }, ...stages],
  });
}
