import type { AnswerInput } from '@keyturn/core';
import { hearTokens, type Heard } from '../typed/heard.ts';
import type { Token } from '../typed/token.ts';
import { hasPhrase, phraseAt } from '../readings/word-run.ts';
import { figureWordsOf } from '../words/words.ts';
import { chooseOption } from './choices.ts';
import type { Lexicon } from './lexicon.ts';
import { type Turn, input } from './turn.ts';
import type { Understood } from './understood.ts';
import { namesCheck } from './volunteered.ts';

/** An answer before that a text puts right without saying so: "no wait, it is an automatic". */
export function readPutRight(turn: Turn): Understood | undefined {
  const { tokens, listener } = turn;
  const { lexicon } = listener;
  let start = 0;
  for (let lead = leadOf(tokens, lexicon); lead > 0; lead = leadOf(tokens.slice(start), lexicon))
    start += lead;
  const { talk } = lexicon.words;
  const isCalledOff = hasPhrase(
    tokens.slice(0, start),
    figureWordsOf(lexicon.words).instead.filter((phrase) => !talk.no.includes(phrase)),
  );
  const answer = isCalledOff ? answeredBefore(tokens.slice(start), turn) : undefined;
  return answer === undefined
    ? undefined
    : input([{ type: 'correction', answers: [answer] }], 'correction');
}

/**
 * The one answer of another question that these words put another in the place of. Nothing where
 * they may answer the question in hand, or hold a figure.
 */
export function answeredBefore(
  tokens: readonly Token[],
  { heard, hearing, inHand, listener: { lexicon } }: Turn,
): AnswerInput | undefined {
  const said = hearTokens(tokens, lexicon);
  if (said.at.length === 0 || tokens.some(({ kind }) => kind === 'number')) return undefined;
  const isAnswer = (text: Heard): boolean =>
    inHand !== undefined && chooseOption(text, inHand).type === 'one';
  if (isAnswer(heard) || isAnswer(said)) return undefined;
  const found = hearing.answered.flatMap((id) => {
    const check = lexicon.checks.get(id);
    if (check === undefined || check.check.form.kind !== 'choice') return [];
    const isKnown = check.check.at === 'memory' || check.check.at === 'seat';
    if (!isKnown && !namesCheck(said, check)) return [];
    const choice = chooseOption(said, check);
    const isOther = choice.type === 'one' && hearing.said?.[id]?.includes(choice.fit.id) !== true;
    return isOther && choice.fit.id !== 'none' ? [{ check: id, value: [choice.fit.id] }] : [];
  });
  return found.length === 1 ? found[0] : undefined;
}

/** How many tokens stand before what is said: a mark, a no, a "wait". */
export function leadOf(tokens: readonly Token[], { words, talk, reader }: Lexicon): number {
  const [first] = tokens;
  if (first === undefined) return 0;
  const [term] = reader.literally([first]);
  const isNo = talk.no.literal.some(([word, ...more]) => more.length === 0 && word === term);
  return first.kind === 'mark' || isNo ? 1 : phraseAt(tokens, 0, figureWordsOf(words).instead);
}
