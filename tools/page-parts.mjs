import { cpSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { minify } from 'terser';

// What every built page is made of: the flows, their texts, scripts in one file, the typeface.

/** The folder of this checkout. */
export const root = fileURLToPath(new URL('..', import.meta.url));

/** A module of a built package. */
export const built = (file) => import(pathToFileURL(path.join(root, file)).href);

/** Every flow by its id, loaded and checked. */
export async function readFlows() {
  const { loadFlow, prettifyIssues } = await built('packages/core/dist/load.js');
  return Object.fromEntries(
    readdirSync(path.join(root, 'flows')).map((name) => {
      const folder = path.join(root, 'flows', name);
      const result = loadFlow(
        readdirSync(folder)
          .filter((file) => file.endsWith('.yaml'))
          .sort()
          .map((file) => ({
            path: `flows/${name}/${file}`,
            text: readFileSync(path.join(folder, file), 'utf8'),
          })),
      );
      if (result.type === 'issues') throw new Error(prettifyIssues(result.issues));
      return [name, result.flow];
    }),
  );
}

/** The texts of every flow that has some in this language. */
export function textsIn(tag) {
  const files = readdirSync(path.join(root, 'flows')).map((name) => [
    name,
    path.join(root, 'flows', name, 'texts', `${tag}.json`),
  ]);
  return Object.fromEntries(
    files
      .filter(([, file]) => statSync(file, { throwIfNoEntry: false }))
      .map(([name, file]) => [name, JSON.parse(readFileSync(file, 'utf8'))]),
  );
}

/** JSON that a script reads at once; parsing a text is quicker than reading a large literal. */
export const parsed = (value) =>
  `JSON.parse('${JSON.stringify(value).replaceAll('\\', '\\\\').replaceAll("'", "\\'")}')`;

/** Bundles a script into one file. */
export function bundle(outfile, contents) {
  return build({
    stdin: { contents, resolveDir: root, sourcefile: path.basename(outfile) },
    outfile,
    bundle: true,
    minify: true,
    format: 'esm',
    platform: 'browser',
    target: 'es2022',
    charset: 'utf8',
    // xstate comes as CommonJS, a third larger, when `module` is not named.
    conditions: ['module', 'browser'],
    define: { 'process.env.NODE_ENV': '"production"' },
    legalComments: 'none',
    logLevel: 'warning',
  });
}

/**
 * Makes a bundled script smaller still, which takes as long as all else: terser uses the same short
 * names in every function, where esbuild goes on to longer ones, and gzip makes 5 % more of that.
 */
export async function tighten(file) {
  // What one pass leaves, the next shortens further.
  const how = { module: true, ecma: 2022, compress: { passes: 3 } };
  const { code } = await minify(readFileSync(file, 'utf8'), how);
  writeFileSync(file, code);
}

/** Puts the typeface with its licence into a folder. */
export function copyTypeface(to) {
  const from = path.join(root, 'node_modules/@fontsource/atkinson-hyperlegible');
  mkdirSync(to, { recursive: true });
  for (const file of readdirSync(path.join(from, 'files'))) {
    if (/(?:latin|latin-ext)-(?:400|700)-normal\.woff2$/.test(file)) {
      cpSync(path.join(from, 'files', file), path.join(to, file));
    }
  }
  cpSync(path.join(from, 'LICENSE'), path.join(to, 'LICENSE'));
}
