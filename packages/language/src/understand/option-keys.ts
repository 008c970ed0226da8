import type { Token } from '../typed/token.ts';
import type { Words } from '../words/words.ts';

/**
 * The numbers of options in a text that holds nothing else: "2", "option 2", "the second",
 * "1, 3", "1 3", "1,3". Undefined where anything else is said.
 */
export function readKeys(
  text: string,
  tokens: readonly Token[],
  words: Words,
): number[] | undefined {
  const digits = readDigits(text);
  if (digits !== undefined) return digits;
  const keys: number[] = [];
  for (const token of tokens) {
    if (token.kind === 'number' && token.decimals === 0) keys.push(token.value);
    else if (token.kind === 'word') {
      const key = keyOf(token.text, words);
      if (key !== undefined) keys.push(key);
      else if (!words.optionWords.includes(token.text)) return undefined;
    } else if (token.kind === 'mark' && separators.includes(token.text)) continue;
    else return undefined;
  }
  return keys.length === 0 ? undefined : keys;
}

const separators = ',;.)(#&+:-';

/** Numbers with nothing but separators between them, where "1,3" is two of them. */
function readDigits(text: string): number[] | undefined {
  const keys: number[] = [];
  let key = '';
  let before = '';
  for (const character of `${text} `) {
    const isDigit = character >= '0' && character <= '9';
    // "1.2" is a figure; "1. 2." are two options.
    if (isDigit && before === '.' && keys.length > 0) return undefined;
    before = character;
    if (isDigit) key += character;
    else if (separators.includes(character) || character.trim() === '') {
      if (key !== '') keys.push(Number(key));
      key = '';
    } else return undefined;
  }
  return keys.length === 0 ? undefined : keys;
}

function keyOf(word: string, { ordinals, cardinals, optionWords }: Words): number | undefined {
  if (Object.hasOwn(ordinals, word)) return ordinals[word];
  if (optionWords.includes(word)) return undefined;
  return Object.hasOwn(cardinals, word) ? cardinals[word] : undefined;
}
