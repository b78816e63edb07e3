/**
 * An issued invoice or credit note as a paper.
 */
import type { InvoiceContent } from '../../core/contract/invoices.ts';
import { invoicePaperContent, typedOnInvoice } from '../../core/invoices/paper.ts';
import { facts, notes, sums } from './blocks.ts';
import { paperFile, type PaperOptions } from './file.ts';
import { pay } from './pay.ts';
import { table } from './table.ts';

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
      blocks: (sheet) => [
        facts(sheet, paper.facts),
        ...table(sheet, paper),
        ...sums(sheet, paper.sums),
        ...(paper.pay ? [pay(sheet, paper.pay)] : [sheet.gap()]),
        ...notes(sheet, paper.notes),
      ],
    },
    options,
  );
}
