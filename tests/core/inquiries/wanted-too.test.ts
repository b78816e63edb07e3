/**
 * Days that are wanted beside the first are days of the job as well, in the same sentence or a later one; what only happens then, or is done by others, adds none.
 */
import { expect, test } from 'vitest';
import { aFair, daysOf } from './reading.ts';

test.each([
  ["It is on 6 November. Our board meets on 16 November and we'd like that filmed as well.", '11-06,11-16'],
  ['It is on 6 November. Our board meets on the 16th. Please film that as well.', '11-06,11-16'],
  ['It is on 20 November, with a rehearsal that you film on the 14th.', '11-14,11-20'],
  ['It is on 6 November. In addition, please film the prize giving on 13 November.', '11-06,11-13'],
  ['It is on 6 November and we need you back on 13 November for the awards.', '11-06,11-13'],
  ['It is on 6 November with a follow-up shoot on 12 November.', '11-06,11-12'],
  ['Besides the fair on 6 November we want our awards night on 12 November filmed.', '11-06,11-12'],
  ['It is on 6 November.\n\nThe rehearsal is on 2 November and we want it filmed.\n\n', '11-02,11-06'],
  ['It is on 6 November.\n\nBefore that, on 2 November, we would like you to film our rehearsal.\n\n', '11-02,11-06'],
])('stated: %s', (sentence, days) => expect(daysOf(aFair(sentence))).toBe(days));

test.each([
  'It is on 6 November, with a rehearsal on the Thursday that you film.',
  'It is on 6 November, with interviews the day before.',
  'It is on 6 November.\n\nA week later is our choir concert, and that is yours too.\n\n',
  'It is on 6 November. If the money allows, film the market on 13 November as well.',
  'It is on 6 November. We may also need you on 13 November.',
])('asked: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('ask'));

test.each([
  'It is on 6 November. We also film the rehearsal on 3 November ourselves.',
  'It is on 6 November. The photographer also comes on 3 November.',
  'It is on 6 November. Could you also come to a meeting on 3 November?',
  'It is on 6 November. Please also send your quote by 1 October.',
])('one day: %s', (sentence) => expect(daysOf(aFair(sentence))).toBe('11-06'));
