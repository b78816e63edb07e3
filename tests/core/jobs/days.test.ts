import { describe, expect, test } from 'vitest';
import type { JobDay } from '../../../core/contract/jobs.ts';
import { readDays } from '../../../core/jobs/days.ts';

const CHICAGO = 'America/Chicago';
const day = (date: string, call = '09:00', wrap = '19:00', wrapDate = date): JobDay => ({
  date,
  kind: 'shoot',
  call: `${date}T${call}`,
  wrap: `${wrapDate}T${wrap}`,
});
const hours = ({ callAt, wrapAt }: { callAt: number; wrapAt: number }) => (wrapAt - callAt) / 3_600_000;
const sentences = (...days: JobDay[]) => readDays(days, CHICAGO).troubles.map(({ sentence }) => sentence);

describe('instants of paid dates', () => {
  // Rules of time: the same wall times over both clock changes of America/Chicago in 2026.
  test('a night over a clock change has the length that passes', () => {
    expect(readDays([day('2026-10-31', '18:00', '04:30', '2026-11-01')], CHICAGO).days.map(hours)).toEqual([11.5]);
    expect(readDays([day('2026-03-07', '18:00', '04:30', '2026-03-08')], CHICAGO).days.map(hours)).toEqual([9.5]);
  });

  test('any order comes out in order of calls', () => {
    const read = readDays([day('2026-12-13'), day('2026-12-12')], CHICAGO);
    expect(read.days.map(({ date }) => date)).toEqual(['2026-12-12', '2026-12-13']);
  });

  test('a wrap that touches the next call is not over it', () => {
    expect(sentences(day('2026-12-12', '18:00', '06:00', '2026-12-13'), day('2026-12-13', '06:00'))).toEqual([]);
  });
});

describe('days that cannot be', () => {
  test.each([
    [
      'wrap at call',
      [day('2026-12-12', '09:00', '09:00')],
      '2026-12-12: wrap 09:00 is not after call 09:00. A wrap past midnight is on the next date.',
    ],
    [
      '48 h and a minute',
      [day('2026-12-12', '09:00', '09:01', '2026-12-14')],
      '2026-12-12: call to wrap is 48 h 1 min. One date holds at most 48 h; give the next date its own call.',
    ],
    [
      'one date twice',
      [day('2026-12-12', '08:00', '09:00'), day('2026-12-12', '10:00')],
      '2026-12-12 is there twice. Make it one day from its first call to its last wrap.',
    ],
    [
      'one day into the next',
      [day('2026-12-12', '18:00', '06:01', '2026-12-13'), day('2026-12-13', '06:00')],
      '2026-12-12 wraps at 06:01, after the call of 2026-12-13 at 06:00.',
    ],
    [
      '367 days',
      [day('2026-01-01'), day('2027-01-02')],
      'From 2026-01-01 to 2027-01-02 are 367 days. A job holds at most 366; make it two jobs.',
    ],
    [
      'a wrap that occurs twice',
      [day('2026-10-31', '18:00', '01:30', '2026-11-01')],
      '2026-11-01 01:30 occurs twice in America/Chicago: the clock is set back. Give a time before or after the change.',
    ],
  ])('%s', (_name, days, sentence) => expect(sentences(...days)).toEqual([sentence]));

  test('exactly 48 h and exactly 366 days can be', () => {
    expect(sentences(day('2026-12-12', '09:00', '09:00', '2026-12-14'))).toEqual([]);
    expect(sentences(day('2026-01-01'), day('2027-01-01'))).toEqual([]);
  });

  test('each trouble names the day as it was given', () => {
    const { troubles } = readDays([day('2026-12-12'), day('2026-12-13', '09:00', '08:00')], CHICAGO);
    expect(troubles.map(({ field }) => field)).toEqual(['days.1.wrap']);
  });
});
