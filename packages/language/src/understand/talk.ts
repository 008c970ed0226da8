import {
  findPhrase,
  hear,
  hearTokens,
  isPhrase,
  means,
  says,
  startsAt,
  type Heard,
} from '../typed/heard.ts';
import { spellNumbers } from '../numbers/numbers.ts';
import { type InterruptPhrase, startsNow } from './alarms.ts';
import type { Spoken } from './learned.ts';
import type { Lexicon } from './lexicon.ts';
import type { TalkPhrases } from './talk-phrases.ts';
import { onceFor } from '../once.ts';
import { again, type Terms } from '../typed/terms.ts';
import type { Token } from '../typed/token.ts';
import type { TalkWord } from '../words/words.ts';

/** The talk that a whole text is, if it is any of these: word for word first. */
export function findTalk(
  { heard, literal }: { readonly heard: Heard; readonly literal: Heard },
  lexicon: Lexicon,
  wanted: readonly TalkWord[],
): TalkWord | undefined {
  const words = Object.entries(lexicon.talk) as [TalkWord, TalkPhrases][];
  const exact = words.filter((entry) =>
    entry[1].literal.some((phrase) => isPhrase(literal, phrase)),
  );
  const first =
    wanted.find((word) => exact.some(([one]) => one === word)) ??
    wanted.find((word) => isPlain(word) && saysOnly(literal, { said: [word] }, lexicon));
  if (first !== undefined) return first;
  if (exact.length > 0) return undefined;
  const once = withoutRepeats(heard);
  return wanted.find((word) => lexicon.talk[word].said.some((phrase) => isPhrase(once, phrase)));
}

const isPlain = (word: TalkWord): boolean => word === 'yes' || word === 'no';

/** A yes or no is not said in more words. */
const mostPlain = 10;

/**
 * True where a text is nothing but ways of saying this: "yeah sure", "no thank you", "ok all done";
 * what says any of `beside` alone does not.
 */
export function saysOnly(
  literal: Heard,
  {
    said,
    beside = [],
  }: { readonly said: readonly TalkWord[]; readonly beside?: readonly TalkWord[] },
  lexicon: Lexicon,
): boolean {
  const { talk, words } = lexicon;
  const courtesies = [...lexicon.courtesies, ...beside.flatMap((word) => talk[word].literal)];
  const length = literal.at.length;
  if (length < 2 || length > mostPlain) return false;
  // "Absolutely" is a yes, and "absolutely not" none.
  if (!said.includes('no') && literal.terms.some((term) => isDenial(term, words))) return false;
  const ways = said.flatMap((word) => talk[word].literal);
  // How far the text is accounted for: 0 by courtesies alone, 1 by what says it.
  const reached: (0 | 1 | undefined)[] = [0];
  for (let start = 0; start < length; start += 1) {
    const before = reached[start];
    if (before === undefined) continue;
    for (const [phrases, says] of [
      [ways, 1],
      [courtesies, before],
    ] as const) {
      for (const phrase of phrases) {
        const end = start + phrase.length;
        if (end <= length && startsAt(literal, phrase, start))
          reached[end] = (reached[end] ?? 0) === 1 ? 1 : says;
      }
    }
  }
  return reached[length] === 1;
}

/** True for a term that denies. */
export function isDenial(term: string, { negators }: Lexicon['words']): boolean {
  return term.startsWith('!') || negators.includes(term);
}

/** "Yes yes" is no more than yes. */
function withoutRepeats(heard: Heard): Heard {
  if (!heard.terms.includes(again)) return heard;
  const isKept = (_: unknown, index: number): boolean => heard.terms[index] !== again;
  return { ...heard, terms: heard.terms.filter(isKept), at: heard.at.filter(isKept) };
}

/** True where a phrase of several words, or one that denies, stands somewhere in the text. */
export function containsPlainTalk(heard: Heard, lexicon: Lexicon, word: TalkWord): boolean {
  return lexicon.talk[word].said.some(
    (phrase) =>
      (phrase.length > 1 || phrase[0]?.startsWith('!') === true) && findPhrase(heard, phrase) >= 0,
  );
}

/**
 * True where a clause says that the interrupt is over, and nothing else: "the smoke is gone", but
 * not "smoke all over the place".
 */
