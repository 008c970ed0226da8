import type { AnswerInput } from '@keyturn/core';
import { chooseOption } from './choices.ts';
import { type Heard, findPhrase, hear, hearTokens, means } from '../typed/heard.ts';
import type { Lexicon } from './lexicon.ts';
import { hasPhrase } from '../readings/word-run.ts';
import { figureWordsOf } from '../words/words.ts';
import { readLine } from '../readings/readings-line.ts';
import { lastReading, lineContext, ofDoubt, ofLine } from './said-figures.ts';
import { volunteered } from './volunteered.ts';
import type { Token } from '../typed/token.ts';
import { type Turn, input, unclear } from './turn.ts';
import type { Understood } from './understood.ts';

/** "correction: rest 12.1"; "correct" alone is a yes. */
export function readCorrection(turn: Turn): Understood | undefined {
  const { heard, tokens, listener, hearing } = turn;
  const { lexicon } = listener;
  // "It should be 12.6 but is 12.2" corrects nothing.
  const { expected } = figureWordsOf(lexicon.words);
  const figures = tokens.filter(({ kind }) => kind === 'number');
  if (figures.length > 1 && hasPhrase(tokens, expected)) return undefined;
  // "no, I meant 12.1": a word may stand before it.
  const ends = lexicon.corrections
    .map((phrase) => ({ at: findPhrase(heard, phrase), length: phrase.length }))
    .filter(({ at }) => at === 0 || (at === 1 && isNo(heard, lexicon)))
    .map(({ at, length }) => at + length);
  if (ends.length === 0) return undefined;
  const length = Math.max(...ends);
  const rest = dropTerms(tokens, length, lexicon);
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
  if (said.at.length === 0 && hearing.awaiting !== 'answer') return undefined;
  if (line.type === 'unclear') return ofLine(turn, line, 'correction');
  // "wrong" or "change" may begin any other sentence.
  return said.at.length === 0 ? unclear(turn, 'which-check', 'correction') : undefined;
}

function isNo({ at }: Heard, { talk }: Lexicon): boolean {
  return talk.no.said.some(([first, ...more]) => more.length === 0 && means(at[0], first ?? ''));
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

/** The tokens behind the first so many terms. */
function dropTerms(tokens: readonly Token[], count: number, { reader }: Lexicon): readonly Token[] {
  let end = 1;
  while (end < tokens.length && reader.fromTokens(tokens.slice(0, end)).length < count) end += 1;
  return tokens.slice(end);
}
