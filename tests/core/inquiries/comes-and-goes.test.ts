/**
 * The hour at which I come and the one at which I may go, in whatever words: lists of both stand once, for an hour before them or behind them.
 */
import { describe, expect, test } from 'vitest';
import { facts, lines } from './reading.ts';

const message = (way: string): string => `Hi Kit,\nCan you film our gala on Saturday 12 December in Fargo? ${way}\nThanks,\nAnn Leverett`;

describe('gone at nine in the evening', () => {
  const ways = lines(`
    Curtain call 9pm and then you may disappear.
    The raffle is at 9pm and after that you're off duty.
    Speeches finish about 9pm then you can nick off.
    Sparkler exit is 9 pm and you're a free bird after it.
    It'll all be over by 9pm and you're off the clock.
    The function will be over by 9pm and the team may disperse thereafter.
    Cuppa till 9pm, which is when we'd let you go.
    Prizes at 9pm, and we say goodbye to you after that.
    The last act is on at 9pm. After that you are free.
    The disco begins at 9pm and you can slip away at that point.
    Dessert's at 9pm, at which stage we'd set you free.
    Fireworks 9pm & then ur done.
    You can load up at 9pm.
    At 9pm we cut you loose.
    We say bye at 9pm.
    You're let go at 9pm.
    It'll be 9pm before you're let go.
    At 9pm we let you go.
    You may depart at 9pm.
    I'll release you at 9pm.
    You can pack it in around 9pm.
    You'll knock off at 9pm.
    By 9pm you'll be out.
    Guests are out by 8pm and you by 9pm.
  `);
  test.each(ways)('%s', (way) =>
    expect(facts(message(`Be there at 4pm. ${way}`))).toMatchObject({
      firstCall: '2026-12-12T16:00',
      lastWrap: '2026-12-12T21:00',
    }),
  );
});

describe('there at four in the afternoon', () => {
  const ways = lines(`
    You're on the quay at 4pm.
    You at the farm for 4pm, ceremony at 6pm.
    You'd be in the gods from 4pm.
    You'd stand at the font from 4 pm.
    Present yourself at 4pm.
    Find me at the gate at 4pm.
    It's important that you are there from 4pm, this is the beautiful part.
    You're due at 4pm.
    You we await at 4pm at the bridge.
    We'd have you from 4pm.
    Your duty begins at 4pm.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(way)).firstCall).toBe('2026-12-12T16:00'));
});

describe('no end of mine', () => {
  const ways = lines(`
    The raffle is at 9pm and after that you film the dancing.
    Dinner's at 7pm and then you can eat with us.
    Set up, and then you're free until the doors.
    The band leaves at 9pm.
  `);
  test.each(ways)('%s', (way) => expect(facts(message(`Be there at 4pm. ${way}`)).lastWrap).toBeUndefined());
});

test('an end that I am told at another hour than the others is mine', () => {
  expect(facts(message('Be there at 4pm. Dancing ends at 9pm, then you are done at 10pm.')).lastWrap).toBe('2026-12-12T22:00');
});

test('two ends of two people are asked', () => {
  for (const way of ['My husband says you go at 10 pm, I say 11:30 pm.', 'Dan thinks you could leave at 10 pm, we think 11 pm.'])
    expect(facts(message(`Be there at 4pm. ${way}`)).lastWrap).toBeUndefined();
});

test('a place that I am at without an hour is no call', () => {
  expect(facts(message("You're at the top of our list, doors are at 7pm.")).firstCall).toBeUndefined();
});
