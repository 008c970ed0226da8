/**
 * Statements that are built once. To put one together costs more than to run it, so what every turn
 * asks for is built when it is first wanted, and after that only its values change.
 */
import type { Compilable, CompiledQuery, Kysely } from 'kysely';
import type { Kind, Tables } from './tables.ts';

/** What a statement can be given for a value that it leaves open. */
type Value = string | number | null;

/** A statement that runs within whatever transaction it is given; gives the rows it reads. */
export type Statement<Name extends string, Row> = (
  db: Kysely<Tables>,
  values: Readonly<Record<Name, Value>>,
) => Promise<readonly Row[]>;

/** Stands for a value while a statement is built. */
class Open {
  readonly name: string;

  constructor(name: string) {
    this.name = name;
  }
}

/** A statement that leaves the named values open; `build` is called once for each database. */
export function statement<const Name extends string, Row>(
  names: readonly Name[],
  build: (db: Kysely<Tables>, open: Readonly<Record<Name, never>>) => Compilable<Row>,
): Statement<Name, Row> {
  const open = Object.fromEntries(names.map((name) => [name, new Open(name)]));
  const built = new WeakMap<object, CompiledQuery<Row>>();
  return async (db, values) => {
    // Every transaction is another `db`; the adapter is the one of the database.
    const { adapter } = db.getExecutor();
    const known = built.get(adapter) ?? build(db, open as Record<Name, never>).compile();
    built.set(adapter, known);
    const parameters = known.parameters.map((value) =>
      value instanceof Open ? values[value.name as Name] : value,
    );
    const { rows } = await db.executeQuery<Row>({ ...known, parameters });
    return rows;
  };
}

/** A statement that is put in another way on each kind of database. */
export function forEachKind<Made>(make: (kind: Kind) => Made): Readonly<Record<Kind, Made>> {
  return { sqlite: make('sqlite'), postgres: make('postgres') };
}