export function saysOver(clause: readonly Token[], lexicon: Lexicon): boolean {
  const { reader, vocabulary, interrupts, talk } = lexicon;
  const terms = reader.fromTokens(clause);
  const heard = hear(terms, vocabulary);
  const said = interrupts.filter((phrase) => phrase.terms.every((term) => says(heard, term)));
  const alarming = new Set(said.flatMap((phrase) => phrase.terms));
  const rest = hear(
    terms.filter(
      (_, index) =>
        ![...(heard.at[index] ?? new Map<string, number>()).keys()].some((term) =>
          alarming.has(term),
        ),
    ),
    vocabulary,
  );
  return [heard, rest].some((left) => talk.over.said.some((phrase) => isPhrase(left, phrase)));
}

/** Cuts a text where its clauses end. */
export function cutClauses(tokens: readonly Token[], lexicon: Lexicon): Token[][] {
  const { words } = lexicon;
  const clauses: Token[][] = [[]];
  for (const token of tokens) {
    const isBreak =
      (token.kind === 'mark' && !'-/'.includes(token.text)) ||
      (token.kind === 'word' && words.clauseBreaks.includes(token.text));
    if (token.kind === 'word' && joinsClauses(token.text, lexicon))
      clauses.push([{ ...token, text: lexicon.reader.unjoined(token.text) }]);
    else if (isBreak) clauses.push([]);
    else clauses.at(-1)?.push(token);
  }
  return clauses.filter((clause) => clause.length > 0);
}

/** A longer word than this begins with what joins it, but where it is known as it stands. */
const longWord = 5;

/** A word behind the article is one from here on, known or not: `والشمس`. */
const shortestBehindArticle = 3;

/**
 * True where "and" is written on to a word that stands alone elsewhere, with the article or without,
 * or to a long one: the `و` of `والبطارية`, but not that of a number word: `واحد` is one.
 */
export function joinsClauses(word: string, { words, typedWords, reader }: Lexicon): boolean {
  const bare = reader.unjoined(word);
  if (bare === word) return false;
  // `ولع`, it caught fire, is no "and" with a no behind it.
  if (typedWords.has(bare)) return bare.length >= shortestBehindArticle || !typedWords.has(word);
  if (bare.length >= longWord && !typedWords.has(word)) return true;
  const article = words.articles.find((one) => bare.startsWith(one));
  if (article === undefined) return false;
  const noun = bare.slice(article.length);
  return noun.length >= shortestBehindArticle || typedWords.has(noun);
}

/** An interrupt that a text speaks of, by its own words or only by how it sounds. */
export interface FoundInterrupt {
  readonly interrupt: string;
  readonly isPlain: boolean;
}

/**
 * The first interrupt that a text speaks of and does not deny. The words of a phrase may stand in
 * any order, close together: "smells of burning" is "burning smell". A phrase that small words
 * hold together ("it started") must stand word for word and end its clause: "it started clicking"
 * is something else. Of several the one that the flow names first is taken.
 */
