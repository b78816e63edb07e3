/**
 * A first day of which nobody knows yet how many follow is stated, its last day is asked about; a job of one day stays one.
 */
import { expect, test } from 'vitest';
import { aFair, facts } from './reading.ts';

test.each([
  'We start on Monday 8 March, call 05h30 that first day, and go on for five or six days depending on the rain.',
  'It is on Monday 8 March and may spill over into the next day.',
  'It is on Monday 8 March, possibly also the day after.',
  'We have 8 March booked at the hall and are trying to get the 9th too.',
  'The conference opens on Monday 8 March; whether we film the second day as well depends on budget.',
])('how many days is not stated: %s', (sentence) => {
  const { end, days } = facts(aFair(sentence));
  expect([end, days]).toEqual([undefined, undefined]);
});

test.each([
  'We start filming on Monday 8 March and it will take as many days as it takes.',
  'Shooting begins on Monday 8 March; how long we need you for depends on the weather.',
  'Day one is Monday 8 March, the number of days is still being worked out.',
  'The first day is Monday 8 March. We are not sure yet how many days after that.',
  'It kicks off on Monday 8 March and we may need two or three days.',
  'From Monday 8 March, probably a few days.',
  'From Monday 8 March for a couple of days, maybe three.',
  'We begin on Monday 8 March and go on until it is done.',
  'Monday 8 March is the first day; the rest of the schedule follows next week.',
  'Starting Monday 8 March, length of the job to be confirmed.',
  'Starting Monday 8 March. End date TBC.',
  'Start date: Monday 8 March. End date: open.',
  'Dates: Monday 8 March to tbd.',
  'Dates: 8 March - ?',
  'From 8 March, end date not fixed yet.',
  'It is on Monday 8 March, with a second day if it rains.',
  'Monday 8 March, plus perhaps one more day that week.',
  'Monday 8 March and however many days the jury needs.',
  'The trial starts on Monday 8 March and nobody can say how long it runs.',
  'The tour opens on Monday 8 March, I will send the other dates when the venues confirm.',
  'The first show is Monday 8 March, more dates to follow.',
  'First of several days: Monday 8 March. The others are not set.',
  'We would need you from Monday 8 March, either two days or four.',
  'Would need you from Monday 8 March for one or two days.',
  "It starts on Monday 8 March and runs for a few days, I don't know the end yet.",
  '8 March is day 1, wrap day depends on how fast the crew builds.',
  'We start on Monday 8 March, duration unknown.',
  'Monday 8 March onwards.',
  'Monday 8 March on.',
  'As of Monday 8 March, open end.',
  'Monday 8 March, could be one day, could be two.',
  'Monday 8 March, one day for sure, a second one maybe.',
  'Harvest begins on Monday 8 March if the grapes are ready; we film until they are in.',
  "The excavation starts on Monday 8 March; we'll keep you as long as there's something to see.",
  "The festival begins on Monday 8 March. We haven't decided how many days we want covered.",
  "We'd want you there from Monday 8 March, last day to be agreed.",
  'Filming from Monday 8 March, finish date depends on the judge.',
  'Monday 8 March till whenever.',
  'It begins Monday 8 March and the committee will decide on the closing day on Friday.',
])('the end is open: %s', (sentence) => {
  const { start, end, days } = facts(aFair(sentence));
  expect([start, end, days]).toEqual(['2027-03-08', undefined, undefined]);
});

test.each([
  'It starts on Monday 8 March at 7pm and goes on until the band is done.',
  'It is on Monday 8 March and we need the edit two or three days after it.',
  'Monday 8 March, on stage at 7pm.',
  'The doors open on Monday 8 March at 6pm; how long would you need to set up?',
  'Monday 8 March. Could you let me know within a day or two?',
  'Monday 8 March. If you cannot, another day that week would suit us less.',
  'It is on Monday 8 March. The end date for tenders is open until Friday.',
  'Our open day is on Monday 8 March, from 9 to 4.',
  'It is on Monday 8 March, and as many guests as the hall holds.',
])('one day: %s', (sentence) => {
  const { start, end } = facts(aFair(sentence));
  expect([start, end]).toEqual(['2027-03-08', '2027-03-08']);
});
