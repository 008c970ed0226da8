import { describe, expect, test } from 'vitest';
import { contrast } from '../../../tests/support/contrast.ts';
import { palettes } from './theme.ts';

test('contrast is that of WCAG 2.2: black on white 21, #767676 on white just above 4.5', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21);
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
});

describe.each(Object.entries(palettes))('the colours of %s', (_, palette) => {
  const { paper, tint, deep, here, black } = palette;

  test('set text off by 4.5 to 1, WCAG 2.2 criterion 1.4.3', () => {
    const pairs = [
      ...[paper, tint, deep, here].flatMap(
        (ground) =>
          [
            [palette.ink, ground],
            [palette.soft, ground],
          ] as const,
      ),
      [palette.onBlack, black] as const,
    ];
    for (const [text, ground] of pairs) expect(contrast(text, ground)).toBeGreaterThanOrEqual(4.5);
  });

  test('set lines and signs off by 3 to 1, criterion 1.4.11', () => {
    const { line, red, blackRim, suspect, sound } = palette;
    for (const sign of [line, red, blackRim, suspect, sound]) {
      expect(contrast(sign, paper)).toBeGreaterThanOrEqual(3);
    }
  });
});
