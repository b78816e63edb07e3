import { describe, expect, test } from 'vitest';
import { blankHand } from '../../../core/people/blank.ts';
import type { DraftChange } from '../../../core/contract/quotes.ts';
import type { Hand } from '../../../core/contract/people.ts';
import { quoteOf } from './facts.ts';

const id = '01890000-0000-7000-8000-0000000000cc';
const hand: Hand = {
  ...blankHand('Ana Berg'),
  id,
  version: 1,
  rates: [
    { role: 'audio', dayRate: '280', currency: 'USD', from: '2026-01-01' },
    { role: 'shoot', dayRate: '300', currency: 'USD', from: '2026-01-01' },
    { role: 'shoot', dayRate: '350', currency: 'USD', from: '2027-01-01' },
  ],
};
const hands = [hand];
const wear = [{ id: 'cam', name: 'Camera', count: 2, perDay: { minor: 1_250, currency: 'USD' } }];
const named: DraftChange = { op: 'hand', handId: id };
const rented: DraftChange = { op: 'sub-hire', what: 'Long lens', cost: '120' };

describe('what a job costs me', () => {
  const draft = quoteOf({ hands, wear, changes: [named, rented] });
  test('a hand by the rate of the role and date, a sub-hire as typed, wear by shooting day and count', () => {
    expect(draft.costs?.map(({ what, amount }) => [what, amount.minor])).toEqual([
      ['Ana Berg', 60_000],
      ['Long lens', 12_000],
      ['Wear of Camera', 5_000],
    ]);
    expect(draft.costs?.map(({ reason }) => reason)).toEqual([
      '2 days at 300.00, the rate of Ana Berg for shoot from 2026-01-01, in People.',
      'Sub-hire, as typed.',
      '2 x Camera, 2 shooting days at 12.50 of wear a day, by its sheet in Kit.',
    ]);
  });
  test('is taken off this job a day and kept per hour away, and from no price', () => {
    // 2,000.00 less 770.00 over two days and twenty hours.
    expect(draft.scale.thisJob.minor).toBe(61_500);
    expect(draft.scale.keptPerHourAway.minor).toBe(6_150);
    expect(draft.totals).toEqual(quoteOf().totals);
  });
  test('a hand for some of the days; zero takes a hand and a sub-hire off', () => {
    const some = quoteOf({ hands, changes: [named, { ...named, days: '1.5' }, rented, { ...rented, cost: '0' }] });
    expect(some.costs?.map(({ amount }) => amount.minor)).toEqual([45_000]);
    expect(quoteOf({ hands, changes: [named, { ...named, days: '0' }] }).costs).toEqual([]);
  });
  test('in one offer only', () => {
    const offers = quoteOf({
      hands,
      changes: [
        { op: 'offers', names: ['Alone', 'With Ana'] },
        { ...named, offer: 2 },
      ],
    }).offers;
    expect(offers.map(({ costs, scale }) => [costs?.length, scale.thisJob.minor])).toEqual([
      [0, 100_000],
      [1, 70_000],
    ]);
  });
  test('what is in another currency, or has no rate, is said and not counted', () => {
    const euro = [{ ...hand, rates: [{ role: 'shoot' as const, dayRate: '300', currency: 'EUR', from: '2026-01-01' }] }];
    const drawn = quoteOf({ hands: euro, wear: [{ ...wear[0]!, perDay: { minor: 1_250, currency: 'EUR' } }], changes: [named] });
    expect(drawn.costs).toEqual([]);
    expect(drawn.cautions.join(' ')).toContain('Ana Berg costs 300.00 EUR a day and this quote is in USD; it is not counted.');
    expect(drawn.cautions.join(' ')).toContain('The wear of Camera is in EUR and this quote in USD; it is not counted.');
    expect(quoteOf({ hands: [{ ...hand, rates: [] }], changes: [named] }).cautions.join(' ')).toContain(
      'Ana Berg has no day rate in People',
    );
    expect(quoteOf({ changes: [named] }).cautions.join(' ')).toContain('is not in People any more');
  });
});
