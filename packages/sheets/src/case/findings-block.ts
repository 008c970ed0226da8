import {
  looksLikeDay,
  type NotedMessage,
  type ReadingMessage,
  type StripLine,
} from '@keyturn/core';
import { drawReading, type ReadingOptions } from '@keyturn/drawings';
import type { Finding, Picture, SheetReading } from '../sheet.ts';
import { citedIn } from './sources.ts';
import type { ToldCase } from './told-case.ts';

/** How the rulers of readings are drawn. */
type Rulers = Pick<ReadingOptions, 'hasFlag'>;

/** The printed findings of some lines of the strip, numbered from `first` on. */
export function printedFindings(
  lines: readonly StripLine[],
  first: number,
  told: ToldCase & Rulers,
): readonly Finding[] {
  return lines.map(({ check, message }, index) => {
    const place = { number: first + index, check, name: told.speaker.checkName(check) };
    return message.kind === 'reading'
      ? { ...place, ...readingFinding(message, told) }
      : { ...place, ...notedFinding(message, told) };
  });
}

type Found = Omit<Finding, 'number' | 'check' | 'name'>;

function notedFinding({ check, answer }: NotedMessage, { speaker, words }: ToldCase): Found {
  const labels = answer.map((id) =>
    looksLikeDay(id) ? speaker.formatDay(id) : speaker.answerLabel(check, id),
  );
  const list = new Intl.ListFormat(speaker.locale, { type: 'unit', style: 'short' });
  return {
    said: labels.length === 0 ? words.notDone : list.format(labels),
    means: '',
    notes: [],
    cited: [],
    answers: answer,
  };
}

function readingFinding(message: ReadingMessage, told: ToldCase & Rulers): Found {
  const { speaker, numbers, hasFlag = true } = told;
  const scale = speaker.render([message]).find((one) => one.kind === 'scale');
  const svg =
    scale === undefined ? undefined : drawReading(scale, { speaker, theme: 'print', hasFlag });
  const ruler = svg === undefined ? undefined : { svg, description: scale?.text ?? '' };
  return {
    said: speaker.formatQuantity(message.quantity),
    means: scale?.means ?? '',
    notes: numbers.get(message.check)?.lines ?? [],
    cited: citedIn(message, speaker.locale),
    answers: [],
    reading: readingOf(message, ruler, told),
  };
}

function readingOf(
  message: ReadingMessage,
  ruler: Picture | undefined,
  { speaker }: ToldCase,
): SheetReading {
  const { check, quantity, uncertainty, unit, bands, bounds, band, borderline, weights } = message;
  const shares = new Map(weights);
  return {
    quantity,
    uncertainty,
    unit,
    bands: bands.map((id) => ({
      id,
      label: speaker.answerLabel(check, id),
      share: shares.get(id) ?? 0,
    })),
    bounds: bounds.map(({ low, high, source }) => ({
      low,
      high,
      source: source.text === '' ? source.provenance : `${source.provenance}: ${source.text}`,
    })),
    band,
    borderline,
    ...(ruler === undefined ? {} : { ruler }),
  };
}
