import path from 'node:path';
import { build } from 'esbuild';
import { describe, expect, test } from 'vitest';

const root = path.join(import.meta.dirname, '..');

/** Bundles a module for a page, nothing left outside, and tells what went in. */
async function bundle(contents: string): Promise<{ inputs: string[]; imports: string[] }> {
  const { metafile } = await build({
    stdin: { contents, resolveDir: root, sourcefile: 'page.js' },
    bundle: true,
    platform: 'browser',
    format: 'esm',
    target: 'es2022',
    // xstate comes as CommonJS, a third larger, when `module` is not named.
    conditions: ['source', 'module', 'browser'],
    metafile: true,
    write: false,
    logLevel: 'silent',
  });
  const imports = Object.values(metafile.outputs).flatMap((output) => output.imports);
  return { inputs: Object.keys(metafile.inputs), imports: imports.map((each) => each.path) };
}

describe('a page can run', () => {
  test.each(['electrics', 'evidence', 'core', 'language', 'conversation', 'drawings', 'sheets'])(
    'all of %s',
    async (name) => {
      const { inputs, imports } = await bundle(`export * from './packages/${name}/src/index.ts'`);

      expect(inputs).toContain(`packages/${name}/src/index.ts`);
      expect(imports).toEqual([]);
    },
  );

  test('nothing that needs Node, so that this test can fail', async () => {
    await expect(bundle(`export * from 'node:fs'`)).rejects.toThrow(/Could not resolve "node:fs"/);
  });
});
