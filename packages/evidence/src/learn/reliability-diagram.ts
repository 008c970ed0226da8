import type { ReliabilityBin } from './reliability-table.ts';

/**
 * Two colours that people with any colour vision tell apart: blue and vermilion.
 * Source: Okabe and Ito 2008, Color Universal Design (from memory).
 */
const [blue, vermilion] = ['#0072b2', '#d55e00'];

/** The plot within the picture, in its own units; the same scale both ways. */
const plot = { left: 76, top: 84, size: 400 };
const width = 520;
const height = 640;

const titleSize = 19;

/** The line below the plot on which the number of cases of each tenth stands. */
const countsY = plot.top + plot.size + 43;

const font = 'font-family="system-ui, sans-serif"';

/**
 * Draws a reliability table: for each bin the mean of what was said across, how often it came true
 * upwards, and the number of claims below. On the dashed line the two are alike.
 *
 * A bin that came true more often than was said is a blue disc, one that came true less often a
 * vermilion square: shape and place say it too. Readable on light and dark ground; no script.
 *
 * @param table - as `reliabilityTable` gives it
 * @param title - what the claims are, in plain text; escaped here
 * @returns the text of an SVG picture, 520 by 640, with a title and a description in words
 */
export function reliabilityDiagram(table: readonly ReliabilityBin[], title: string): string {
  const claims = table.reduce((sum, { count }) => sum + count, 0);
  const name = `reliability-${slug(title)}`;
  const label = escaped(title);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" role="img" aria-labelledby="${name}-title ${name}-words">`,
    `<title id="${name}-title">${label}</title>`,
    `<desc id="${name}-words">${escaped(description(table))}</desc>`,
    style,
    `<rect class="rd-paper" width="${width}" height="${height}" fill="#ffffff"/>`,
    text({ x: 24, y: 36, size: titleSize, words: label, more: titleLook(title) }),
    text({ x: 24, y: 62, size: 15, words: `${claims} confirmed case${claims === 1 ? '' : 's'}` }),
    ...grid(),
    ...table.map(connector),
    ...table.map(mark),
    text({ x: 24, y: countsY, size: 13, words: 'cases' }),
    ...table.map(countBelow),
    ...legend(),
    '</svg>',
    '',
  ].join('\n');
}

/** Dark ground where the reader asks for it; without support for that the light one stands. */
const style =
  '<style>@media (prefers-color-scheme: dark) {' +
  ' .rd-paper { fill: #161616; } .rd-ink { fill: #f2f2f2; } .rd-line { stroke: #f2f2f2; }' +
  ' .rd-grid { stroke: #4a4a4a; } .rd-disc { fill: #56b4e9; } .rd-square { fill: #e69f00; }' +
  ' }</style>';

function grid(): readonly string[] {
  const { left, top, size } = plot;
  const tenths = Array.from({ length: 11 }, (_, index) => index / 10);
  return [
    ...tenths.flatMap((share) => [
      line('rd-grid', [across(share), top, across(share), top + size], 'stroke="#d0d0d0"'),
      line('rd-grid', [left, up(share), left + size, up(share)], 'stroke="#d0d0d0"'),
    ]),
    ...[0, 0.2, 0.4, 0.6, 0.8, 1].flatMap((share) => {
      const words = `${Math.round(share * 100)} %`;
      const middle = ' text-anchor="middle"';
      return [
        text({ x: across(share), y: top + size + 20, size: 14, words, more: middle }),
        text({ x: left - 8, y: up(share) + 5, size: 14, words, more: ' text-anchor="end"' }),
      ];
    }),
    line(
      'rd-line',
      [across(0), up(0), across(1), up(1)],
      'stroke="#1a1a1a" stroke-width="1.5" stroke-dasharray="6 5"',
    ),
    text({
      x: left + size / 2,
      y: top + size + 68,
      size: 15,
      words: 'What was said, on average',
      more: ' text-anchor="middle"',
    }),
    text({
      x: 22,
      y: top + size / 2,
      size: 15,
      words: 'What came true',
      more: ` text-anchor="middle" transform="rotate(-90 22 ${top + size / 2})"`,
    }),
  ];
}

