import { EvidenceError } from '../evidence-error.ts';

/**
 * The position of each name.
 *
 * @throws EvidenceError `duplicate-id`
 */
export function indexNames(
  what: string,
  entries: readonly { readonly id: string }[],
): ReadonlyMap<string, number> {
  const positions = new Map<string, number>();
  entries.forEach(({ id }, position) => {
    if (positions.has(id)) {
      throw new EvidenceError('duplicate-id', `${what} "${id}" is there twice: rename one`, {
        what,
        id,
      });
    }
    positions.set(id, position);
  });
  return positions;
}

/**
 * The position of a name.
 *
 * @throws EvidenceError `unknown-id`, saying what was named where
 */
export function namedIndex(
  positions: ReadonlyMap<string, number>,
  named: { readonly what: string; readonly id: string; readonly where: string },
): number {
  const position = positions.get(named.id);
  if (position !== undefined) return position;
  throw new EvidenceError(
    'unknown-id',
    `${named.where} names the ${named.what} "${named.id}", which does not exist`,
    named,
  );
}
