/**
 * A program that keeps turns of many cases as fast as it can, and says on its output what was kept.
 * It is stopped by force. Arguments: where the store is, a name for this run, and a file with the
 * events and cases of one case, turn by turn.
 */
import { readFileSync } from 'node:fs';
import { argv, stdout } from 'node:process';
import { openPostgresStore, openSqliteStore, type CaseChange } from '@keyturn/cases';

/** Cases that go on side by side. */
const sideBySide = 8;

const [, , place = '', run = '', file = ''] = argv;
const turns = readFileSync(file, 'utf8').trim().split('\n');
const store = await (place.startsWith('postgres:') ? openPostgresStore : openSqliteStore)(place);

async function keepCase(id: string): Promise<void> {
  for (const [index, text] of turns.entries()) {
    const change = JSON.parse(text.replaceAll('CASE', id)) as CaseChange;
    const conversation = { key: id, expected: index, body: index };
    const committed = await store.commit({
      at: '2026-01-05T08:00:00.000Z',
      received: `${id} ${String(index)}`,
      case: change,
      conversation,
      outgoing: [{ to: id, body: index }],
    });
    if (committed.type !== 'kept') throw new Error(`${id}: ${committed.type}`);
    stdout.write(`${id} ${String(index)}\n`);
  }
}

await Promise.all(
  Array.from({ length: sideBySide }, async (_, worker) => {
    for (let count = 0; ; count += 1) {
      await keepCase(`${run}-${String(worker)}-${String(count)}`);
    }
  }),
);
