import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { dueBy, internalBy } from '../../../core/deliverables/due.ts';
import { stageNames, stagesFrom, type Numbers } from '../../../core/deliverables/make-stages.ts';
import { tried } from '../laws.ts';

const highlight: Numbers = {
  finishedMinutes: '3',
  editHoursPerMinute: '4',
  ingestHours: '2',
  rounds: 2,
  hoursPerRound: '2.5',
  sameDay: false,
};
const short = (numbers: Numbers) => stagesFrom(numbers).map(({ kind, halfHours }) => `${kind} ${halfHours / 2}`);

describe('the stages of a deliverable', () => {
  test('its edit hours are shared out, its rounds lie before the lock', () => {
    expect(short(highlight)).toEqual([
      'ingest 2',
      'selects 2.5',
      'rough cut 5',
      'fine cut 3.5',
      'round 2.5',
      'round 2.5',
      'picture lock 1',
      'delivered 0',
      'approved 0',
    ]);
  });
  test('a started half hour is whole, and exact: a tenth of an hour a minute over thirty minutes is 3 h', () => {
    expect(short({ ...highlight, finishedMinutes: '30', editHoursPerMinute: '0.1', ingestHours: '0.1', rounds: 0 })).toEqual([
      'ingest 0.5',
      'selects 0.5',
      'rough cut 1',
      'fine cut 1',
      'picture lock 0.5',
      'delivered 0',
      'approved 0',
    ]);
  });
  test('hours that were said stand in place of the minutes', () => {
    expect(short({ ...highlight, editHours: '1', ingestHours: '0', rounds: 0 })).toEqual([
      'rough cut 0.5',
      'fine cut 0.5',
      'delivered 0',
      'approved 0',
    ]);
  });
  test('on the same day it is one cut', () => {
    expect(short({ ...highlight, rounds: 0, sameDay: true })).toEqual(['ingest 2', 'fine cut 12', 'delivered 0', 'approved 0']);
  });
  test('without any hours its two marks are left', () => {
    expect(short({ ...highlight, finishedMinutes: '0', ingestHours: '0', rounds: 0 })).toEqual(['delivered 0', 'approved 0']);
  });
  test('a round is numbered where there are several', () => {
    expect(stageNames(['ingest', 'fine cut', 'round', 'round', 'picture lock'])).toEqual([
      'Ingest',
      'Fine cut',
      'Round 1',
      'Round 2',
      'Picture lock',
    ]);
    expect(stageNames(['round'])).toEqual(['Round']);
  });
});

const hours = fc.integer({ min: 0, max: 400 }).map((tenths) => String(tenths / 10));
test.prop([hours, hours, hours, fc.integer({ min: 0, max: 5 }), hours], tried)(
  'the parts add up to the whole, each rounded up once',
  (finishedMinutes, editHoursPerMinute, ingestHours, rounds, hoursPerRound) => {
    const numbers = { finishedMinutes, editHoursPerMinute, ingestHours, rounds, hoursPerRound, sameDay: false };
    const sum = stagesFrom(numbers).reduce((all, { halfHours }) => all + halfHours, 0);
    const up = (hundredths: number) => Math.ceil((hundredths * 2) / 100);
    const inTenths = (text: string) => Math.round(Number(text) * 10);
    const expected =
      up(inTenths(finishedMinutes) * inTenths(editHoursPerMinute)) +
      up(inTenths(ingestHours) * 10) +
      rounds * up(inTenths(hoursPerRound) * 10);
    expect(sum).toBe(expected);
  },
);

describe('when it is due', () => {
  const holidays = new Set(['2026-12-25', '2026-12-28']);
  test.each([
    [{ days: 14, count: 'calendar', from: 'last wrap' }, '2026-12-26'],
    [{ days: 10, count: 'business', from: 'last wrap' }, '2026-12-29'],
    [{ days: 0, count: 'business', from: 'last wrap' }, '2026-12-12'],
  ] as const)('%j after Saturday 12 December 2026 with two holidays', (rule, due) => {
    expect(dueBy(rule, '2026-12-12', holidays)).toBe(due);
  });
  test('the internal date lies business days before it', () => {
    expect([0, 1, 3].map((days) => internalBy('2026-12-29', days, holidays))).toEqual(['2026-12-29', '2026-12-24', '2026-12-22']);
  });
});
