/**
 * Which issued papers a list shows.
 */
import type { InvoiceRow, InvoiceState } from '../contract/invoices.ts';
import { foldName } from '../places/fold.ts';

export type Wanted = { text?: string | undefined; state?: InvoiceState | undefined };

/** By number, job and whom it is billed to, whatever the letters' case and marks; in the order in which they came. */
export function narrowed(rows: readonly InvoiceRow[], { text = '', state }: Wanted): InvoiceRow[] {
  const words = foldName(text)
    .split(/\s+/)
    .filter((word) => word !== '');
  return rows.filter((row) => {
    if (state !== undefined && (row.state !== state || row.kind === 'credit note')) return false;
    const said = foldName(`${row.number} ${row.jobTitle} ${row.billedTo}`);
    return words.every((word) => said.includes(word));
  });
}
