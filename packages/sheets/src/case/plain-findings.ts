/**
 * Findings as a customer reads them: what was seen as plain facts, and each reading with its bounds
 * and in a word what they go by. The whole source, and how likely each side is, stand on the case
 * sheet.
 */
import type { ReadingMessage, ScaleBound } from '@keyturn/core';
import { roundedEnds } from '@keyturn/language';
import type { Fact, Finding } from '../sheet.ts';
import { fill } from '../words/sheet-words-in.ts';
import type { practice } from '../words/practice/practice.ts';
import { printedFindings } from './findings-block.ts';
import type { ToldCase } from './told-case.ts';

/** What was seen and told. */
export function seenFacts(told: ToldCase): readonly Fact[] {
  const seen = told.strip.findings.filter(({ message }) => message.kind !== 'reading');
  return printedFindings(seen, 1, told).map(({ check, name, said }) => ({
    id: check,
    label: name,
    text: said,
  }));
}

/** What was measured. The figure stands beside its ruler, which is small. */
export function plainReadings(told: ToldCase): readonly Finding[] {
  const lines = told.strip.findings.filter(({ message }) => message.kind === 'reading');
  const readings = lines.flatMap(({ message }) => (message.kind === 'reading' ? [message] : []));
  return printedFindings(lines, 1, { ...told, hasFlag: false }).map((finding, index) => {
    const message = readings[index];
    return message === undefined ? finding : { ...finding, ...plainNotes(message, told) };
  });
}

function plainNotes(
  { bounds, unit }: ReadingMessage,
  { speaker, words }: ToldCase,
): Pick<Finding, 'notes' | 'cited'> {
  const { locale, direction } = speaker;
  const figure = (value: number): string => speaker.formatQuantity({ value, unit });
  const notes = bounds.map((bound) => {
    const ends = roundedEnds(bound);
    const [low, high] = [figure(ends.low), figure(ends.high)];
    const source = wordOf(bound.source, { words, direction });
    return ends.low === ends.high
      ? fill(words.bound, { figure: low, source }, direction)
      : fill(words.zone, { low, high, source }, direction);
  });
  const isEnglish = new Intl.Locale(locale).language === 'en';
  const cited = isEnglish ? [] : bounds.flatMap(({ source }) => shortName(source) ?? []);
  return { notes, cited: [...new Set(cited)] };
}

type Source = ScaleBound['source'];

const byMaker: (typeof practice)[number] = "the maker's figure for this part";

/** What a bound goes by, in a word. A text that nobody could see is worth no more than practice. */
function wordOf(
  source: Source,
  { words, direction }: Pick<ToldCase, 'words'> & Pick<ToldCase['speaker'], 'direction'>,
): string {
  if (source.text === byMaker) return words.byPartMaker;
  const name = shortName(source);
  if (name !== undefined) return fill(words.publishedIn, { name }, direction);
  switch (source.provenance) {
    case 'published':
    case 'reported':
      return words.published;
    case 'computed':
      return words.computed;
    case 'from memory':
    case 'common practice':
      return words.practice;
  }
}

/** What a published text is called, without the place in it and the figures that it gives. */
function shortName({ provenance, text }: Source): string | undefined {
  if (!['published', 'reported'].includes(provenance) || text === byMaker) return undefined;
  return /^(?:flooded: )?([^,:;(]+?)(?= as |[,:;(]| \(|$)/.exec(text)?.[1];
}
