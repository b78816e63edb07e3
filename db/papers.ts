/**
 * Papers on the books: what was written, under which name and hash. Their bytes lie in the papers folder.
 */
import { asc, eq, sql } from 'drizzle-orm';
import type { Paper } from '../core/contract/jobs.ts';
import { instantText } from '../core/time/read.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { papers } from './schema/quotes.ts';
import type { ReadableDb, WritableDb } from './store.ts';

type PaperRow = typeof papers.$inferSelect;

const reading = perStore((db) => ({
  byId: db
    .select()
    .from(papers)
    .where(eq(papers.id, sql.placeholder('id')))
    .prepare(),
  all: db.select().from(papers).orderBy(asc(papers.madeAt), asc(papers.id)).prepare(),
}));

/** A paper as the contract shows it. */
export function paperAsShown({ id, kind, name, hash, bytes, madeAt }: PaperRow): Paper {
  return { id, kind, name, hash, bytes, madeAt: instantText(madeAt) };
}

/** A paper and its media type. */
export function paperById(db: ReadableDb, id: string): { paper: Paper; type: string } | undefined {
  const row = reading(db).byId.get({ id });
  return row && { paper: paperAsShown(row), type: row.type };
}

/** Every paper with its media type, in the order of making. */
export function allPapers(db: ReadableDb): (Paper & { type: string })[] {
  return reading(db)
    .all.all()
    .map((row) => ({ ...paperAsShown(row), type: row.type }));
}

/** Put a paper on the books whose bytes are in the folder already. `madeAt` in epoch milliseconds. */
export function insertPaper(db: WritableDb, paper: Omit<PaperRow, 'id'>): Paper {
  const row = { id: newId(), ...paper };
  db.insert(papers).values(row).run();
  return paperAsShown(row);
}
