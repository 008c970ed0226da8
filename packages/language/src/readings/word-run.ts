import type { Token } from '../typed/token.ts';

/** Tokens as a line of text. */
export function textOf(tokens: readonly Token[]): string {
  return tokens
    .map((token) =>
      token.kind === 'number' ? `${token.value < 0 ? '-' : ''}${token.digits}` : token.text,
    )
    .join(' ');
}

/** A phrase of this language has so many words at most. */
const longestPhrase = 6;

/** True where one of the phrases ends right before this place. */
export function endsWithPhrase(
  tokens: readonly Token[],
  end: number,
  phrases: readonly string[],
): boolean {
  if (phrases.length === 0) return false;
  const before = textOf(tokens.slice(Math.max(end - longestPhrase, 0), end));
  return phrases.some((phrase) => before === phrase || before.endsWith(` ${phrase}`));
}

/** How many tokens the longest of the phrases takes that begins at this place; 0 for none. */
export function phraseAt(
  tokens: readonly Token[],
  start: number,
  phrases: readonly string[],
): number {
  // Hardly any phrase begins as the text does here.
  const first = textOf(tokens.slice(start, start + 1));
  if (!phrases.some((phrase) => phrase.startsWith(first))) return 0;
  for (let length = Math.min(longestPhrase, tokens.length - start); length > 0; length -= 1) {
    if (phrases.includes(textOf(tokens.slice(start, start + length)))) return length;
  }
  return 0;
}

/** True where one of the phrases stands somewhere among the tokens. */
export function hasPhrase(tokens: readonly Token[], phrases: readonly string[]): boolean {
  return tokens.some((_, at) => phraseAt(tokens, at, phrases) > 0);
}

/** True where a word has one of the stems. */
export function hasStem(words: readonly Token[], stems: readonly string[]): boolean {
  return words.some(
    (token) => token.kind === 'word' && stems.some((stem) => token.text.includes(stem)),
  );
}

/** True where one of the phrases stands among the tokens, or a word that has one of them in it. */
export function hasWord(tokens: readonly Token[], said: readonly string[]): boolean {
  return hasPhrase(tokens, said) || hasStem(tokens, said);
}

/** The tokens without the phrases among them. */
export function withoutPhrases(
  tokens: readonly Token[],
  phrases: readonly string[],
): readonly Token[] {
  const kept: Token[] = [];
  for (let at = 0; at < tokens.length; at += 1) {
    const length = phraseAt(tokens, at, phrases);
    const token = tokens[at];
    if (length > 0) at += length - 1;
    else if (token !== undefined) kept.push(token);
  }
  return kept;
}

/** The same where anything else is said: "automatic by the way". */
export function leavingOut(tokens: readonly Token[], phrases: readonly string[]): readonly Token[] {
  const rest = withoutPhrases(tokens, phrases);
  return isBlank(rest) ? tokens : rest;
}

/** True where nothing stands but marks. */
export function isBlank(tokens: readonly Token[]): boolean {
  return tokens.every(({ kind }) => kind === 'mark');
}
