/**
 * Words that look like days that are added, left out or counted and change nothing of the days that are told: a day is never stated by them.
 */
import { describe, expect, test } from 'vitest';
import { daysOf, facts } from './reading.ts';

const aFairOf = (sentence: string): string =>
  `Hi Casey,\n\nI am writing on behalf of the Larkfield Fair in Ripon. We would like somebody to film it for us, one person with a camera, and to give us a short film afterwards. ${sentence} Please let me know what you would charge.\n\nThanks,\nRobin Vane`;

describe('no other days', () => {
  test.each([
    ['11-12,11-14', 'Our fair runs from 12 to 14 November. The first and last day are only half days.'],
    ['11-14,11-28', 'It is on 14 November. We also need two social media videos for the launch on 28 November.'],
    ['11-13..11-14', 'It is on 14 November. A TV crew will also be filming our rehearsals on 13 November.'],
    ['11-05,11-14', 'It is on 14 November. There is also a meeting about filming permissions on 5 November.'],
    ['11-13..11-14', 'It is on 12 to 14 November. The doors open at 10 every day except the first, when it is noon.'],
    ['11-12..11-13', 'It is on 12 to 14 November. Every day but the last is sold out.'],
    ['11-13..11-14', 'It is from Thursday 11 to Sunday 14 November. We have just booked the headliner for the weekend.'],
    ['11-14,11-16', 'Our party is on 14 November and two days later, the whole family flies home.'],
    ['11-14..11-15', 'Our party is on 14 November and the day after, the hall is shut.'],
    ['11-14,11-28', 'There are two shows, one on 14 November and another on 28 November. We need a camera at the second.'],
    ['12-01', 'We need a camera for one December party as well.'],
    ['11-13', 'Our new shop opens on 12 November and we hold a party on 13 November.'],
    ['11-14', '14 November is not fixed yet.'],
  ])('not %s: %s', (wrong, sentence) => expect(daysOf(aFairOf(sentence))).not.toBe(wrong));
});

describe('the day as it is told', () => {
  test.each([
    ['11-14', 'Our wedding is on 14 November, so please let me know.'],
    ['11-14', "We can't wait for our big day on 14 November!"],
    ['11-14', "The conference is on 14 November and we'll send you the schedule nearer the time."],
    ['11-14', 'The ceremony is on 14 November and after that we party.'],
    ['11-27..11-29', 'Please film our window display from 27 to 29 November.'],
  ])('%s: %s', (days, sentence) => expect(daysOf(aFairOf(sentence))).toBe(days));
});

test.each(['Set-up goes from 8 to 10, then doors.', 'Could you make 3 pm for a quick phone call?'])('no call: %s', (words) => {
  const { firstCall } = facts(aFairOf(`It is on 14 November. ${words}`), '2027-09-01T10:00:00+01:00[Europe/London]', 'leeds');
  expect(['2027-11-14T10:00', '2027-11-14T15:00']).not.toContain(firstCall);
});
