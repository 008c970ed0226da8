/** The usual cranking current of a warm engine of one displacement: from `low` to `high`, A. */
export type CrankingCurrentRow = {
  readonly displacement: number;
  readonly low: number;
  readonly high: number;
};

/**
 * Petrol, 12 V, warm, by displacement in litres, ascending.
 *
 * Source: common practice, no source: 1.0 to 2.0 L 120 to 200 A, 2.5 to 3.5 L 160 to 260 A, for
 * today's geared starters; the rows outside these carry the same slope on. An older training text
 * gives, for direct-drive starters, below 100, 125 and 150 A for 4, 6 and 8 cylinders, at most 185,
 * 200 and 250 A.
 */
export const petrolCrankingCurrent: readonly [CrankingCurrentRow, ...CrankingCurrentRow[]] = [
  { displacement: 0.6, low: 80, high: 200 },
  { displacement: 1, low: 120, high: 200 },
  { displacement: 2, low: 120, high: 200 },
  { displacement: 2.5, low: 160, high: 260 },
  { displacement: 3.5, low: 160, high: 260 },
  { displacement: 6, low: 200, high: 360 },
];

/**
 * Diesel, 12 V, warm, by displacement in litres, ascending.
 *
 * Source: common practice, no source: 1.5 to 2.2 L 200 to 350 A, light-truck V8 of 6 to 7.5 L 350 to
 * 600 A; 13 L stands for heavy trucks, whose 24 V starters take half of it. TM 10-3930-671-24 has
 * 180 to 220 A for a lift truck, TM 9-2320-211-20 at most 300 A for the 24 V starter of a 5-ton truck.
 */
export const dieselCrankingCurrent: readonly [CrankingCurrentRow, ...CrankingCurrentRow[]] = [
  { displacement: 1, low: 150, high: 350 },
  { displacement: 1.5, low: 200, high: 350 },
  { displacement: 2.2, low: 200, high: 350 },
  { displacement: 6, low: 350, high: 600 },
  { displacement: 7.5, low: 350, high: 600 },
  { displacement: 13, low: 600, high: 1000 },
];
