/**
 * What a database is asked. Work on a database yields what it asks, one statement after the other,
 * and is given the rows: a file answers at once, so that nobody comes in between, and a server in
 * its time.
 *
 * To put a statement together costs more than to run it, so each is built when it is first wanted,
 * with its values left open.
 */
import {
  DummyDriver,
  Kysely,
  PostgresAdapter,
  PostgresIntrospector,
  PostgresQueryCompiler,
  SqliteAdapter,
  SqliteIntrospector,
  SqliteQueryCompiler,
  type Compilable,
  type CompiledQuery,
} from 'kysely';
import type { Kind, Tables } from './tables.ts';

/** One statement with its values, as a kind of database is given it. */
type Query = (kind: Kind) => CompiledQuery;

/** Work on a database. */
export type Work<Result> = Generator<Query, Result, readonly unknown[]>;

/** What a statement can be given for a value that it leaves open. */
type Value = string | number | null;

/** Asks for the rows of a statement, which leaves the named values open. */
export type Statement<Name extends string, Row> = (
  values: Readonly<Record<Name, Value>>,
) => Work<readonly Row[]>;

/** Puts statements together and runs none. */
const builders: Readonly<Record<Kind, Kysely<Tables>>> = {
  sqlite: new Kysely({
    dialect: {
      createAdapter: () => new SqliteAdapter(),
      createDriver: () => new DummyDriver(),
      createIntrospector: (db) => new SqliteIntrospector(db),
      createQueryCompiler: () => new SqliteQueryCompiler(),
    },
  }),
  postgres: new Kysely({
    dialect: {
      createAdapter: () => new PostgresAdapter(),
      createDriver: () => new DummyDriver(),
      createIntrospector: (db) => new PostgresIntrospector(db),
      createQueryCompiler: () => new PostgresQueryCompiler(),
    },
  }),
};

/** Stands for a value while a statement is built. */
class Open {
  readonly name: string;

  constructor(name: string) {
    this.name = name;
  }
}

/** A statement that leaves the named values open; `build` is called once for each kind. */
export function statement<const Name extends string, Row>(
  names: readonly Name[],
  build: (db: Kysely<Tables>, open: Readonly<Record<Name, never>>, kind: Kind) => Compilable<Row>,
): Statement<Name, Row> {
  const open = Object.fromEntries(names.map((name) => [name, new Open(name)]));
  const built = new Map<Kind, CompiledQuery>();
  const builtFor = (kind: Kind): CompiledQuery => {
    const known = built.get(kind);
    if (known !== undefined) return known;
    const made = build(builders[kind], open as Record<Name, never>, kind).compile();
    built.set(kind, made);
    return made;
  };
  return function* (values) {
    const rows = yield (kind) => {
      const made = builtFor(kind);
      const parameters = made.parameters.map((value) =>
        value instanceof Open ? values[value.name as Name] : value,
      );
      return { ...made, parameters };
    };
    return rows as readonly Row[];
  };
}

/** Asks for the rows of a statement that is another each time. */
export function* builtAnew<Row>(
  build: (db: Kysely<Tables>) => Compilable<Row>,
): Work<readonly Row[]> {
  return (yield (kind) => build(builders[kind]).compile()) as readonly Row[];
}
