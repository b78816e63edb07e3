/** What whole messages tell together: rows, forms, chats and short answers above an old mail. */
import { describe, expect, test } from 'vitest';
import { daysOf, facts, lines, readAt, type WayOfDays } from './reading.ts';

const MONDAY = '2027-08-23T09:12:00+01:00[Europe/London]';
const told = (text: string): ReturnType<typeof facts> => facts(text.replaceAll('//', '\n'), MONDAY, 'leeds');
const hour = (wall: string | undefined): string => wall?.slice(5) ?? '-';

describe('the days', () => {
  const WAYS: readonly WayOfDays[] = [
    ['11-20', 'Can you film our mehndi in Bradford on twenty november please?'],
    ['11-25', 'Can you film our mehndi in Bradford on twenty five november please?'],
    ['10-09', 'We need a film of our fete in Leeds on nine october. What is your price?'],
    ['ask', 'We need a film of our fete in Leeds. Two may come from the council, four march in front. What is your price?'],
    ['ask', 'Camera operator needed in Leeds, wk commencing 8 Nov. £300 a day.'],
    ['ask', 'Camera operator needed in Leeds, wk of 8 Nov. £300 a day.'],
    ['11-08..11-12', 'Camera operator needed in Leeds, wk commencing 8 Nov, Monday to Friday. £300 a day.'],
    ['11-05..11-07', 'Film our reunion in Settle from 5 to 7 November? My brother flies in on 2 November and out again on the 12th.'],
    ['ask', 'Film our show in Leeds?\nPreferred date: 9 October 2027\nAlternative date: 16 October 2027'],
    ['ask', 'Film our show in Leeds, either day?\nPreferred date: 9 October 2027\nAlternative date: 16 October 2027'],
    ['11-04..11-05', 'Camera op, Leeds, £300 a day.\nWed 3 Nov - build (contractors only)\nThu 4 Nov - show\nFri 5 Nov - show'],
  ];
  test.each(WAYS)('%s: %s', (days, text) => expect(daysOf(text)).toBe(days));
});

describe('the days above an old mail', () => {
  const OLD = `On 17 August Viv wrote:\n> Hi, are you free to film our show in Malton on`;
  const above = (words: string, mail: string): string => daysOf(`${words} Viv\n\n${OLD} ${mail}`);
  test.each([
    [
      '10-02..10-03',
      "They've added the Sunday! So 2 and 3 October now, same hours both days. Can you do both?",
      'Saturday 2 October, 8 am to 6 pm? £250 for the day.',
    ],
    ['ask', 'Only the Friday after all, same times. OK?', 'Thursday 16 and Friday 17 September? On site 8.30 am. £250.'],
    [
      '11-12..11-13',
      "Small correction: Friday's start is 9.00, not 8.00. Everything else stands.",
      'Friday 12 and Saturday 13 November? Please arrive at 8.00 on Friday. £250.',
    ],
  ])('%s: %s', (days, words, mail) => expect(above(words, mail)).toBe(days));
});

describe('the first call', () => {
  const WAYS = lines(`
    10-29T15:00 => Film our weekend in Whitby, please.//Friday 29 October - 3pm you get here, 5pm fish supper//Saturday 30 October - 7am swim, 11am walk
    05-20T12:30 => Second camera for a wedding in Selby, Saturday 20 May. The lead gets there at 11, you come at 12:30, the ceremony is at 3.
    10-22T10:00 => Please film our wedding in Masham on Friday 22 October.//10.00 meet us at the barn//13.00 ceremony//17.00 pizza
    09-21T08:00 => Camera op for two days in Sheffield.//Conference day 1: 21 September, crew 08:00//Conference day 2: 22 September, crew 08:00
    10-22T09:00 => Film in Trier, 22, 23 and 24 October. Camera: 22 Oct from 9am, 23 Oct from 8.30am, 24 Oct from 8.30am until 4pm.
    - => Second camera wanted in Leeds, Sat 25 Sept: I shoot from 0800 with the bride and the rest is open.
    - => Event date: 02/10/2027//Event start: 18:30//Place: Wakefield//Request: film of our party
    - => Event date: 02/10/2027//Guest arrival: 18:30//Place: Wakefield//Request: film of our party
    - => Event date: 02/10/2027//Timings: 10:00 - 16:00 (guests)//Place: Wakefield//Request: film of our party
    - => Event date: 02/10/2027//Doors: 19:00//Place: Wakefield//Request: film of our gig
    10-02T18:30 => Event date: 02/10/2027//Start: 18:30//Finish: 22:00//Place: Wakefield//Request: film of our party
    10-14T11:00 => Tam: are you free on 14 October in Leeds? filming a launch//Tam: 10-6//Tam: sry 11-7//Tam: £300 ok?
  `).map((line) => line.split(' => '));
  test.each(WAYS)('%s: %s', (wall, text = '') => expect(hour(told(text).firstCall)).toBe(wall));
});

test('hours that are moved above an old mail are asked about', () =>
  expect(
    readAt(
      "Friday's start is 9.00, not 8.00. Everything else stands.\nOtto\n\n> Dear Kit, please film our seminar in Leeds on Friday 12 and Saturday 13 November. Please arrive at 8.00 on Friday. What is your fee?",
      MONDAY,
      'leeds',
    ).fields.firstCall,
  ).not.toBe('2027-11-12T08:00'));
