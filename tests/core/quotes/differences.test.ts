import { expect, test } from 'vitest';
import { differencesOf } from '../../../core/quotes/differences.ts';
import { day, extra, quoteOf, taxed } from './facts.ts';

test('nothing differs from itself', () => expect(differencesOf(quoteOf(), quoteOf())).toEqual([]));

test('lines that came, went and changed, with the total first', () => {
  const older = quoteOf({ changes: [extra('100')] });
  const newer = quoteOf({
    changes: [
      extra('100'),
      { op: 'drop', id: 'extras/added-1' },
      { op: 'set', id: 'days/shoot', quantity: '3', unitPrice: '900' },
      extra('50', '2'),
    ],
  });
  expect(differencesOf(older, newer)).toEqual([
    'Total 2,800.00 instead of 2,100.00: 700.00 more.',
    'Added: Licence, 2 x 50.00, 100.00.',
    'Taken off: Licence, 100.00.',
    'Shooting: 3 instead of 2 days and at 900.00 instead of 1,000.00: 2,700.00 instead of 2,000.00.',
    'Deposit 1,400.00 instead of 1,050.00: 350.00 more.',
  ]);
});

test('tax, deposit, validity and terms', () => {
  const newer = quoteOf({
    setup: taxed('10'),
    changes: [{ op: 'terms', terms: { depositPercent: '0', validDays: 7, usage: 'Own channels for a year.' } }],
  });
  expect(differencesOf(quoteOf(), newer)).toEqual([
    'Total 2,200.00 instead of 2,000.00: 200.00 more.',
    'Shooting: taxed now.',
    'Tax 200.00 instead of 0.00: 200.00 more.',
    'No deposit any more.',
    'Valid until the end of Sat 8 August 2026 instead of the end of Sat 15 August 2026.',
    'Days that the quote is valid: 7 instead of 14.',
    'Deposit, per cent: 0 instead of 50.',
    'The term on usage is worded anew.',
  ]);
});

test('a date more is a day more', () => {
  const newer = quoteOf({ days: [day('2026-09-08'), day('2026-09-09'), day('2026-09-10')] });
  expect(differencesOf(quoteOf(), newer)[1]).toBe('Shooting: 3 instead of 2 days: 3,000.00 instead of 2,000.00.');
});

test('another currency is not compared', () => expect(differencesOf(quoteOf(), quoteOf({ card: { currency: 'CAD' } }))).toHaveLength(1));
