/**
 * What the published lists ask of a tax invoice and a credit note, read back from the papers of a registered sender.
 * @source United Kingdom, Value Added Tax Regulations 1995 (SI 1995/2518), regulation 14(1) as amended and regulation 15C
 * @source European Union, Council Directive 2006/112/EC, Articles 219, 226 and 230, as amended by Directive 2010/45/EU
 */
import { beforeAll, describe, expect, test } from 'vitest';
import type { InvoiceContent } from '../../../core/contract/invoices.ts';
import { invoicePaper } from '../../../electron/papers/invoice.ts';
import { bill, billed, exempt, reversed, vat } from '../../papers/invoice-sample.ts';
import { pagesOfText } from '../../papers/read-text.ts';

const textOf = async (content: InvoiceContent) => (await pagesOfText(await invoicePaper(content))).join(' ');
const british = {
  ...bill().sender,
  name: 'Northlight Pictures',
  address: '3 Quay Lane\nLeeds LS1 1AA',
  taxId: 'GB 000 0000 00',
};
const buyer = { name: 'Bread & Butter Fair Ltd', address: '12 Mill Street\nYork YO1 1AA', taxId: '', country: null, order: '' };
const lines = [
  billed('days', 'Filming', '2', 'days', '800.00'),
  billed('editing', 'Recap of two minutes', '6', 'hours', '65.00'),
  billed('extras', 'Large print of the recap sheet', '4', 'copies', '2.50', [vat('5')]),
];

describe('regulation 14(1), an invoice in euro of a sender in the United Kingdom', () => {
  let text = '';
  beforeAll(async () => {
    text = await textOf(bill({ sender: british, billTo: buyer, lines, rate: { rate: '0.8543', date: '2026-11-28', home: 'GBP' } }));
  });
  test.each([
    ['(a) a sequential number', 'Number 2026-031'],
    ['(b) the time of the supply', 'Date of supply 27 to 28 November 2026'],
    ['(c) the date of issue', 'Number 2026-031 3 December 2026'],
    ['(d) name of the supplier', 'Northlight Pictures'],
    ['(d) address of the supplier', '3 Quay Lane, Leeds LS1 1AA'],
    ['(d) registration number of the supplier', 'Tax id GB 000 0000 00'],
    ['(e) name and address of the person supplied', 'Bill to Bread & Butter Fair Ltd 12 Mill Street York YO1 1AA'],
    ['(g) and (h) description, extent, rate and amount without VAT', 'Filming 2 days 800.00 20 % 1,600.00'],
    ['(h) of each description', 'Recap of two minutes 6 hours 65.00 20 % 390.00'],
    ['(h) at another rate', 'Large print of the recap sheet 4 copies 2.50 5 % 10.00'],
    ['(i) the gross total without VAT', 'Net 2,000.00'],
    // 1,990.00 at 20 % and 10.00 at 5 %.
    ['VAT at each rate', 'VAT 20 % on 1,990.00 398.00 VAT 5 % on 10.00 0.50 Tax in all 398.50'],
    // 398.50 x 0.8543 = 340.43855.
    ['(l) the total VAT in sterling', 'the tax of EUR 398.50 is GBP 340.44'],
    ['(m) the unit price', '6 hours 65.00'],
  ])('%s', (_, words) => expect(text).toContain(words));
  test('(o) where the person supplied pays the tax, an indication of it', async () =>
    expect(
      await textOf(bill({ sender: british, billTo: buyer, lines: [billed('days', 'Filming', '1', 'day', '800.00', [reversed])] })),
    ).toContain('VAT, reverse charge on 800.00 0.00 Reverse charge: the customer accounts for the tax.'));
});

