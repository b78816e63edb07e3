/**
 * Invoices and credit notes as papers: how they look, and what is read back from them.
 */
import { describe, expect, test } from 'vitest';
import type { InvoiceContent } from '../../core/contract/invoices.ts';
import { invoicePaper } from '../../electron/papers/invoice.ts';
import { bill, billed, exempt, halfOfTwoGroups, longBill, reversed, unregistered, vat } from './invoice-sample.ts';
import { expectSamePixels, expectWellSet } from './looks.ts';
import { pagesOfText, propertiesOf } from './read-text.ts';

const twoGroups = [billed('days', 'Filming', '1', 'day', '1000.00'), billed('extras', 'Licence of music', '1', '', '500.00', [vat('0')])];
const credits = { number: '2026-031', date: '2026-12-03', reason: 'The second day was cancelled by the fair.' };

const papers: Record<string, InvoiceContent> = {
  'an ordinary bill': bill(),
  'three tax groups and an exempt one': bill({
    lines: [
      ...twoGroups,
      billed('kit', 'Kit', '3', 'days', '33.33', [vat('5.5')]),
      billed('extras', 'Course', '1', '', '200.00', [exempt]),
    ],
    rate: { rate: '0.8543', date: '2026-11-28', home: 'GBP' },
  }),
  'a deposit set off': bill({ lines: twoGroups, deposits: [halfOfTwoGroups] }),
  'a deposit': bill({
    kind: 'deposit',
    included: true,
    lines: [
      billed('deposit', 'Half of the quote, to ink the dates', '1', '', '600.00'),
      billed('deposit', 'The same', '1', '', '250.00', [vat('0')]),
    ],
  }),
  'reverse charge': bill({ lines: [billed('days', 'Filming', '2', 'days', '800.00', [reversed])] }),
  'prices with tax inside': bill({ included: true, lines: [billed('days', 'Filming', '3', 'days', '333.34', [vat('19')])] }),
  'two taxes on a line': bill({
    currency: 'CAD',
    lines: [
      billed(
        'days',
        'Filming',
        '1',
        'day',
        '1000.00',
        [
          { ...vat('5'), name: 'GST' },
          { ...vat('9.975'), name: 'QST' },
        ],
        'CAD',
      ),
      billed('extras', 'Tape', '1', '', '10.00', [{ ...vat('5'), name: 'GST' }], 'CAD'),
    ],
  }),
  'a credit note': bill({
    kind: 'credit note',
    number: '2026-032',
    dueDate: null,
    credits,
    lines: [billed('days', 'Filming', '-2', 'days', '800.00')],
  }),
  '40 lines': longBill(40),
  '400 lines': longBill(400),
  'Vietnamese, Greek, Cyrillic': bill({
    job: { title: 'Hội nghị Tiếng Việt về bánh mì' },
    billTo: { name: 'Σύλλογος «Ωμέγα» ΑΕ', address: 'Їжакевич Ґанна\nΑθήνα', taxId: 'EL 1', country: 'GR', order: '№ 7' },
  }),
  'everything as long as it may be': bill({
    number: `${'S'.repeat(20)}-2026-001`,
    job: { title: 'Æ'.repeat(120) },
    billTo: { name: 'M'.repeat(120), address: 'W'.repeat(300), taxId: 'T'.repeat(120), country: 'GB', order: 'O'.repeat(120) },
    payTo: { name: 'N'.repeat(120), iban: 'MT84MALT011000012345MTLCAST001S', bic: 'ABCDMTZZXXX', words: 'By transfer or '.repeat(80) },
    lines: [
      billed('w'.repeat(12), 'N'.repeat(120), '1234567.8901', 'u'.repeat(120), '0.0001', [reversed]),
      billed('days', 'Everything', '999', 'days', '1009009.01', [vat('20')]),
    ],
    terms: ['A sentence about what is due. '.repeat(90)],
  }),
};

