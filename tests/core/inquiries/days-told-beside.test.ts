/**
 * Days that are told of something beside the work, and days that are told by a feast, a bank holiday, weeks or a month from today.
 */
import { describe, expect, test } from 'vitest';
import { daysOf, readAt, type WayOfDays } from './reading.ts';

const GALA = 'Could you film our gala in Leeds on Saturday 9 October?';
const FETE = 'Could you film our fete in Leeds?';

describe('a day beside the day of the work', () => {
  const ways = [
    'The school breaks up on 22 October.',
    'The film will be shown at our dinner on 20 November.',
    'It goes out on local television on 5 December.',
    'The premiere is on 24 November.',
    'A trailer on 1 November would be a dream.',
    'The judges view the films on 15 November.',
    "Next year's gala is on 14 October 2028.",
    'We leave for our honeymoon on 11 October.',
    'The couple return from their cruise on 28 October.',
    'The marquee comes down on 11 October.',
    'Our licence runs out on 31 October.',
    'Exams finish on 25 October.',
    'Dad turns seventy on 19 October.',
    'There are engineering works on 9 and 10 October.',
    'We also have a fair on 18 October which somebody else films.',
    'The quiz on 16 October is covered by the students.',
    'My brother films the christening on 17 October himself.',
    "For the shoot on 3 December I'll send a separate mail.",
    'He passed away on 3 November.',
    'The stills were taken on 8 November.',
    'We saw your film of the regatta of 8 November.',
    'Our order number is 12/11/28.',
    'We remember the landing of 10 June 1944.',
    'Our bursar retires on 31 October.',
    'The tour then moves on to Hull on 16 October.',
    'The insurance covers you from 8 October to 10 October.',
    'The other wedding that weekend is on Sunday 10 October, not ours.',
    '16 October was full.',
    'After 15 October mail me at home.',
    'The film festival has its deadline on 15 November.',
    'It will be in the local paper on 14 October.',
  ];
  test.each(ways)('%s', (way) => expect(daysOf(`${GALA} ${way}`)).toBe('10-09'));
});

describe('a day that is of the work after all', () => {
  const ways: WayOfDays[] = [
    ['10-09', 'Could you film our premiere? The premiere is on 9 October in Leeds.'],
    ['10-09', 'Could you film our auditions? Auditions are on 9 October in Leeds, from 10 to 4.'],
    ['10-08..10-10', 'Auditions are on 8 and 9 October in Leeds, the final is on 10 October; please film all three days.'],
    ['ask', 'Please film our show in Leeds on 9 October, which the students are filming as well, and on 10 October.'],
    ['10-08..10-09', 'We want both nights filmed: 8 October in Leeds, then the show moves on to York on 9 October.'],
    ['10-08', 'Our head retires on 8 October and we would like that filmed, in Leeds.'],
    ['10-08..10-09', 'My sister gets married in Leeds on 8 October and the party is on 9 October; could you film both days?'],
  ];
  test.each(ways)('%s: %s', (days, text) => expect(daysOf(text)).toBe(days));
});

describe('days by a name or from today', () => {
  const ways: WayOfDays[] = [
    ['11-14', 'It takes place on Remembrance Sunday.'],
    ['05-01', 'It is the first May bank holiday.'],
    ['05-29', 'We have chosen the spring bank holiday Monday.'],
    ['ask', 'It is the spring bank holiday weekend.'],
    ['12-18', "It's the Saturday before Christmas."],
    ['ask', "It's the last Friday before Christmas."],
    ['12-22', "It's the last Wednesday before Christmas."],
    ['04-22', "It's the Saturday after Easter."],
    ['ask', "It's the Monday after Easter."],
    ['10-01', 'It is a month today.'],
    ['09-16', 'In a fortnight, on the Thursday.'],
    ['10-08..10-10', 'It is a run of three nights starting Friday 8 October.'],
    ['10-10', "It's the Sunday of the second weekend in October."],
    ['09-15', 'Fortnight today.'],
    ['10-31', "It's on Halloween itself."],
    ['10-08..10-09', 'It starts on Friday 8 October at noon and goes on till Saturday 9 October at 3pm.'],
    ['10-06', "It's a three day course, 4 to 6 October; please come on day three."],
    ['10-05..10-07', 'The first day is Tuesday 5 October and the last Thursday 7 October.'],
  ];
  test.each(ways)('%s: %s', (days, way) => expect(daysOf(`${FETE} ${way}`)).toBe(days));
});

describe('a time to answer by', () => {
  const ways = [
    ['2026-11-27T23:59', 'Would need to know in the next two days.'],
    [undefined, 'Can you get back to me by Friday arvo?'],
    [undefined, "We promised to tell the bride's mother by Sunday."],
  ] as const;
  test.each(ways)('%s: %s', (by, way) =>
    expect(readAt(`Could you film our gala in Fargo on Saturday 12 December? ${way}`).fields.replyBy).toBe(by),
  );
});
