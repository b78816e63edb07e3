/**
 * Rows in which each of several days has its hour, hours of a journey beside the end of the work, and a call on one day where the evening is on another.
 */
import { describe, expect, test } from 'vitest';
import { facts } from './reading.ts';

const read = (text: string) => facts(text, '2026-11-25T09:12:00+00:00[Europe/London]', 'leeds');
const ASKED = 'Camera op wanted in York, £300 per day. Are you free?';

describe('first call and last wrap', () => {
  test.each([
    [
      '2027-06-08T06:30',
      '2027-06-09T16:00',
      'Dates: Tuesday 8 and Wednesday 9 June 2027\nCall Tue 06:30 / Wed 07:30\nWrap Tue 19:00 / Wed 16:00',
    ],
    [
      '2027-09-14T07:30',
      '2027-09-15T17:00',
      'Dates: 14 & 15 September 2027\nCall: 07:30 (14th), 08:30 (15th)\nWrap: 18:00 (14th), 17:00 (15th)',
    ],
    [
      '2027-06-08T09:00',
      '2027-06-09T15:00',
      'Dates: 8 and 9 June 2027\nCall: 09:00 on the 8th and 07:30 on the 9th\nWrap: 22:00 on the 8th and 15:00 on the 9th',
    ],
    [
      '2027-07-20T07:00',
      undefined,
      '20 and 21 July 2027 (Tue/Wed). 0700 crew call both days. Flights: Monday 19th 1640 out, Wednesday 1930 home.',
    ],
    [
      undefined,
      '2027-10-08T01:00',
      '6 and 7 October 2027: interviews, gala dinner on the second evening. Meet at the hotel 8:30 on the 6th. The gala finishes late, count on 1 am.',
    ],
  ])('%s to %s of %s', (firstCall, lastWrap, days) => {
    expect(read(`${ASKED}\n${days}`)).toMatchObject(Object.fromEntries(Object.entries({ firstCall, lastWrap }).filter(([, wall]) => wall)));
    for (const [field, wall] of Object.entries({ firstCall, lastWrap }))
      if (wall === undefined) expect(read(`${ASKED}\n${days}`)).not.toHaveProperty(field);
  });
});
