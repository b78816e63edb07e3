/**
 * What a message tells in passing: a weekday on which nothing is, a month that names a holiday, days by their numbers, how the sender is called.
 */
import { expect, it } from 'vitest';
import { daysOf, facts, readAt } from './reading.ts';

it.each([
  ['09-18,09-19,09-21', 'Lectures fall on Monday 18, Tuesday 19 and Thursday 21 September. (There is nothing on Wednesday.)'],
  ['09-18,09-19,09-21', 'Lectures are on Monday 18, Tuesday 19 and Thursday 21 September, nothing on the Wednesday.'],
  ['09-14..09-15', 'It is from 13 to 15 September; you would join us for days 2 and 3.'],
])('%s: %s', (days, told) => {
  expect(daysOf(`Could you film our lectures in Whitby? ${told}`, 'leeds', '2028-08-03T07:48')).toBe(days);
});

it('a day whose last act is off at nine is not off', () => {
  const told = 'the last act on Sunday is off at 9pm. Friday and Saturday nights go until 1am.';
  expect(
    daysOf(
      `Our blues weekend is in Wangaratta, Friday 30 April to Sunday 2 May. We want you running the stream. ${told}`,
      'melbourne',
      '2027-03-16T10:10',
    ),
  ).not.toBe('04-30..05-01');
});

it('the month of a holiday is that of the number behind it, not one told before', () => {
  const { start, end } = facts(
    "Hiya, you did our Jade's do in March. It's me mum and dad's ruby wedding in Scarborough on August Bank Holiday Monday, that's the 30th. We want it filming again.",
    '2027-07-12T17:42:00+01:00[Europe/London]',
    'leeds',
  );
  expect([start, end]).toEqual(['2027-08-30', '2027-08-30']);
});

it.each([
  ['Barnsley', 'Kit, could you film our dinner? Barnsley, 12 September. Ring me: 07700 900664. Denny'],
  ['Whitby', "We are burying our organist this Saturday in Whitby, and her children in Norway can't fly in. Could you stream it for them?"],
])('the place is %s: %s', (place, text) => {
  expect(facts(text, '2028-08-03T07:48:00+01:00[Europe/London]', 'leeds').place ?? '').toBe(place);
});

it.each([
  ["Hi, do you do weddings? Ours is sometime in August in Whitby. What's your price?", true],
  ['Thanks for the film! We will be in touch sometime in august.', false],
])('who asks for a day that is not fixed asks: %s', (text, expected) => {
  expect(readAt(text).isInquiry).toBe(expected);
});

it.each([
  ['07-03', 'Are you available this Saturday, nothing too fancy, just our leaving do in Leeds, 6pm to 9pm?'],
  ['07-03', 'Looking for someone to film in Leeds on Saturday, one off gig, 7pm till 10pm.'],
  ['07-13..07-15', 'Three-day conference in Leeds, 13-15 July. We want all of it filmed. New delegates join us on day two.'],
  ['ask', 'Could you film our fete in Ilkley, on the Saturday after the August bank holiday, the 4th?'],
])('%s, whatever stands beside them: %s', (days, text) => {
  expect(daysOf(text, 'leeds', '2027-06-29T20:00')).toBe(days);
});

it.each([
  ['York', 'Could you film a surprise visit to my grandparents in York on Saturday 10 July, 2pm to 6pm?'],
  ['Otley', 'Can you film my kids in Otley on Saturday 10 July, at the gala, 2pm to 6pm?'],
])('whose people are filmed there is told of the place: %s', (place, text) => {
  expect(facts(text, '2027-06-29T20:00:00+01:00[Europe/London]', 'leeds').place).toBe(place);
});
