import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { paidDates } from '../../../core/days/dates.ts';
import { billedKind, payOfDay, workedMs, type DayTerms, type WorkedDay } from '../../../core/days/pay.ts';
import { forcedCall } from '../../../core/days/turnaround.ts';
import { decimalText } from '../../../core/money/exact.ts';
import { defaultCard } from '../../../core/rates/defaults.ts';
import { instantOf } from '../../../core/time/read.ts';
import { tried } from '../laws.ts';

const card = (changes: Partial<DayTerms> = {}): DayTerms => ({
  ...defaultCard('shoot', 'USD', '2026-01-01'),
  dayRate: '1200.00',
  ...changes,
});

function day(call: string, wrap: string, changes: Partial<WorkedDay> = {}): WorkedDay {
  const zone = changes.zone ?? 'America/Chicago';
  const at = (wall: string) => instantOf(wall, zone).epochMilliseconds;
  return {
    date: call.slice(0, 10),
    kind: 'shoot',
    callAt: at(call),
    wrapAt: at(wrap),
    unpaidBreakMinutes: 0,
    zone,
    holiday: false,
    ...changes,
  };
}

const total = (worked: WorkedDay, terms: DayTerms) => payOfDay(worked, terms).reduce((sum, part) => sum + part.amount.minor, 0);
const parts = (worked: WorkedDay, terms: DayTerms) =>
  payOfDay(worked, terms).map((part) => [part.key, decimalText(part.quantity), part.amount.minor]);

describe('a full day', () => {
  test('1,200.00, 10 h, call 07:00, wrap 22:40, one meal hour: 2,160.00', () => {
    const worked = day('2026-09-08T07:00', '2026-09-08T22:40', { unpaidBreakMinutes: 60 });
    expect(parts(worked, card())).toEqual([
      ['shoot', '1', 120_000],
      ['overtime shoot 1.5', '4', 72_000],
      ['overtime shoot 2', '1', 24_000],
    ]);
    expect(payOfDay(worked, card())[1]?.reason).toContain('14 h 40 min after 1 h of unpaid breaks, billed in started half hours as 15 h');
  });
  test('the night the clock goes back is 11 h 30 min: 1,225.00', () => {
    expect(total(day('2026-10-31T18:00', '2026-11-01T04:30'), card({ dayRate: '1000.00' }))).toBe(122_500);
  });
  test('the night the clock goes forward is 9 h 30 min: no overtime', () => {
    const worked = day('2026-03-07T18:00', '2026-03-08T04:30');
    expect(workedMs(worked)).toBe(9.5 * 3_600_000);
    expect(total(worked, card({ dayRate: '1000.00' }))).toBe(100_000);
  });
  test('950.00 with a 9 h day, 4 h over at 1.5 times = 633.33', () => {
    const worked = day('2026-09-08T08:00', '2026-09-08T21:00');
    expect(parts(worked, card({ dayRate: '950.00', dayHours: '9' }))[1]).toEqual(['overtime shoot 1.5', '4', 63_333]);
  });
  test('a short day is a day', () => expect(total(day('2026-09-08T08:00', '2026-09-08T11:00'), card())).toBe(120_000));
  test('exactly the day length is no overtime, a minute more a half hour', () => {
    expect(total(day('2026-09-08T08:00', '2026-09-08T18:00'), card())).toBe(120_000);
    expect(total(day('2026-09-08T08:00', '2026-09-08T18:01'), card())).toBe(129_000);
  });
  test('within the grace nothing, past it all of it', () => {
    const terms = card({ graceMinutes: 15 });
    expect(total(day('2026-09-08T08:00', '2026-09-08T18:15'), terms)).toBe(120_000);
    expect(total(day('2026-09-08T08:00', '2026-09-08T18:16'), terms)).toBe(129_000);
  });
  test('each started half hour is priced in the tier in which it starts', () => {
    const terms = card({
      overtime: [
        { fromHours: '0', toHours: '1.25', times: '1.5' },
        { fromHours: '1.25', toHours: null, times: '2' },
      ],
    });
    expect(parts(day('2026-09-08T08:00', '2026-09-08T20:00'), terms)).toEqual([
      ['shoot', '1', 120_000],
      ['overtime shoot 1.5', '1.5', 27_000],
      ['overtime shoot 2', '0.5', 12_000],
    ]);
  });
  test('a scale that starts later has a free gap', () => {
    const terms = card({ overtime: [{ fromHours: '2', toHours: null, times: '1.5' }] });
    expect(total(day('2026-09-08T08:00', '2026-09-08T20:00'), terms)).toBe(120_000);
    expect(total(day('2026-09-08T08:00', '2026-09-08T21:00'), terms)).toBe(138_000);
  });
  test('two zones in one day: elapsed time', () => {
    const worked = {
      ...day('2026-09-08T08:00', '2026-09-08T18:00'),
      wrapAt: instantOf('2026-09-08T20:00', 'America/New_York').epochMilliseconds,
    };
    expect(total(worked, card())).toBe(138_000);
  });
});

