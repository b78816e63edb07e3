import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { amountOfFurther, furtherLine, furtherPrice, type FurtherRound } from '../../../core/deliverables/further-round.ts';
import { amountOfLine } from '../../../core/quotes/line.ts';
import { tried } from '../laws.ts';

const card = { editHour: '85', currency: 'USD' };
const round = (change: Partial<FurtherRound> = {}): FurtherRound => ({
  id: '0190b3c0-0000-7000-8000-000000000001',
  pass: 3,
  cut: 'third cut',
  of: 'Highlights',
  included: 2,
  price: furtherPrice('1.5', card),
  ...change,
});

test('a further round is a line at the price of an edit hour, and says why', () => {
  const line = furtherLine(round());
  expect(line && { ...line, quantity: line.quantity.toString(), unitPrice: line.unitPrice.toString() }).toMatchObject({
    section: 'travel',
    what: 'Third round of notes: Highlights',
    quantity: '1.5',
    unit: 'hours',
    unitPrice: '85',
    reason: '2 rounds were included; this is number 3, 1.5 edit hours at 85.00.',
  });
  expect(line && amountOfLine(line, 'USD')).toEqual({ minor: 12_750, currency: 'USD' });
});

test('one included round is said as one, none as none', () => {
  expect(furtherLine(round({ pass: 2, included: 1 }))?.reason).toContain('1 round was included; this is number 2');
  expect(furtherLine(round({ pass: 1, included: 0 }))?.reason).toContain('No rounds were included; this is number 1');
});

test('what was declined is on no bill', () => {
  const declined = { ...furtherPrice('1', card), state: 'declined' as const };
  expect(furtherLine(round({ price: declined }))).toBeNull();
});

test('law: the price that is asked is the amount of the line, in every currency', () =>
  fc.assert(
    fc.property(
      fc.integer({ min: 1, max: 400 }),
      fc.integer({ min: 1, max: 99_999 }),
      fc.constantFrom('USD', 'JPY', 'KWD'),
      (quarters, cents, currency) => {
        const price = furtherPrice(String(quarters / 4), { editHour: String(cents / 100), currency });
        const line = furtherLine(round({ price }));
        expect(line && amountOfLine(line, currency)).toEqual(amountOfFurther(price));
      },
    ),
    tried,
  ));
