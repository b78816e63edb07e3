/**
 * A date that is named of a day which is not fixed is asked about; one that is only spoken of with care is stated.
 */
import { expect, test } from 'vitest';
import { aFair, daysOf } from './reading.ts';

test.each([
  'It will be around 6 November.',
  'It will be 6 November or thereabouts.',
  'It is on or about 6 November.',
  'It will be some time in the week of 6 November.',
  'Give or take a few days, 6 November.',
  'The date depends on the moon sighting, likely 6 November but it could be a day either side.',
  '6 November, plus or minus a day.',
  'It could be as early as 6 November.',
  'No earlier than 6 November.',
  'Any Saturday after 6 November would do.',
  'Not before 6 November.',
  'Some evening between now and 6 November.',
  'Any day up to 6 November.',
  'We can do any day from 6 November.',
  '6 November was our first idea, we have not settled on a date.',
  'Maybe 6 November, we have to ask the church first, the 13th is just as likely.',
  'We were offered 6 November but would prefer another date.',
  '6 November is taken, so we need to find another Saturday that month.',
  'Ideally not 6 November but any other Saturday in November.',
  'Would any Saturday but 6 November work for you?',
  'Tell me which of your free days after 6 November suits.',
  'You choose the day, as long as it is before 6 November.',
  'The film has to be finished for our gala on 6 November; you can come and film us whenever suits you before.',
  "It should be shown at our dinner on 6 November, so we'd film some day in October.",
  "Our anniversary is 6 November and we'd like the interviews filmed a few weeks before.",
  'The launch is 6 November. Interviews would be filmed on a day in the month before, to be agreed.',
])('asked: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('ask'));

test.each([
  "We're thinking of Saturday 6 November.",
  'We have pencilled Saturday 6 November.',
  "It's planned for Saturday 6 November.",
  'The hall is booked for Saturday 6 November.',
  "We're aiming for Saturday 6 November.",
  'Saturday 6 November, weather permitting.',
  "Saturday 6 November if you're free.",
  "We've set the date: Saturday 6 November.",
  'Are you around on Saturday 6 November?',
  'It is on Saturday 6 November; come whenever you need to.',
  "It is on Saturday 6 November. Ripon or York, we haven't picked.",
])('stated: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('11-06'));