describe.each(Object.entries(papers))('%s', (_, content) => {
  test.each(['A4', 'Letter'] as const)('is well set on %s', async (paper) =>
    expectWellSet(await invoicePaper({ ...content, sender: { ...content.sender, paper } }), paper),
  );

  test('the subset draws what the whole typeface draws, to the pixel', async () =>
    expectSamePixels(await invoicePaper(content), await invoicePaper(content, { subset: false })));

  test('the same bytes for the same content, nothing of the program in them', async () => {
    const bytes = await invoicePaper(content);
    expect(Buffer.compare(bytes, await invoicePaper(structuredClone(content)))).toBe(0);
    expect(await propertiesOf(bytes)).toMatchObject({ CreationDate: 'D:20261203093000Z', ModDate: 'D:20261203093000Z' });
    expect(Buffer.from(bytes).toString('latin1')).not.toMatch(/kitbound|pdf-lib|cantoo|fontkit/i);
  });
});

const textOf = async (content: InvoiceContent) => (await pagesOfText(await invoicePaper(content))).join(' ');

describe('what stands on it', () => {
  test('an ordinary bill takes one page, and says who, whom, what for, how much, until when and how', async () => {
    const pages = await pagesOfText(await invoicePaper(bill()));
    expect(pages).toHaveLength(1);
    for (const words of [
      'Invoice',
      'Number 2026-031 3 December 2026 due 2 January 2027',
      'Bill to Bread & Butter Fair GmbH 12 Mill Street 80331 Munich Germany Tax id DE000000000',
      'Job Autumn bread fair Date of supply 27 to 28 November 2026 Your order number PO 4711',
      'What Quantity Price VAT Amount, EUR',
      'Filming, 10 hours 2 days 800.00 20 % 1,600.00',
      // 1,600.00 + 180.00 + 300.00 + 117.80 + 24.00 + 390.00, and a fifth of it.
      'Net 2,611.80 VAT 20 % on 2,611.80 522.36 Total EUR 3,134.16',
      'How to pay Amount EUR 3,134.16 by 2 January 2027 Account of Northlight Pictures IBAN AT61 1904 3002 3457 3201 Reference 2026-031',
      'Invoices are due within 30 days of their date.',
    ])
      expect(pages[0]).toContain(words);
  });

  test('a deposit is set off by tax group with its number and date, and what is left has its tax', async () => {
    // 1,500.00 net and 200.00 tax, less 850.00 with 100.00 tax in it.
    expect(await textOf(bill({ lines: twoGroups, deposits: [halfOfTwoGroups] }))).toContain(
      'Net 1,500.00 VAT 20 % on 1,000.00 200.00 VAT 0 % on 500.00 0.00 Total EUR 1,700.00 ' +
        'Less invoice 2026-004 of 3 June 2026 −850.00 VAT 20 %: net −500.00, tax −100.00; VAT 0 %: net −250.00, tax 0.00 ' +
        'To pay EUR 850.00 Of which VAT 20 % on 500.00: 100.00; VAT 0 % on 250.00: 0.00. How to pay Amount EUR 850.00 by',
    );
  });

  test('a sender who is not registered has no column of taxes, no tax id, and one line for the deposit', async () => {
    const lines = [billed('days', 'Filming', '1', 'day', '1000.00', [unregistered])];
    const deposit = { ...halfOfTwoGroups, totals: bill({ lines: [billed('deposit', 'a', '1', '', '500.00', [unregistered])] }).totals };
    const content = bill({ lines, deposits: [deposit] });
    const text = await textOf({ ...content, sender: { ...content.sender, registered: false } });
    expect(text).toContain(
      'What Quantity Price Amount, EUR Days Filming 1 day 1,000.00 1,000.00 Total EUR 1,000.00 Not registered for VAT. ',
    );
    expect(text).toContain('Less invoice 2026-004 of 3 June 2026 −500.00 To pay EUR 500.00 How to pay');
    expect(text).not.toContain('ATU');
  });

  test('where more was billed before than is owed, it says what goes back, and asks for nothing', async () => {
    const lines = [billed('cancellation', 'A quarter of the net', '1', '', '300.00')];
    const text = await textOf(bill({ kind: 'cancellation', lines, deposits: [halfOfTwoGroups] }));
    expect(text).toContain('To pay EUR −490.00');
    expect(text).toContain('More was billed before than is owed: EUR 490.00 goes back to you.');
    expect(text).not.toMatch(/How to pay|due 2 January/);
  });

  test('a credit note names the invoice that it turns and why, and asks for nothing', async () => {
    const text = await textOf(papers['a credit note'] ?? bill());
    expect(text).toContain('Credit note Number 2026-032 3 December 2026 Bill to');
    expect(text).toContain('Credits Invoice 2026-031 of 3 December 2026 The second day was cancelled by the fair.');
    expect(text).toContain('Filming −2 days 800.00 20 % −1,600.00');
    expect(text).toContain('Net −1,600.00 VAT 20 % on −1,600.00 −320.00 Total credited EUR −1,920.00');
    expect(text).not.toMatch(/How to pay|due /);
  });

  test('a sum that is credited shows its amount alone', async () => {
    const text = await textOf(
      bill({ kind: 'credit note', dueDate: null, credits, lines: [billed('extras', 'Licence of music', '-1', '', '80.00')] }),
    );
    expect(text).toContain('What VAT Amount, EUR Licences and extras Licence of music 20 % −80.00');
  });

  test('two taxes on a line stand together, and each has its group', async () => {
    const text = await textOf(papers['two taxes on a line'] ?? bill());
    expect(text).toContain('What Quantity Price Tax Amount, CAD Days Filming 1 day 1,000.00 5 % + 9.975 % 1,000.00');
    expect(text).toContain('Net 1,010.00 GST 5 % on 1,010.00 50.50 QST 9.975 % on 1,000.00 99.75 Tax in all 150.25 Total CAD 1,160.25');
  });

  test('a rate of nothing is named too', async () =>
    expect(await textOf(bill({ lines: [billed('extras', 'Printed book', '1', '', '30.00', [vat('0')])] }))).toContain(
      'Printed book 0 % 30.00 Net 30.00 VAT 0 % on 30.00 0.00 Total EUR 30.00',
    ));

  test.each([
    ['JPY', '120000', '2 days 120,000 240,000 Total JPY 240,000'],
    ['KWD', '350.125', '2 days 350.125 700.250 Total KWD 700.250'],
  ])('%s has its own places', async (currency, price, words) =>
    expect(await textOf(bill({ currency, lines: [billed('days', 'Filming', '2', 'days', price, [unregistered], currency)] }))).toContain(
      words,
    ),
  );

  test('every line of 400 is there once, heads again on every page', async () => {
    const pages = await pagesOfText(await invoicePaper(longBill(400)));
    const withLines = pages.filter((page) => /Position \d/.test(page));
    expect(withLines.length).toBeGreaterThan(8);
    for (const page of withLines) expect(page).toContain('What Quantity Price VAT Amount, EUR');
    const numbers = [...pages.join(' ').matchAll(/Position (\d+)/g)].map((found) => Number(found[1]));
    expect(numbers).toEqual(Array.from({ length: 400 }, (_, index) => index + 1));
  });

  test('words on how to pay stand alone where there is no account; nothing stands where nothing is known', async () => {
    const without = { name: '', iban: '', bic: '', words: '' };
    expect(await textOf(bill({ payTo: { ...without, words: 'In cash on the day.' } }))).toContain('Reference 2026-031 In cash on the day.');
    expect(await textOf(bill({ payTo: without }))).not.toContain('How to pay');
  });
});

describe('letters that the typefaces do not have', () => {
  test.each([
    ['a Hebrew name', bill({ billTo: { ...bill().billTo, name: 'מאפייה' } }), 'the billing name'],
    ['an Arabic address', bill({ billTo: { ...bill().billTo, address: 'شارع ٣' } }), 'the billing address'],
    [
      'a Chinese line',
      bill({ lines: [billed('days', 'Film', '1', 'day', '1.00'), billed('days', '面包节', '1', 'day', '1.00')] }),
      'line 2 of the invoice',
    ],
    ['an emoji in the reason', bill({ kind: 'credit note', credits: { ...credits, reason: '🎬' } }), 'the reason of the credit'],
  ])('%s is refused with its field', async (_, content, field) => expect(invoicePaper(content)).rejects.toMatchObject({ field }));
});
