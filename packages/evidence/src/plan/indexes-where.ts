/** The numbers from 0 to below `count` for which something holds, ascending. */
export function indexesWhere(count: number, holds: (index: number) => boolean): readonly number[] {
  const indexes: number[] = [];
  for (let index = 0; index < count; index += 1) if (holds(index)) indexes.push(index);
  return indexes;
}
