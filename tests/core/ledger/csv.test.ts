import * as fc from 'fast-check';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { csvText } from '../../../core/ledger/csv.ts';
import { tried } from '../laws.ts';

const cells = (text: string) => Papa.parse<string[]>(text.replace(/^\ufeff/, ''), { skipEmptyLines: true }).data;

test('amounts stay numbers, also below zero', () => {
  expect(
    csvText({
      heads: ['number', 'amount'],
      rows: [
        ['2026-001', '-25.00'],
        ['2026-002', 3],
        ['2026-003', null],
      ],
    }),
  ).toBe('\ufeffnumber,amount\r\n2026-001,-25.00\r\n2026-002,3\r\n2026-003,\r\n');
});

test.each(['=1+1', '+1+1', '-1+1', '@SUM(A1)', '  =1', '\t=1', '\u00a0=1', '\u200b=1', '＝1', '＋1', '＠a', '|calc', '\rx', '-', '%a'])(
  'a text that begins with %j is no formula',
  (text) => {
    const [, row] = cells(csvText({ heads: ['a'], rows: [[text]] }));
    expect(row?.[0]?.startsWith("'")).toBe(true);
    expect(row?.[0]?.slice(1)).toBe(text);
  },
);

test('law: what goes in comes out again, and no cell but a number begins like a formula', () => {
  const cell = fc.oneof(fc.string({ unit: 'binary' }), fc.constantFrom('a,b', 'say "x"', 'line\r\nline', '=x'));
  fc.assert(
    fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 5 }), (rows) => {
      const read = cells(csvText({ heads: ['a', 'b'], rows }));
      rows.forEach((row, line) =>
        row.forEach((text, column) => {
          const got = read[line + 1]?.[column] ?? '';
          expect(got === text || got === `'${text}`).toBe(true);
          expect(/^[=+\-@]/.test(got) && !/^-?\d+(\.\d+)?$/.test(got)).toBe(false);
        }),
      );
    }),
    tried,
  );
});
