/**
 * What a store says, apart from how its file lies: two stores with equal dumps hold the same.
 */
import type Database from 'better-sqlite3';

export type Dump = Record<string, unknown[]>;

/** The schema and every row of every table, in a fixed order; what the find box is kept by follows from them. */
export function dump(client: Database.Database): Dump {
  const tables = client
    .prepare<[], string>(
      "select name from sqlite_schema where type = 'table' and name not like 'sqlite_%' and name not like 'find@_%' escape '@' order by name",
    )
    .pluck()
    .all();
  const rows = tables.map((table) => [table, client.prepare(`select * from "${table}" order by rowid`).raw().all()] as const);
  return { schema: schemaOf(client), ...Object.fromEntries(rows) };
}

/** Everything that was created, without regard to spaces and the order of making. */
export function schemaOf(client: Database.Database): string[] {
  return client
    .prepare<[], string>("select type || ' ' || name || ': ' || coalesce(sql, '') from sqlite_schema order by type, name")
    .pluck()
    .all()
    .map((sql) => sql.replaceAll(/\s+/g, ' '));
}
