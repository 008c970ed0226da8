import type { Check } from './flow.ts';

/** The fields of the context that an answer to a check fills, by dotted path. */
export function fieldsFilled({ writes, sets }: Check): readonly string[] {
  return [...(writes === undefined ? [] : [writes]), ...Object.values(sets).flatMap(Object.keys)];
}
