/**
 * Statements as papers: how they look, and what is read back from them.
 */
import { describe, expect, test } from 'vitest';
import { statementOf, type StatementEntry } from '../../core/invoices/statement.ts';
import type { StatementPaperInput } from '../../core/papers/statement.ts';
import { statementPaper } from '../../electron/papers/statement.ts';
import { bill } from './invoice-sample.ts';
import { expectSamePixels, expectWellSet } from './looks.ts';
import { pagesOfText } from './read-text.ts';

const entry = (on: string, kind: StatementEntry['kind'], name: string, minor: number): StatementEntry => ({
  on,
  kind,
  name,
  amount: { minor, currency: 'EUR' },
});
const few = [
  entry('2026-06-03', 'invoice', '2026-004', 85_000),
  entry('2026-06-20', 'payment', 'transfer, 2026-004', -85_000),
  entry('2026-11-30', 'invoice', '2026-031', 85_000),
  entry('2026-11-30', 'credit note', '2026-032', -5_000),
];
/** Five entries a month for a year. */
const many = Array.from({ length: 60 }, (_, index) =>
  entry(
    `2025-${String(Math.floor(index / 5) + 1).padStart(2, '0')}-${String((index % 5) * 6 + 1).padStart(2, '0')}`,
    index % 2 === 0 ? 'invoice' : 'payment',
    `number ${index + 1}`,
    index % 2 === 0 ? 120_050 : -100_000,
  ),
);

function statement(entries: readonly StatementEntry[], changes: Partial<StatementPaperInput> = {}): StatementPaperInput {
  const rows = statementOf<string>('EUR', entries, '2026-12-03');
  const { sender, payTo } = bill();
  return {
    sender,
    payTo,
    client: { name: 'Bread & Butter Fair GmbH', address: '12 Mill Street\n80331 Munich' },
    asOf: '2026-12-03',
    madeAt: '2026-12-03T09:30:00Z',
    rows,
    balance: rows.at(-1)?.balance ?? { minor: 0, currency: 'EUR' },
    ...changes,
  };
}

describe.each([
  ['a few rows', statement(few)],
  ['60 rows', statement(many)],
  ['no rows', statement([])],
])('%s', (_, input) => {
  test.each(['A4', 'Letter'] as const)('is well set on %s', async (paper) =>
    expectWellSet(await statementPaper({ ...input, sender: { ...input.sender, paper } }), paper),
  );
  test('the subset draws what the whole typeface draws, to the pixel', async () =>
    expectSamePixels(await statementPaper(input), await statementPaper(input, { subset: false })));
  test('the same bytes for the same content', async () =>
    expect(Buffer.compare(await statementPaper(input), await statementPaper(structuredClone(input)))).toBe(0));
});

const textOf = async (input: StatementPaperInput) => (await pagesOfText(await statementPaper(input))).join(' ');

test('each date once, each entry with the balance after it, what is open and how to pay it', async () => {
  expect(await textOf(statement(few))).toContain(
    'What Amount, EUR Balance, EUR 3 June 2026 Invoice 2026-004 850.00 850.00 ' +
      '20 June 2026 Payment, transfer, 2026-004 −850.00 0.00 ' +
      '30 November 2026 Invoice 2026-031 850.00 850.00 Credit note 2026-032 −50.00 800.00 ' +
      'Open on 3 December 2026 800.00 How to pay Amount EUR 800.00',
  );
});

test('60 rows are all there in their order, over pages with heads', async () => {
  const pages = await pagesOfText(await statementPaper(statement(many)));
  expect(pages.length).toBe(2);
  for (const page of pages) expect(page).toContain('What Amount, EUR Balance, EUR');
  expect([...pages.join(' ').matchAll(/number (\d+)/g)].map((found) => Number(found[1]))).toEqual(
    Array.from({ length: 60 }, (_, at) => at + 1),
  );
  // 30 times 1,200.50 less 30 times 1,000.00.
  expect(pages.at(-1)).toContain('Open on 3 December 2026 6,015.00');
});

test('more paid than billed is a credit, and asks for nothing', async () => {
  const text = await textOf(statement(few.slice(1, 2)));
  expect(text).toContain('Open on 3 December 2026 −850.00 More was paid than was billed: EUR 850.00 is your credit.');
  expect(text).not.toContain('How to pay');
});

test('a letter that cannot be drawn is refused with its field', async () =>
  expect(statementPaper(statement(few, { client: { name: 'ليلى', address: '' } }))).rejects.toMatchObject({ field: "the client's name" }));
