/**
 * A day on which the date will be known or decided is none of the job: alone in a message it leaves the days open. A day that is told, and one on which what
 * is decided is filmed, stay what they were.
 */
import { expect, test } from 'vitest';
import { aFair, daysOf } from './reading.ts';

test.each([
  'We only get our date in two weeks.',
  "We'll only know our date in two weeks.",
  'We decide on the date on 12 September.',
  'The draw for our match takes place on 3 September.',
  'The council meets on 5 November and decides on the date.',
  'The council votes on 5 November on when it may take place.',
  'Our committee will agree a date at its meeting on 5 November.',
  'The date comes out on 5 November.',
  'The date gets fixed on 5 November.',
  'The date is up to the council, which meets on 5 November.',
  'The fixtures are released on 5 November and then I can tell you the day.',
  'The league tells us on 5 November.',
  'We expect the date on 5 November.',
  'There is no date yet; there is a meeting on 5 November.',
  'Ask me again on 5 November for the date.',
  'Date to be confirmed on 5 November.',
  'The decision on the date is made on 5 November.',
  'We have a meeting on 5 November where the date gets fixed.',
  "In two weeks we'll know the date.",
  'Once the council has met on 5 November I can give you the date.',
  'When exactly it is will be decided on 5 November.',
  "The council has its meeting on 5 November; we'll know the date then.",
  "I'll get back to you on 5 November with a date.",
])('asked: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('ask'));

test.each([
  'We have a date, 6 November.',
  'The date is set for 6 November.',
  'The date we settled on is 6 November.',
  'The council has agreed on 6 November.',
  'We have our open day on 6 November.',
  'You will hear the choir on 6 November.',
  "It's on 6 November. We'll know the running order by 1 November.",
  'The council meets on 5 November, and the fair is on 6 November whatever they say.',
  'The fair is on 6 November; we decide in two weeks who films it.',
])('stated: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('11-06'));
