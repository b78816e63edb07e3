/**
 * Days of a run that are told by their place in it, by their towns, one by one or by their hours; hours and zones by which an answer is wanted.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

const at = (text: string): string => {
  const { start, end, days } = facts(text);
  return `${start ?? '-'} ${end ?? '-'} ${days ?? '-'}`;
};

describe('some days of a run', () => {
  test.each([
    [
      'Our congress is in Duluth from 8 to 11 December. We only need a videographer on the first and last days. Be there at 8am, done by 5pm.',
      '2026-12-08 2026-12-11 2',
    ],
    [
      'Camp is 8-11 December in Duluth, but we just need you to film the first two days. Call 8am, $400 per day.',
      '2026-12-08 2026-12-09 2',
    ],
    [
      'Can you film in Duluth 8, 9 and 10 December? Just the first and the last day please. Nothing happens on the 9th. $380/day, 8am call.',
      '2026-12-08 2026-12-10 2',
    ],
    [
      'We are building a design fair in Duluth, 5-13 December. I only need you to film three of those: Sat 5 (opening, 10am), Wed 9 (talks) and Sun 13 (closing, you leave at 6pm). $385 per day.',
      '2026-12-05 2026-12-13 3',
    ],
    [
      'We stop at Duluth on Monday 7 December and Fargo on Wednesday 9 December. We would only need you in Duluth to film. Get-in 2pm, out by 11pm. $420.',
      '2026-12-07 2026-12-07 1',
    ],
    [
      'Roadshow dates: 7 December, Duluth; 9 December, Fargo; 10 December, Madison. You would only be needed to film for Fargo. Call 8am, $400 for the day.',
      '2026-12-09 2026-12-09 1',
    ],
    [
      'I am shooting in Duluth and need someone on B cam Dec 5, 6, 7 and then again the 11th. Call is 7am. $400 a day.',
      '2026-12-05 2026-12-11 4',
    ],
    [
      'Film our party in Duluth, Thursday 31 December into Friday 1 January? Arrive 7pm, done 1.30am. $600 for the night.',
      '2026-12-31 2026-12-31 1',
    ],
    [
      'Do you have 5-7 December free (Sat to Mon) to film a congress in Duluth? Rig is on Friday the 4th but Ollie can do it, so please just come for 8am Saturday. Monday wraps at 1pm. $1,100.',
      '2026-12-05 2026-12-07 3',
    ],
  ])('%s', (text, want) => expect(at(text)).toBe(want));

  test.each([
    'Hi Kit, nobody needs you to come and film, it is all on a drive. Could you edit a tribute of 8 minutes to play at the visitation on Saturday 12 December? $300.',
    'Can you edit this? Nothing to film this time. I have a box of VHS from my dad, turn it into ten minutes for his party on 12 December. $250.',
  ])('nothing to film, no day: %s', (text) => expect(facts(text).start).toBeUndefined());
});

describe('the hour by which an answer is wanted', () => {
  const job = 'Can you film our AGM in Duluth on 12 December, 9am to 5pm, $400?';
  test.each([
    ['Please let me know by this Friday at 3.', '2026-11-27T15:00'],
    ['Let me know tomorrow afternoon, 4 at the latest.', '2026-11-26T16:00'],
    ['Text me tonight before 9 or I will ask someone else.', '2026-11-25T21:00'],
    ['Let me know by Friday, 2 cameras if you can.', '2026-11-27T23:59'],
    ['Let me know by Friday at 10.', undefined],
    ['Tell me by Monday 5pm eastern', '2026-11-30T16:00'],
    ['RSVP Monday Nov 30, 17:00 UTC-5.', '2026-11-30T16:00'],
    ['RSVP Monday Nov 30, 17:00 UTC+5:30.', '2026-11-30T05:30'],
    ['Kindly confirm by 30 November, 12:00 noon Helsinki time.', '2026-11-30T04:00'],
    ['I would need to hear by 5pm on Friday, London time.', '2026-11-27T11:00'],
    ['We lock crew on Thursday 3 December, so reply by 4pm that afternoon please.', '2026-12-03T16:00'],
    ['Please reply by Monday Nov 30, 17:00 Ruritania time.', undefined],
  ])('%s', (words, want) => expect(facts(`${job} ${words}`).replyBy).toBe(want));
});
