import type { AnswerInput } from '@keyturn/core';
import { chooseOption } from './choices.ts';
import { findPhrase, hear, hearTokens } from '../typed/heard.ts';
import type { CheckPhrases, Lexicon } from './lexicon.ts';
import { hasPhrase } from '../readings/word-run.ts';
import { answeredBefore, leadOf } from './put-right.ts';
import { figureWordsOf } from '../words/words.ts';
import { readLine } from '../readings/readings-line.ts';
import { lastReading, lineContext, ofDoubt, ofLine } from './said-figures.ts';
import { volunteered } from './volunteered.ts';
import type { Token } from '../typed/token.ts';
import { type Turn, answers, input, isAsked, unclear } from './turn.ts';
import type { Understood } from './understood.ts';

/** "correction: rest 12.1"; "correct" alone is a yes. */
export function readCorrection(turn: Turn): Understood | undefined {
  const { tokens, listener, hearing } = turn;
  const { lexicon } = listener;
  // "It should be 12.6 but is 12.2" corrects nothing.
  const { expected } = figureWordsOf(lexicon.words);
  const figures = tokens.filter(({ kind }) => kind === 'number');
  if (figures.length > 1 && hasPhrase(tokens, expected)) return undefined;
  const rest = behindCorrection(tokens, lexicon);
  if (rest === undefined) return undefined;
  const asked = askedFigure(turn, rest);
  if (asked !== undefined) return answers(asked);
  const line = readLine(rest, lineContext(turn, lastReading(turn)));
  if (line.type === 'readings') {
    return input([{ type: 'correction', answers: line.readings }], 'correction');
  }
  if (line.type === 'doubtful') return ofDoubt(turn, line);
  const said = hearTokens(rest, lexicon);
  const named = namedChoice(rest, lexicon);
  if (named !== undefined) {
    return input([{ type: 'correction', answers: [named] }], 'correction');
  }
  const [found, more] = volunteered(said, turn, hearing.answered);
  if (found !== undefined && more === undefined) {
    const value = [found.fit.id];
    return input(
      [{ type: 'correction', answers: [{ check: found.check.id, value }] }],
      'correction',
    );
  }
  const before = answeredBefore(rest, turn);
  if (before !== undefined) return input([{ type: 'correction', answers: [before] }], 'correction');
  if (said.at.length === 0 && hearing.awaiting !== 'answer') return undefined;
  // "Mixed up the pumps, put in 30 litres of petrol" tells what is wrong, where nothing was asked.
  if (line.type === 'unclear')
    return hearing.check === null ? undefined : ofLine(turn, line, 'correction');
  // "wrong" or "change" may begin any other sentence.
  return said.at.length === 0 ? takenBack(turn) : undefined;
}

/** That the last answer was wrong, and no more: it is asked once more. */
function takenBack(turn: Turn): Understood {
  return turn.hearing.answered.length === 0
    ? unclear(turn, 'which-check', 'correction')
    : input([{ type: 'talk', talk: 'back' }], 'correction');
}

/** What stands behind the words of a correction that a text begins with: "no wait, I meant 12.1". */
function behindCorrection(
  tokens: readonly Token[],
  lexicon: Lexicon,
): readonly Token[] | undefined {
  const heard = hearTokens(tokens, lexicon);
  const lengths = lexicon.corrections
    .filter((phrase) => findPhrase(heard, phrase) === 0)
    .map(({ length }) => length);
  if (lengths.length > 0) return dropTerms(tokens, Math.max(...lengths), lexicon);
  const lead = leadOf(tokens, lexicon);
  return lead === 0 ? undefined : behindCorrection(tokens.slice(lead), lexicon);
}

/**
 * The figure of the question in hand, where it has none yet and the last that was read is of another
 * unit: "sorry, I meant 12.4" behind the air temperature.
 */
function askedFigure(turn: Turn, rest: readonly Token[]): readonly AnswerInput[] | undefined {
  const { inHand, hearing } = turn;
  const last = lastReading(turn);
  if (!isAsked(turn) || inHand === undefined || hearing.answered.includes(inHand.id))
    return undefined;
  if (last !== inHand && unitOf(last) === unitOf(inHand)) return undefined;
  const line = readLine(rest, lineContext(turn, inHand));
  const isOwn = line.type === 'readings' && line.readings.every(({ check }) => check === inHand.id);
  return isOwn ? line.readings : undefined;
}

function unitOf(check: CheckPhrases | undefined): string | undefined {
  const form = check?.check.form;
  return form?.kind === 'reading' ? form.unit : undefined;
}

/** A choice under its check's name: "complaint silent", "the complaint was silent". */
function namedChoice(tokens: readonly Token[], lexicon: Lexicon): AnswerInput | undefined {
  const { reader, vocabulary, checks } = lexicon;
  const literal = hear(reader.literally(tokens), vocabulary);
  for (const check of checks.values()) {
    const ends = check.names
      .map((name) => ({ at: findPhrase(literal, name), length: name.length }))
      .filter(({ at }) => at === 0 || at === 1)
      .map(({ at, length }) => at + length);
    if (ends.length === 0 || check.check.form.kind !== 'choice') continue;
    const rest = dropWords(tokens, Math.max(...ends));
    const choice = chooseOption(hearTokens(rest, lexicon), check);
    if (choice.type === 'one') return { check: check.id, value: [choice.fit.id] };
  }
  return undefined;
}

/** The tokens behind the first so many words. */
function dropWords(tokens: readonly Token[], count: number): readonly Token[] {
  let left = count;
  const end = tokens.findIndex((token) => {
    if (token.kind !== 'mark') left -= 1;
    return left === 0;
  });
  return tokens.slice(end + 1);
}

/** The tokens behind the first so many terms; small words alone, as "that was", are none. */
function dropTerms(tokens: readonly Token[], count: number, { reader }: Lexicon): readonly Token[] {
  const first = reader.fromTokens(tokens).slice(0, count);
  let end = 1;
  const isBehind = (): boolean => {
    const terms = reader.fromTokens(tokens.slice(0, end));
    return first.every((term, at) => terms[at] === term);
  };
  while (end < tokens.length && !isBehind()) end += 1;
  return tokens.slice(end);
}
