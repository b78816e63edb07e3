/**
 * What was changed by hand on a draft bill.
 */
import { and, eq, sql } from 'drizzle-orm';
import type { DraftKind, InvoiceChange } from '../core/contract/invoices.ts';
import { perStore } from './prepared.ts';
import { invoiceDrafts } from './schema/invoices.ts';
import type { ReadableDb, WritableDb } from './store.ts';

/** The changes in batches, oldest first; a draft that nobody changed has version 0. */
export type KeptBillChanges = { batches: readonly InvoiceChange[][]; draftVersion: number };

const reading = perStore((db) => ({
  draft: db
    .select()
    .from(invoiceDrafts)
    .where(and(eq(invoiceDrafts.jobId, sql.placeholder('jobId')), eq(invoiceDrafts.kind, sql.placeholder('kind'))))
    .prepare(),
}));

export function billChangesOf(db: ReadableDb, jobId: string, kind: DraftKind): KeptBillChanges {
  const row = reading(db).draft.get({ jobId, kind });
  return { batches: (row?.changes ?? []) as InvoiceChange[][], draftVersion: row?.draftVersion ?? 0 };
}

/** Keep changes as the draft's next version. The caller has compared versions in the same transaction. `now` in epoch milliseconds. */
export function saveBillChanges(
  db: WritableDb,
  jobId: string,
  kind: DraftKind,
  { batches, draftVersion }: KeptBillChanges,
  now: number,
): void {
  const row = { changes: [...batches], draftVersion, updatedAt: now };
  db.insert(invoiceDrafts)
    .values({ ...row, jobId, kind })
    .onConflictDoUpdate({ target: [invoiceDrafts.jobId, invoiceDrafts.kind], set: row })
    .run();
}

/** The next bill of this kind begins anew: the draft was issued. */
export function endBillDraft(db: WritableDb, jobId: string, kind: DraftKind): void {
  db.delete(invoiceDrafts)
    .where(and(eq(invoiceDrafts.jobId, jobId), eq(invoiceDrafts.kind, kind)))
    .run();
}
