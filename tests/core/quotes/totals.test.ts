import { describe, expect, test } from 'vitest';
import type { DraftChange } from '../../../core/contract/quotes.ts';
import { priceQuote } from '../../../core/quotes/price.ts';
import { at, day, drive, extra, fargo, inputOf, lineOf, quoteOf, taxed } from './facts.ts';

describe('changes by hand', () => {
  test('say what they changed', () => {
    const line = lineOf(quoteOf({ changes: [{ op: 'set', id: 'days/shoot', quantity: '3', what: 'Camera' }] }), 'days/shoot');
    expect(line).toMatchObject({ what: 'Camera', quantity: '3', amount: { minor: 300_000 }, changed: true });
    expect(line?.reason).toMatch(/^Changed by hand: called "Camera" instead of "Shooting", quantity 3 instead of 2\./);
  });
  test('are taken back by restoring', () => {
    const changes = [
      { op: 'set', id: 'days/shoot', quantity: '3' },
      { op: 'drop', id: 'days/shoot' },
      { op: 'restore', id: 'days/shoot' },
    ] as const;
    expect(quoteOf({ changes: [...changes] }).lines).toEqual(quoteOf().lines);
  });
  test('no longer apply when their line is gone, and say so', () => {
    expect(quoteOf({ changes: [{ op: 'set', id: 'days/half', quantity: '3' }] }).cautions.join(' ')).toContain('days/half');
  });
  test('in the terms are frozen with the quote', () => {
    const draft = quoteOf({ changes: [{ op: 'terms', terms: { depositPercent: '25', payDays: 7 } }] });
    expect(draft.terms).toMatchObject({ depositPercent: '25', payDays: 7, rounds: 2 });
    expect(draft.deposit?.amount.minor).toBe(50_000);
  });
});

describe('discount', () => {
  const off = (changes: Parameters<typeof quoteOf>[0]) =>
    quoteOf(changes)
      .lines.filter((line) => line.section === 'discount')
      .map((line) => line.amount.minor);
  test('per cent before fixed, on all but expenses', () => {
    expect(off({ trip: drive, job: { place: fargo }, changes: [{ op: 'discount', percent: '10', fixed: '50' }] })).toEqual([
      -30_000, -5_000,
    ]);
  });
  test('never more than there is', () =>
    expect(off({ changes: [{ op: 'discount', percent: '60', fixed: '5000' }] })).toEqual([-120_000, -80_000]));
  test('on the sections that were named', () =>
    expect(off({ changes: [extra('400'), { op: 'discount', percent: '10', over: ['extras'] }] })).toEqual([-4_000]));
  test('is shared over tax groups in proportion', () => {
    const draft = quoteOf({
      setup: taxed('20'),
      changes: [
        extra('1000'),
        { op: 'tax', ids: ['extras/added-1'], state: 'exempt', reason: 'Licences are exempt.' },
        { op: 'discount', fixed: '300' },
      ],
    });
    expect(draft.totals.taxes).toMatchObject([
      { name: 'VAT', percent: '20', net: { minor: 180_000 }, tax: { minor: 36_000 }, state: 'rated' },
      { net: { minor: 90_000 }, tax: { minor: 0 }, state: 'exempt', note: 'Licences are exempt.' },
    ]);
    expect(draft.totals).toMatchObject({ net: { minor: 270_000 }, tax: { minor: 36_000 }, gross: { minor: 306_000 } });
  });
});

describe('tax', () => {
  test('none where I am not registered', () =>
    expect(quoteOf().totals).toMatchObject({ taxes: [], tax: { minor: 0 }, gross: { minor: 200_000 } }));
  test('on the net of each group', () =>
    expect(quoteOf({ setup: taxed('7.25') }).totals).toMatchObject({ tax: { minor: 14_500 }, gross: { minor: 214_500 } }));
  test('included: the gross is what was entered', () => {
    expect(quoteOf({ setup: taxed('19', true) }).totals).toMatchObject({
      net: { minor: 168_067 },
      tax: { minor: 31_933 },
      gross: { minor: 200_000 },
    });
  });
  test('reverse charge on every line, with its words', () => {
    const draft = quoteOf({ setup: taxed('20'), changes: [{ op: 'tax', state: 'reverse charge' }] });
    expect(draft.totals).toMatchObject({
      tax: { minor: 0 },
      taxes: [{ state: 'reverse charge', note: 'Reverse charge: the recipient accounts for the tax.' }],
    });
    expect(draft.lines.every((line) => !line.taxed)).toBe(true);
  });
  test('two named taxes on each line, or one of them', () => {
    const setup = { ...taxed('5'), moreTaxes: [{ name: 'Provincial', percent: '7', included: false }] };
    expect(quoteOf({ setup }).totals).toMatchObject({
      taxes: [{ tax: { minor: 10_000 } }, { tax: { minor: 14_000 } }],
      gross: { minor: 224_000 },
    });
    expect(quoteOf({ setup, changes: [{ op: 'tax', state: 'rated', names: ['VAT'] }] }).totals.gross.minor).toBe(210_000);
  });
});

