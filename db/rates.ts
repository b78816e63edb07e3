/**
 * Rate cards: what is searched for has columns of its own, the rest is one document that the contract has checked.
 */
import { desc, eq, sql } from 'drizzle-orm';
import type { RateCard, RateCardFields } from '../core/contract/rates.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { rateCards } from './schema/rates.ts';
import type { ReadableDb, WritableDb } from './store.ts';

type CardRow = typeof rateCards.$inferSelect;

const reading = perStore((db) => ({
  all: db.select().from(rateCards).orderBy(desc(rateCards.validFrom), desc(rateCards.id)).prepare(),
  one: db
    .select()
    .from(rateCards)
    .where(eq(rateCards.id, sql.placeholder('id')))
    .prepare(),
}));

const cardOf = (row: CardRow): RateCard => ({ ...row.fields, id: row.id, version: row.version });

/** All rate cards, newest validity first. */
export function allCards(db: ReadableDb): RateCard[] {
  return reading(db).all.all().map(cardOf);
}

/** One rate card, if it is there. */
export function cardById(db: ReadableDb, id: string): RateCard | undefined {
  const row = reading(db).one.get({ id });
  return row && cardOf(row);
}

/** Keep a new card. `now` in epoch milliseconds. */
export function insertCard(db: WritableDb, fields: RateCardFields, now: number): RateCard {
  const id = newId();
  db.insert(rateCards)
    .values({ ...columnsOf(fields), id, createdAt: now, updatedAt: now })
    .run();
  return { ...fields, id, version: 1 };
}

/** Change a card. The caller has compared versions in the same transaction. `now` in epoch milliseconds. */
export function updateCard(db: WritableDb, card: RateCard, fields: RateCardFields, now: number): RateCard {
  const version = card.version + 1;
  db.update(rateCards)
    .set({ ...columnsOf(fields), version, updatedAt: now })
    .where(eq(rateCards.id, card.id))
    .run();
  return { ...fields, id: card.id, version };
}

function columnsOf(fields: RateCardFields) {
  const { name, role, currency, validFrom, validTo } = fields;
  return { name, role, currency, validFrom, validTo, fields };
}
