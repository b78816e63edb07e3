import { expect, test } from 'vitest';
import { nearestDates } from '../../../core/fit/nearest.ts';
import { inputOf, type Situation } from '../../situations/shape.ts';
import { denver, duluth, fargo } from '../trips/places.ts';

const near = (situation: Omit<Situation, 'name' | 'answer' | 'findings'>, within: number, limit: number) =>
  nearestDates(inputOf({ name: '', answer: 'free', findings: [], ...situation }), within, limit).map(
    ({ shiftDays, answer, reason, days }) => ({ shiftDays, answer, reason, days: days.map(({ call, wrap }) => `${call} ${wrap}`) }),
  );

test('free dates come before those free if, however much nearer these are, and the length is kept', () => {
  const found = near(
    {
      home: duluth,
      booked: [
        { title: 'Clinic opening', place: duluth, days: ['2026-12-12 08:00-18:00'] },
        { title: 'Fair', place: duluth, days: ['2026-12-14 08:00-18:00'], pencilled: 1 },
      ],
      candidate: { place: duluth, days: ['2026-12-12 09:00-17:00', '2026-12-13 09:00-01:00'] },
    },
    3,
    9,
  );
  // A day earlier is over the clinic; two days earlier the wrap at 01:00 leaves 7 h before it; one and two later are over the pencil.
  expect(found.map(({ shiftDays, answer }) => [shiftDays, answer])).toEqual([
    [-3, 'free'],
    [3, 'free'],
    [1, 'free if'],
    [-2, 'free if'],
    [2, 'free if'],
  ]);
  expect(found[0]?.days).toEqual(['2026-12-09T09:00 2026-12-09T17:00', '2026-12-10T09:00 2026-12-11T01:00']);
});

test('tickets do not move along: no other date is free without changing them', () => {
  const found = near(
    {
      home: duluth,
      booked: [],
      candidate: {
        place: denver,
        days: ['2026-06-10 08:00-18:00'],
        tickets: [{ mode: 'flight', from: duluth, to: denver, depart: '2026-06-09T10:00', arrive: '2026-06-09T12:00', cost: '180.00' }],
      },
    },
    1,
    2,
  );
  expect(found.map(({ shiftDays, answer }) => [shiftDays, answer])).toEqual([
    [-1, 'free if'],
    [1, 'free if'],
  ]);
  expect(found[0]?.reason).toContain(
    'The flight from Duluth to Denver on Tuesday 9 June 10:00 does not move along: change it or give it up, which costs 180.00.',
  );
});

test('typed ways move along', () => {
  const found = near(
    {
      home: duluth,
      ways: [{ between: [duluth, fargo], minutes: 240 }],
      booked: [{ title: 'Gala', place: duluth, days: ['2026-06-11 12:00-20:00'] }],
      candidate: { place: fargo, days: ['2026-06-10 08:00-18:00'] },
    },
    2,
    9,
  );
  // The 11th is taken, on the 12th the call at 08:00 is 12 h after the gala: 4 h of way and 8 h of rest to the minute.
  expect(found.map(({ shiftDays, answer }) => [shiftDays, answer])).toEqual([
    [-1, 'free'],
    [-2, 'free'],
    [2, 'free'],
  ]);
});

test('a date on which the clock skips the call, and one before now, is passed over', () => {
  const found = near(
    { home: duluth, booked: [], candidate: { place: duluth, days: ['2027-03-13 02:30-08:00'] }, now: '2027-03-12T02:30' },
    2,
    9,
  );
  expect(found.map(({ shiftDays }) => shiftDays)).toEqual([2]);
});