/** Bold; one too long for the picture is drawn narrower instead of running out of it. */
function titleLook(title: string): string {
  const room = width - 48;
  // A bold letter of a wide face takes about seven tenths of its size.
  const squeezed = title.length * titleSize * 0.7 > room;
  const fit = squeezed ? ` textLength="${room}" lengthAdjust="spacingAndGlyphs"` : '';
  return ` font-weight="600"${fit}`;
}

/** From the mark to the dashed line: the gap between what was said and what came true. */
function connector(bin: ReliabilityBin): string {
  const { meanForecast, observedFrequency } = bin;
  if (meanForecast === null || observedFrequency === null) return '';
  const x = across(meanForecast);
  const ends = [x, up(meanForecast), x, up(observedFrequency)] as const;
  return line('rd-line', ends, 'stroke="#1a1a1a" stroke-width="1.5"');
}

function mark({ meanForecast, observedFrequency }: ReliabilityBin): string {
  if (meanForecast === null || observedFrequency === null) return '';
  const [x, y] = [across(meanForecast), up(observedFrequency)];
  return observedFrequency >= meanForecast ? disc(x, y) : square(x, y);
}

function countBelow({ from, to, count }: ReliabilityBin): string {
  const x = across((from + to) / 2);
  const words = count === 0 ? '–' : String(count);
  return text({ x, y: countsY, size: 13, words, more: ' text-anchor="middle"' });
}

function legend(): readonly string[] {
  const top = plot.top + plot.size + 94;
  return [
    disc(34, top),
    text({ x: 50, y: top + 5, size: 14, words: 'came true as often as was said, or more often' }),
    square(34, top + 22),
    text({ x: 50, y: top + 27, size: 14, words: 'came true less often than was said' }),
    line(
      'rd-line',
      [24, top + 44, 44, top + 44],
      'stroke="#1a1a1a" stroke-width="1.5" stroke-dasharray="6 5"',
    ),
    text({ x: 50, y: top + 49, size: 14, words: 'said and came true alike' }),
  ];
}

function description(table: readonly ReliabilityBin[]): string {
  const filled = table.flatMap(({ count, came, meanForecast }) =>
    meanForecast === null
      ? []
      : [`Said ${percent(meanForecast)} on average: came true in ${came} of ${count}.`],
  );
  return filled.length === 0 ? 'There is no case yet.' : filled.join(' ');
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

function across(share: number): number {
  return rounded(plot.left + share * plot.size);
}

function up(share: number): number {
  return rounded(plot.top + (1 - share) * plot.size);
}

function disc(x: number, y: number): string {
  return `<circle class="rd-disc" cx="${x}" cy="${y}" r="7" fill="${blue}"/>`;
}

function square(x: number, y: number): string {
  const [left, top] = [rounded(x - 7), rounded(y - 7)];
  return `<rect class="rd-square" x="${left}" y="${top}" width="14" height="14" fill="${vermilion}"/>`;
}

function line(
  kind: string,
  [x1, y1, x2, y2]: readonly [number, number, number, number],
  look: string,
): string {
  return `<line class="${kind}" x1="${x1}" y1="${y1}" x2="${x2}" y2="${y2}" ${look}/>`;
}

function text(at: {
  readonly x: number;
  readonly y: number;
  readonly size: number;
  readonly words: string;
  readonly more?: string;
}): string {
  const { x, y, size, words, more = '' } = at;
  return `<text class="rd-ink" x="${x}" y="${y}" font-size="${size}" ${font} fill="#1a1a1a"${more}>${words}</text>`;
}

function rounded(value: number): number {
  return Math.round(value * 100) / 100;
}

/** What XML does not allow is left out; what it reads as markup is written so that it does not. */
function escaped(words: string): string {
  return words
    .replaceAll(/\p{C}/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

function slug(title: string): string {
  const words = title.toLowerCase().match(/[a-z0-9]+/g) ?? [];
  return words.slice(0, 8).join('-') || 'diagram';
}