describe('deposit and validity', () => {
  test('half of the gross, rounded, due as an invoice is', () => {
    const draft = quoteOf({ changes: [extra('0.01')] });
    expect(draft.deposit).toMatchObject({ amount: { minor: 100_001 }, due: 'by Sat 15 August 2026' });
    expect(draft.validUntil).toMatchObject({ wall: '2026-08-15T23:59', zone: 'America/Chicago' });
  });
  test('due at call where it would fall after it, and asked', () => {
    const draft = quoteOf({ now: at('2026-09-01T09:00') });
    expect(draft.deposit?.due).toBe('at first call, Tue 8 September 2026');
    expect(draft.cautions.join(' ')).toContain('the deposit would fall due on Tue 15 September 2026, after first call');
    expect(draft.validUntil.wall).toBe('2026-09-08T08:00');
  });
  test('none at 0 per cent', () => expect(quoteOf({ changes: [{ op: 'terms', terms: { depositPercent: '0' } }] }).deposit).toBeNull());
});

describe('the scale', () => {
  const year = { costs: 1_840_000, pay: 5_200_000, setAsidePercent: '28', days: 95 };
  test('floor (18,400 + 52,000 / 0.72) / 95 = 953.92', () => expect(quoteOf({ setup: { year } }).scale.floor?.minor).toBe(95_392));
  test('this job a day leaves out expenses and counts travel dates', () => {
    const { scale } = quoteOf({ trip: drive, job: { place: fargo }, card: { allowanceNight: '90' } });
    // 3,000.00 for days over four dates; 71.5 h from door to door
    expect(scale).toMatchObject({ thisJob: { minor: 75_000 }, daysUsed: '4', hoursAway: '71.5', keptPerHourAway: { minor: 4_196 } });
  });
  test('edit hours count by the day, and add to the hours', () => {
    const { scale } = quoteOf({ days: [day('2026-09-08'), day('2026-09-09', '09:00', '14:00', 'edit')] });
    expect(scale).toMatchObject({ daysUsed: '1.5', hoursAway: '15', thisJob: { minor: 86_667 } });
  });
  test('what a hand or sub-hire costs me is taken off, but for expenses', () => {
    const changes: DraftChange[] = [
      { op: 'add', section: 'extras', what: 'Second hand', quantity: '1', unit: 'day', unitPrice: '500', cost: '400' },
      { op: 'add', section: 'travel', what: 'Parking', quantity: '1', unit: '', unitPrice: '30', cost: '30' },
      { op: 'set', id: 'days/shoot', cost: '100.50' },
    ];
    const draft = quoteOf({ changes });
    expect(draft.scale.thisJob.minor).toBe((200_000 + 50_000 - 40_000 - 10_050) / 2);
    expect(lineOf(draft, 'days/shoot')).toMatchObject({ changed: false, cost: { minor: 10_050 } });
    expect(draft.totals.net.minor).toBe(253_000);
  });
  test('a job under the floor is said so', () => {
    expect(quoteOf({ setup: { year }, card: { dayRate: '900' } }).cautions).toContain(
      'This job comes to 900.00 a day, 53.92 under your floor of 953.92.',
    );
  });
  test.each([
    [{ amount: 900, currency: 'USD', per: 'day' as const }, 90_000],
    [{ amount: 1500, currency: 'USD', per: 'job' as const }, 75_000],
    [{ amount: 80, currency: 'USD', per: 'hour' as const }, 80_000],
    [{ amount: 900, per: 'day' as const }, null],
    [{ amount: 900, currency: 'USD' }, null],
    [{ amount: 900, currency: 'CAD', per: 'day' as const }, null],
  ])('the budget %o is drawn at %s', (budget, minor) => {
    const draft = quoteOf({ job: { budget } });
    expect(draft.scale.budget?.minor ?? null).toBe(minor);
    if (minor === null) expect(draft.cautions.join(' ')).toContain('not drawn');
  });
});

describe('what is missing', () => {
  test('place, days and a rate', () => {
    expect(quoteOf({ days: [], job: { place: null } }).missing).toHaveLength(2);
    expect(quoteOf({ card: { dayRate: '0' } }).missing).toEqual(['What a day costs: the day rate of "Shooting 2026" is zero.']);
  });
  test('a price that was typed on the line will do', () => {
    expect(quoteOf({ card: { dayRate: '0' }, changes: [{ op: 'set', id: 'days/shoot', unitPrice: '900' }] }).missing).toEqual([]);
  });
  test('something must be left of it', () => {
    expect(
      quoteOf({ changes: [{ op: 'add', section: 'discount', what: 'Friends', quantity: '1', unit: '', unitPrice: '2500' }] }).missing,
    ).toEqual(['What is left: the discount is 500.00 more than everything else.']);
    expect(quoteOf({ changes: [{ op: 'drop', id: 'days/shoot' }] }).missing).toEqual(['What is sold: every line was taken off.']);
  });
  test('a job of nothing but edit days needs no day rate', () => {
    expect(quoteOf({ card: { dayRate: '0' }, days: [day('2026-09-09', '09:00', '14:00', 'edit')] }).missing).toEqual([]);
  });
});

test('the same facts give the same quote, and pricing leaves them alone', () => {
  const input = Object.freeze(inputOf({ trip: drive, job: { place: fargo }, changes: [extra('12.34')] }));
  const before = JSON.stringify(input);
  expect(priceQuote(input)).toEqual(priceQuote(input));
  expect(JSON.stringify(input)).toBe(before);
});
