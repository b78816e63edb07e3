/**
 * An issued invoice or credit note as a paper.
 */
import type { InvoiceContent } from '../../core/contract/invoices.ts';
import { invoicePaperContent, typedOnInvoice } from '../../core/invoices/paper.ts';
import { account } from './account.ts';
import { paperFile, type PaperOptions } from './file.ts';

/**
 * Write the paper of an invoice or a credit note: the same bytes for the same content.
 * @throws PaperError when a text has letters that the typefaces do not cover, or the letterhead does not fit; nothing is written then
 */
export async function invoicePaper(content: InvoiceContent, options?: PaperOptions): Promise<Uint8Array> {
  const paper = invoicePaperContent(content);
  return paperFile(
    {
      frame: paper,
      typed: typedOnInvoice(content),
      madeAt: content.issuedAt,
      blocks: (sheet) => account(sheet, paper),
    },
    options,
  );
}
