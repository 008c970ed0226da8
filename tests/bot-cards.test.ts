/**
 * Case cards played through the bot come to what they come to in the core, in every language.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { openSqliteStore } from '@keyturn/cases';
import { localeTags } from '@keyturn/language';
import { replayCard } from '@keyturn/terminal';
import { afterAll, describe, expect, test, vi } from 'vitest';
import { playCard } from './support/bot-card.ts';
import { cards, noStart, speaker } from './support/no-start.ts';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 });

const folder = mkdtempSync(path.join(tmpdir(), 'bot-cards-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** One for each part of the trade, and a hard stop. */
const english = [
  'lights-overnight-boosted',
  'worn-fails-load-test',
  'corroded-clamp-rapid-clicks',
  'ground-strap-slow-crank',
  'contacts-burnt-single-click',
  'left-in-drive',
  'live-lane-driver',
  'fob-cell-flat',
  'wire-off-test-lamp',
];
const elsewhere = ['starter-fuse-feed-side', 'tank-empty-driver'];

/** `CARDS=all` plays every card in every language, which takes five minutes where nothing else runs. */
const played =
  process.env['CARDS'] === 'all'
    ? localeTags.flatMap((tag) => cards.map(({ id }) => [id, tag] as const))
    : [
        ...english.map((id) => [id, 'en'] as const),
        ...localeTags
          .filter((tag) => tag !== 'en')
          .flatMap((tag) => elsewhere.map((id) => [id, tag] as const)),
      ];

describe('a case card comes through the bot to the verdict of the core', () => {
  test.each(played)('%s, in %s', async (id, locale) => {
    const card = cards.find((one) => one.id === id)!;
    const inCore = replayCard(noStart.chart, speaker, card);
    const store = await openSqliteStore(path.join(folder, `${id} ${locale}.sqlite`));
    const { verdict, asked, running } = await playCard(card, { locale, store });
    await running.stop();
    const { fault, strength, remedy, send } = verdict;
    expect({ fault, strength, remedy, send }).toEqual({
      fault: inCore.fault,
      strength: inCore.strength,
      remedy: inCore.remedy,
      send: inCore.send,
    });
    expect([...new Set(asked)]).toEqual(inCore.asked);
    expect(running.errors).toEqual([]);
    expect(running.api.refused).toEqual([]);
  });
});
