/**
 * What is erased from a database of either kind.
 */
import { statement, type Work } from './statement.ts';

/** Erases what is personal about a case. */
export function* erasePersonal(id: string): Work<void> {
  yield* deletePersonal({ id });
}

const deletePersonal = statement(['id'], (db, { id }) =>
  db.deleteFrom('personal').where('case_id', '=', id),
);

/** Forgets which things came in before a time, ISO 8601. */
export function* forgetReceived(before: string): Work<void> {
  yield* deleteReceived({ before: Date.parse(before) });
}

const deleteReceived = statement(['before'], (db, { before }) =>
  db.deleteFrom('received').where('at', '<', before),
);