describe('a half day', () => {
  const half = (wrap: string) => day('2026-09-08T08:00', `2026-09-08T${wrap}`, { kind: 'half' });
  test('up to 5 h costs 60 %', () => expect(total(half('13:00'), card())).toBe(72_000));
  test('15 min of grace are still a half day', () =>
    expect([billedKind(half('13:15'), card()), billedKind(half('13:16'), card())]).toEqual(['half', 'shoot']));
  test('the minimum call is the half day', () => expect(total(half('09:00'), card())).toBe(72_000));
  test('one that overruns becomes a full day, and past that bears overtime', () => {
    expect(total(half('14:00'), card())).toBe(120_000);
    expect(total(half('19:00'), card())).toBe(138_000);
  });
});

describe('prep, standby and travel', () => {
  test.each(['prep', 'standby', 'travel'] as const)('a %s day costs half', (kind) => {
    expect(total(day('2026-09-08T08:00', '2026-09-08T16:00', { kind }), card())).toBe(60_000);
  });
  test('travel bears no overtime, standby its share', () => {
    expect(total(day('2026-09-08T08:00', '2026-09-08T20:00', { kind: 'travel' }), card())).toBe(60_000);
    expect(total(day('2026-09-08T08:00', '2026-09-08T20:00', { kind: 'standby' }), card())).toBe(60_000 + 18_000);
  });
});

describe('uplifts', () => {
  const sunday = day('2026-09-06T08:00', '2026-09-06T20:00', { holiday: true });
  test('add on the base, never on each other or on overtime', () => {
    const terms = card({ weekendPercent: '25', holidayPercent: '50' });
    expect(parts(sunday, terms)).toEqual([
      ['shoot', '1', 120_000],
      ['overtime shoot 1.5', '2', 36_000],
      ['weekend uplift', '1', 30_000],
      ['holiday uplift', '1', 60_000],
    ]);
  });
  test('go by the date of the call', () => {
    const friday = day('2026-09-04T20:00', '2026-09-05T04:00');
    expect(parts(friday, card({ weekendPercent: '25' })).map(([key]) => key)).toEqual(['shoot']);
  });
  test('night by half hours at the place, only of the hours that the base pays', () => {
    const terms = card({ nightPercent: '25' });
    // 20:00 to 04:00 holds six night hours: 6 x 120.00 x 25 %
    expect(parts(day('2026-09-04T20:00', '2026-09-05T04:00'), terms)).toContainEqual(['night uplift', '6', 18_000]);
    // 14:00 to 02:00: the last two hours are overtime, so of four night hours two are the base's
    expect(parts(day('2026-09-04T14:00', '2026-09-05T02:00'), terms)).toContainEqual(['night uplift', '2', 6_000]);
  });
  test('on a half day they are of the half day', () => {
    const terms = card({ weekendPercent: '50', nightPercent: '50' });
    const half = day('2026-09-05T19:00', '2026-09-06T00:00', { kind: 'half' });
    expect(parts(half, terms)).toEqual([
      ['half', '1', 72_000],
      ['weekend uplift', '1', 36_000],
      ['night uplift', '2', 14_400],
    ]);
  });
});

