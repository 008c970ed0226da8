import { describe, expect, test } from 'vitest';
import { hasMoved, rankingBars } from './ranking-bars.ts';
import { columnsOf } from './wrap.ts';

const worn = { id: 'battery-worn', name: 'Worn-out battery', share: 0.62, before: 0.5 };
const cable = { id: 'ground-cable', name: 'Bad ground cable', share: 0.2, before: 0.23 };

describe('the ranking', () => {
  test('shows each fault with its share and how it moved', () => {
    expect(rankingBars([worn, cable], 77)).toEqual([
      'Worn-out battery  ############........  62 %   +12',
      'Bad ground cable  ####................  20 %    -3',
    ]);
  });

  test('never shows a fault as certain that is not', () => {
    expect(rankingBars([{ ...worn, share: 0.999 }], 77)[0]).toContain(' 99 %');
  });

  test('shows five faults at most', () => {
    expect(
      rankingBars(
        Array.from({ length: 9 }, () => worn),
        77,
      ),
    ).toHaveLength(5);
  });

  test('wraps a long name and stays within its columns', () => {
    const name = 'Failed crankshaft or camshaft sensor';
    const lines = rankingBars([{ ...worn, name }], 40);
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(columnsOf(line)).toBeLessThanOrEqual(40);
  });

  test.each([
    ['not where all stand as before', 0.5, false],
    ['where one moved by a tenth', 0.6, true],
  ])('is worth drawing again %s', (_, share, moved) => {
    expect(hasMoved([{ ...worn, share, before: 0.5 }])).toBe(moved);
  });
});
