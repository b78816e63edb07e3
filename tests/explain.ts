import type { ReadableDb } from '../db/store.ts';

/** The steps of SQLite's plan for a query, such as "SEARCH stays USING COVERING INDEX stays_by_time (start_at>? AND start_at<?)". */
export function explain(db: ReadableDb, sql: string, ...parameters: unknown[]): string[] {
  return db.$client
    .prepare<unknown[], { detail: string }>(`explain query plan ${sql}`)
    .all(...parameters)
    .map(({ detail }) => detail);
}
