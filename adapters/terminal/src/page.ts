/**
 * What is said, laid out as the lines of a strip of paper: a sign in the margin tells what a block
 * is. `?` asks, `=` is a finding, `x` was not taken, and what warns stands in a fence of `!`.
 */
import type { Figure, Rendered } from '@keyturn/language';
import { cautionBlock, type CautionText } from './caution-block.ts';
import type { Emphasis } from './emphasis.ts';
import { hasMoved, rankingBars } from './ranking-bars.ts';
import { drawScale } from './scale.ts';
import { padTo, wrapBehind } from './wrap.ts';

/** What a page is laid out with. */
export interface Page {
  /** Columns, 40 to 80. */
  readonly width: number;
  readonly emphasis: Emphasis;
  /** A figure with its unit's sign. */
  readonly formatQuantity: (figure: Figure) => string;
  /** What a reading is called. */
  readonly nameOf: (check: string) => string;
  /** The word beside the dots that show what to expect. */
  readonly expected: string;
  /** A bare figure, as under a tick. */
  readonly formatNumber: (value: number) => string;
  /** Two bare figures, as under a zone. */
  readonly formatRange: (low: number, high: number) => string;
  /** Which way the language runs. */
  readonly direction: 'ltr' | 'rtl';
}

type Kind<K extends Rendered['kind']> = Extract<Rendered, { kind: K }>;

const margin = '   ';

/**
 * The lines of what is said, a blank line before each block. A question whose check is `asked`
 * already is put in short, without how to do it.
 */
export function layOutPage(
  rendered: readonly Rendered[],
  page: Page,
  asked: string | null = null,
): string[] {
  const lines: string[] = [];
  let cautions: CautionText[] = [];
  let wasText = false;
  const add = (block: readonly string[], isText = false): void => {
    if (block.length === 0) return;
    if (!(isText && wasText)) lines.push('');
    lines.push(...block);
    wasText = isText;
  };
  const addCautions = (): void => {
    add(cautionBlock(cautions, page.width, page.emphasis));
    cautions = [];
  };
  for (const one of rendered) {
    if (one.kind === 'caution') {
      cautions.push(one);
      continue;
    }
    addCautions();
    add(layOutOne(one, page, asked), one.kind === 'text');
  }
  addCautions();
  return lines;
}

function layOutOne(
  one: Exclude<Rendered, { kind: 'caution' }>,
  page: Page,
  asked: string | null,
): string[] {
  switch (one.kind) {
    case 'text':
      return wrapBehind(margin, one.text, page.width);
    case 'confirm':
      return emphasised('?  ', one.text, page);
    case 'question':
      return question(one, page, one.check === asked);
    case 'scale':
      return scale(one, page);
    case 'numbers':
      return numbers(one, page);
    case 'ranking':
      return ranking(one, page);
    case 'verdict':
      return verdict(one, page);
    case 'refused':
      return wrapBehind('x  ', one.text, page.width);
    case 'done':
      return emphasised('.  ', one.text, page);
  }
}

function emphasised(first: string, text: string, { width, emphasis }: Page): string[] {
  return wrapBehind(first, text, width).map(
    (line) => line.slice(0, first.length) + emphasis.bold(line.slice(first.length)),
  );
}

function question(
  { text, how, options }: Kind<'question'>,
  page: Page,
  isShort: boolean,
): string[] {
  const steps = isShort ? [] : how.flatMap((step) => wrapBehind('   - ', step, page.width));
  const keys = Math.max(0, ...options.map(({ key, label }) => (key === label ? 1 : key.length)));
  const list = options.flatMap(({ key, label }) =>
    wrapBehind(`   ${padTo(key === label ? '-' : key, keys)}  `, label, page.width),
  );
  return [
    ...emphasised('?  ', text, page),
    ...steps,
    ...(steps.length > 0 && list.length > 0 ? [''] : []),
    ...list,
  ];
}

function scale({ text, reading, bandLabels }: Kind<'scale'>, page: Page): string[] {
  const { quantity, unit, bounds, expected } = reading;
  const drawing =
    quantity.unit === unit
      ? drawScale(
          {
            bands: bandLabels,
            bounds,
            ...(expected === undefined ? {} : { expected: { ...expected, label: page.expected } }),
            value: quantity.value,
            // Two standard uncertainties: the true value is in there 19 times out of 20.
            halfWidth: 2 * reading.uncertainty,
            label: page.formatQuantity(quantity),
            figure: page.formatNumber,
            range: page.formatRange,
            direction: page.direction,
          },
          page.width - 2 * margin.length,
        )
      : [];
  return [
    ...emphasised('=  ', page.nameOf(reading.check), page),
    ...wrapBehind(margin, text, page.width),
    ...(drawing.length > 0 ? [''] : []),
    ...drawing.map((line) => (margin + line).trimEnd()),
  ];
}

function numbers({ sections }: Kind<'numbers'>, page: Page): string[] {
  return sections.flatMap(({ heading, lines }, index) => [
    ...(index === 0 ? [] : ['']),
    ...emphasised('=  ', heading, page),
    ...lines.flatMap((line) => wrapBehind('   - ', line, page.width)),
  ]);
}

function ranking({ heading, faults }: Kind<'ranking'>, page: Page): string[] {
  if (!hasMoved(faults)) return [];
  const bars = rankingBars(faults, page.width - margin.length);
  return [...wrapBehind(margin, heading, page.width), ...bars.map((line) => margin + line)];
}

function verdict({ title, strength, sections }: Kind<'verdict'>, page: Page): string[] {
  const rail = '='.repeat(page.width);
  return [
    rail,
    ...emphasised(margin, title, page),
    ...wrapBehind(margin, strength, page.width),
    ...sections.flatMap(({ heading, lines }) => [
      '',
      ...emphasised(margin, heading, page),
      ...lines.flatMap((line) => wrapBehind('   - ', line, page.width)),
    ]),
    rail,
  ];
}
