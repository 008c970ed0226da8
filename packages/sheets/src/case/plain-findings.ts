/**
 * Findings as a customer reads them: what was seen as plain facts, and each reading with the bounds
 * on either side of it and in a word what they go by. The whole source stands in the data of the
 * sheet and on the case sheet, with how likely each side is.
 */
import type { Check, NotedMessage, ReadingMessage, ScaleBound, StripLine } from '@keyturn/core';
import { roundedEnds } from '@keyturn/language';
import type { Fact, Finding } from '../sheet.ts';
import { fill } from '../words/sheet-words-in.ts';
import type { practice } from '../words/practice/practice.ts';
import { printedFindings } from './findings-block.ts';
import type { ToldCase } from './told-case.ts';

/**
 * What was seen and told, whatever is as it mostly is in one line at the end. What there was to test
 * with is the shop's own affair, and what a check says of the part is among the facts of the part.
 */
export function seenFacts(told: ToldCase): readonly Fact[] {
  const { chart, strip, words } = told;
  const checkOf = (id: string): Check | undefined => chart.flow.checks[id];
  const seen = strip.findings.filter(
    ({ check, message }) => message.kind !== 'reading' && !isOfPart(checkOf(check)),
  );
  const [usual, others] = [true, false].map((wanted) =>
    seen.filter((line) => isUsual(checkOf(line.check), line) === wanted),
  );
  const facts = printedFindings(others ?? [], 1, told).map(({ check, name, said }) => ({
    id: check,
    label: name,
    text: said,
  }));
  const names = printedFindings(usual ?? [], 1, told).map(({ name }) => name);
  const list = new Intl.ListFormat(told.speaker.locale, { type: 'unit', style: 'short' });
  return names.length === 0
    ? facts
    : [...facts, { id: 'usual', label: words.usual, text: list.format(names) }];
}

/** True for a check that fills in something of the context: the kit, or the part itself. */
function isOfPart(check: Check | undefined): boolean {
  return check !== undefined && (check.writes !== undefined || Object.keys(check.sets).length > 0);
}

/** True where a look showed what it mostly shows. */
function isUsual(check: Check | undefined, { message }: StripLine): boolean {
  const usual = check?.form.kind === 'choice' ? check.form.usual : undefined;
  return usual !== undefined && (message as NotedMessage).answer.join() === usual;
}

/** What was measured. The figure stands beside its ruler, which is small. */
export function plainReadings(told: ToldCase): readonly Finding[] {
  const lines = told.strip.findings.filter(({ message }) => message.kind === 'reading');
  const readings = lines.flatMap(({ message }) => (message.kind === 'reading' ? [message] : []));
  return printedFindings(lines, 1, { ...told, hasFlag: false }).map((finding, index) => {
    const message = readings[index];
    return message === undefined
      ? finding
      : { ...finding, notes: boundNotes(message, told), cited: [] };
  });
}

function boundNotes(message: ReadingMessage, { speaker, words }: ToldCase): readonly string[] {
  const { direction } = speaker;
  const figure = (value: number): string => speaker.formatQuantity({ value, unit: message.unit });
  return boundsBeside(message).map((bound) => {
    const ends = roundedEnds(bound);
    const [low, high] = [figure(ends.low), figure(ends.high)];
    const source = wordOf(bound.source, words);
    return ends.low === ends.high
      ? fill(words.bound, { figure: low, source }, direction)
      : fill(words.zone, { low, high, source }, direction);
  });
}

/** The bounds of the band that a reading is in, or may be in; all of them stand on its ruler. */
function boundsBeside({ bands, bounds, weights }: ReadingMessage): readonly ScaleBound[] {
  const shares = new Map(weights);
  const isLikely = (band: string | undefined): boolean =>
    band !== undefined && (shares.get(band) ?? 0) >= unlikely;
  return bounds.filter((_, index) => isLikely(bands[index]) || isLikely(bands[index + 1]));
}

/** A band that is less likely than this is none that a reading may be in. */
const unlikely = 0.05;

type Source = ScaleBound['source'];

const byMaker: (typeof practice)[number] = "the maker's figure for this part";

/** What a bound goes by, in a word. A text that nobody could see is worth no more than practice. */
function wordOf({ text, provenance }: Source, words: ToldCase['words']): string {
  if (text === byMaker) return words.byPartMaker;
  switch (provenance) {
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
