import { createHash } from 'node:crypto';
import { existsSync, readdirSync, statSync } from 'node:fs';
import path from 'node:path';

/** Folders that hold the packages of the workspace. */
const shelves = ['packages', 'adapters'];

/** The folder of every package that is built, relative to the root, in a fixed order. */
export function packagePlaces(root) {
  return shelves.flatMap((shelf) =>
    readdirSync(path.join(root, shelf))
      .sort()
      .map((name) => path.join(shelf, name))
      .filter((place) => existsSync(path.join(root, place, 'tsconfig.json'))),
  );
}

/** Whether every package has been built once and its output not been deleted since. */
export function hasOutputs(root) {
  return packagePlaces(root).every((place) => existsSync(path.join(root, place, 'dist')));
}

/**
 * A short text that changes with the name, size or time of anything a build depends on: the
 * sources and settings of each package, the flows, the pages and the compiler.
 */
export function sourceFingerprint(root) {
  const files = [
    'node_modules/typescript/package.json',
    'tsconfig.json',
    'tsconfig.base.json',
    'tools/page-parts.mjs',
    'tools/build-element.mjs',
    'tools/build-counter.mjs',
    'tools/build-desk.mjs',
    // What the pages are built from beside their sources.
    ...filesIn(root, 'flows'),
    ...filesIn(root, 'adapters/element/pages'),
    ...filesIn(root, 'adapters/desk/pages'),
    ...packagePlaces(root).flatMap((place) => [
      path.join(place, 'package.json'),
      path.join(place, 'tsconfig.json'),
      ...sourceFiles(root, path.join(place, 'src')),
    ]),
  ];
  const hash = createHash('sha256');
  for (const file of files) {
    const { size, mtimeMs } = statSync(path.join(root, file));
    hash.update(`${file} ${size} ${mtimeMs}\n`);
  }
  return hash.digest('hex');
}

function sourceFiles(root, folder) {
  return filesIn(root, folder).filter(
    (name) => /\.(?:ts|json)$/.test(name) && !name.endsWith('.test.ts'),
  );
}

function filesIn(root, folder) {
  return readdirSync(path.join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(root, path.join(entry.parentPath, entry.name)))
    .sort();
}
