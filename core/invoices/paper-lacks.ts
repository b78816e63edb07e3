/**
 * What the paper of a bill will not say because it is not known: what a tax invoice names (VAT Regulations 1995 reg. 14(1),
 * Directive 2006/112/EC Art. 226), and how to pay. Cautions only: whether it must be there is for a tax adviser.
 */
import type { InvoiceDraft } from '../contract/invoices.ts';
import type { SetupFields } from '../contract/setup.ts';

type Bill = Pick<InvoiceDraft, 'billTo' | 'totals' | 'toPay'>;
type Mine = Pick<SetupFields, 'address' | 'registered' | 'taxId' | 'payTo'>;

/** A sentence for each lack, with where it is filled in. */
export function paperLacks({ billTo, totals, toPay }: Bill, { address, registered, taxId, payTo }: Mine): string[] {
  const empty = (text: string | undefined) => (text ?? '').trim() === '';
  const reversed = totals.taxes.some(({ state }) => state === 'reverse charge');
  const lacks: [boolean, string][] = [
    [registered && empty(taxId), 'You are registered for tax, and Setup has no tax id: a tax invoice names it.'],
    [registered && empty(address), 'Setup has no address: a tax invoice names yours.'],
    [registered && empty(billTo.address), 'No billing address is known: a tax invoice names theirs. Write it on the client or the job.'],
    [reversed && empty(billTo.taxId), "The client's tax id is not known: where they account for the tax, the invoice names it."],
    [
      toPay.minor > 0 && empty(payTo?.iban) && empty(payTo?.words),
      'It will not say how to pay: Setup has neither an account nor words on it.',
    ],
  ];
  return lacks.flatMap(([is, sentence]) => (is ? [sentence] : []));
}
