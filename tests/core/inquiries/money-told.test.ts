/**
 * Money as strangers tell it: what each of several days is paid, what is for me among other sums, sums without a sign, and whose dollars they are.
 */
import { describe, expect, test } from 'vitest';
import { facts, lines, offerIn, ONE_DAY, TWO_DAYS } from './reading.ts';

describe('for each of two days', () => {
  test.each([
    ['$300 per market day.', '300 USD day'],
    ['We pay $300 each tournament day, lunch included.', '300 USD day'],
    ['Per evening we can pay $150.', '150 USD day'],
    ['Each evening there is $150 for you.', '150 USD day'],
    ['Pro Abend gibt es 180 €.', '180 EUR day'],
    ['Two days at $300 each.', '300 USD day'],
    ['It is two concerts, $320 per concert.', '320 USD day'],
    ['Fee $320 per concert.', '320 USD -'],
    ['We pay $300 per half day.', '300 USD -'],
  ])('%s', (words, offer) => expect(offerIn(TWO_DAYS, words)).toBe(offer));
});

describe('what is for me', () => {
  test.each([
    ['We have $300 for a camera person.', '300 USD job'],
    ['We have $300 for a video of the day.', '300 USD job'],
    ['$420 like the last time.', '420 USD job'],
    ['600 € flat, the hotel pay we.', '600 EUR job'],
    ["We've fundraised $620.", '620 USD job'],
    ['$400 we have collected.', '400 USD job'],
    ['I can raise a PO for up to $550.', '550 USD job'],
    ["You'd sleep at the hotel, we pay for that, about $110 a night. For your work there are $300.", '300 USD job'],
    ["It doesn't include your room, which we also pay, about $110. A gift of $350 is for your work.", '350 USD job'],
    ['We have $20,000 for the whole fair. For video I could set $300 aside.', '300 USD job'],
    ["We've budgeted $18,000 for the day, and of that $525 is for you.", '525 USD job'],
    ["450 dollars this time, last year's was 400.", '450 USD job'],
    ["$60 an hour is what we paid the last person, in 2024, and I'm told that still stands.", '60 USD hour'],
    ['$60 an hour is what we paid the last person, in 2024.', 'none - -'],
    ["We have $400 in the budget for you; the author's fee is $2,500.", '400 USD job'],
    ['Fee agreed on our side is $400 total.', '400 USD job'],
    ["The train we book for you, about $60. There's $300 for you.", '300 USD job'],
    ['Lunch is there, and I pay $300 in cash.', '300 USD job'],
    ["For the cameras we hire a crane at $900. You'd get $400.", '400 USD job'],
    ['For video we paid $300 last year. This year it is $350.', '350 USD job'],
    ['400/10 w time and a half after.', '400 USD day'],
  ])('%s', (words, offer) => expect(offerIn(ONE_DAY, words)).toBe(offer));
});

describe('a sum without a sign', () => {
  test.each([
    ["I've 400.", '400 USD job'],
    ["We've 275 in the tin.", '275 USD job'],
    ['hes got 250', '250 USD job'],
    ['Will give 6k.', '6000 USD job'],
    ['I pay 300 a concert.', '300 USD job'],
    ...lines(`
      Guests? We have 250.
      How many come? We've 400.
      They have 300 in the hall.
      The hall holds 500; we've 350.
      We will give 200 medals.
      We expect 300 a concert.
      Players pay $5 per match and 300 a match come to watch.
      The church has 200 seats.
    `).map((words): [string, string] => [words, 'none - -']),
  ])('%s', (words, offer) => expect(offerIn(ONE_DAY, words)).toBe(offer));
});

describe('whose dollars', () => {
  test.each([
    ['300 US-Dollar pro Tag.', '300 USD day'],
    ['300 dollars canadiens la journée.', '300 CAD day'],
    ['250 dólares estadounidenses por día.', '250 USD day'],
    ['1 150 $ CAD for the evening.', '1150 CAD job'],
  ])('%s', (words, offer) => expect(offerIn(ONE_DAY, words)).toBe(offer));

  const film = 'Could you film our gala in Bellingham, Washington on Saturday 12 December? We have $800.';
  const across = (text: string): string | undefined => facts(text, undefined, 'vancouver').budget?.currency;
  test('of who writes from the country of the job', () => {
    expect(across(`Hi from Seattle! ${film}\n\nRobin`)).toBe('USD');
    expect(across(`Hello, I'm writing from Portland. ${film}\n\nRobin`)).toBe('USD');
    expect(across(`We're based in Seattle. ${film}\n\nRobin`)).toBe('USD');
  });
  test('asked about where the sender may sit anywhere', () => {
    expect(across(`Hello, ${film}\n\nRobin`)).toBeUndefined();
    expect(across(`Hello from Vancouver! ${film}\n\nRobin`)).toBeUndefined();
  });
  test('by the code of a number to ring', () => {
    const asks = 'Could you film our swim in Queenstown, New Zealand on Friday 11 December? We have $800 for it.';
    expect(facts(`${asks}\n\nRobin\n+64 21 555 0140`, undefined, 'sydney').budget?.currency).toBe('NZD');
    expect(facts(`${asks}\n\nRobin\n+61 491 570 156`, undefined, 'sydney').budget?.currency).toBeUndefined();
  });
});
