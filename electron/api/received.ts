/**
 * What came in, with the tax that it holds.
 */
import { incomeOf } from '../../core/ledger/income.ts';
import type { Received } from '../../core/ledger/year.ts';
import { partsPaid } from '../../db/ledger.ts';
import type { ReadableDb } from '../../db/store.ts';

/** What came in between two dates, with its tax: the parts before them are read for their shares of it only. */
export function receivedIn(db: ReadableDb, span: { from: string; to: string }, home: string): Received[] {
  const parts = partsPaid(db, span);
  const about = new Map(parts.map((part) => [part.id, part]));
  return incomeOf(parts, home).flatMap((income) => {
    const part = about.get(income.id);
    if (!part || income.on < span.from) return [];
    const { clientId, clientName, jobId, jobTitle } = part;
    return [{ ...income, clientId, clientName, jobId, jobTitle }];
  });
}
