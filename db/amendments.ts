/**
 * What was agreed after the written yes, in words. Rows are only added: a trigger refuses the rest.
 */
import { asc, eq, sql } from 'drizzle-orm';
import type { Amendment } from '../core/contract/jobs.ts';
import { instantText } from '../core/time/read.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { amendments } from './schema/invoices.ts';
import type { ReadableDb, WritableDb } from './store.ts';

type AmendmentRow = typeof amendments.$inferSelect;

const reading = perStore((db) => ({
  ofJob: db
    .select()
    .from(amendments)
    .where(eq(amendments.jobId, sql.placeholder('jobId')))
    .orderBy(asc(amendments.at), asc(amendments.id))
    .prepare(),
}));

/** The amendments of a job, in the order in which they were agreed. */
export function amendmentsOf(db: ReadableDb, jobId: string): Amendment[] {
  return reading(db).ofJob.all({ jobId }).map(asShown);
}

/** Instants in epoch milliseconds. */
export function addAmendment(db: WritableDb, amendment: Omit<AmendmentRow, 'id'>): Amendment {
  const row = { id: newId(), ...amendment };
  db.insert(amendments).values(row).run();
  return asShown(row);
}

function asShown({ id, what, who, at, how, madeAt }: AmendmentRow): Amendment {
  return { id, what, who, at: instantText(at), how, madeAt: instantText(madeAt) };
}
