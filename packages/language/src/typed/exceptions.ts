import type { Words } from '../words/words.ts';
import type { Token } from './token.ts';

/**
 * What is denied with an exception is said of that: "je n'ai qu'une lampe" and "nie mam nic oprócz
 * próbówki" have one. The tokens without the words that deny and except. Any other word between
 * them says something else: "n'entends rien parce que", "no estoy a salvo".
 */
export function withoutExceptions(
  tokens: readonly Token[],
  { exceptives }: Pick<Words, 'exceptives'>,
): readonly Token[] {
  if (exceptives === undefined) return tokens;
  const { behind, between, words } = exceptives;
  const said = tokens.map((token) => (token.kind === 'word' ? token.text : ''));
  const isOf = (some: readonly string[], at: number): boolean => some.includes(said[at] ?? '');
  const left = new Set<number>();
  said.forEach((_, from) => {
    if (!isOf(behind, from)) return;
    let at = from + 1;
    while (isOf(behind, at) || isOf(between, at)) at += 1;
    if (!isOf(words, at) || (said[at + 1] ?? '') === '') return;
    for (let one = from; one <= at; one += 1) if (!isOf(between, one)) left.add(one);
  });
  return tokens.filter((_, at) => !left.has(at));
}
