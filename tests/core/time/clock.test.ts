import { expect, test } from 'vitest';
import { parseClock } from '../../../core/time/clock.ts';

test.each([
  ['9', '09:00'],
  ['9:30', '09:30'],
  ['930', '09:30'],
  ['0930', '09:30'],
  ['14.00', '14:00'],
  ['14h15', '14:15'],
  ['2pm', '14:00'],
  ['2:15 p.m.', '14:15'],
  ['12 am', '00:00'],
  ['12pm', '12:00'],
  ['24:00', '00:00'],
  [' 22:30 ', '22:30'],
])('%s is %s', (typed, time) => {
  expect(parseClock(typed)).toBe(time);
});

test.each(['', 'noonish', '25', '24:30', '9:60', '13pm', '0am', '9:3', '12345'])('"%s" is no time of day', (typed) => {
  expect(parseClock(typed)).toBeUndefined();
});
