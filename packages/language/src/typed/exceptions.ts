import type { Words } from '../words/words.ts';
import type { Token } from './token.ts';

/** So many words stand at most between what denies and what excepts from it. */
const farthest = 4;

/**
 * What is denied with an exception is said of that: "je n'ai qu'une lampe" and "nie mam nic oprócz
 * próbówki" have one. The tokens without the words that deny and except.
 */
export function withoutExceptions(
  tokens: readonly Token[],
  { exceptives, negators }: Pick<Words, 'exceptives' | 'negators'>,
): readonly Token[] {
  if (exceptives === undefined) return tokens;
  const said = tokens.map((token) => (token.kind === 'word' ? token.text : ''));
  const wordAt = (at: number): string => said[at] ?? '';
  const left = new Set<number>();
  tokens.forEach((_, from) => {
    if (!exceptives.behind.includes(wordAt(from))) return;
    const denying = [from];
    for (let at = from + 1; at <= from + farthest && wordAt(at) !== ''; at += 1) {
      if (exceptives.words.includes(wordAt(at))) {
        if (wordAt(at + 1) !== '') for (const one of [...denying, at]) left.add(one);
        return;
      }
      if (exceptives.behind.includes(wordAt(at))) denying.push(at);
      else if (negators.includes(wordAt(at))) return;
    }
  });
  return tokens.filter((_, at) => !left.has(at));
}
