import { fc, test as prop } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import type { OvertimeAsk } from '../../../core/contract/hours.ts';
import type { BookDay } from '../../../core/fit/book.ts';
import { longDayCautions } from '../../../core/hours/cautions.ts';
import { overtimeCautions, overtimeOf } from '../../../core/hours/overtime.ts';
import { hoursPay } from '../../../core/hours/pay.ts';
import { at, card as thousand } from '../quotes/facts.ts';

const card = { ...thousand, dayRate: '1200.00', dayHours: '10' };
const zone = 'America/Chicago';
const day = (call: string, wrap: string, more: Partial<BookDay> = {}): BookDay => ({
  date: call.slice(0, 10),
  kind: 'shoot',
  call,
  wrap,
  callAt: at(call),
  wrapAt: at(wrap),
  ...more,
});
const priced = (days: BookDay[], more = {}) => hoursPay({ days, zone, role: 'shoot', card: { ...card, ...more }, holidays: [] });

describe('what hours come to', () => {
  // 14 h 40 worked -> 15.0 h: 4 h x 120 x 1.5 = 720.00 and 1 h x 120 x 2 = 240.00 on top of 1,200.00.
  test('07:00 to 22:40 with an hour of unpaid break at 1,200.00 are 2,160.00', () => {
    const { lines, total } = priced([day('2026-12-12T07:00', '2026-12-12T22:40', { unpaidBreakMinutes: 60 })]);
    expect(lines.map(({ quantity, unit, amount }) => [quantity, unit, amount.minor])).toEqual([
      ['1', 'day', 120_000],
      ['4', 'hours', 72_000],
      ['1', 'hour', 24_000],
    ]);
    expect(total.minor).toBe(216_000);
  });

  // 31 October 18:00 to 1 November 04:30 is 11 h 30: half an hour and an hour at 1.5 of 100.00.
  test('the clock-change night at 1,000.00 is 1,225.00', () =>
    expect(priced([day('2026-10-31T18:00', '2026-11-01T04:30')], { dayRate: '1000.00' }).total.minor).toBe(122_500));

  test('two calls on a date are one day from first call to last wrap, with the breaks of both', () => {
    const both = [
      day('2026-12-12T07:00', '2026-12-12T11:00', { unpaidBreakMinutes: 30 }),
      day('2026-12-12T13:00', '2026-12-12T18:00', { unpaidBreakMinutes: 30 }),
    ];
    // 11 h less 1 h is the day of 10 h.
    expect(priced(both).total.minor).toBe(120_000);
    expect(priced(both.map((each) => ({ ...each, unpaidBreakMinutes: 0 }))).total.minor).toBe(120_000 + 18_000);
  });

  // Wrap 23:00, call 07:00: 8 h of the 10 h agreed, 2 h at 120.00.
  test('a short turnaround is a forced call of 240.00, with its caution', () => {
    const { lines, cautions } = priced([day('2026-12-12T13:00', '2026-12-12T23:00'), day('2026-12-13T07:00', '2026-12-13T17:00')]);
    expect(lines.at(-1)).toMatchObject({ what: 'Forced call, short turnaround', quantity: '2', amount: { minor: 24_000 } });
    expect(cautions).toEqual([expect.stringContaining('Only 8 h between wrap and the next call, 2 h short of 10 h')]);
  });

  test('night hours are those of the clock where it was', () => {
    const night = { ...card, nightPercent: '10' };
    const inChicago = [day('2026-12-12T21:00', '2026-12-12T23:00')];
    const eastward = inChicago.map((each) => ({ ...each, zone: 'America/Toronto' }));
    const nightHours = (days: BookDay[]) =>
      hoursPay({ days, zone, role: 'shoot', card: night, holidays: [] }).lines.find(({ what }) => what.startsWith('Night'))?.quantity;
    expect([nightHours(inChicago), nightHours(eastward)]).toEqual(['1', '2']);
  });

  test('an edit day is edit hours less its breaks', () => {
    const { lines } = priced([day('2026-12-12T09:00', '2026-12-12T17:00', { kind: 'edit', unpaidBreakMinutes: 60 })], { editHour: '60' });
    expect(lines).toMatchObject([{ what: 'Editing', quantity: '7', amount: { minor: 42_000 } }]);
  });

  prop.prop([fc.integer({ min: 1, max: 1439 }), fc.integer({ min: 0, max: 600 }), fc.integer({ min: 0, max: 400 })])(
    'a later wrap never costs less, and a longer unpaid break never more',
    (length, more, breaks) => {
      const wrapped = (minutes: number, unpaidBreakMinutes: number): number => {
        const callAt = at('2026-06-01T06:00');
        const of = { ...day('2026-06-01T06:00', '2026-06-01T07:00'), wrapAt: callAt + minutes * 60_000, unpaidBreakMinutes };
        return priced([of]).total.minor;
      };
      expect(wrapped(Math.min(1440, length + more), breaks)).toBeGreaterThanOrEqual(wrapped(length, breaks));
      expect(wrapped(length, breaks + more)).toBeLessThanOrEqual(wrapped(length, breaks));
    },
  );
});