describe('Article 226', () => {
  let text = '';
  beforeAll(async () => {
    const mixed = [
      ...lines,
      billed('extras', 'A lesson', '1', '', '200.00', [exempt]),
      billed('days', 'Abroad', '1', 'day', '300.00', [reversed]),
    ];
    text = await textOf(bill({ lines: mixed }));
  });
  test.each([
    ['(1) the date of issue', 'Number 2026-031 3 December 2026'],
    ['(2) a sequential number', 'Number 2026-031'],
    ["(3) the supplier's VAT id", 'Tax id ATU00000000'],
    ["(4) the customer's VAT id", 'Tax id DE000000000'],
    ['(5) the supplier in full', 'Northlight Pictures 3 Quay Lane, 1010 Vienna, Austria'],
    ['(5) the customer in full', 'Bread & Butter Fair GmbH 12 Mill Street 80331 Munich Germany'],
    ['(6) extent and nature of the services', 'Filming 2 days'],
    ['(7) the date of supply', 'Date of supply 27 to 28 November 2026'],
    ['(8) and (9) the taxable amount at each rate', 'VAT 20 % on 1,990.00'],
    ['(8) the taxable amount that is exempt', 'VAT, exempt on 200.00'],
    ['(8) unit price without VAT', 'Filming 2 days 800.00'],
    ['(10) the VAT payable', 'Tax in all 398.50'],
    ['(11) that a supply is exempt, and why', 'Exempt: lessons of a school.'],
    ['(11a) the words "reverse charge"', 'VAT, reverse charge on 300.00'],
  ])('%s', (_, words) => expect(text).toContain(words));
  test('(8) the unit price without VAT where prices hold it', async () =>
    // 333.34 x 3 = 1,000.02; 1,000.02 / 1.19 = 840.35, a third of it 280.1167.
    expect(await textOf(bill({ included: true, lines: [billed('days', 'Filming', '3', 'days', '333.34', [vat('19')])] }))).toContain(
      'Filming 3 days 333.34 19 % 1,000.02 Without VAT: 280.1167 each, 840.35',
    ));
  test('Article 230: VAT in the currency of the country, where the invoice is in another', async () =>
    // 20 % of 1,000.00 = 200.00; x 0.92 = 184.00.
    expect(
      await textOf(
        bill({
          currency: 'USD',
          rate: { rate: '0.92', date: '2026-11-28', home: 'EUR' },
          lines: [billed('days', 'Filming', '1', 'day', '1000.00', [vat('20')], 'USD')],
        }),
      ),
    ).toContain('USD 1 = EUR 0.92 on 28 November 2026: the tax of USD 200.00 is EUR 184.00.'));
});

describe('regulation 15C and Article 219, a credit note', () => {
  let text = '';
  beforeAll(async () => {
    text = await textOf(
      bill({
        kind: 'credit note',
        number: '2026-032',
        dueDate: null,
        sender: british,
        billTo: buyer,
        lines: [billed('days', 'Filming', '-1', 'days', '800.00')],
        credits: { number: '2026-031', date: '2026-12-03', reason: 'The second day was not worked.' },
      }),
    );
  });
  test.each([
    ['its number and date of issue', 'Credit note Number 2026-032 3 December 2026'],
    [
      'name, address and registration number of the supplier',
      '3 Quay Lane, Leeds LS1 1AA hello@northlight.example · +43 1 555 0142 Tax id GB 000 0000 00',
    ],
    ['name and address of the recipient', 'Bread & Butter Fair Ltd 12 Mill Street York YO1 1AA'],
    ['number and date of the invoice', 'Credits Invoice 2026-031 of 3 December 2026'],
    ['what was supplied, and the amount credited', 'Filming −1 days 800.00 20 % −800.00'],
    ['the amount without VAT, and the VAT', 'Net −800.00 VAT 20 % on −800.00 −160.00 Total credited EUR −960.00'],
  ])('%s', (_, words) => expect(text).toContain(words));
});

test('a sender who is not registered states no tax and no tax id', async () => {
  const none = { name: 'VAT', percent: '0', state: 'not registered' as const, reason: 'Not registered for VAT.' };
  const text = await textOf(
    bill({ sender: { ...british, registered: false }, billTo: buyer, lines: [billed('days', 'Filming', '1', 'day', '800.00', [none])] }),
  );
  expect(text).toContain('Total EUR 800.00 Not registered for VAT.');
  expect(text).not.toMatch(/Tax id|VAT \d|Tax in all|reverse/);
});
