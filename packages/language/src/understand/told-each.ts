/**
 * Everything that a text tells, a part at a time: "bought on 3 March 2026, only clicks, was fitted".
 * Nothing of it is left out without a word.
 */
import { looksLikeDay, type AnswerInput } from '@keyturn/core';
import { hearTokens, wordsOf } from '../typed/heard.ts';
import { readTokens } from '../typed/read-tokens.ts';
import { chooseOption, exactChoice } from './choices.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { wordsBesideDay } from './said-day.ts';
import { cut, mostClauses, type Listener } from './turn.ts';
import { understandText } from './understand.ts';
import { namesCheck } from './volunteered.ts';
import type { Hearing, Understood } from './understood.ts';

/** What a text tells: each answer once, and the parts of it that nothing was made of. */
export interface ToldEach {
  readonly answers: readonly AnswerInput[];
  readonly left: readonly LeftPart[];
}

/** A part of a text that nothing was made of. */
export interface LeftPart {
  /** As it was typed. */
  readonly said: string;
  /** What may be meant by it, or what it is instead; undefined where nothing is known of it. */
  readonly unclear?: Unclear;
}

type Unclear = Exclude<Understood, { type: 'input' | 'language' }>;

/** From here on a text is one answer to the question in hand, commas and all. */
const wholeCoverage = 0.85;

/** An answer is said in so many parts at most: "free one way, takes hold the other". */
const longestRun = 3;

/**
 * Reads a text part by part. Undefined where it is no telling of answers: talk, a danger, a
 * correction, another language, or nothing that is understood. Pure; never throws.
 */
export function understandEach(
  text: string,
  hearing: Hearing,
  listener: Listener,
): ToldEach | undefined {
  const whole = understandText(text, hearing, listener);
  if (!isTelling(whole)) return undefined;
  const parts = partsOf(text, listener.lexicon);
  const given = answersOf(whole);
  const isOne = !namesSeveral(text, listener.lexicon) && isOneAnswer(text, hearing, listener);
  if (given !== undefined && isOne) return { ...given, left: [] };
  const told = readParts(text, parts, { hearing, listener });
  return told.answers.length === 0 ? undefined : told;
}

/** False for what is no telling: a danger, a correction, another language. A yes may begin one. */
function isTelling(whole: Understood): boolean {
  if (whole.type === 'unclear') return whole.code !== 'too-long';
  if (whole.type !== 'input') return whole.type === 'offers';
  return whole.inputs.every(({ type }) => ['answers', 'talk', 'context'].includes(type));
}

/** A part of a text, by where it stands. */
interface Part {
  readonly from: number;
  readonly to: number;
}

/** Marks between two parts; one within a figure, or behind the date of a month, is none. */
const marks = /[;:!?\n،؛؟]|,(?!\d)|(?<!(?:^|\s)\d\d?)\.(?!\d)|(?<=\p{L})[,.](?=\d)/gu;

/**
 * Cuts at marks, and at the words that go from one part to the next: "and", "but"; where "and" is
 * written on to the word behind it, before the name of a thing.
 */
