/**
 * Amounts that nobody offers, amounts of which one will hold, and amounts in words; sentences of common practice.
 */
import { describe, expect, test } from 'vitest';
import { facts, readAt } from './reading.ts';

const ONE_DAY = 'Could you film our gala in Fargo on Saturday 12 December, 2pm to 9pm?';
const TWO_DAYS = 'Could you film our fair in Fargo on 12 and 13 December?';
const budget = (words: string, asked = ONE_DAY) => facts(`${asked} ${words} Thanks, Robin`).budget;
const amount = (words: string) => budget(words)?.amount;

describe('no offer', () => {
  test.each([
    "It's a $400 train ride otherwise.",
    'We are giving away a $900 bike.',
    'The rental was $400 cheaper on a Friday.',
    'We saved $400 on the hall.',
    'Two years ago somebody did it for $350.',
    'We got the last one for $500.',
    'The course fee is $350.',
    'There is a late fee of $50.',
    'Members pay a $50 fee.',
    'Parents would pay $25 each for a download.',
    'Anything over $400 needs two signatures.',
    'If it is under $1,000 I can sign it off myself.',
    'Your website says from $500.',
    'A friend thought about $500 would be normal?',
    'Deposit $150, balance $450.',
    '$250 now and $250 on delivery.',
    "We've had a bequest of $2,200 and spend part of it on this.",
  ])('%s', (words) => expect(budget(words)).toBeUndefined());

  test.each([
    ['Thanks for your quote of $650. Our treasurer will go to $500.', 500],
    ['Your quote of $650 is fine with us.', 650],
    ['Letztes Mal hat das 400 Dollar gekostet, diesmal dürfen es 500 sein.', 500],
    ['The photographer paid $200 last year; we have $300 for you.', 300],
    ['There is $700 for the job rather than $500.', 700],
    ['$350 and $25 for your parking.', 350],
    ["We've had a bequest of $2,200 and spend part of it on this. We thought $450.", 450],
    ['I give you $250 more.', 250],
    ['$600 up front.', 600],
  ])('%s', (words, offered) => expect(amount(words)).toBe(offered));
});

describe('one of two', () => {
  test.each([
    '$500, or $800 if the sponsor comes through.',
    'If the grant comes in we can pay $800, otherwise $500.',
    '$500 without the edit, $800 with it.',
    'We could do $600 but would rather do $500.',
    'We can go to $500, maybe $600 if need be.',
  ])('%s', (words) => {
    const { fields, questions } = readAt(`${ONE_DAY} ${words} Thanks, Robin`);
    expect(fields.budget).toBeUndefined();
    expect(questions.find(({ field }) => field === 'budget')?.choices.length).toBeGreaterThan(1);
  });
});

describe('in words', () => {
  test.each([
    ['Hundred and eighty bucks, cash.', 180],
    ['A grand and a half.', 1500],
    ['Half a grand is what we have.', 500],
    ['Twenty-two hundred bucks.', 2200],
    ['Two and a half thousand dollars.', 2500],
    ["Fee's three-seventy-five.", 375],
    ["I've got two eighty for it.", 280],
    ['Thousand bucks, all in.', 1000],
  ])('%s', (words, offered) => expect(amount(words)).toBe(offered));
  test('no number of them', () => expect(budget('A couple of hundred bucks.')).toBeUndefined());
  test('an hour before an amount is no amount', () =>
    expect(budget("Either way it's 9 to 4 and $550 for the day.")).toEqual({ amount: 550, currency: 'USD', per: 'day' }));
});

describe('for how long', () => {
  test.each([
    ['Our budget is $2,000.', undefined],
    ["We've budgeted $2,000.", undefined],
    ['The total budget is $2,000.', 'job'],
    ['Our fee for both days is $2,000.', 'job'],
    ['$2,000 overall.', 'job'],
    ['We can offer 350 dollars for day.', 'day'],
  ])('%s', (words, per) => expect(budget(words, TWO_DAYS)?.per).toBe(per));
});

describe('in which money', () => {
  const at = (words: string, home: string) => readAt(words, undefined, home);
  test('of a name that is borne in several countries, any of their dollars may be meant', () => {
    const { fields, questions } = at('Can you film a birthday in Queenstown on 12 December, 3pm to 11pm? We have $1,400 for it.', 'sydney');
    expect(fields.budget).toEqual({ amount: 1400, per: 'job' });
    expect(questions.some(({ field }) => field === 'budget')).toBe(true);
  });
  test('a word for money is that of the place', () => {
    const said = 'Film notre course le 12 décembre à Martigny, de 7h à 17h. 500 balles la journée.';
    expect(at(said, 'zurich').fields.budget).toEqual({ amount: 500, currency: 'CHF', per: 'day' });
  });
});
