/**
 * Hours that can hardly be meant are asked about, with the hour that was read as the choice.
 */
import { expect, test } from 'vitest';
import { likelyHours } from '../../../core/inquiries/settle/unlikely.ts';

const where = { start: 0, end: 4 };
const at = (wall: string) => ({ wall, where: [where] });
const ask = (wall: string) => ({ walls: [wall], where, why: 'day' });
const DAY = ['2027-03-20'];

test('a call in the dead of night is asked about, and the wrap stands', () => {
  const calls = { firstCall: at('2027-03-20T00:30'), lastWrap: at('2027-03-20T14:00') };
  expect(likelyHours(calls, DAY)).toEqual({ callChoices: ask('2027-03-20T00:30'), lastWrap: calls.lastWrap });
});

test('of a day without an end neither hour is stated', () => {
  const calls = { firstCall: at('2027-03-20T08:00'), lastWrap: at('2027-03-21T00:30') };
  expect(likelyHours(calls, DAY)).toEqual({ callChoices: ask('2027-03-20T08:00'), wrapChoices: ask('2027-03-21T00:30') });
});

test('a call days ahead of the job is asked about', () =>
  expect(likelyHours({ firstCall: at('2027-03-14T09:00') }, DAY)).toEqual({ callChoices: ask('2027-03-14T09:00') }));

test.each([
  ['a long evening', '2027-03-20T10:00', '2027-03-21T01:30', DAY],
  ['before dawn', '2027-03-20T03:30', '2027-03-20T09:00', DAY],
  ['the rig on the evening before', '2027-03-19T18:00', '2027-03-20T17:00', DAY],
  ['two days', '2027-03-20T08:00', '2027-03-21T18:00', ['2027-03-20', '2027-03-21']],
  ['an end alone', undefined, '2027-03-20T18:00', DAY],
])('what people do stands: %s', (_name, call, wrap, days) => {
  const calls = { ...(call ? { firstCall: at(call) } : {}), lastWrap: at(wrap) };
  expect(likelyHours(calls, days)).toBe(calls);
});
