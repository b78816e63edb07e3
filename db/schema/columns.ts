/**
 * Columns that many tables share. Instants are epoch milliseconds (integers); a wall time is kept with its zone and its instant.
 */
import { integer, text } from 'drizzle-orm/sqlite-core';

/** UUIDv7 as text. */
export const id = () => text('id').primaryKey();
/** Row version for stale-write checks; begins at 1. */
export const version = () => integer('version').notNull().default(1);
export const createdAt = () => integer('created_at').notNull();
export const updatedAt = () => integer('updated_at').notNull();
