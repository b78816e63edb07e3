/**
 * Of a run of which not all is wanted the days are asked about, or its two ends stated where nothing between them is wanted. What is only told of some of its
 * days takes none away. And dates that are counted off are all of the job.
 */
import { expect, test } from 'vitest';
import { aFair, daysOf } from './reading.ts';

const RUN = 'It runs from Thursday 4 to Monday 8 November.';

test.each([
  'The filming is only on one of those days, Friday or Saturday, not settled.',
  "We don't need all of it.",
  'You would not be there all five days.',
  'Come on the Friday or the Sunday.',
  'The Friday or the Saturday is to be filmed.',
  'Filming is on the first and the last day.',
  'Filming: opening Thursday and closing Monday.',
  'The Friday ends at one and we want the Saturday filmed.',
  'The demonstrations are all Saturday the 6th so come just that day.',
  'The parade is on Saturday the 6th and you would come for that day only.',
])('asked: %s', (sentence) => expect(daysOf(aFair(`${RUN} ${sentence}`))).toBe('ask'));

test.each([
  'We do not need all of it: opening day (Thursday the 4th) and the closing Monday, nothing in between.',
  "You'd film the opening and the closing day only.",
  'Only the opening Thursday and the closing Monday are for you.',
])('its ends: %s', (sentence) => expect(daysOf(aFair(`${RUN} ${sentence}`))).toBe('11-04,11-08'));

test.each([
  'The first and last days are the busiest.',
  'Day tickets cover just that day.',
  'The brass band will come on that day only, so be sure to get it.',
  'Friday and Saturday nights go until 1am, but our night tech covers those hours.',
  'On Friday and Saturday the bar stays open until 1am.',
])('all of it: %s', (sentence) => expect(daysOf(aFair(`It runs from Friday 5 to Sunday 7 November. ${sentence}`))).toBe('11-05..11-07'));

test.each([
  'Day 1: 14 November. Day 2: 28 November.',
  'Day one is 14 November, day two is 28 November.',
  '1st show 14 November, 2nd show 28 November.',
])('counted off: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('11-14,11-28'));

test.each([
  'Option 1: 14 November. Option 2: 28 November.',
  'First choice 14 November, second choice 28 November.',
  'Day 1: 14 November. Day 2: 28 November. One of them is to be filmed.',
])('to choose from: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('ask'));
