/**
 * What stands on a sheet, paragraph by paragraph in the order of the page, written a second time:
 * what a reader finds in the file is held to it.
 */
import type { Block, Finding, Sheet } from '@keyturn/sheets';
import { SaxesParser } from 'saxes';

/** A paragraph and the direction that it begins in. */
export interface Paragraph {
  readonly text: string;
  readonly base: 'ltr' | 'rtl';
}

/** Every paragraph of a sheet. */
export function paragraphsOf(sheet: Sheet): readonly Paragraph[] {
  const { direction: base } = sheet;
  const words = (...texts: readonly string[]): readonly Paragraph[] =>
    texts.filter((text) => text !== '').map((text) => ({ text, base }));
  const drawn = (svg: string): readonly Paragraph[] =>
    textsIn(svg).map((text) => ({ text, base: 'ltr' }));

  const finding = ({
    number,
    name,
    said,
    means,
    notes,
    reading,
  }: Finding): readonly Paragraph[] => [
    ...words(String(number).padStart(2, '0'), `${name}: \u2068${said}\u2069`, means, ...notes),
    ...(reading?.ruler === undefined ? [] : drawn(reading.ruler.svg)),
  ];
  const block = (one: Block): readonly Paragraph[] => {
    switch (one.kind) {
      case 'facts':
        return one.facts.flatMap(({ label, text }) => words(`${label}:`, text));
      case 'lines':
        return words(...one.lines);
      case 'rows':
        return one.rows.flatMap(({ label, lines }) => words(`${label}:`, ...lines));
      case 'strip':
        return one.findings.flatMap(finding);
      case 'ranking':
      case 'picture':
        return drawn(one.picture.svg);
      case 'cautions':
        return one.cautions.flatMap(({ said, text }) => words(`${said}: ${text}`));
      case 'fields':
        return words(...one.fields.map(({ label }) => label));
    }
  };
  return [
    ...words(sheet.subject, sheet.title),
    ...sheet.head.flatMap(({ label, text }) => words(`${label}:`, text)),
    ...words(sheet.code.caption, sheet.lead.title, sheet.lead.text),
    ...sheet.blocks.flatMap((one) => [...words(one.heading), ...block(one)]),
    ...words(...sheet.foot),
  ];
}

/** The texts of a picture, in the order in which they are drawn. */
function textsIn(svg: string): readonly string[] {
  const texts: string[] = [];
  let isText = false;
  const parser = new SaxesParser();
  parser.on('opentag', ({ name }) => {
    if (name === 'text') texts.push('');
    isText ||= name === 'text';
  });
  parser.on('closetag', ({ name }) => {
    if (name === 'text') isText = false;
  });
  parser.on('text', (text) => {
    if (isText) texts[texts.length - 1] = `${texts.at(-1) ?? ''}${text}`;
  });
  parser.write(svg).close();
  return texts;
}
