/** The only price of a message: an offer where its words tell it so, else the price of whatever it is told of. */
import { describe, expect, test } from 'vitest';
import { lines, ONE_DAY, offerIn, readAt } from './reading.ts';

describe('the price of something else', () => {
  test.each(
    lines(`
      The grant is £3,000.
      The bar has a minimum spend of £2,500.
      So far the appeal stands at £46,210.
      The dress came to £1,900 and I have not told him.
      Coach hire came in at £620.
      The harpist asked £200 an hour, can you believe it.
      The stage crew are on £18 an hour.
      Our target is £25,000 on the night.
      We've raised £2,300 on the crowdfunder.
      A cheque for £3,000 will be presented to the air ambulance.
      We got €5,000 from the county council.
      We had an offer for 1500 euros from another filmmaker, it was too much for us.
      We're paying the photographer £350 for half a day and need a video, too.
      The conference fee is £320.
      There's a £75 fee for the drone permit.
      The budget of the gala is £2,000.
      We've got about £7,000 to spend on the whole wedding.
      The budget doesn't run to the £2,000 we were quoted.
      Turnover of the winners must be below £5m.
      If you stay past eleven it's time and a half at £75 an hour.
      Our old camera would fetch £200 at most.
    `),
  )('%s', (words) => expect(offerIn(ONE_DAY, words)).toBe('none - -'));
});

describe('an offer', () => {
  test.each([
    ['400', 'Noon to six. £400.'],
    ['450', 'I have put aside £450 for it.'],
    ['600', 'The trustees said £600.'],
    ['480', "We've £480."],
    ['350', "Lunch is on us, and it's £350 for the film."],
    ['700', 'Thinking about seven hundred pounds.'],
    ['500', 'How does £500 sound?'],
    ['450', 'The school can swing £450.'],
    ['1700', "They've asked if £1,700 would cover it."],
    ['300', 'I have a £300 line for this in the grant.'],
    ['350', 'We could not do more than £350, sorry.'],
    ['900', 'Le cachet est de £900.'],
  ])('%s: %s', (amount, words) => expect(offerIn(ONE_DAY, words).split(' ')[0]).toBe(amount));
});

test('so much is rather what the whole occasion costs: it is asked about', () => {
  const { fields, questions } = readAt(`${ONE_DAY} Our budget is £20,000.\n\nThanks, Robin`);
  expect(fields.budget).toBeUndefined();
  expect(questions.find(({ field }) => field === 'budget')?.choices[0]?.value).toMatchObject({ amount: 20000, currency: 'GBP' });
  expect(offerIn(ONE_DAY, 'Our budget for the film is £20,000.')).toBe('20000 GBP job');
});

test('the price of something else says nothing of the unit of the next', () =>
  expect(offerIn(ONE_DAY, 'The generator is £95 a day to hire. Could do £400.')).toBe('400 GBP job'));
