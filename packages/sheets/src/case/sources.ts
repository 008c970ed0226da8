/**
 * The sources of a reading's figures on a sheet in another language than English: what is said in
 * sentences of our own is put into it, a published text keeps its own.
 */
import type { ReadingMessage } from '@keyturn/core';
import { practiceIn } from '../words/practice/practice-in.ts';

type Source = ReadingMessage['bounds'][number]['source'];

/** The reading with its sources as they are said in a language. */
export function withWordsOfSources(message: ReadingMessage, locale: string): ReadingMessage {
  const said = <Figure extends { readonly source: Source }>(figure: Figure): Figure => ({
    ...figure,
    source: {
      ...figure.source,
      text: practiceIn(locale, figure.source.text) ?? figure.source.text,
    },
  });
  const { bounds, expected } = message;
  return {
    ...message,
    bounds: bounds.map(said),
    ...(expected === undefined ? {} : { expected: said(expected) }),
  };
}

/** The published texts among the sources of a reading, where they are in another language. */
export function citedIn({ bounds, expected }: ReadingMessage, locale: string): readonly string[] {
  if (new Intl.Locale(locale).language === 'en') return [];
  const sources = [...bounds, ...(expected === undefined ? [] : [expected])];
  const texts = sources
    .map(({ source }) => source.text)
    .filter((text) => text !== '' && practiceIn(locale, text) === undefined);
  return [...new Set(texts)];
}
