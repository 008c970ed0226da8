import { hasFigure } from '../numbers/numbers.ts';
import type { Token } from '../typed/token.ts';
import type { Lexicon } from '../understand/lexicon.ts';
import { figureWordsOf } from '../words/words.ts';
import { phraseAt } from './word-run.ts';

/** The second figure begins so many tokens behind "between" at most. */
const mostBetween = 6;

/** So many tokens may begin a figure: a sign, an article. */
const mostBegins = 2;

/** The tokens with an "or" in "between 8 and 10": it was one of the two at most, and no 8.10. */
export function betweenTwo(tokens: readonly Token[], lexicon: Lexicon): readonly Token[] {
  const { between } = figureWordsOf(lexicon.words);
  const [or] = lexicon.words.alternatives ?? [];
  if (or === undefined) return tokens;
  for (let at = 0; at < tokens.length; at += 1) {
    const length = phraseAt(tokens, at, between);
    const join = length === 0 ? -1 : joinBehind(tokens, at + length, lexicon);
    const joining = tokens[join];
    if (joining?.kind !== 'word') continue;
    const bare = lexicon.reader.unjoined(joining.text);
    const behind: readonly Token[] = bare === joining.text ? [] : [{ ...joining, text: bare }];
    return [
      ...tokens.slice(0, join),
      { kind: 'word', text: or },
      ...behind,
      ...tokens.slice(join + 1),
    ];
  }
  return tokens;
}

/** Where "and" stands between two figures; -1 where it does not. */
function joinBehind(
  tokens: readonly Token[],
  start: number,
  { words, reader, numbers }: Lexicon,
): number {
  const joins = [...words.joins, ...words.clauseBreaks, ...figureWordsOf(words).onto];
  return tokens.findIndex((token, at) => {
    if (token.kind !== 'word' || at <= start || at > start + mostBetween) return false;
    const bare = reader.unjoined(token.text);
    if (!joins.includes(token.text) && bare === token.text) return false;
    const second = bare === token.text ? [] : [{ ...token, text: bare }];
    return (
      hasFigure(tokens.slice(start, at), numbers) &&
      hasFigure([...second, ...tokens.slice(at + 1, at + 1 + mostBegins)], numbers)
    );
  });
}
