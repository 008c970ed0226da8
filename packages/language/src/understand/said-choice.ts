import { type AnswerInput, optionsOf } from '@keyturn/core';
import { spellNumbers } from '../numbers/numbers.ts';
import { chooseOption, chooseSeveral, exactChoice, isOfSeveral, likeliest } from './choices.ts';
import { isOfKit } from './kit-told.ts';
import { hearTokens } from '../typed/heard.ts';
import { hasPhrase } from '../readings/word-run.ts';
import { normalise } from '../typed/normalise.ts';
import { readKeys } from './option-keys.ts';
import { offersOf } from './found-answer.ts';
import type { CheckPhrases, Lexicon, OptionPhrases } from './lexicon.ts';
import { type Turn, answers, mostClauses, optionsInHand, unclear } from './turn.ts';
import type { Understood } from './understood.ts';

/** The answer in hand that the text is word for word. */
export function readExact(turn: Turn): Understood | undefined {
  const check = optionsInHand(turn);
  if (check === undefined) return undefined;
  const exact = exactChoice(turn.heard, check.options) ?? exactBesideYes(turn, check);
  if (exact === undefined) return undefined;
  return answers([{ check: check.id, value: [exact] }]);
}

/** The answer that a text is but for a yes: the "N" of "yes, N" says more than that. */
function exactBesideYes(
  { tokens, listener: { lexicon } }: Turn,
  { options }: CheckPhrases,
): string | undefined {
  const { yes } = lexicon.words.talk;
  // What an answer is called by says that answer: "safe, some danger" says two.
  const isYes = (word: string): boolean =>
    yes.includes(word) && !options.some(({ spoken }) => spoken[0]?.words.includes(word));
  const rest = tokens.filter((token) => token.kind !== 'word' || !isYes(token.text));
  return exactChoice(hearTokens(rest, lexicon), options);
}

/** The answers in hand whose numbers the text is. */
export function readOptionKeys(turn: Turn): Understood | undefined {
  const check = optionsInHand(turn);
  const form = check?.check.form;
  if (check === undefined || (form?.kind !== 'choice' && form?.kind !== 'date')) return undefined;
  const keys = readKeys(
    normalise(turn.text, turn.listener.lexicon.words.spelling),
    turn.tokens,
    turn.listener.lexicon.words,
  );
  if (keys === undefined) return undefined;
  const choices = optionsOf(check.check);
  const several = form.kind === 'choice' && form.several;
  const picked = keys.map((key) => choices[key - 1]);
  const ids = [...new Set(picked.filter((id) => id !== undefined))];
  if (ids.length === 0 || picked.includes(undefined)) return unclear(turn, 'unknown-choice');
  if (ids.length > 1 && !several) return unclear(turn, 'one-choice');
  return answers([{ check: check.id, value: ids }]);
}

/** A yes or no to a question that has an answer for it; else a yes may still be close to one. */
export function readYesNo(turn: Turn, talk: 'yes' | 'no' | 'done'): Understood {
  const check = optionsInHand(turn);
  const option = check === undefined ? undefined : optionSaid(check, talk, turn.listener.lexicon);
  if (check !== undefined && option !== undefined)
    return answers([{ check: check.id, value: [option] }]);
  const near = talk === 'no' ? undefined : (readChoice(turn) ?? readClose(turn));
  return near ?? unclear(turn, 'unknown-choice', talk);
}

/** The answer that is said by yes, however it is put; of two, the one that is not said by no. */
function optionSaid(
  { options }: CheckPhrases,
  talk: 'yes' | 'no' | 'done',
  lexicon: Lexicon,
): string | undefined {
  const saidBy = (word: 'yes' | 'no' | 'done'): OptionPhrases[] => {
    const ways = new Set(lexicon.talk[word].said.map((terms) => terms.join(' ')));
    return options.filter(({ phrases }) => phrases.some((phrase) => ways.has(phrase.join(' '))));
  };
  const [option, more] = saidBy(talk);
  if (option !== undefined) return more === undefined ? option.id : undefined;
  if (talk === 'done' || options.length !== 2) return undefined;
  const against = saidBy(talk === 'yes' ? 'no' : 'yes');
  return against.length === 1 ? options.find((one) => one !== against[0])?.id : undefined;
}

/** The answer in hand that the text means for certain. */
export function readChoice(turn: Turn): Understood | undefined {
  const check = optionsInHand(turn);
  if (check === undefined) return undefined;
  const { form } = check.check;
  if (form.kind === 'choice' && form.several) {
    const { lexicon } = turn.listener;
    const parts = turn.clauses.slice(0, mostClauses).map((clause) => hearTokens(clause, lexicon));
    const chosen = chooseSeveral(parts, check, lexicon);
    return chosen.length === 0 ? undefined : answers([{ check: check.id, value: chosen }]);
  }
  // "A few years" is no figure, and does not say which side of a bound it is on.
  if (form.kind === 'reading' && isVague(turn)) return undefined;
  const choice = chooseOption(turn.heard, check);
  if (choice.type !== 'one') return undefined;
  return answers([{ check: check.id, value: [choice.fit.id] }, ...saidOfTime(turn)]);
}

/** Weeks and months that have passed tell as surely as this what happened before. */
const sureOfTime = 0.6;

/** What weeks or months tell beside an answer: "after three weeks standing". */
function saidOfTime({ tokens, heard, inHand, listener: { lexicon } }: Turn): AnswerInput[] {
  const isLong = spellNumbers(tokens, lexicon.numbers).some(
    (_, at, all) =>
      all[at - 1]?.kind === 'number' &&
      ['wk', 'mo'].includes(lexicon.readUnit(all, at)?.code ?? ''),
  );
  if (!isLong) return [];
  return [...lexicon.checks.values()].flatMap((check) => {
    const isOfBefore = check.check.at === 'memory' && check.isWellHeard && isOfSeveral(check);
    if (check === inHand || !isOfBefore || isOfKit(check)) return [];
    const { id, share } = likeliest(heard, check);
    return share < sureOfTime || id === undefined ? [] : [{ check: check.id, value: [id] }];
  });
}

/** True where something is said to be a few, or a couple. */
export function isVague({ tokens, listener }: Turn): boolean {
  return hasPhrase(tokens, listener.lexicon.words.vague);
}

/** The answers in hand that the text comes close to. */
export function readClose(turn: Turn): Understood | undefined {
  const check = optionsInHand(turn);
  const choice = check === undefined ? undefined : chooseOption(turn.heard, check);
  if (check === undefined || choice?.type !== 'close') return undefined;
  return offersOf(choice.fits.map((fit) => ({ check, fit })));
}