export function findInterrupt(
  clauses: readonly (readonly Token[])[],
  lexicon: Lexicon,
  possible: readonly string[],
): FoundInterrupt | undefined {
  const { reader, vocabulary, interruptsIn } = lexicon;
  // Where there are figures somebody tells a reading; what they are said by says nothing else.
  const spelled = clauses.map((clause) =>
    withoutPoints(spellNumbers(clause, lexicon.numbers), lexicon.words),
  );
  const hasFigures = spelled.some((clause) => clause.some(({ kind }) => kind === 'number'));
  for (const [index, clause] of spelled.entries()) {
    const heard = hearTokens(clause, lexicon);
    const hasNumber = clause.some(({ kind }) => kind === 'number');
    // "In the middle of traffic" has a half in it, which is no figure beside the danger.
    const isBesideFigure = ({ terms }: InterruptPhrase): boolean =>
      hasNumber && terms.length < heard.terms.length;
    const literal = hear(reader.literally(clause), vocabulary);
    // Words that are figures as well: "in the middle" is half of something in Spanish.
    const asSaid = hearTokens(withoutPoints(clauses[index] ?? [], lexicon.words), lexicon);
    const inWords = [...interruptsIn(asSaid)].filter(
      ({ terms, literal: small }) =>
        small === undefined && terms.length > 1 && standsClose(asSaid, terms),
    );
    const isInOneRow = ({ terms }: Pick<InterruptPhrase, 'terms'>): boolean =>
      findPhrase(heard, terms) >= 0 || findPhrase(asSaid, terms) >= 0;
    // "Freezing cold out here" is not "out cold".
    const isInOrder = ({ interrupt, terms }: InterruptPhrase): boolean =>
      terms.length !== 2 || hasSign(terms, interrupt, lexicon) || isInOneRow({ terms });
    const found = [...new Set([...interruptsIn(heard), ...inWords])].filter((phrase) => {
      if (!possible.includes(phrase.interrupt) || !isInOrder(phrase)) return false;
      if (inWords.includes(phrase)) return true;
      if (phrase.interrupt === startsNow && deniesMore(heard, phrase.terms)) return false;
      if (phrase.literal === undefined) return standsClose(heard, phrase.terms);
      const last = heard.at.length - phrase.terms.length;
      return findPhrase(heard, phrase.terms) === last && findPhrase(literal, phrase.literal) >= 0;
    });
    if (found.length === 0) {
      const spoken = hasFigures ? undefined : speaksOf(heard, lexicon, possible);
      if (spoken !== undefined) return { interrupt: spoken, isPlain: false };
      const cry = lexicon.cries().get(heard.words.join(' '));
      if (cry !== undefined && cry !== startsNow && possible.includes(cry))
        return { interrupt: cry, isPlain: false };
      const alike = soundsLike(heard, lexicon, { possible, least: hasFigures ? surely : sounds });
      if (alike !== undefined) return { interrupt: alike, isPlain: false };
    }
    // Of a word alone another form may say another thing: "llama un señor" calls, and "llamas" burn.
    const isTyped = ({ spoken, terms }: InterruptPhrase): boolean =>
      terms.length > 1 || spoken.words.every((word) => heard.words.includes(word));
    const leastFor = (phrase: InterruptPhrase): number => {
      if (isBesideFigure(phrase)) return sounds;
      return isTyped(phrase) || heard.terms.length === 1 ? soundsLeast : soundsLittle;
    };
    const first = found.find(
      (phrase) =>
        !found.some((other) => isPartOf(phrase.terms, other.terms)) &&
        (phrase.interrupt === startsNow ||
          (!isBesideFigure(phrase) &&
            isTyped(phrase) &&
            isInOneRow(phrase) &&
            phrase.terms.length > heard.terms.length * smallPart) ||
          mayRaise(heard, { interrupt: phrase.interrupt, least: leastFor(phrase) }, lexicon)),
    );
    if (first !== undefined) return { interrupt: first.interrupt, isPlain: true };
  }
  return undefined;
}

/** True where a word of a phrase tells of the danger wherever it stands. */
function hasSign(terms: Terms, interrupt: string, { alarms }: Lexicon): boolean {
  const signs = alarms.find((alarm) => alarm.interrupt === interrupt)?.signs;
  return signs === undefined || terms.some((term) => signs.has(term.replace('!', '')));
}

/** The interrupt that a whole text says by a phrase with a joining word of its own, or by two words. */
export function findJoined(
  tokens: readonly Token[],
  lexicon: Lexicon,
  possible: readonly string[],
): FoundInterrupt | undefined {
  const spelled = withoutPoints(spellNumbers(tokens, lexicon.numbers), lexicon.words);
  const heard = hearTokens(spelled, lexicon);
  const { clauseBreaks, joins, spelling } = lexicon.words;
  const attached = (spelling?.attached ?? []).filter((prefix) => joins.includes(prefix));
  const isJoining = (word: string): boolean =>
    clauseBreaks.includes(word) ||
    joins.includes(word) ||
    attached.some((prefix) => word.startsWith(prefix));
  // Three words and more in their order are the phrase itself, whatever stands between them.
  const isJoined = ({ spoken, terms }: InterruptPhrase): boolean =>
    spoken.words.some(isJoining) ||
    (terms.length > 2 && findPhrase(heard, terms) >= 0) ||
    (isPhrase(heard, terms) &&
      tokens.some((token) => token.kind === 'word' && isJoining(token.text)));
  const found = [...lexicon.interruptsIn(heard)].find(
    (phrase) =>
      possible.includes(phrase.interrupt) &&
      phrase.literal === undefined &&
      isJoined(phrase) &&
      standsClose(heard, phrase.terms),
  );
  if (found !== undefined) return { interrupt: found.interrupt, isPlain: true };
  if (spelled.some(({ kind }) => kind === 'number')) return undefined;
  const spoken = speaksOf(heard, lexicon, possible);
  return spoken === undefined ? undefined : { interrupt: spoken, isPlain: false };
}

