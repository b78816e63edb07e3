/**
 * One connection under two handles: readers get no statement that writes, and what a deed was given writes nothing once the deed is over.
 * (`query_only` on the connection would do it too, but every change of that setting makes SQLite prepare all statements anew.)
 */
import type Database from 'better-sqlite3';
import { StoreError } from './trouble.ts';

/** The connection as readers get it: a statement that would write is refused when it is prepared, which is once for each query. */
export function readOnly(client: Database.Database): Database.Database {
  return handle(client, (statement) => (statement.readonly ? statement : refuse()), refuse);
}

/** The connection as deeds get it: statements that write run inside a transaction only. */
export function onlyInDeeds(client: Database.Database): Database.Database {
  const inside = <A extends unknown[], R>(run: (...parameters: A) => R) => {
    return (...parameters: A): R => (client.inTransaction ? run(...parameters) : refuse());
  };
  const guarded = (statement: Database.Statement): Database.Statement => {
    if (statement.readonly) return statement;
    return Object.assign(statement, {
      run: inside(statement.run.bind(statement)),
      all: inside(statement.all.bind(statement)),
      get: inside(statement.get.bind(statement)),
    });
  };
  return handle(client, guarded, inside(client.exec.bind(client)));
}

function handle(
  client: Database.Database,
  prepared: (statement: Database.Statement) => Database.Statement,
  exec: (sql: string) => Database.Database,
): Database.Database {
  return new Proxy(client, {
    get(target, name) {
      if (name === 'prepare') return (sql: string) => prepared(target.prepare(sql));
      if (name === 'exec') return exec;
      // The methods are native: they must be called on the connection itself.
      const value: unknown = Reflect.get(target, name, target);
      return typeof value === 'function' ? value.bind(target) : value;
    },
  });
}

function refuse(): never {
  throw new StoreError('misuse', {
    what: 'Something was to be written outside a deed; writing is for deeds only, while they run.',
    kept: 'Nothing of it was saved.',
    todo: 'Try again; if it comes back, report it.',
  });
}
