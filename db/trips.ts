/**
 * Ways that were typed. A pair of places is stored with the smaller key first, since a way serves both directions.
 */
import { and, asc, eq, sql } from 'drizzle-orm';
import type { Way, WayFields } from '../core/contract/trips.ts';
import type { BookWay } from '../core/fit/book.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { ways } from './schema/trips.ts';
import type { ReadableDb, WritableDb } from './store.ts';

type WayRow = typeof ways.$inferSelect;
const KM_PER_MILE = 1.609344;

const reading = perStore((db) => ({
  all: db.select().from(ways).orderBy(asc(ways.lowKey), asc(ways.highKey), asc(ways.mode)).prepare(),
  one: db
    .select()
    .from(ways)
    .where(eq(ways.id, sql.placeholder('id')))
    .prepare(),
  pair: db
    .select()
    .from(ways)
    .where(and(eq(ways.lowKey, sql.placeholder('low')), eq(ways.highKey, sql.placeholder('high')), eq(ways.mode, sql.placeholder('mode'))))
    .prepare(),
}));

export function allWays(db: ReadableDb): Way[] {
  return reading(db).all.all().map(wayOf);
}

export function wayById(db: ReadableDb, id: string): Way | undefined {
  const row = reading(db).one.get({ id });
  return row && wayOf(row);
}

/** The way that is known for a pair of places and a mode, in either direction. */
export function wayOfPair(db: ReadableDb, fromKey: string, toKey: string, mode: string): Way | undefined {
  const [low, high] = ordered(fromKey, toKey);
  const row = reading(db).pair.get({ low, high, mode });
  return row && wayOf(row);
}

/** The ways as the rules take them. @param unit what typed distances are in */
export function bookWays(db: ReadableDb, unit: 'mi' | 'km'): BookWay[] {
  return allWays(db).map(({ from, to, mode, minutes, distance }) => ({
    fromKey: from.key,
    toKey: to.key,
    mode,
    minutes,
    ...(distance === null ? {} : { roadKm: Number(distance) * (unit === 'mi' ? KM_PER_MILE : 1) }),
  }));
}

/** Remember a way; one that is known for the pair and mode is replaced and its version raised. `now` in epoch ms. */
export function keepWay(db: WritableDb, fields: WayFields, now: number): Way {
  const { from, to, mode, minutes, distance, note } = fields;
  const known = wayOfPair(db, from.key, to.key, mode);
  const [lowKey, highKey] = ordered(from.key, to.key);
  const row: WayRow = {
    id: known?.id ?? newId(),
    lowKey,
    highKey,
    from,
    to,
    mode,
    minutes,
    distance,
    note,
    version: (known?.version ?? 0) + 1,
    updatedAt: now,
  };
  db.insert(ways).values(row).onConflictDoUpdate({ target: ways.id, set: row }).run();
  return wayOf(row);
}

export function forgetWay(db: WritableDb, id: string): void {
  db.delete(ways).where(eq(ways.id, id)).run();
}

function ordered(a: string, b: string): [string, string] {
  return a < b ? [a, b] : [b, a];
}

function wayOf(row: WayRow): Way {
  const { id, from, to, minutes, distance, note, version } = row;
  return { id, version, from, to, mode: row.mode as Way['mode'], minutes, distance, note };
}
