/**
 * Days of a series: "six Tuesdays, 5 October to 9 November", "fortnightly from Saturday 9 October, three in all", "every Saturday in October bar the first".
 */
import { describe, expect, test } from 'vitest';
import { daysOf, type WayOfDays } from './reading.ts';

describe('days of a series', () => {
  const ways: WayOfDays[] = [
    ['10-04..10-15', 'We run a workshop in Leeds, 4 to 15 October, with a weekly review on Fridays. Could you film all of it? £300 a day.'],
    ['10-05,10-12,10-19', 'Our rehearsals in Leeds are on three Tuesdays, 5, 12 and 19 October. Could you film them? £150 a night.'],
    ['ask', 'The rehearsals in Leeds are on 5 and 6 October, the concert on 7 October; could you film the concert? £300.'],
    [
      '10-05,10-12,10-19,10-26,11-02,11-09',
      'We run a lecture series in Leeds, six Tuesdays, 5 October to 9 November, and want all six filmed. Start 10am.',
    ],
    [
      '10-05,10-12,10-19,10-26,11-02,11-09',
      'Could you film our choir course in Ripon? It is every Tuesday from 5 October to 9 November, 7pm to 9pm, £150 a night.',
    ],
    ['10-05,10-12,10-19,10-26', 'We need a videographer for our talks in York, Tuesdays from 5 October until 26 October, 6pm. £200 each.'],
    ['10-05,10-12,10-19,10-26', 'Looking for a camera operator in Hull: 5 Oct to 26 Oct, Tuesdays only, £220 a day.'],
    [
      '10-05,10-19,11-02',
      'We are recording oral histories in Whitby, three sessions, every other Tuesday beginning 5 October. Could you run the camera? £200 per session.',
    ],
    ['10-07,10-14,10-21,10-28', 'Could you film four concerts in Leeds, weekly from Thursday 7 October? £200 each'],
    ['10-09,10-23,11-06', "Fortnightly from Saturday 9 October, three matches in all, we'd like them filmed in Leeds. £200 a match"],
    ['10-06,10-20,11-03', 'Can you film in Selby every second Wednesday from 6 October to 3 November? £180 a day'],
    ['10-02,10-09,10-16,10-23', "We'd like you to film our market in Leeds every Saturday in October except the last one. £200 a day"],
    ['10-09,10-16,10-23,10-30', "We'd like you to film our market in Leeds every Saturday in October bar the first. £200 a day"],
    ['10-02,10-09,10-23,10-30', "We'd like you to film our market in Leeds every Saturday in October, but not the 16th. £200 a day"],
    ['10-02,10-09,10-23,10-30', "We'd like you to film our market in Leeds every Saturday in October apart from the 16th. £200 a day"],
    ['10-03,10-17,10-24,10-31', 'Film our services in Leeds each Sunday in October, skipping the 10th? £100'],
    [
      '10-05,10-12,10-19,10-26,11-02,11-09',
      'Our festival runs in Leeds 5 October to 9 November and we need you to film on the Tuesdays. £200 a day',
    ],
    ['10-05..10-09', 'We meet on Tuesdays. The show runs 5 to 9 October in Leeds, could you film it? £200 a day'],
    ['10-04,10-11,10-18', 'Could you film our course in Leeds? Three Mondays: 4, 11 and 18 October. £200 a day'],
    ['10-06,10-13,10-20,10-27', 'Film our Leeds course, four Wednesday evenings starting 6 October, 6-9pm? £120 each.'],
    ['10-05..10-12', "I'm off on Tuesdays. Could you film our conference in Leeds from 5 October to 12 October? £400 a day"],
    ['10-03,10-10,10-17,10-24,10-31', 'Could you film five Sunday services in Leeds starting on 3 October? £120 each.'],
    ['ask', 'Could you film our choir course in Ripon every Tuesday from 5 October? £150 a night.'],
    [
      '10-05,10-12,10-19,10-26,11-02,11-09',
      'Could you film our choir course in Ripon every Tuesday evening from 5 October for six weeks, £150 a night?',
    ],
    [
      '10-05,10-12,10-19,10-26',
      'Hallo, können Sie unseren Kurs in Ripon filmen, jeden Dienstag vom 5. Oktober bis 26. Oktober, 18 Uhr? 200 Euro pro Abend',
    ],
    ['10-05,10-12,10-19,10-26', 'Bonjour, pouvez-vous filmer nos cours à Lyon tous les mardis du 5 octobre au 26 octobre ? 200 € par soir'],
    [
      '10-07,10-14,10-21,10-28,11-04,11-11,11-18,11-25,12-02,12-09,12-16',
      'Film our talks in Leeds please. They run on Thursdays from 7 October to 16 December. £100 a time',
    ],
    ['10-05..10-14', 'Could you film the Leeds fair? It runs daily 5 to 14 October, closed on Mondays. £300 a day'],
    ['10-05,10-12,10-19,10-26', 'Can you shoot our Leeds course weekly, 5 October to 26 October? £200 a day'],
    ['10-05,10-12,10-19,10-26,11-02', 'Can you film in Leeds once a week from Tues 5 Oct to Tues 2 Nov? £200 a day'],
    ['10-09,10-16,10-23,10-30', 'we need a camera in Leeds, sat 9 oct to sat 30 oct, saturdays, £200 a go'],
    ['10-09,10-16,10-23,10-30', 'four saturdays in leeds starting 9 october, filming kids football, £100 each'],
    ['10-01,10-08,10-22,10-29', 'Every Friday in October bar the 15th, film our ceilidh in Leeds, £90 a night'],
    ['10-05', 'The exhibition in Leeds is open every day from 5 October to 16 October, could you film the opening on 5 October? £300'],
  ];
  test.each(ways)('%s: %s', (days, text, home, at) => expect(daysOf(text, home, at)).toBe(days));
});
