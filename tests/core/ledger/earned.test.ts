import { describe, expect, test } from 'vitest';
import { earnedOf, earnedTogether, type EarnedFacts } from '../../../core/ledger/earned.ts';
import { expectedByWeek, type ToCome } from '../../../core/ledger/expected.ts';
import { editMinutes, passedThrough } from '../../../core/ledger/job-money.ts';
import { money } from '../../../core/money/money.ts';

const usd = (minor: number) => money(minor, 'USD');
const none = usd(0);
const HOUR = 60;

/** A congress away: 6,240.00 net, 310.00 of mileage passed through, 52 h away of which 40 on the clock, 8 h of editing. */
const facts = (given: Partial<EarnedFacts> = {}): EarnedFacts => ({
  billed: usd(6_240_00),
  credited: none,
  givenUp: none,
  passed: usd(310_00),
  spent: none,
  notCharged: none,
  hands: none,
  subHire: none,
  wear: usd(50_00),
  minutes: { away: 52 * HOUR, worked: 40 * HOUR, editing: 8 * HOUR },
  quoted: { perHour: usd(98_00), hours: '60', hands: none },
  ...given,
});

describe('kept per hour away', () => {
  test('net billed less what was passed through and wear, over the hours away and those of editing', () => {
    // 6,240.00 - 310.00 - 50.00 = 5,880.00 over 60 h = 98.00.
    expect(earnedOf(facts())).toMatchObject({ kept: usd(5_880_00), hours: '60', perHour: usd(98_00), quoted: usd(98_00), pulledDown: [] });
  });

  test('the reason holds every number that it comes from', () => {
    expect(earnedOf(facts({ spent: usd(80_00) })).reason).toBe(
      'USD 6,240.00 net billed less 310.00 passed through, 80.00 expenses, 50.00 wear: 5,800.00 kept. 60 h away: 40 h on the clock, 12 h on the way or waiting, 8 h editing.',
    );
  });

  test('what pulled it down, each with its number', () => {
    const { pulledDown, perHour } = earnedOf(
      facts({
        credited: usd(-240_00),
        givenUp: usd(100_00),
        spent: usd(180_00),
        notCharged: usd(180_00),
        hands: usd(500_00),
        quoted: { perHour: usd(98_00), hours: '50', hands: usd(400_00) },
        minutes: { away: 70 * HOUR, worked: 40 * HOUR, editing: 0 },
      }),
    );
    // 6,240 - 240 - 100 - 310 - 180 - 500 - 50 = 4,860.00 over 70 h = 69.43.
    expect(perHour).toEqual(usd(69_43));
    expect(pulledDown).toEqual([
      'Credit notes took 240.00.',
      '100.00 was written off.',
      '180.00 of expenses was not charged on.',
      'Hands cost 100.00 more than quoted.',
      'It took 20 h more than quoted.',
      '30 h of 70 h away was on the way or waiting.',
    ]);
  });

  test('longer than quoted and better paid is nothing that pulled it down', () => {
    expect(earnedOf(facts({ quoted: { perHour: usd(90_00), hours: '50', hands: none } })).pulledDown).toEqual([]);
  });

  test('without any time there is nothing per hour', () => {
    const still = earnedOf(facts({ minutes: { away: 0, worked: 0, editing: 0 } }));
    expect(still.perHour).toEqual(none);
    expect(earnedTogether([still])).toBeNull();
    expect(earnedTogether([])).toBeNull();
  });

  test('several together are the money over the hours, not the mean of means', () => {
    expect(
      earnedTogether([
        { kept: usd(100_00), hours: '1' },
        { kept: usd(100_00), hours: '9' },
      ]),
    ).toEqual(usd(20_00));
  });
});

describe('what papers say', () => {
  const line = (id: string, section: string, minor: number) => ({
    id,
    section,
    what: '',
    quantity: '1',
    unit: '',
    unitPrice: '0',
    amount: usd(minor),
    taxes: [],
  });
  const lines = [line('days/shoot', 'days', 1_000_00), line('travel/out', 'travel', 119_00), line('expense/x', 'travel', 50_00)];
  const totals = { net: usd(1_000_00), taxes: [], tax: usd(190_00), gross: usd(1_190_00) };

  test('mileage and allowances are passed through, expenses are not counted twice', () => {
    expect(passedThrough({ lines, totals, included: false, currency: 'USD' })).toEqual(usd(119_00));
    expect(passedThrough({ lines, totals, included: true, currency: 'USD' })).toEqual(usd(100_00));
  });

  test('hours of editing that are counted as such', () => {
    const edit = (unit: string, quantity: string, section: 'editing' | 'days' = 'editing') => ({ section, unit, quantity });
    expect(editMinutes([edit('hours', '6.5'), edit('h', '1'), edit('minutes', '90'), edit('hours', '8', 'days')])).toBe(450);
  });
});

describe('expected by week', () => {
  const item = (given: Partial<ToCome>): ToCome => ({
    kind: 'due',
    on: '2026-12-10',
    what: '2026-031, Bakers',
    jobId: null,
    amount: usd(100_00),
    rate: null,
    ...given,
  });
  /** A Thursday. */
  const AS_OF = '2026-12-03';
  const weeks = (...items: Partial<ToCome>[]) =>
    expectedByWeek(items.map(item), AS_OF, 'USD').map(({ from, to, sum, parts }) => [from, to, sum.home?.minor, parts.length]);

  test('late first, then weeks from Monday to Sunday, what is far off together', () => {
    expect(weeks({ on: '2027-06-01' }, { on: '2026-12-06' }, { on: '2026-12-07' }, { on: '2026-12-13' }, { on: '2026-12-02' })).toEqual([
      [null, '2026-12-02', 100_00, 1],
      ['2026-11-30', '2026-12-06', 100_00, 1],
      ['2026-12-07', '2026-12-13', 200_00, 2],
      ['2027-02-22', null, 100_00, 1],
    ]);
  });

  test('due today is this week, not late; a deposit that nobody billed is expected from today on', () => {
    expect(weeks({ on: AS_OF }, { kind: 'deposit', on: '2026-11-01' })).toEqual([['2026-11-30', '2026-12-06', 200_00, 2]]);
  });

  test('what is disputed is shown and not counted', () => {
    expect(weeks({ kind: 'disputed' }, {})).toEqual([['2026-12-07', '2026-12-13', 100_00, 2]]);
  });
});
