/**
 * Errors as they may be written down: without the token, and without what people wrote.
 */
import { BotError, GrammyError, HttpError } from 'grammy';

/** One line about an error. */
export function describeError(error: unknown, token: string): string {
  return textOf(error).replaceAll(token, '<token>').replaceAll(/\s+/g, ' ');
}

function textOf(error: unknown): string {
  if (error instanceof BotError) return textOf(error.error);
  if (error instanceof GrammyError) {
    return `${error.method}: ${String(error.error_code)} ${error.description}`;
  }
  if (error instanceof HttpError) return `${error.message} ${textOf(error.error)}`;
  return error instanceof Error ? error.message : String(error);
}
