/**
 * What becomes of a message that could not be sent. Pure.
 */
import { GrammyError, HttpError } from 'grammy';

/** What to do about it. */
export type Fate =
  /** To be tried again after so many milliseconds. */
  | { readonly type: 'again'; readonly afterMs: number }
  /** Not to be tried again, and nobody's fault: the person has gone. */
  | { readonly type: 'gone' }
  /** Not to be tried again: something is wrong with it. */
  | { readonly type: 'refused' };

const [firstMs, longestMs] = [500, 600_000];

/** After so many attempts, spread over some hours, what was to be said is of no use any more. */
const mostAttempts = 30;

/** Tells what becomes of a message after an error; `attempts` were made before this one. */
export function fateOf(error: unknown, attempts: number): Fate {
  if (error instanceof GrammyError) {
    const { error_code: code, parameters } = error;
    if (code === 403) return { type: 'gone' };
    if (code === 429 && parameters.retry_after !== undefined) {
      return { type: 'again', afterMs: parameters.retry_after * 1000 };
    }
    if (code === 400) return { type: 'refused' };
  }
  const isPassing = error instanceof GrammyError || error instanceof HttpError;
  if (!isPassing || attempts >= mostAttempts) return { type: 'refused' };
  return { type: 'again', afterMs: Math.min(longestMs, firstMs * 2 ** attempts) };
}

/** True where a message could not be edited as there is nothing to change in it. */
export function isUnchanged(error: unknown): boolean {
  return error instanceof GrammyError && /message is not modified/.test(error.description);
}

/** True where the message to be edited is not there any more, or too old to be edited. */
export function isUneditable(error: unknown): boolean {
  return (
    error instanceof GrammyError &&
    /message to edit not found|message can't be edited/.test(error.description)
  );
}