describe('turnaround', () => {
  const at = (wall: string) => instantOf(wall, 'Europe/London').epochMilliseconds;
  test('wrap 23:00, call 07:00 is short by 3 h of 11 and by 2 h of 10', () => {
    const forced = (turnaroundHours: string) => forcedCall(at('2026-09-08T23:00'), at('2026-09-09T07:00'), card({ turnaroundHours }));
    expect([forced('11')?.missingMinutes, forced('10')?.missingMinutes, forced('8')]).toEqual([180, 120, undefined]);
    expect(forced('11')?.amount.minor).toBe(36_000);
  });
  test('missing time is billed by started half hour at the forced-call multiplier', () => {
    const forced = forcedCall(at('2026-09-08T23:00'), at('2026-09-09T08:50'), card({ forcedTimes: '1.5' }));
    expect([forced?.missingMinutes, forced?.amount.minor]).toEqual([10, 9_000]);
    expect(forced?.caution).toContain('9 h 50 min');
  });
});

describe('paid dates', () => {
  const book = (call: string, wrap: string, kind: 'shoot' | 'half' | 'travel' | 'edit' | 'prep') => {
    const { date, callAt, wrapAt } = day(call, wrap);
    return { date, kind, call, wrap, callAt, wrapAt };
  };
  test('two calls on one date are one day from first call to last wrap, of the dearest kind', () => {
    const merged = paidDates([book('2026-09-08T19:00', '2026-09-08T22:00', 'half'), book('2026-09-08T08:00', '2026-09-08T10:00', 'prep')]);
    expect(merged).toMatchObject([{ kind: 'half', call: '2026-09-08T08:00', wrap: '2026-09-08T22:00' }]);
  });
  test('travel on a working date adds nothing and does not lengthen it', () => {
    const merged = paidDates([
      book('2026-09-08T05:00', '2026-09-08T08:00', 'travel'),
      book('2026-09-08T09:00', '2026-09-08T19:00', 'shoot'),
    ]);
    expect(merged).toMatchObject([{ kind: 'shoot', call: '2026-09-08T09:00' }]);
  });
  test('edit hours stay lines of their own', () => {
    expect(
      paidDates([book('2026-09-08T20:00', '2026-09-08T22:00', 'edit'), book('2026-09-08T09:00', '2026-09-08T19:00', 'shoot')]).map(
        (one) => one.kind,
      ),
    ).toEqual(['shoot', 'edit']);
  });
});

describe('laws', () => {
  const start = instantOf('2026-09-04T06:00', 'America/Chicago').epochMilliseconds;
  const kind = fc.constantFrom('shoot', 'half', 'prep', 'standby', 'travel');
  const minutes = fc.integer({ min: 1, max: 36 * 60 });
  const worked = (length: number, of: WorkedDay['kind']): WorkedDay => ({
    date: '2026-09-04',
    kind: of,
    callAt: start,
    wrapAt: start + length * 60_000,
    unpaidBreakMinutes: 0,
    zone: 'America/Chicago',
    holiday: true,
  });
  const terms = fc
    .record({
      dayRate: fc.constantFrom('950.00', '1200.00', '777.77'),
      dayHours: fc.constantFrom('8', '9', '10', '12'),
      nightPercent: fc.constantFrom('0', '25'),
    })
    .map(card);

  test('more time never costs less', () =>
    fc.assert(
      fc.property(minutes, fc.integer({ min: 0, max: 600 }), kind, terms, (length, more, of, on) => {
        expect(total(worked(length + more, of), on)).toBeGreaterThanOrEqual(total(worked(length, of), on));
      }),
      tried,
    ));
  test('an unpaid break is worth as much as a shorter day', () =>
    fc.assert(
      fc.property(fc.integer({ min: 120, max: 1200 }), fc.integer({ min: 0, max: 90 }), (length, rest) => {
        const on = card();
        expect(total({ ...worked(length, 'shoot'), unpaidBreakMinutes: rest }, on)).toBe(total(worked(length - rest, 'shoot'), on));
      }),
      tried,
    ));
  test('a week later, in a zone without clock changes, a day costs the same', () =>
    fc.assert(
      fc.property(minutes, kind, (length, of) => {
        const on = card({ nightPercent: '25', weekendPercent: '10' });
        const one = { ...worked(length, of), zone: 'America/Phoenix' };
        const week = 7 * 86_400_000;
        expect(total({ ...one, date: '2026-09-11', callAt: one.callAt + week, wrapAt: one.wrapAt + week }, on)).toBe(total(one, on));
      }),
      tried,
    ));
});