prop.prop([
  fc.array(fc.tuple(fc.integer({ min: 0, max: 9 }), fc.integer({ min: 1, max: 1200 }), fc.integer({ min: 0, max: 120 })), { maxLength: 8 }),
])('the order in which hours are entered changes nothing', (given) => {
  const days = given.map(([date, length, breaks], order) => {
    const callAt = at(`2026-06-0${Math.min(9, date + 1)}T0${order}:00`);
    return {
      ...day('2026-06-01T06:00', '2026-06-01T07:00'),
      date: `2026-06-0${Math.min(9, date + 1)}`,
      callAt,
      wrapAt: callAt + length * 60_000,
      unpaidBreakMinutes: breaks,
    };
  });
  const told = (of: BookDay[]) => priced(of).lines.map(({ what, quantity, amount }) => [what, quantity, amount.minor]);
  expect(told(days.toReversed())).toEqual(told(days));
});

const ask = (minutes: number, state: OvertimeAsk['state'], wall: string): OvertimeAsk => ({
  id: '01890000-0000-7000-8000-0000000000b1',
  jobId: '01890000-0000-7000-8000-0000000000b2',
  date: '2026-12-12',
  minutes,
  askedAt: '2026-12-12T22:00:00Z',
  state,
  who: state === 'asked' ? '' : 'Ana Voss',
  at: state === 'asked' ? null : Temporal.Instant.fromEpochMilliseconds(at(wall)).toString(),
  how: 'on site',
});

describe('overtime', () => {
  const actual = [day('2026-12-12T07:00', '2026-12-12T22:40', { unpaidBreakMinutes: 60 })];
  const of = (asks: OvertimeAsk[], planned = [day('2026-12-12T07:00', '2026-12-12T17:00')]) =>
    overtimeOf({ actual, planned, asks, terms: card, zone });

  test('what nobody agreed to is open, and asks for a yes before billing', () => {
    const [found] = of([]);
    expect(found).toMatchObject({ over: 280, quoted: 0, approved: 0, open: 280 });
    expect(found?.sentence).toBe('Sat 12 December 2026: 4 h 40 min past the 10 h day; 4 h 40 min not approved: ask before billing.');
    expect(overtimeCautions(of([]), 'Ana Voss')).toEqual([
      expect.stringContaining('4 h 40 min of overtime is not approved. Ask Ana Voss before billing'),
    ]);
  });

  test('approvals say who, when and how; a no and an open ask approve nothing', () => {
    const [found] = of([ask(120, 'approved', '2026-12-12T16:10'), ask(60, 'refused', '2026-12-12T20:00'), ask(60, 'asked', '')]);
    expect(found).toMatchObject({ approved: 120, open: 160 });
    expect(found?.sentence).toContain(
      '2 h approved by Ana Voss at 16:10, on site; 1 h refused by Ana Voss at 20:00, on site; 1 h asked, no answer yet',
    );
  });

  test('what stood in the quote needs no other yes', () => {
    const [found] = of([ask(120, 'approved', '2026-12-12T16:10')], [day('2026-12-12T07:00', '2026-12-12T20:00')]);
    expect(found).toMatchObject({ over: 280, quoted: 180, approved: 100, open: 0 });
    expect(overtimeCautions(found ? [found] : [], '')).toEqual([]);
  });

  test('a half day that stays one has none, one that overruns is a day', () => {
    const half = (wrap: string) =>
      overtimeOf({ actual: [day('2026-12-12T07:00', wrap, { kind: 'half' })], planned: [], asks: [], terms: card, zone });
    expect(half('2026-12-12T12:00')).toEqual([]);
    expect(half('2026-12-12T18:00')).toMatchObject([{ over: 60 }]);
  });
});

test('14 h from call to wrap are no caution, a minute more is', () => {
  const of = (wrap: string) =>
    longDayCautions([{ ...day('2026-12-12T07:00', wrap), handId: 'h', zone, unpaidBreakMinutes: 0 }], () => 'Mara Quill');
  expect(of('2026-12-12T21:00')).toEqual([]);
  expect(of('2026-12-12T21:01')).toEqual([
    'Sat 12 December 2026, Mara Quill: 14 h 1 min from call to wrap. Over 14 h, nobody should be driving; sleep first.',
  ]);
});
