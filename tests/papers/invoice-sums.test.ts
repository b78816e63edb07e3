/**
 * What is read back from the paper of a bill is what was billed: every line, every tax group, the sum, what is to pay, and the payment code.
 */
import { fc, test as law } from '@fast-check/vitest';
import { expect, test } from 'vitest';
import type { InvoiceContent } from '../../core/contract/invoices.ts';
import { paymentCode } from '../../core/invoices/payment-code.ts';
import { invoicePaper } from '../../electron/papers/invoice.ts';
import { readDots } from './decode.ts';
import { bill, billed, halfOfTwoGroups, vat } from './invoice-sample.ts';
import { pixels } from './read-back.ts';
import { pagesOfText } from './read-text.ts';

/** "−1,234.50" in cents. */
const cents = (figures: string | undefined) => Math.round(Number((figures ?? 'none').replace('−', '-').replaceAll(',', '')) * 100);
const FIGURES = '−?[\\d,]+\\.\\d\\d';
const after = (text: string, words: string) => cents(new RegExp(`${words} (${FIGURES})`).exec(text)?.[1]);

async function readBack(content: InvoiceContent) {
  const text = (await pagesOfText(await invoicePaper(content))).join(' ');
  return {
    lines: [...text.matchAll(new RegExp(`Line \\d+ (?:−?[\\d.,]+ hours ${FIGURES} )?[\\d.]+ % (${FIGURES})`, 'g'))].map((found) =>
      cents(found[1]),
    ),
    groups: [...text.matchAll(new RegExp(`VAT ([\\d.]+) % on (${FIGURES}) (${FIGURES})`, 'g'))].map((found) => [
      found[1],
      cents(found[2]),
      cents(found[3]),
    ]),
    net: after(text, content.included && content.totals.tax.minor !== 0 ? 'Of which net' : '\\bNet'),
    total: after(text, 'Total EUR'),
    toPay: content.credited.length > 0 ? after(text, 'To pay EUR') : after(text, 'Total EUR'),
  };
}

const someLine = fc.record({
  quantity: fc.integer({ min: 1, max: 40 }).map((quarters) => String(quarters / 4)),
  price: fc.integer({ min: 1, max: 2_000_000 }).map((minor) => (minor / 100).toFixed(2)),
  rate: fc.constantFrom('20', '5.5', '19'),
});

law.prop([fc.array(someLine, { minLength: 1, maxLength: 25 }), fc.boolean(), fc.boolean()], { numRuns: 40 })(
  'lines, tax groups, net, total and what is to pay are those of the content',
  async (drawn, included, withDeposit) => {
    const content = bill({
      included,
      lines: drawn.map(({ quantity, price, rate }, index) => billed('days', `Line ${index + 1}`, quantity, 'hours', price, [vat(rate)])),
      deposits: withDeposit ? [halfOfTwoGroups] : [],
    });
    const read = await readBack(content);
    expect(read).toEqual({
      lines: content.lines.map(({ amount }) => amount.minor),
      groups: content.totals.taxes.map(({ percent, net, tax }) => [percent, net.minor, tax.minor]),
      net: content.totals.net.minor,
      total: content.totals.gross.minor,
      toPay: content.toPay.minor,
    });
    // And they add up as they stand there.
    const taxes = read.groups.reduce((sum, [, , tax]) => sum + Number(tax), 0);
    expect(read.net + taxes).toBe(read.total);
    expect(read.lines.reduce((sum, amount) => sum + amount, 0)).toBe(included ? read.total : read.net);
    expect(read.toPay).toBe(read.total - (withDeposit ? 85_000 : 0));
  },
);

test.each([
  ['an ordinary name', 'Northlight Pictures'],
  ['the largest code: a name of 70 letters that take two bytes each', 'Їжакевич'.repeat(9).slice(0, 70)],
])('the payment code is read from the drawn page: %s', async (_, name) => {
  const base = bill();
  const content = { ...base, number: `${'N'.repeat(30)}-2026-031`, payTo: { ...base.payTo, name } };
  const [page] = pixels(await invoicePaper(content), 150);
  if (!page) throw new Error('no page');
  const dots = new Uint8ClampedArray(page.width * page.height * 4);
  page.grey.forEach((value, index) => dots.set([value, value, value, 255], index * 4));
  expect(readDots(dots, page.width, page.height)?.text).toBe(
    paymentCode(content.payTo, { minor: 313_416, currency: 'EUR' }, `Invoice ${content.number}`),
  );
});
