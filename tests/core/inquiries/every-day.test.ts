/**
 * Hours of every day of a list behind it are those of the first and the last, and not of the day that stands before them.
 */
import { describe, expect, test } from 'vitest';
import { facts, lines } from './reading.ts';

const hours = (words: string): (string | undefined)[] => {
  const text = `Hi Casey,\n\nCould you film our youth finals in Ripon? There are three dates:\n\n7 April\n15 April\n30 April\n\n${words} One camera on the balcony. We can pay 380 a day. Tell me by 12 March please.\n\nRobin Vane`;
  const { firstCall, lastWrap } = facts(text, '2027-03-05T10:05:00+00:00[Europe/London]', 'leeds');
  return [firstCall, lastWrap];
};

describe('each day', () => {
  const ways = lines(`
    Each day call 9:00, wrap 19:00.
    On each date your call is 9:00 and your wrap 19:00.
    Call is 9:00 each day, wrap 19:00.
    Kick-off is 10:00 every time, be there at 9:00, done by 19:00.
    All three days: be there at 9:00, you can go at 19:00.
    Your hours on each date are 9:00 to 19:00.
  `);
  test.each(ways)('%s', (way) => expect(hours(way)).toEqual(['2027-04-07T09:00', '2027-04-30T19:00']));
});

test('one day alone', () => expect(hours('On 30 April your call is 9:00 and your wrap 19:00.')[0]).toBeUndefined());

test('a row with its own day has the hour of that day', () => {
  const text =
    'Crew req, vision mixer\nClient: confidential congress\nLoc: Ripon\nLoad-in Sun 14 Nov 1900\nShow days Mon 15 – Wed 17 Nov, call 0700\nWrap & bump-out complete Wed 2130\nRate: 480 a day\nConfirm by 12 noon Mon 25 Oct\nContact: Robin Vane, Northgate Crewing';
  expect(facts(text, '2027-10-21T10:02:00+01:00[Europe/London]', 'leeds')).toMatchObject({
    start: '2027-11-15',
    end: '2027-11-17',
    firstCall: '2027-11-14T19:00',
    lastWrap: '2027-11-17T21:30',
  });
});
