import type { RatingStandard } from '../limits/limit-context.ts';
import { commonPractice, published, type Source } from '../source.ts';
import type { Table } from '../table.ts';

/**
 * What a rating after `from` is multiplied by to give one after `to`: from `low` to `high`. Back
 * it is divided by the same, with `bestBack` as best figure.
 */
export type RatingFactor = {
  readonly from: RatingStandard;
  readonly to: RatingStandard;
  readonly low: number;
  readonly best: number;
  readonly high: number;
  readonly bestBack: number;
  readonly source: Source;
};

/**
 * Factors between cold-cranking ratings, each to or from SAE. A pair that is not listed has none:
 * one family of web calculators prints ×1.7 from EN to SAE and ×0.92 from SAE to EN, which cannot
 * both hold (1.7 belongs to DIN), so that factors are not chained either.
 */
export const ratingConversions: Table<readonly RatingFactor[]> = {
  title: 'Factors between cold-cranking ratings',
  source: commonPractice('no standard converts one rating into another'),
  rows: [
    {
      from: 'sae',
      to: 'en',
      low: 0.9,
      best: 1,
      high: 1.1,
      bestBack: 1,
      source: commonPractice(
        'alike within 10 %: web calculators multiply by 0.92, makers by about 0.94, up to 0.96',
      ),
    },
    {
      from: 'sae',
      to: 'mca',
      low: 1.17,
      best: 1.3,
      high: 1.43,
      bestBack: 0.77,
      source: published(
        'marine training text: ×1.3, back ×0.77; another text: one third higher; the 10 % around it are common practice',
      ),
    },
    {
      from: 'din',
      to: 'sae',
      low: 1.5,
      best: 1.65,
      high: 1.8,
      bestBack: 0.61,
      source: commonPractice('×1.5 and 40 A more, or ×1.7, for labels from 135 A on'),
    },
    {
      from: 'iec',
      to: 'sae',
      low: 1.1,
      best: 1.25,
      high: 1.4,
      bestBack: 0.8,
      source: commonPractice('older IEC test: ×1.2 to ×1.3, with as much again to either side'),
    },
  ],
};