function partsOf(text: string, { words, checks }: Lexicon): readonly Part[] {
  const attached = words.joins.filter((join) => words.spelling?.attached?.includes(join));
  const names = attached.length === 0 ? [] : [...checks.values()].flatMap(namesOf);
  const isName = (word: string): boolean => {
    const [first] = wordsOf(readTokens(word, words));
    return names.some((name) => name[0] === first);
  };
  const breaks = [...text.matchAll(marks)].map(({ index, 0: mark }) => ({
    from: index,
    to: index + mark.length,
  }));
  for (const { index, 0: word } of text.matchAll(/[\p{L}\p{M}’']+/gu)) {
    if (words.clauseBreaks.includes(word.toLowerCase())) {
      breaks.push({ from: index, to: index + word.length });
    }
    const join = attached.find((one) => word.startsWith(one) && isName(word.slice(one.length)));
    if (join !== undefined && index > 0) breaks.push({ from: index, to: index + join.length });
  }
  const parts: Part[] = [];
  let from = 0;
  for (const cutAt of breaks.toSorted((one, other) => one.from - other.from)) {
    parts.push({ from, to: cutAt.from });
    from = cutAt.to;
  }
  parts.push({ from, to: text.length });
  return parts.filter((part) => text.slice(part.from, part.to).trim() !== '');
}

/** True where the text as a whole is said of the question in hand. */
function isOneAnswer(text: string, hearing: Hearing, { lexicon }: Listener): boolean {
  const inHand = hearing.check === null ? undefined : lexicon.checks.get(hearing.check);
  if (inHand === undefined || inHand.options.length === 0) return false;
  const choice = chooseOption(hearTokens(readTokens(text, lexicon.words), lexicon), inHand);
  return choice.type === 'one' && choice.fit.coverage >= wholeCoverage;
}

/** True where a text names more than one thing that is looked at: "case and posts fine". */
function namesSeveral(text: string, lexicon: Lexicon): boolean {
  const parts = partsOf(text, lexicon).map(({ from, to }) =>
    wordsOf(readTokens(text.slice(from, to), lexicon.words)),
  );
  const named = [...lexicon.checks.values()].filter((check) =>
    namesOf(check).some((name) =>
      parts.some((words) =>
        words.some((_, at) => name.every((one, index) => words[at + index] === one)),
      ),
    ),
  );
  return parts.length > 1 && named.length > 1;
}

interface Ear {
  readonly hearing: Hearing;
  readonly listener: Listener;
}

function readParts(text: string, parts: readonly Part[], { hearing, listener }: Ear): ToldEach {
  const found = new Map<string, { readonly answer: AnswerInput; readonly said: string[] }>();
  const left: LeftPart[] = [];
  const unsure = new Set<string>();
  const some = parts.slice(0, mostClauses);
  for (let at = 0; at < some.length;) {
    // What answers the question in hand answers it once.
    const check = hearing.check !== null && found.has(hearing.check) ? null : hearing.check;
    const run = readRun(text, some.slice(at, at + longestRun), {
      hearing: { ...hearing, check },
      listener,
    });
    at += run.length;
    if (run.left !== undefined) left.push(run.left);
    for (const answer of run.answers) {
      const before = found.get(answer.check);
      if (before === undefined) found.set(answer.check, { answer, said: [run.said] });
      else {
        before.said.push(run.said);
        if (!isSame(before.answer, answer)) unsure.add(answer.check);
      }
    }
  }
  const rest = parts[some.length];
  if (rest !== undefined) left.push({ said: cut(text.slice(rest.from)) });
  const all = [...found];
  // Of two answers to one question neither is taken.
  const twice = all.flatMap(([id, { said }]) =>
    unsure.has(id) ? [{ said: cut(said.join(', ')) }] : [],
  );
  return {
    answers: all.flatMap(([id, { answer }]) => (unsure.has(id) ? [] : [answer])),
    left: [...left, ...twice],
  };
}

function isUnderLoad({ value }: AnswerInput): boolean {
  return 'under' in value && value.under !== undefined;
}

function isSame(one: AnswerInput, other: AnswerInput): boolean {
  return JSON.stringify(one.value) === JSON.stringify(other.value);
}

/** What was made of one part, or of several that say one answer together. */
interface Run extends Omit<ToldEach, 'left'> {
  readonly length: number;
  readonly said: string;
  readonly left?: LeftPart;
}

function readRun(text: string, parts: readonly Part[], ear: Ear): Run {
  const upTo = (length: number): string => {
    const [first, last] = [parts[0], parts[length - 1]];
    return cut(text.slice(first?.from, last?.to));
  };
  for (let length = parts.length; length > 1; length -= 1) {
    const together = readTogether(upTo(length), ear);
    if (together !== undefined) return { ...together, length, said: upTo(length) };
  }
  const said = upTo(1);
  const run = { answers: [], length: 1, said };
  if (isNothing(said, ear)) return run;
  const [shared, other] = parts[1] === undefined ? [] : sharedAnswers(said, upTo(2), ear);
  if (shared !== undefined && other === undefined) return { ...run, answers: [shared] };
  // A name by itself would be heard as whatever is said with it most.
  if (isNameAlone(said, ear)) return { ...run, left: { said } };
  const named = saidOfNamed(said, ear);
  if (named !== undefined) return { ...run, answers: [named.answer] };
  const literal = literalAnswer(said, ear);
  if (literal !== undefined) return { ...run, answers: [literal] };
  const { told, unclear } = readPart(said, ear);
  if (told !== undefined) return withRest({ ...run, ...told }, ear);
  const [exact, more] = exactAnswers(said, ear);
  if (exact !== undefined && more === undefined) return { ...run, answers: [exact] };
  return { ...run, left: { said, ...(unclear === undefined ? {} : { unclear }) } };
}

/** A day with what is said beside it: "bought on 3 March 2026 only clicks". */
function withRest(run: Run, ear: Ear): Run {
  const [answer] = run.answers;
  const check = ear.listener.lexicon.checks.get(answer?.check ?? '');
  if (answer === undefined || check === undefined || 'value' in answer.value) return run;
  if (!answer.value.some(looksLikeDay)) return run;
  const rest = wordsBesideDay(run.said, check, ear.listener);
  const words = rest.split(' ').filter(({ length }) => length > smallWord);
  if (words.length === 0) return run;
  const beside = readRun(rest, [{ from: 0, to: rest.length }], ear);
  const { left } = beside;
  return {
    ...run,
    answers: [...run.answers, ...beside.answers],
    ...(left === undefined || words.length < 2 ? {} : { left }),
  };
}

/**
 * The answers of a thing that is named alone and shares what is said of the next: the case of "case
 * and posts fine".
 */
function sharedAnswers(said: string, both: string, ear: Ear): readonly AnswerInput[] {
  const { lexicon } = ear.listener;
  const [own, all] = [said, both].map((text) => wordsOf(readTokens(text, lexicon.words)));
  if (own === undefined || all === undefined || own.length > longestName) return [];
  const next = cut(both).slice(cut(said).length);
  const finding = saidOfNamed(withoutBreak(next, lexicon), ear)?.finding;
  const shared = finding === undefined ? undefined : saidOfNamed(`${said} ${finding}`, ear);
  if (shared !== undefined) return [shared.answer];
  const [, ...rest] = all
    .slice(own.length)
    .filter((word) => !lexicon.words.clauseBreaks.includes(word));
  if (rest.length === 0 || all.length - own.length === rest.length + 1) return [];
  return exactAnswers([...own, ...rest].join(' '), ear);
}

/** A thing is named in so many words: "the case". */
const longestName = 2;

/** What is behind the mark or the "and" with which a text begins. */
function withoutBreak(text: string, lexicon: Lexicon): string {
  const part = partsOf(text, lexicon)[0];
  return part === undefined ? '' : text.slice(part.from).trim();
}

/** What people call a thing that is looked at, in words as they are typed. */
function namesOf({ check, said }: CheckPhrases): readonly (readonly string[])[] {
  return check.form.kind === 'choice' ? said.map(wordsOf).filter(({ length }) => length > 0) : [];
}

function isNameAlone(said: string, { listener: { lexicon } }: Ear): boolean {
  const words = wordsOf(readTokens(said, lexicon.words)).join(' ');
  return [...lexicon.checks.values()].flatMap(namesOf).some((name) => name.join(' ') === words);
}

/** What is said of a thing that is named, in the words of one of its answers: "posts ok". */
function saidOfNamed(
  said: string,
  { listener: { lexicon } }: Ear,
): { readonly answer: AnswerInput; readonly finding: string } | undefined {
  const { fillers, clauseBreaks } = lexicon.words;
  const words = wordsOf(readTokens(said, lexicon.words));
  const isSmall = (word: string): boolean => fillers.includes(word) || clauseBreaks.includes(word);
  const found = [...lexicon.checks.values()].flatMap((check) =>
    namesOf(check).flatMap((name) => {
      const at = words.findIndex((_, index) => name.every((one, n) => words[index + n] === one));
      const rest = at < 0 ? [] : [...words.slice(0, at), ...words.slice(at + name.length)];
      const isAtEnd = words.slice(0, at).every(isSmall) || at + name.length === words.length;
      if (!isAtEnd || rest.every(isSmall)) return [];
      const finding = rest.join(' ');
      const heard = hearTokens(readTokens(finding, lexicon.words), lexicon);
      const choice = exactChoice(heard, check.options);
      const answer = { check: check.id, value: [choice ?? ''] };
      return choice === undefined ? [] : [{ answer, finding, of: name.length }];
    }),
  );
  return found.toSorted((one, other) => other.of - one.of)[0];
}

/** A word of so few letters beside a day is "on" or "the", and two others say something. */
const smallWord = 3;

/** Parts that say one answer together: in its own words, or a voltage and the load it is read under. */
function readTogether(said: string, ear: Ear): Told | undefined {
  const [answer, more] = exactAnswers(said, ear);
  if (answer !== undefined && more === undefined) return { answers: [answer] };
  const { told } = readPart(said, ear);
  return told?.answers.some(isUnderLoad) === true ? told : undefined;
}

/**
 * The answer that is said in these very words: to the question in hand, else to the first that is
 * still open of those to which they may be said.
 */
function literalAnswer(said: string, { hearing, listener }: Ear): AnswerInput | undefined {
  const { lexicon } = listener;
  const typed = wordsIn(said, lexicon);
  const all = mayBeToldOf(said, { hearing, listener }).flatMap(({ id, options }) => {
    const found = options.filter(({ spoken }) =>
      spoken.some(({ words }) => words.join(' ') === typed),
    );
    const [only, more] = found;
    return only === undefined || more !== undefined ? [] : [{ check: id, value: [only.id] }];
  });
  const isOpen = ({ check }: AnswerInput): boolean => !hearing.answered.includes(check);
  return all.find(({ check }) => check === hearing.check) ?? all.find(isOpen) ?? all[0];
}

/**
 * The checks of which a text may tell. Where all its words are those in which the question in hand is
 * answered, it tells of no part that is looked at and not named: “spins” of a starter, not of a stud.
 */
function mayBeToldOf(said: string, { hearing, listener }: Ear): readonly CheckPhrases[] {
  const { lexicon } = listener;
  const all = [...lexicon.checks.values()];
  const inHand = all.find(({ id }) => id === hearing.check);
  if (inHand?.check.at !== 'memory') return all;
  const heard = hearTokens(readTokens(said, lexicon.words), lexicon);
  const isSaidOfIt = heard.terms.every((term) =>
    inHand.options.some(({ terms }) => terms.has(term)),
  );
  if (!isSaidOfIt) return all;
  return all.filter((check) => !isLook(check) || namesCheck(heard, check));
}

/** True for a part that is looked at, and mostly shows nothing. */
function isLook({ check: { form } }: CheckPhrases): boolean {
  return form.kind === 'choice' && form.usual !== undefined;
}

function wordsIn(said: string, { words }: Lexicon): string {
  return wordsOf(readTokens(said, words)).join(' ');
}

/** True for what says nothing at all. */
function isNothing(said: string, { listener: { lexicon } }: Ear): boolean {
  const tokens = readTokens(said, lexicon.words);
  const isFigure = tokens.some(({ kind }) => kind === 'number' || kind === 'malformed');
  return !isFigure && hearTokens(tokens, lexicon).at.length === 0;
}

/** The answers of the flow that a text is word for word: that of the question in hand, else of any. */
function exactAnswers(said: string, { hearing, listener }: Ear): readonly AnswerInput[] {
  const { lexicon } = listener;
  const heard = hearTokens(readTokens(said, lexicon.words), lexicon);
  if (heard.at.length === 0) return [];
  const exact = mayBeToldOf(said, { hearing, listener }).flatMap(({ id, options }) => {
    const choice = exactChoice(heard, options);
    return choice === undefined ? [] : [{ check: id, value: [choice] }];
  });
  const own = exact.find(({ check }) => check === hearing.check);
  return own === undefined ? exact : [own];
}

/** What a part tells: to the question in hand, else unasked; or why nothing was made of it. */
function readPart(
  said: string,
  { hearing, listener }: Ear,
): { readonly told?: Told | undefined; readonly unclear?: Unclear } {
  const read = (check: string | null): Understood =>
    understandText(said, { ...hearing, awaiting: 'answer', check }, listener);
  const inHand = hearing.check === null ? undefined : listener.lexicon.checks.get(hearing.check);
  const isInWords = inHand !== undefined && inHand.check.form.kind !== 'reading';
  const hasFigure = readTokens(said, listener.lexicon.words).some(({ kind }) => kind === 'number');
  // A figure is a reading first, where the question in hand is answered in words.
  const [first, second] = isInWords && hasFigure ? [null, hearing.check] : [hearing.check, null];
  const all = [read(first), ...(first === second ? [] : [read(second)])];
  const told = all.map(answersOf).find((one) => one !== undefined);
  if (told !== undefined) return { told };
  const unclear = all.find((one): one is Unclear => one.type === 'offers' || isToldWhy(one));
  return unclear === undefined ? {} : { unclear };
}

/** What says more than that a part is not understood. */
function isToldWhy(understood: Understood): boolean {
  return (
    understood.type === 'unclear' &&
    ['not-a-day', 'not-exact', 'two-numbers', 'which-check', 'unknown-unit'].includes(
      understood.code,
    )
  );
}

type Told = Omit<ToldEach, 'left'>;

/** The answers of a text that tells answers and nothing else. */
function answersOf(understood: Understood): Told | undefined {
  if (understood.type !== 'input') return undefined;
  const answers: AnswerInput[] = [];
  for (const input of understood.inputs) {
    if (input.type !== 'answers') return undefined;
    answers.push(...input.answers);
  }
  return { answers };
}
