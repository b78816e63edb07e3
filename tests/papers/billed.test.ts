/**
 * Whom a quote is billed to, read back from the PDF.
 */
import { describe, expect, test } from 'vitest';
import { blankKnows } from '../../core/jobs/knows.ts';
import type { QuotePaperInput } from '../../core/quotes/paper.ts';
import { quotePaper } from '../../electron/papers/quote.ts';
import { pagesOfText } from './read-text.ts';
import { curlingQuote } from './sample.ts';

const client: QuotePaperInput['client'] = {
  name: 'Stone & Broom Society',
  billing: { name: 'Stone & Broom Holding', address: '3 Quay Street\nThunder Bay, ON', email: '' },
  taxId: 'CA 55 2',
};
const textOf = async (changes: Partial<QuotePaperInput>, knows: Partial<QuotePaperInput['job']['knows']> = {}) => {
  const input = { ...curlingQuote(), ...changes };
  const [text = ''] = await pagesOfText(await quotePaper({ ...input, job: { ...input.job, knows: { ...blankKnows(), ...knows } } }));
  return text;
};

describe('on a quote', () => {
  test('the client is billed, by name, address and tax id, after whom it is for', async () => {
    const text = await textOf({ client });
    expect(text).toContain('For Lakehead Stone & Broom Society Maren Oikarinen');
    expect(text).toContain('Bill to Stone & Broom Holding 3 Quay Street Thunder Bay, ON Tax id CA 55 2');
  });
  test('nothing more is said where nothing more is known', async () => expect(await textOf({})).not.toContain('Bill to'));
  test('a client without billing details stands once', async () => {
    const job = { ...curlingQuote().job, organisation: '' };
    const text = await textOf({ job, client: { name: 'Quay Hall', billing: { name: '', address: '', email: '' }, taxId: '' } });
    expect(text).toContain('For Quay Hall Maren Oikarinen');
    expect(text).not.toContain('Bill to');
  });
  test("somebody else who pays has the job's billing address, not the client's tax id", async () => {
    const text = await textOf({ client }, { payer: 'Northshore Sports Fund', billingAddress: '9 Pier Road' });
    expect(text).toContain('Bill to Northshore Sports Fund 9 Pier Road Job Provincial');
    expect(text).toContain('on the terms above. The invoices go to Northshore Sports Fund.');
    expect(text).not.toContain('CA 55 2');
  });
  test('a billing address without a client stands under whom it is for', async () => {
    const text = await textOf({}, { billingAddress: '9 Pier Road' });
    expect(text).toContain('Bill to Lakehead Stone & Broom Society 9 Pier Road');
    expect(text).not.toContain('The invoices go to');
  });
  test('an order number that is known is printed and not asked for', async () => {
    const text = await textOf({ client }, { purchaseOrder: { required: true, number: 'PO 4711' } });
    expect(text).toContain('Your order number PO 4711');
    expect(text).not.toContain('if you need one');
  });
  test.each(['exempt', 'reverse charge'] as const)('%s: the tax stands with nothing due and its reason under it', async (state) => {
    const { draft } = curlingQuote();
    const nil = { minor: 0, currency: 'USD' };
    draft.totals.taxes = [{ name: 'VAT', percent: '0', net: draft.totals.net, tax: nil, note: 'Because of article nine.', state }];
    expect(await textOf({ draft })).toContain('Net 9,040.50 VAT 0 % on 9,040.50 0.00 Because of article nine. Total USD 9,040.50');
  });
  test('a letter in the billing name that cannot be drawn is named', async () => {
    await expect(textOf({ client: { ...client, billing: { ...client.billing, name: '面包节' } } })).rejects.toThrow(
      '(in the billing name)',
    );
  });
});
