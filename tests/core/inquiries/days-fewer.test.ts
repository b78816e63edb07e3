/**
 * Of days that an old mail below names some are taken back above it, by number or weekday: which are left is asked about, never the old days stated.
 */
import { expect, test } from 'vitest';
import { daysOf } from './reading.ts';

const MAIL = `\n\n>On Aug 3, 2027 Nadine Skoglund wrote:
>Casey, paper industry seminar in Ripon, October 27-29, cam op on main stage.
>7 am in on the first day, 6 pm out on the last. £500 a day.
>Nadine Skoglund`;

test.each([
  "OK so the 29th is off the table, so it's just the 27th and 28th now. Otherwise as below. You in?\nNadine",
  "The 29th has dropped out, it's only the 27th and 28th now. Otherwise as below. You in?\nNadine",
  'They dropped the Friday. Otherwise as below. You in?\nNadine',
  'It starts a day later now, the 28th. Otherwise as below. You in?\nNadine',
])('asked: %s', (above) => expect(daysOf(above + MAIL)).toBe('ask'));

test('what holds as it was stays stated', () =>
  expect(daysOf(`Still free? All as below, and parking is in the yard.\nNadine${MAIL}`)).toBe('10-27..10-29'));

test('days on which I am released are none of the work', () => {
  const rows = '20 Oct (Wed)\n21 Oct (Thu)\n22 Oct (Fri)\n26 Oct (Tue)';
  const text = `Hey Casey,\n\nGot you down as a possible for these:\n\n${rows}\n\nAll Ripon. 0600 call, 1630 wrap. £380 a day. The 23rd to 25th you're released.\n\nCam op.\n\nRobin`;
  expect(daysOf(text)).toBe('10-20,10-21,10-22,10-26');
});
