/**
 * Days that stand in lists, by their place or by the night into which they go, and calls whose day or half of the day other words tell.
 */
import { describe, expect, test } from 'vitest';
import { facts, readAt } from './reading.ts';

const asked = (text: string): string[] => readAt(text, undefined, 'leeds').questions.map(({ field }) => field);

describe('days in a list', () => {
  test.each([
    ['Wir brauchen am 18., 19. und 20. August in Erfurt eine zweite Kamera.', '2027-08-18', '2027-08-20', 3],
    ['Wir brauchen am 18., 19., 20. August eine Kamera.', '2027-08-18', '2027-08-20', 3],
    ['Wir brauchen am 18., am 19. und am 21. August eine Kamera.', '2027-08-18', '2027-08-21', 3],
    ["We'd like both closing nights filmed: Friday, June 18 and Saturday, June 19.", '2027-06-18', '2027-06-19', 2],
    ['Could you film the opening nights, Friday 18 and Saturday 19 June?', '2027-06-18', '2027-06-19', 2],
    [
      'Film our regatta, 27 to 30 December; racing is four days but we only need video on the first and the last.',
      '2026-12-27',
      '2026-12-30',
      2,
    ],
    ['NYE - second shooter\n\nWe have a wedding on December 31 to film, call 3:30 PM, wrap at 1 AM.', '2026-12-31', '2026-12-31', 1],
    [
      'Need video of my sisters wedding! Sangeet is on 24th april and shaadi on 25th. Both days, and next day it goes on till 2 in the night',
      '2027-04-24',
      '2027-04-25',
      2,
    ],
  ])('%s', (text, start, end, days) => {
    expect(facts(text, undefined, 'leeds')).toMatchObject({ start, end, days });
  });

  test('a number after the day of its sentence is of the same month, a closing date is not', () => {
    expect(
      readAt('Can you film our sangeet on 24 april and wedding on the 25th?', undefined, 'leeds').questions[0]?.choices.map(
        ({ label }) => label,
      ),
    ).toEqual(['Sat 24 April 2027', 'Sat 24 and Sun 25 April 2027']);
    expect(facts('Can you film our gala on 24 December? Please answer by the 25th.', undefined, 'leeds').replyBy).not.toBe(
      '2026-12-25T23:59',
    );
  });

  test('a number that a date before it has is that day again, a closing date is the next one', () => {
    expect(
      facts(
        'Please film my sister\u2019s wedding functions, 11 to 13 February 2027. Mehndi on the 11th (please reach by 3 pm), wedding on the 13th.',
        undefined,
        'leeds',
      ),
    ).toMatchObject({ start: '2027-02-11', end: '2027-02-13', firstCall: '2027-02-11T15:00' });
    expect(facts('Could you film our gala on 12 February? Please let me know by the 12th.', undefined, 'leeds').replyBy).toBe(
      '2026-12-12T23:59',
    );
  });

  test('who is let out in the morning works on both days of a night', () => {
    const text = 'Need a shooter for a hackathon, overnight Fri 18 June into Sat 19 June. In at 5pm Friday, out 11am Saturday.';
    expect(facts(text, undefined, 'leeds').end).toBeUndefined();
    expect(asked(text)).toContain('end');
    expect(facts('Need a shooter for a club night, Fri 18 June into Sat 19 June, 10pm to 3am.', undefined, 'leeds').end).toBe('2027-06-18');
  });
});

describe('the day and the half of the day of a call', () => {
  test.each([
    ['Film our expo in Ripon on 11 December, load in 10p the nite before.', '2026-12-10T22:00'],
    [
      "Film our town hall in Basel on Tuesday 15 December. We'd fly you out Monday afternoon, 8am call at the venue on the day.",
      '2026-12-15T08:00',
    ],
    [
      "Free Thursday week? It's a breakfast briefing in Ripon to film, job done by 11. You'd need to be there for half six.",
      '2026-12-03T06:30',
    ],
  ])('%s', (text, call) => {
    expect(facts(text, undefined, 'leeds').firstCall).toBe(call);
  });

  test.each([
    'do u film 18ths?? its my daughters on sat 12 dec at the cricket club in pudsey, 7 til 12, just someone going round with a camera for a few hours',
    'Could you film our tri on Saturday 12 December? Same drill as last year only worse: athletes are in from 4.15, so call is 3.45am. There is a bed for you from 10 till 2.',
  ])('not stated wrongly: %s', (text) => {
    expect([undefined, '2026-12-12T03:45', '2026-12-12T19:00']).toContain(facts(text, undefined, 'leeds').firstCall);
  });
});
