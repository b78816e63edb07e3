/**
 * What the find box looks through: entries of everything that can be found, kept by triggers (see the migration that made them).
 * Words come in folded, letters and figures only, so that none of them means anything to the search itself.
 */
import { eq, sql } from 'drizzle-orm';
import { perStore } from './prepared.ts';
import { jobs } from './schema/jobs.ts';
import { rateCards } from './schema/rates.ts';
import type { ReadableDb } from './store.ts';

type Kind = 'job' | 'paper' | 'client' | 'hand' | 'thing' | 'preset' | 'rate card';
export type Entry = { rowid: number; kind: Kind; id: string; jobId: string | null; title: string; names: string; at: number };

/** Where a word may stand: in what it is called and who belongs to it, or anywhere. */
type Where = 'names' | 'anywhere';

const ENTRIES = `
  select find_entries.id as rowid, kind, subject_id as id, job_id as jobId, find_entries.title, find_entries.names, at
  from find_words join find_entries on find_entries.id = find_words.rowid
  where find_words match ? and away = 0 order by at desc limit ?`;

const reading = perStore((db) => ({
  entries: db.$client.prepare<[string, number], Entry>(ENTRIES),
  around: db.$client
    .prepare<[number, string, number], string>(
      "select snippet(find_words, ?, '', '', '…', 9) from find_words where find_words match ? and rowid = ?",
    )
    .pluck(),
  terms: db.$client.prepare<[string, string], string>('select term from find_vocabulary where term >= ? and term < ?').pluck(),
  parts: db.$client.prepare<[string, number], { title: string; names: string }>(
    'select find_entries.title, find_entries.names from find_parts join find_entries on find_entries.id = find_parts.rowid where find_parts match ? order by rank limit ?',
  ),
  job: db
    .select({ organisation: jobs.organisation, place: jobs.place, stage: jobs.stage })
    .from(jobs)
    .where(eq(jobs.id, sql.placeholder('id')))
    .prepare(),
  card: db
    .select({ role: rateCards.role, currency: rateCards.currency, validFrom: rateCards.validFrom })
    .from(rateCards)
    .where(eq(rateCards.id, sql.placeholder('id')))
    .prepare(),
}));

/** For each typed word the words that answer it, of which an entry must hold one. */
export type Sought = readonly (readonly string[])[];

const matching = (sought: Sought, where: Where): string => {
  const all = sought.map((words) => `(${words.map((word) => `"${word}"*`).join(' OR ')})`).join(' AND ');
  return where === 'names' ? `{title names} : (${all})` : all;
};

/** Entries that hold a word of each of the sought, or one that begins with it; last changed first. Who was put away is left out. */
export function entriesWith(db: ReadableDb, sought: Sought, where: Where, limit: number): Entry[] {
  return reading(db).entries.all(matching(sought, where), limit);
}

/** The words around what was sought in an entry: among its names (1) or in its text (2). */
export function wordsAround(db: ReadableDb, sought: Sought, rowid: number, column: 1 | 2): string {
  return reading(db).around.get(column, matching(sought, 'anywhere'), rowid) ?? '';
}

/** Every word in the store that begins with a letter. */
export function wordsBeginningWith(db: ReadableDb, letter: string): string[] {
  return reading(db).terms.all(letter, `${letter}\u{10ffff}`);
}

/** Titles and names that share most runs of three letters with a word. */
export function sharingParts(db: ReadableDb, word: string, limit: number): { title: string; names: string }[] {
  const letters = Array.from(word);
  const parts = new Set(letters.slice(2).map((_, index) => letters.slice(index, index + 3).join('')));
  if (parts.size === 0) return [];
  return reading(db).parts.all([...parts].map((part) => `"${part}"`).join(' OR '), limit);
}

/** What stands below a job's title in the list of what was found. */
export const foundJob = (db: ReadableDb, id: string) => reading(db).job.get({ id });

/** The same of a rate card. */
export const foundCard = (db: ReadableDb, id: string) => reading(db).card.get({ id });
