/**
 * Which half of the day an hour is in by how the hours of its message are written: by a clock of 24 hours, or one after another in a list.
 */
import type { ClockTime } from '../times/at.ts';
import type { TimeMention } from '../times/find.ts';

/** The times, settled where the way of writing tells their half of the day. */
export const hoursAsWritten = (text: string, times: readonly TimeMention[]): readonly TimeMention[] =>
  inOrder(text, asWritten(text, times));

/** "6:00 PM arrive, 7:00 start, 9:00 out": hours of one list go on from the one before. */
function inOrder(text: string, times: readonly TimeMention[]): readonly TimeMention[] {
  const begins = ({ start }: TimeMention): boolean => /(?:^|[,;\n])[ \t]*$/.test(text.slice(Math.max(0, start - 3), start));
  const ordered: TimeMention[] = [];
  for (const time of times) {
    const last = ordered.at(-1);
    const listed =
      last !== undefined &&
      !last.to &&
      !last.from.open &&
      !time.to &&
      time.from.open &&
      begins(last) &&
      begins(time) &&
      LIST_ITEM.test(text.slice(last.end, time.start));
    const base = time.from.minutes % 720;
    const minutes = last === undefined ? undefined : [base, base + 720].find((one) => one > last.from.minutes);
    ordered.push(listed && minutes !== undefined ? { ...time, from: { ...time.from, minutes, open: false } } : time);
  }
  return ordered;
}
/** One item of a list. */
const LIST_ITEM = /^ [^\d.;:!?\n]{3,24}[,;]\s*$/;

const WITH_MINUTES = /^\d{1,2}[:.]\d\d$/;
const FIRST_SURE = 4 * 60;

/** "Call 10:00 ... ends 21:00": where the clock of 24 hours is written, an hour with minutes means what it shows. */
function asWritten(text: string, times: readonly TimeMention[]): readonly TimeMention[] {
  const written = (time: TimeMention): string => text.slice(time.start, time.end);
  const late = times.some(
    (time) =>
      [time.from, time.to].some((one) => one && !one.open && one.minutes >= 780 && one.minutes < 1440) &&
      /(?:1[3-9]|2[0-3])[:.]\d\d(?!\s?[ap]\.?m)/i.test(written(time)),
  );
  const halves = times.some((time) => /\d[:.]\d\d\s?[ap](?:\.?m|\b)/i.test(written(time)));
  if (!late || halves) return times;
  const shut = (one: ClockTime, shown: string): ClockTime =>
    one.open && one.minutes >= FIRST_SURE && WITH_MINUTES.test(shown) ? { ...one, open: false } : one;
  return times.map((time) => {
    const [first = '', last = ''] = [/^[\d:.]+/.exec(written(time))?.[0], /[\d:.]+$/.exec(written(time))?.[0]];
    return { ...time, from: shut(time.from, first), ...(time.to ? { to: shut(time.to, last) } : {}) };
  });
}
