/**
 * A plan of days in rows: each row tells of its own day whether there is work for me.
 */
import { describe, expect, it } from 'vitest';
import { readAt } from './reading.ts';

const received = '2027-02-01T10:00:00-05:00[America/Toronto]';
const days = (text: string): string[] | undefined => {
  const { fields, datesFound } = readAt(text, received, 'toronto');
  if (fields.start === undefined) return undefined;
  return datesFound ?? [fields.start, ...(fields.end === fields.start ? [] : [`..${fields.end}`])];
};
const job = (rows: string): string =>
  `Hi Kit,\n\ncamera operator wanted for the seed growers' fair in Kingston.\n\n${rows}\n\n$600 a day.\n\nBest\nMarta`;

describe('rows of days', () => {
  it.each([
    ['Mon 12 April - travel up, no work\nTue 13 April - 09:00 to 18:00\nWed 14 April - 09:00 to 17:00', ['2027-04-13', '..2027-04-14']],
    ['12 April: Anreise\n13 April: 8:00 - 18:00\n14 April: 8:00 - 13:00, then you are free', ['2027-04-13', '..2027-04-14']],
    ['Tue 13 April, show, 9:00 to 18:00\nWed 14 April, dark\nThu 15 April, show, 9:00 to 18:00', ['2027-04-13', '2027-04-15']],
    ['* April 13 opening, call 8am\n* April 14 rest day\n* April 15 finals, call 7am', ['2027-04-13', '2027-04-15']],
    ['13/4 Cobourg, call 0800\n15/4 Napanee, call 0800\n20/4 Belleville, call 0700', ['2027-04-13', '2027-04-15', '2027-04-20']],
    ['Cobourg - Tue 13 April\nNapanee - Thu 15 April\nBelleville - Tue 20 April', ['2027-04-13', '2027-04-15', '2027-04-20']],
    [
      '4/13 Tue   rehearsal   CALL 1:00P   OUT 9:00P\n4/14 Wed   show   CALL 2:00P   OUT 11:30P\n4/15 Thu   strike (riggers only)',
      ['2027-04-13', '..2027-04-14'],
    ],
    [
      'Mon 12 April travel\nTue 13 April set-up from 10, your call 1pm\nWed 14 April show 07:30 - 18:30\nThu 15 April strike, riggers only',
      ['2027-04-13', '..2027-04-14'],
    ],
    [
      'Day 1: Tue 13 April, 09:00 - 17:00\nDay 2: Wed 14 April, 09:00 - 17:00\nDay 3: Thu 15 April, fly home',
      ['2027-04-13', '..2027-04-14'],
    ],
  ])('%s', (rows, expected) => {
    expect(days(job(rows))).toEqual(expected);
  });

  it.each([
    [
      'a sentence tells which',
      'Mon 12 April - Trenton, 9:00 to 17:00\nWed 14 April - Napanee, 9:00 to 17:00\n\nEither of the two, whichever you can do.',
    ],
    ['one may not be', 'Tue 13 April - show, 9:00 to 17:00\nWed 14 April - reserve if it rains'],
    ['somebody else is there', 'Mon 12 April - Trenton, Ben doing\nWed 14 April - Napanee, nobody yet\nFri 16 April - Cobourg, nobody yet'],
  ])('not where %s', (_, rows) => {
    expect(days(job(rows))?.length === 3).toBe(false);
    expect(days(job(rows))).not.toEqual(['2027-04-12', '2027-04-14']);
  });

  it('an answer or a delivery has its row and is no day', () => {
    expect(
      days(job('Show: Tue 13 April, 9:00 to 17:00\nShow: Wed 14 April, 9:00 to 17:00\nReply: by 1 March\nRough cut: 16 April')),
    ).toEqual(['2027-04-13', '..2027-04-14']);
  });

  it.each([
    'Audio wanted at a fair in Kingston: 12/4, 13/4 and 15/4 (dark on the 14th). $600/day. Marta',
    'Please film our choir week in Kingston on 12, 13 and 15 April, nothing on the 14th. $500 a day. Marta',
    'Need you on camera at a chess festival in Kingston, 12, 13 and 15 April (rest day on the 14th). $500 a day. Marta',
  ])('%s', (text) => {
    expect(days(text)).toEqual(['2027-04-12', '2027-04-13', '2027-04-15']);
  });
});
