/**
 * What went wrong: a text that does not exist, a text whose placeholder was not filled, a unit
 * that has no sign, or a locale that has no texts.
 */
export type LanguageErrorCode =
  'text-missing' | 'placeholder-missing' | 'unit-unknown' | 'locale-unknown';

/**
 * Misuse of this package or unfinished texts: the only error that it throws.
 *
 * `key` names the text, the unit or the locale that was looked for. The message is for a
 * developer and is never shown to a user.
 */
export class LanguageError extends Error {
  override readonly name: string = 'LanguageError';
  readonly code: LanguageErrorCode;
  readonly key: string;

  constructor(code: LanguageErrorCode, key: string) {
    super(`${code}: ${key}`);
    this.code = code;
    this.key = key;
  }
}
