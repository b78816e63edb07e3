/**
 * What a job was billed before: bills that stand, and the deposits and instalments that no bill has set off yet.
 */
import type { IssuedDeposit } from '../../core/invoices/deposit.ts';
import { sum } from '../../core/money/money.ts';
import { invoiceRecordsOf } from '../../db/invoices.ts';
import type { ReadableDb } from '../../db/store.ts';

type Issued = ReturnType<typeof invoiceRecordsOf>[number];
export type BilledBefore = {
  /** Bills that were not wholly credited, newest first. */
  standing: Pick<Issued, 'kind' | 'number' | 'issueDate' | 'issuedAt' | 'content'>[];
  /** Deposits and instalments to be set off, each followed by what was credited of it. */
  open: IssuedDeposit[];
};

export function billedBefore(db: ReadableDb, jobId: string): BilledBefore {
  const issued = invoiceRecordsOf(db, jobId);
  const notesOf = (id: string) => issued.filter((each) => each.creditsId === id).toReversed();
  const standing = issued.filter((each) => each.kind !== 'credit note' && !isVoid(each, notesOf(each.id)));
  const used = new Set(standing.flatMap(({ content }) => content.credited.map(({ invoiceId }) => invoiceId)));
  const parts = standing.filter(({ id, kind }) => (kind === 'deposit' || kind === 'instalment') && !used.has(id)).toReversed();
  return { standing, open: parts.flatMap((part) => [part, ...notesOf(part.id)].map(asDeposit)) };
}

/** Whether credit notes have taken all of it back. */
function isVoid({ content: { totals } }: Issued, notes: readonly Issued[]): boolean {
  return notes.length > 0 && sum(totals.gross.currency, [totals.gross, ...notes.map((note) => note.content.totals.gross)]).minor === 0;
}

function asDeposit({ id, number, issueDate, content }: Issued): IssuedDeposit {
  return { invoiceId: id, number, date: issueDate, totals: content.totals };
}
