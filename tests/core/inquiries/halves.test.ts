/**
 * Hours without morning or evening: in which half of the day they are put, and when that is asked.
 */
import { expect, test } from 'vitest';
import { readAt } from './reading.ts';

const read = (what: string) => readAt(`Hi Kit,\nCan you film our ${what}\nThanks,\nAnn Leverett`);

test.each([
  [
    "band's anniversary gig on Saturday 12 December in Fargo? Sound check's at 6, that's when you'd show. We play till 11 and then you're done.",
    '18:00',
    '23:00',
  ],
  ['dinner on Saturday 12 December in Fargo? Call 6, done by 11.', '18:00', '23:00'],
  ['horse show on Saturday 12 December in Fargo? Be there at 6:30, the judging starts at 10, ribbons at 4.', '06:30', undefined],
])('%s', (what, call, wrap) => {
  const { fields } = read(what);
  expect(fields.firstCall?.slice(11)).toBe(call);
  expect(fields.lastWrap?.slice(11)).toBe(wrap);
});

test.each(['gala on Saturday 12 December in Fargo? Come for nine.'])('asked: %s', (what) => {
  const { fields, questions } = read(what);
  expect(fields.firstCall).toBeUndefined();
  const asked = questions.find(({ field }) => field === 'firstCall');
  expect(asked?.ask).toBe('Morning or evening? When is the first call?');
  const [early, late] = (asked?.choices ?? []).map(({ value }) => String(value).slice(11));
  expect(Number(late?.slice(0, 2)) - Number(early?.slice(0, 2))).toBe(12);
});
