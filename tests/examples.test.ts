/**
 * The examples, run as their reader would run them.
 */
import { execFile } from 'node:child_process';
import { readdirSync } from 'node:fs';
import path from 'node:path';
import { promisify } from 'node:util';
import { beforeAll, describe, expect, test } from 'vitest';
import { prepare, root } from '../tools/prepare.mjs';

const folder = path.join(root, 'examples');
const run = promisify(execFile);

/** What an example must say, apart from everything else that it may. */
const says: Readonly<Record<string, readonly string[]>> = {
  'one-case.ts': ['12.6 V', 'Worn-out battery'],
  'check-a-flow.ts': [
    'lamp.yaml:11:20 checks.lamp.when.place has "nowhere"',
    'checks.switch.minutes has -1',
    'faults.bulb.proof.lamp has "dim"',
  ],
  'text-messages.ts': ['What happens at start: fast clicking.', '(GSM-7, parts: 1)'],
  'technician-note.ts': ['Note for the technician', 'Resting voltage: 12.7 V (ready)', 'KT1'],
  'readings.ts': ['limit 9.58 V', 'the battery has 15.6 mOhm', 'the cable has 1.03 mOhm'],
};

describe('an example', () => {
  beforeAll(prepare, 180_000);

  test.each(readdirSync(folder).filter((name) => name.endsWith('.ts')))(
    '%s runs and says what it should',
    async (name) => {
      const { stdout, stderr } = await run(
        process.execPath,
        ['--import', 'tsx', path.join(folder, name)],
        { cwd: root },
      );
      expect(stderr).toBe('');
      expect(says[name]).toBeDefined();
      for (const words of says[name] ?? []) expect(stdout).toContain(words);
    },
    30_000,
  );
});
