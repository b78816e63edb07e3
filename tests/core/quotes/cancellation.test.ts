import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { money } from '../../../core/money/money.ts';
import { cancellationOf, type CancelInput } from '../../../core/quotes/cancellation.ts';
import { termsInWords } from '../../../core/quotes/terms.ts';
import { tried } from '../laws.ts';
import { at, drive, fargo, quoteOf, taxed } from './facts.ts';

const firstCallAt = at('2026-09-08T08:00');
const draft = quoteOf({ card: { kit: [{ name: 'Mixer', perDay: '100' }] }, trip: drive, job: { place: fargo } });
const HOUR = 3_600_000;
const home = { zone: 'America/Chicago', holidays: new Set(['2026-09-07']) };

const noticeAt = (hoursBefore: number) => firstCallAt - hoursBefore * HOUR;
const agreed = (hoursBefore: number, so: boolean) => ({ agreedAt: so ? noticeAt(hoursBefore) : null });
const cancel = (hoursBefore: number, changes: Partial<CancelInput> = {}) =>
  cancellationOf({
    draft,
    firstCallAt,
    at: noticeAt(hoursBefore),
    home,
    agreedAt: null,
    bound: money(0, 'USD'),
    depositPaid: money(0, 'USD'),
    ...changes,
  });

test('the base is the net of days, kit and editing: no travel, no rush', () => expect(draft.cancelBase.minor).toBe(300_000 + 20_000));
test('the base is net of included tax and of its share of a discount', () => {
  const included = quoteOf({ setup: taxed('20', true), changes: [{ op: 'discount', percent: '10' }] });
  expect(included.cancelBase.minor).toBe(150_000);
});

describe('the scale', () => {
  test.each([
    [14 * 24, '0', 0],
    [14 * 24 - 0.001, '25', 80_000],
    [7 * 24, '25', 80_000],
    [7 * 24 - 0.001, '50', 160_000],
    [48, '50', 160_000],
    [48 - 0.001, '100', 320_000],
    [0, '100', 320_000],
    [-3, '100', 320_000],
  ])('%d h before first call owes %s %%', (hours, percent, fee) => expect(cancel(hours)).toMatchObject({ percent, fee: { minor: fee } }));

  test('counts elapsed hours over a clock change, not dates', () => {
    const call = at('2026-11-02T08:00');
    const called = (wall: string) =>
      cancellationOf({
        draft,
        firstCallAt: call,
        at: at(wall),
        home,
        agreedAt: null,
        bound: money(0, 'USD'),
        depositPaid: money(0, 'USD'),
      }).percent;
    // from 31 October 09:00 to 2 November 08:00 are 48 h: the night between has an hour more
    expect([called('2026-10-31T09:00'), called('2026-10-31T09:01')]).toEqual(['50', '100']);
  });
  test('postponed to a date agreed within 30 days: half', () => {
    expect(cancel(100, { agreedAt: noticeAt(100) })).toMatchObject({ percent: '25', fee: { minor: 80_000 } });
    expect(cancel(200, { agreedAt: noticeAt(200) })).toMatchObject({ percent: '12.5', fee: { minor: 40_000 } });
  });
  test('a new date counts up to 30 days after the notice, and after that all of it is owed', () => {
    const later = (ms: number) => cancel(100, { agreedAt: noticeAt(100) + 30 * 24 * HOUR + ms });
    expect([later(0).percent, later(1).percent]).toEqual(['25', '50']);
    expect(later(1).reason).toContain('all of it because the new date was agreed more than 30 days after the notice');
  });
  test('bound costs are owed in full, and the deposit is set against it', () => {
    expect(cancel(100, { bound: money(12_345, 'USD'), depositPaid: money(150_000, 'USD') })).toMatchObject({
      total: { minor: 172_345 },
      owed: { minor: 22_345 },
      paidBack: { minor: 0 },
    });
    expect(cancel(400, { depositPaid: money(150_000, 'USD') })).toMatchObject({
      total: { minor: 0 },
      owed: { minor: 0 },
      paidBack: { minor: 150_000 },
    });
  });
  test('says its numbers', () => {
    expect(cancel(100, { agreedAt: noticeAt(100) }).reason).toBe(
      '100 h before first call the scale says 50 % of 3,200.00 for days, kit and editing, half of it for a date agreed anew within 30 days: 25 %.',
    );
  });
});

describe('a scale in business days', () => {
  const inDays = { ...draft, terms: { ...draft.terms, cancelBy: 'business days' as const } };
  const calledOff = (wall: string) => cancel(0, { draft: inDays, at: at(wall) });

  // first call on Tuesday, 8 September, after a holiday: Friday the 4th and Thursday the 3rd are two business days
  test.each([
    ['2026-08-18T23:59', '0'], // 14 x 24 h are 14 business days, and from the 18th there are 14
    ['2026-08-19T00:00', '25'],
    ['2026-08-28T00:01', '50'],
    ['2026-08-27T23:59', '25'],
    ['2026-09-03T23:59', '50'],
    ['2026-09-04T00:01', '100'],
    ['2026-09-07T12:00', '100'],
    ['2026-09-08T07:00', '100'],
    ['2026-09-09T07:00', '100'],
  ])('called off on %s owes %s per cent', (wall, percent) => expect(calledOff(wall).percent).toBe(percent));

  test('says how it was counted', () => {
    expect(calledOff('2026-09-03T10:00')).toMatchObject({
      reason:
        '2 business days before first call, the day of notice counted and that of the call not: the scale says 50 % of 3,200.00 for days, kit and editing.',
      caution: 'Whether tax is due on it is for your tax adviser to say. Public holidays at home are those of a public list: look at them.',
    });
    expect(calledOff('2026-09-07T10:00').reason).toContain('No business day before first call');
  });
  test("leaves out the client's own holidays, and says how many days that were", () => {
    const own = { ...inDays, clientClosed: [{ from: '2026-08-29', to: '2026-09-03', name: 'Fair week' }] };
    // Thursday, 3 September is closed like the days before it: only Friday the 4th is left
    expect(cancel(0, { draft: own, at: at('2026-09-03T10:00') })).toMatchObject({
      percent: '100',
      reason: expect.stringContaining(
        "1 business day before first call, the day of notice counted and that of the call not, 1 day of the client's own holidays left out: the scale says 100 %",
      ),
    });
    expect(cancel(0, { draft: { ...draft, clientClosed: own.clientClosed }, at: at('2026-09-03T10:00') }).percent).toBe('50');
    expect(termsInWords(own).find(({ label }) => label === 'Cancellation')?.text).toContain(
      'Your own holidays are no business days: Fair week (Sat 29 August 2026 to Thu 3 September 2026).',
    );
  });
  test('says so on the paper', () => {
    expect(termsInWords(inDays).find(({ label }) => label === 'Cancellation')?.text).toContain(
      'By notice before first call in business days at my home, the day of notice counted and that of the call not: under 14 business days 25 %, under 7 business days 50 %, under 2 business days 100 % of',
    );
  });
});

test('calling off later never owes less', () =>
  fc.assert(
    fc.property(fc.integer({ min: -100, max: 800 }), fc.integer({ min: 0, max: 400 }), fc.boolean(), (hours, later, postponed) => {
      expect(cancel(hours - later, agreed(hours - later, postponed)).fee.minor).toBeGreaterThanOrEqual(
        cancel(hours, agreed(hours, postponed)).fee.minor,
      );
    }),
    tried,
  ));