/** A part of a text that sounds as a whole like an interrupt sounds so itself from here on. */
const partly = 0.3;

/** The interrupt that a text as a whole sounds like surely, and a part of it as well. */
export function findSound(
  { heard, clauses }: { readonly heard: Heard; readonly clauses: readonly (readonly Token[])[] },
  lexicon: Lexicon,
  possible: readonly string[],
): FoundInterrupt | undefined {
  const like = lexicon.isHeard
    ? soundsLike(heard, lexicon, { possible, least: surely })
    : undefined;
  if (like === undefined || !soundsInPart(clauses, like, lexicon)) return undefined;
  return { interrupt: like, isPlain: false };
}

/** True where some clause by itself sounds like the interrupt. */
export function soundsInPart(
  clauses: readonly (readonly Token[])[],
  interrupt: string,
  lexicon: Lexicon,
): boolean {
  return clauses.some((clause) => {
    const heard = hearTokens(clause, lexicon);
    const like = lexicon.alarmed()(heard);
    const isTelling = interrupt === startsNow || heard.terms.length > 1;
    return isTelling && like.interrupt === interrupt && like.share >= partly;
  });
}

/** Without the words between two figures: the point of "ten point one" is a drop in Arabic. */
function withoutPoints(
  tokens: readonly Token[],
  { cardinals }: Lexicon['words'],
): readonly Token[] {
  const isFigure = (token: Token | undefined): boolean =>
    token?.kind === 'number' || (token?.kind === 'word' && cardinals[token.text] !== undefined);
  return tokens.filter(
    ({ kind }, at) => kind !== 'word' || !isFigure(tokens[at - 1]) || !isFigure(tokens[at + 1]),
  );
}

/** True where the text denies something that the phrase does not: "it turns but will not start". */
function deniesMore({ terms }: Heard, phrase: Terms): boolean {
  return terms.some((term) => term.startsWith('!') && !phrase.includes(term));
}

/** True where a longer phrase says what the shorter seemed to: "it fired up" is no fire. */
function isPartOf(phrase: Terms, other: Terms): boolean {
  return phrase.length < other.length && phrase.every((term) => other.includes(term));
}

/**
 * The interrupt of whose phrases two words stand close together, one of them no word of any answer:
 * "petrol … dripping", whichever phrases they come from.
 */
function speaksOf(heard: Heard, lexicon: Lexicon, possible: readonly string[]): string | undefined {
  const { at } = heard;
  for (const { interrupt, terms, own } of lexicon.alarms) {
    if (!possible.includes(interrupt) || !mayRaise(heard, { interrupt }, lexicon)) continue;
    const isClose = at.some((said, start) => {
      const mine = [...own].find((term) => means(said, term));
      if (mine === undefined) return false;
      const near = at.slice(Math.max(0, start - between - 1), start + between + 2);
      return near.some(
        (other) => other !== said && [...terms].some((term) => term !== mine && means(other, term)),
      );
    });
    if (isClose) return interrupt;
  }
  return undefined;
}

/** A text that sounds as much like an interrupt as this is one; with figures in it, or as a whole. */
const [sounds, surely] = [0.6, 0.85];

/**
 * A phrase of an interrupt that is no more than this part of its clause, or that stands in another
 * order, raises nothing where the clause sounds less like the interrupt than that: "the 20 scale" is
 * no scald, and an engine that "refuses to fire" not on fire.
 */
const [smallPart, soundsLeast] = [0.5, 0.03];

