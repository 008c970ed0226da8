import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import extractDepcruiseOptions from 'dependency-cruiser/config-utl/extract-depcruise-options';
import { describe, expect, onTestFinished, test, vi } from 'vitest';

// Every module is looked through, which a machine busy with other tests may take long over.
vi.setConfig({ testTimeout: 60_000 });

const root = path.join(import.meta.dirname, '..');
const rules = await extractDepcruiseOptions(path.join(root, '.dependency-cruiser.mjs'));

async function cruiseFrom(baseDir: string): Promise<ICruiseResult> {
  const { output } = await cruise(['packages', 'adapters'], { ...rules, baseDir });
  if (typeof output === 'string') throw new Error(output);
  return output;
}

/** A workspace of one-line files in a temporary folder, gone when the test has ended. */
function plantWorkspace(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'keyturn-rooms-'));
  onTestFinished(() => {
    rmSync(folder, { recursive: true, force: true });
  });
  for (const shelf of ['packages', 'adapters']) mkdirSync(path.join(folder, shelf));
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(path.join(folder, path.dirname(name)), { recursive: true });
    writeFileSync(path.join(folder, name), text);
  }
  return folder;
}

describe('the rooms of the workspace', () => {
  test('hold for every module', async () => {
    const { modules, summary } = await cruiseFrom(root);

    expect(
      summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`),
    ).toEqual([]);
    // A compiler without its programming interface makes the cruiser see no module and no fault.
    const ours = modules.filter(({ source }) => /^(?:packages|adapters)\/.+\.ts$/.test(source));
    expect(ours.length).toBeGreaterThan(30);
  });

  const face = 'export const face = 1;\n';
  const importing = (place: string) => `import { face } from '${place}';\nexport const x = face;\n`;

  test.each([
    {
      rule: 'electrics-keeps-to-its-room',
      from: 'packages/electrics/src/index.ts',
      to: '../../core/src/index.ts',
    },
    {
      rule: 'core-keeps-to-its-room',
      from: 'packages/core/src/turn.ts',
      to: '../../../adapters/desk/src/index.ts',
    },
    {
      rule: 'every-package-has-a-room',
      from: 'packages/attic/src/index.ts',
      to: '../../core/src/index.ts',
    },
    {
      rule: 'adapters-never-import-each-other',
      from: 'adapters/terminal/src/main.ts',
      to: '../../desk/src/index.ts',
    },
    {
      rule: 'only-the-desk-shows-the-element',
      from: 'adapters/terminal/src/main.ts',
      to: '../../element/src/index.ts',
    },
    {
      rule: 'through-the-public-face',
      from: 'packages/language/src/index.ts',
      to: '../../core/src/turn.ts',
    },
    { rule: 'browser-safe', from: 'packages/core/src/turn.ts', to: 'node:fs' },
    { rule: 'browser-safe', from: 'packages/evidence/src/rank.ts', to: 'crypto' },
    { rule: 'no-cycles', from: 'packages/core/src/index.ts', to: './index.ts' },
    {
      rule: 'resolvable',
      from: 'packages/language/src/index.ts',
      to: '@keyturn/core/src/turn.ts',
    },
  ])('$rule forbids $from to import $to', async ({ rule, from, to }) => {
    const folder = plantWorkspace({
      'packages/core/src/index.ts': face,
      'packages/core/src/turn.ts': face,
      'adapters/desk/src/index.ts': face,
      'adapters/element/src/index.ts': face,
      [from]: importing(to),
    });

    const { summary } = await cruiseFrom(folder);

    expect(summary.violations.map((violation) => violation.rule.name)).toContain(rule);
    expect(summary.violations.every((violation) => violation.from === from)).toBe(true);
  });

  test('let the desk show the element and core read files where it loads them', async () => {
    const folder = plantWorkspace({
      'adapters/element/src/index.ts': face,
      'adapters/desk/src/main.ts': importing('node:fs'),
      'packages/core/src/load.ts': importing('node:fs'),
      'packages/core/src/turn.test.ts': importing('node:fs'),
    });

    const { summary } = await cruiseFrom(folder);

    expect(summary.violations).toEqual([]);
  });

  test('forbid the face of core to reach a parser by a detour', async () => {
    const folder = plantWorkspace({
      'node_modules/yaml/package.json': '{ "name": "yaml", "main": "index.js" }',
      'node_modules/yaml/index.js': face,
      'packages/core/package.json': '{ "dependencies": { "yaml": "*" } }',
      'packages/core/src/load.ts': importing('yaml'),
      'packages/core/src/flow.ts': importing('./load.ts'),
      'packages/core/src/index.ts': importing('./flow.ts'),
    });

    const { summary } = await cruiseFrom(folder);

    expect(summary.violations).toMatchObject([
      { rule: { name: 'loading-stays-behind-its-subpath' }, from: 'packages/core/src/index.ts' },
    ]);
  });

  test('want every library named by the package that imports it', async () => {
    const folder = plantWorkspace({
      'node_modules/yaml/package.json': '{ "name": "yaml", "main": "index.js" }',
      'node_modules/yaml/index.js': face,
      'packages/core/package.json': '{ "devDependencies": { "yaml": "*" } }',
      'packages/core/src/load.ts': importing('yaml'),
    });

    const { summary } = await cruiseFrom(folder);

    expect(summary.violations).toMatchObject([{ rule: { name: 'declared' } }]);
  });
});
