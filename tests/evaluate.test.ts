/**
 * The command that says how well checks are chosen, as a process.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, onTestFinished, test, vi } from 'vitest';
import { builtProgram } from './support/built-program.ts';
import { instancePath, instances } from './support/instances.ts';

const program = await builtProgram('evaluate.js');

// Each test starts the program anew, which a machine busy with other tests may take seconds over.
vi.setConfig({ testTimeout: 60_000 });

function run(files: readonly string[]) {
  const args = [program, ...files];
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  return { status, stdout, stderr };
}

function written(text: string): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'evaluate-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const file = path.join(folder, 'made.json');
  writeFileSync(file, text);
  return file;
}

describe('evaluate', () => {
  test('prints one line for each instance: the cost of our choices and the first of them', () => {
    const { status, stdout, stderr } = run(instances.map(({ name }) => instancePath(name)));
    expect({ status, stderr }).toEqual({ status: 0, stderr: '' });
    const lines = stdout.trimEnd().split('\n');
    const printed = lines.map((line) => JSON.parse(line) as Record<string, unknown>);
    expect(printed).toEqual(
      instances.map((instance) => ({
        name: instance.name,
        cost: expect.closeTo(instance.optimal, 6) as number,
        first: instance.optimal_first,
        milliseconds: expect.any(Number) as number,
      })),
    );
  });

  test.each([
    ['no file at all', [], 'give one or more files'],
    ['a file that is not there', ['none.json'], 'none.json: cannot be read'],
  ])('refuses %s with exit code 2', (_, files, said) => {
    const { status, stdout, stderr } = run(files);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toContain(said);
  });

  test('prints nothing when one of several files is malformed, and says where', () => {
    const bad = written('{"format":"seqdiag-1","name":"bad"}');
    const { status, stdout, stderr } = run([instancePath('case-a-by-hand'), bad]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: '' });
    expect(stderr).toContain(`${bad}: mode: `);
    expect(stderr).toContain(`${bad}: faults: `);
  });
});
