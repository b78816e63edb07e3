/**
 * Which papers the ledger lists, and in which order.
 */
import type { InvoiceRow } from '../contract/invoices.ts';
import type { LedgerShow } from '../contract/ledger.ts';
import { narrowed } from '../invoices/listed.ts';

const holds: Record<LedgerShow, (row: InvoiceRow) => boolean> = {
  open: ({ open }) => open.minor !== 0,
  late: ({ open, daysLate }) => open.minor !== 0 && daysLate > 0,
  paid: ({ kind, open }) => kind !== 'credit note' && open.minor === 0,
  all: () => true,
};

/** Papers that a person asked for: what is open by due date, so that what is late longest stands first; others as they came, newest first. */
export function shownPapers(rows: readonly InvoiceRow[], show: LedgerShow, text: string): InvoiceRow[] {
  const found = narrowed(rows, { text }).filter(holds[show]);
  if (show === 'paid' || show === 'all') return found;
  return found.sort((a, b) => (a.dueDate < b.dueDate ? -1 : a.dueDate > b.dueDate ? 1 : a.number < b.number ? -1 : 1));
}