/** So does one that is a word in another form than the text's. */
const soundsLittle = 0.1;

/** True where a clause may sound like the interrupt. */
function mayRaise(
  heard: Heard,
  { interrupt, least = soundsLeast }: { readonly interrupt: string; readonly least?: number },
  { alarmed, isHeard }: Lexicon,
): boolean {
  if (!isHeard) return true;
  const like = alarmed()(heard);
  return like.interrupt === interrupt ? like.share >= least : like.share >= sounds;
}

/** In a longer text than this an interrupt stands somewhere, and the rest is something else. */
const longestAlarm = 7;

/** A text of so many terms is looked at as a whole as well. */
const longestWhole = 12;

/** The interrupt that some stretch of the text sounds like. */
function soundsLike(
  heard: Heard,
  { alarmed, talkHeard }: Lexicon,
  { possible, least }: { readonly possible: readonly string[]; readonly least: number },
): string | undefined {
  // A word or two are either a phrase or nothing; so are those beside a figure.
  const inWords = heard.terms.filter((term) => !/\d/.test(term));
  const isOne = heard.terms.length < 2;
  if (isOne && heard.words.length <= fewWords) return undefined;
  if (inWords.length < heard.terms.length && inWords.length <= fewWords) return undefined;
  const like = stretchesOf(heard)
    .map((stretch) => alarmed()(stretch))
    .find(
      ({ interrupt, share }) =>
        share >= least && possible.includes(interrupt) && (!isOne || interrupt === startsNow),
    );
  if (like === undefined)
    return least < surely ? criesOut(heard, { lexicon: { alarmed }, possible }) : undefined;
  return like.share >= surely || talkHeard()(heard).share < like.share ? like.interrupt : undefined;
}

/** A few words in a row that sound like an interrupt as much as this are one, whatever stands round them; two must more. */
const [cried, criedInFew] = [0.85, 0.95];

/** So many words in a row are enough to cry danger in. */
const [fewestCried, mostCried] = [2, 4];

/** The danger that a few words of a text surely sound like: "am Anlasser glüht es rot". */
export function criesOut(
  heard: Heard,
  {
    lexicon,
    possible,
  }: { readonly lexicon: Pick<Lexicon, 'alarmed'>; readonly possible: readonly string[] },
): string | undefined {
  const learned = lexicon.alarmed();
  if (learned(heard).share < soundsLeast) return undefined;
  for (const stretch of fewInRow(heard)) {
    const { interrupt, share } = learned(stretch);
    const least = stretch.terms.length === fewestCried ? criedInFew : cried;
    if (share >= least && interrupt !== startsNow && possible.includes(interrupt)) return interrupt;
  }
  return undefined;
}

/** Few words of a text in a row, the fewest first. */
const fewInRow = onceFor(({ terms }: Heard): readonly Spoken[] => {
  const stretches: Spoken[] = [];
  for (let length = fewestCried; length <= mostCried; length += 1) {
    for (let at = 0; at + length <= terms.length; at += 1) {
      const stretch = terms.slice(at, at + length);
      stretches.push({ terms: stretch, words: stretch });
    }
  }
  return stretches;
});

/** So few words are no sentence. */
export const fewWords = 2;

/** The text, and so many words of it at a time. */
const stretchesOf = onceFor((heard: Heard): readonly Spoken[] => {
  const { terms } = heard;
  const whole = terms.length <= longestWhole ? [heard] : [];
  if (terms.length <= longestAlarm) return whole;
  const parts = terms.flatMap((_, at): Spoken[] => {
    if (at % 3 !== 0 || at + 3 > terms.length) return [];
    const stretch = terms.slice(at, at + longestAlarm);
    return [{ terms: stretch, words: stretch }];
  });
  return [...whole, ...parts];
});

/** How many other words may stand between those of an interrupt. */
const between = 2;

function standsClose({ at, all }: Heard, phrase: Terms): boolean {
  if (phrase.length === 0 || !phrase.every((term) => says({ all }, term))) return false;
  const width = phrase.length === 1 ? 1 : phrase.length + between;
  return at.some((_, start) => {
    const window = at.slice(start, start + width);
    return phrase.every((term) => window.some((said) => means(said, term)));
  });
}
