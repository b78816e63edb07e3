/**
 * A day that other words move or put right: which it is now is asked about. What is moved beside it, and a move whose new day is named, change nothing.
 */
import { expect, test } from 'vitest';
import { aFair, daysOf, lines } from './reading.ts';

test.each(
  lines(`
  It is on 13 November. Since I wrote this they moved it by a week, to the 20th.
  It is on 13 November. PS: I've just seen that it's in fact the 14th.
  It is on 3 November, or rather the 13th.
  It is on 13 November. Update: now a day later.
  We've had to put the 6 November date back a fortnight.
  We have moved it from Sunday 14 November to the Saturday.
  It is on Saturday 13 November. We had to move the date to the Sunday.
  It is on Saturday 13 November. It was moved to the following day.
  We have moved it to the day before, so no longer 14 November.
  It was to be on 6 November, which has been put off until the following Saturday, the 13th.
  The council has moved it from 6 November by a week.
  We thought we'd have to move it from 6 November to the 13th, but after all it stays where it was.
  We open on 1 November for the season, and the gala is on the 13th.
  It is on Friday 12 November until 1 am on Saturday.
`),
)('asked: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('ask'));

test.each(
  lines(`
  It is on 13 November. They have moved the start to noon.
  It is on 13 November. We look forward to the weekend.
  It is on 13 November. We moved house two weeks ago.
  It is on 13 November, a week earlier than last year.
  It is on 13 November. We have put the chairs back a few rows.
  It is on Saturday 13 November 2027. The party is set to go on until Sunday morning.
  It is on Saturday 13 November 2027. Guests change for dinner and then dance until Sunday.
  It is on Saturday 13 November 2027. We moved it to Saturdays two years ago.
  It is on Saturday 13 November 2027. The league changed our fixture from Friday to Saturday.
  It is on Saturday 13 November 2027. We bring the food ourselves to the Friday dinner.
  It is on 13 November 2027, actually the 20th in its history.
  It is on 13 November 2027. It's actually the 25th anniversary.
`),
)('as it was: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('11-13'));
