import type { Terms } from '../typed/terms.ts';
import { learn, mostOf, someOf, type Spoken } from './learned.ts';
import type { Learning } from './lesson.ts';
import { onceFor } from '../once.ts';

/** A phrase of an interrupt. */
export interface InterruptPhrase {
  readonly interrupt: string;
  readonly terms: Terms;
  readonly spoken: Spoken;
  /** Every word of it, where small words hold it together: "it started", "we are in the road". */
  readonly literal?: Terms;
}

/** The words of one emergency, and those that tell of it and that no answer has. */
export interface Alarm {
  readonly interrupt: string;
  readonly terms: ReadonlySet<string>;
  readonly own: ReadonlySet<string>;
  /** Those that are said of it more than of anything ordinary: "smoke", but not "battery". */
  readonly signs: ReadonlySet<string>;
}

/** The interrupt that a text sounds most like, and how much it does, 0 to 1. */
export type Alarmed = (text: Spoken) => { readonly interrupt: string; readonly share: number };

/** The answers of a check, so far as they are told from interrupts. */
interface Answered {
  readonly topic: ReadonlySet<string>;
  readonly options: readonly {
    readonly spoken: readonly Spoken[];
    readonly heard: () => readonly Spoken[];
    readonly terms: ReadonlySet<string>;
  }[];
}

/** What is learned from. */
export interface AlarmLessons {
  /** What raises each interrupt. */
  readonly raising: ReadonlyMap<string, readonly Spoken[]>;
  /** What is said with its words and raises nothing, and what is said in place of an answer. */
  readonly harmless: readonly Spoken[];
  readonly talk: readonly Spoken[];
  readonly checks: readonly Answered[];
}

/** So much is learned from of what raises nothing: answers that share a word with an interrupt, others, talk. */
const mostLike = 1000;
const mostUnlike = 500;
const mostTalk = 300;

/** Learns how interrupts sound, against what is said of ordinary things. */
export function* learnAlarms({ raising, harmless, talk, checks }: AlarmLessons): Learning<Alarmed> {
  const ids = [...raising.keys()];
  const bare = ({ terms }: Spoken): string[] => terms.map((term) => term.replace('!', ''));
  const keyOf = ({ terms }: Spoken): string => terms.join(' ');
  const all = [...raising.values()].flat();
  const known = new Set(all.flatMap(bare));
  const alarming = new Set(all.map(keyOf));
  // An answer that says the same as an interrupt is none of the ordinary ones.
  const answers = checks
    .flatMap(({ options }) => options.map(({ spoken, heard }) => [...spoken, ...heard()]))
    .filter((said) => !said.some((one) => alarming.has(keyOf(one))))
    .flat();
  const isLike = (text: Spoken): boolean => bare(text).some((term) => known.has(term));
  const isUnlike = (text: Spoken): boolean => !isLike(text);
  const learned = yield* learn([
    ...raising.values(),
    [
      ...harmless,
      ...someOf(answers.filter(isLike), mostLike),
      ...someOf(answers.filter(isUnlike), mostUnlike),
      ...someOf(talk, mostTalk),
    ],
  ]);
  return onceFor((text) => {
    const { place, share } = mostOf(learned(text), ids.length);
    return { interrupt: ids[place] ?? '', share };
  });
}

/** The interrupt that is no emergency. */
export const startsNow = 'starts-now';

/** The answer that it starts by what was tried. */
export const startsAnswer = 'starts';

/** A word of an emergency that stands in so many of its phrases, or alone, tells of it. */
const strongPhrases = 3;

/** The words of each emergency that tell of it; that the vehicle starts is none. */
export function alarmsOf(
  interrupts: readonly InterruptPhrase[],
  checks: readonly Answered[],
): readonly Alarm[] {
  const answered = new Set(
    checks.flatMap(({ options }) => options.flatMap(({ terms }) => [...terms])),
  );
  const ids = [...new Set(interrupts.map(({ interrupt }) => interrupt))].filter(
    (id) => id !== startsNow,
  );
  const topics = new Set(checks.flatMap(({ topic }) => [...topic]));
  const ordinary = new Map<string, number>();
  // An answer that says the same as an emergency is no ordinary one: "in a live lane".
  const keyOf = (terms: Terms): string => terms.join(' ');
  const dangers = new Set(
    interrupts.filter(({ interrupt }) => interrupt !== startsNow).map(({ terms }) => keyOf(terms)),
  );
  const spoken = checks
    .flatMap(({ options }) => options)
    .filter((option) => !option.spoken.some(({ terms }) => dangers.has(keyOf(terms))))
    .flatMap((option) => option.spoken);
  for (const term of spoken.flatMap(({ terms }) => [...new Set(terms)]))
    ordinary.set(term, (ordinary.get(term) ?? 0) + 1);
  return ids.map((interrupt) => {
    const terms = new Set(
      interrupts
        .filter((phrase) => phrase.interrupt === interrupt)
        .flatMap((phrase) => phrase.terms)
        .filter((term) => !term.startsWith('!')),
    );
    const phrases = interrupts.filter((phrase) => phrase.interrupt === interrupt);
    const isStrong = (term: string): boolean => {
      const holders = phrases.filter((phrase) => phrase.terms.includes(term));
      return holders.length >= strongPhrases || holders.some((phrase) => phrase.terms.length === 1);
    };
    const signs = [...terms].filter((term) => {
      const holders = phrases.filter((phrase) => phrase.terms.includes(term)).length;
      // What most of its phrases name is the thing, and not what is wrong with it.
      const isThing = topics.has(term) || holders > phrases.length / 2;
      return !isThing && holders >= (ordinary.get(term) ?? 0);
    });
    const own = [...terms].filter((term) => !answered.has(term) && isStrong(term));
    return { interrupt, terms, own: new Set(own), signs: new Set(signs) };
  });
}
