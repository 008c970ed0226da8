/**
 * A case put into words once, for every sheet that is made of it.
 */
import { repeat, stripOf, type Case, type CautionMessage, type Strip } from '@keyturn/core';
import type { Rendered, RenderedSection, Speaker } from '@keyturn/language';
import type { Block } from '../sheet.ts';
import { sheetWordsIn } from '../words/sheet-words-in.ts';
import type { SheetWords } from '../words/sheet-words.ts';
import type { SheetOptions } from './sheet-options.ts';
import { withWordsOfSources } from './sources.ts';

type VerdictInWords = Extract<Rendered, { readonly kind: 'verdict' }>;

/** A case in words. */
export interface ToldCase extends SheetOptions {
  readonly words: SheetWords;
  readonly strip: Strip;
  /** The verdict or the decision; undefined while there is none. */
  readonly verdict: VerdictInWords | undefined;
  /** Check to what its numbers are: bounds, sources, shares; `losses` where the volts are lost. */
  readonly numbers: ReadonlyMap<string, RenderedSection>;
  readonly cautions: Extract<Block, { kind: 'cautions' }>['cautions'];
}

/** Puts a case into words. Throws where the speaker lacks a text that it needs. */
export function tellCase(options: SheetOptions): ToldCase {
  const { chart, case: kase, speaker } = options;
  const strip = stripOf(chart, kase);
  const end = strip.verdict ?? kase.state.decision;
  const rendered = end === null ? [] : speaker.render([end]);
  return {
    ...options,
    words: sheetWordsIn(speaker.locale),
    strip,
    verdict: rendered.find((one) => one.kind === 'verdict'),
    numbers: new Map(numbersOf(strip, options).map((section) => [section.id, section])),
    cautions: sayCautions(cautionsOf(options), speaker),
  };
}

/** Cautions in words. */
export function sayCautions(
  cautions: readonly CautionMessage[],
  speaker: Speaker,
): ToldCase['cautions'] {
  return cautions.flatMap((message) =>
    speaker
      .render([message])
      .flatMap((one) =>
        one.kind === 'caution'
          ? [{ id: message.caution, word: message.word, said: one.word, text: one.text }]
          : [],
      ),
  );
}

function numbersOf(
  { findings, proving, losses }: Strip,
  { speaker }: SheetOptions,
): readonly RenderedSection[] {
  const readings = [...findings, ...proving].flatMap(({ message }) =>
    message.kind === 'reading' ? [withWordsOfSources(message, speaker.locale)] : [],
  );
  return speaker
    .render([{ kind: 'numbers', readings, losses }])
    .flatMap((one) => (one.kind === 'numbers' ? one.sections : []));
}

/** What stands before the case now, every caution of it anew: paper cannot be asked again. */
function cautionsOf({ chart, case: kase }: SheetOptions): readonly CautionMessage[] {
  const unsaid: Case = { ...kase, state: { ...kase.state, cautioned: [] } };
  return repeat(chart, unsaid).filter((one): one is CautionMessage => one.kind === 'caution');
}
