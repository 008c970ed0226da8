/** The texts of a file by their keys: `checks.dash.answers.dim.label`. */
export type FlatTexts = ReadonlyMap<string, string>;

/** What people say is written anew in every language, and is no translation. */
const ownToLanguage = ['said', 'unless'];

/** Lays a tree of texts out flat; lists are texts of their own, by their places. */
export function flattenTexts(tree: unknown, key = ''): FlatTexts {
  if (typeof tree === 'string') return new Map([[key, tree]]);
  if (tree === null || typeof tree !== 'object') return new Map();
  return new Map(
    Object.entries(tree)
      .filter(([name]) => !ownToLanguage.includes(name))
      .flatMap(([name, value]) => [...flattenTexts(value, key === '' ? name : `${key}.${name}`)]),
  );
}
