import type { Api } from 'grammy';

/** A signal as the client of the Bot API wants it: the platform's own, of another declaration. */
export function apiSignal(signal: AbortSignal): NonNullable<Parameters<Api['getMe']>[0]> {
  return signal as unknown as NonNullable<Parameters<Api['getMe']>[0]>;
}
