/**
 * The texts of a flow in two parts, as a page carries them: what is told, and how people say things,
 * which is as much again and wanted only once somebody types.
 */
import type { FlowTexts, ToldTexts } from '@keyturn/language';

/** A part of the texts: the ids that lead to them, and lists of phrases. */
interface Tree {
  readonly [key: string]: Tree | string | readonly string[];
}

/** How people say things: the texts without all else. */
export type SaidTexts = Tree;

/** What holds phrases that people say. */
const saidKeys = ['said', 'unless'];

/** Parts the texts of a flow. */
export function partTexts(texts: FlowTexts): {
  readonly told: ToldTexts;
  readonly said: SaidTexts;
} {
  const tree = texts as unknown as Tree;
  return { told: toldOf(tree) as unknown as ToldTexts, said: saidOf(tree) };
}

/** The texts of a flow as they were before they were parted. */
export function joinTexts(told: ToldTexts, said: SaidTexts): FlowTexts {
  return joined(told as unknown as Tree, said) as unknown as FlowTexts;
}

function toldOf(tree: Tree): Tree {
  return Object.fromEntries(
    Object.entries(tree)
      .filter(([key, value]) => !isSaid(key, value))
      .map(([key, value]) => [key, isTree(value) ? toldOf(value) : value]),
  );
}

function saidOf(tree: Tree): Tree {
  return Object.fromEntries(
    Object.entries(tree).flatMap(([key, value]): [string, Tree[string]][] => {
      if (isSaid(key, value)) return [[key, value]];
      if (!isTree(value)) return [];
      const said = saidOf(value);
      return Object.keys(said).length === 0 ? [] : [[key, said]];
    }),
  );
}

function joined(told: Tree, said: Tree): Tree {
  const more = Object.entries(said).map(([key, value]): [string, Tree[string]] => {
    const to = told[key];
    return [key, isTree(to) && isTree(value) ? joined(to, value) : value];
  });
  return { ...told, ...Object.fromEntries(more) };
}

function isSaid(key: string, value: Tree[string]): boolean {
  return saidKeys.includes(key) && Array.isArray(value);
}

function isTree(value: Tree[string] | undefined): value is Tree {
  return typeof value === 'object' && !Array.isArray(value);
}
