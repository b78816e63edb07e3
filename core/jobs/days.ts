/**
 * The paid dates of a job: are they of one piece, and at which instants do they lie.
 */
import type { z } from 'zod';
import type { FieldTrouble as Trouble } from '../contract/base.ts';
import type { JobDay } from '../contract/jobs.ts';
import type { BookDay } from '../fit/book.ts';
import { instantOf, WallTimeError } from '../time/read.ts';
import { lengthInWords } from '../words/amounts.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const LONGEST_DAY_HOURS = 48;
const LONGEST_JOB_DAYS = 366;

type FieldTrouble = z.infer<typeof Trouble>;
export type ReadDays = { days: BookDay[]; troubles: FieldTrouble[] };

/**
 * Paid dates with their instants, in order of their calls. Dates may be given in any order.
 * Troubles are whole sentences: a call that is not on its date, a wrap not after its call or more than 48 h later, a date that is given
 * twice or runs into the next, a wall time that the clock at the place skips or shows twice, a job longer than 366 days from end to end.
 * @param zone IANA zone of the place, or of home where there is no place yet
 */
export function readDays(given: readonly JobDay[], zone: string): ReadDays {
  const troubles: FieldTrouble[] = [];
  const days = given.flatMap((day, index) => {
    const read = readDay(day, index, zone);
    if ('field' in read) troubles.push(read);
    return 'field' in read ? [] : [read];
  });
  if (troubles.length > 0) return { days: [], troubles };
  days.sort((a, b) => a.callAt - b.callAt);
  return { days, troubles: togetherTroubles(days) };
}

function readDay(day: JobDay, index: number, zone: string): BookDay | FieldTrouble {
  const trouble = (part: string, sentence: string) => ({ field: `days.${index}.${part}`, sentence });
  if (day.call.slice(0, 10) !== day.date)
    return trouble('call', `The call of ${day.date} is on ${day.call.slice(0, 10)}. A date is that of its call.`);
  const call = instant(day.call, zone);
  if (typeof call === 'string') return trouble('call', call);
  const wrap = instant(day.wrap, zone);
  if (typeof wrap === 'string') return trouble('wrap', wrap);
  if (wrap <= call)
    return trouble(
      'wrap',
      `${day.date}: wrap ${timeOf(day.wrap)} is not after call ${timeOf(day.call)}. A wrap past midnight is on the next date.`,
    );
  if (wrap - call > LONGEST_DAY_HOURS * HOUR)
    return trouble(
      'wrap',
      `${day.date}: call to wrap is ${lengthInWords((wrap - call) / MINUTE)}. One date holds at most ${LONGEST_DAY_HOURS} h; give the next date its own call.`,
    );
  return { ...day, callAt: call, wrapAt: wrap };
}

function togetherTroubles(days: readonly BookDay[]): FieldTrouble[] {
  const troubles: FieldTrouble[] = [];
  for (const [index, day] of days.entries()) {
    const next = days[index + 1];
    if (!next) continue;
    if (next.date === day.date)
      troubles.push({ field: 'days', sentence: `${day.date} is there twice. Make it one day from its first call to its last wrap.` });
    else if (next.callAt < day.wrapAt)
      troubles.push({
        field: 'days',
        sentence: `${day.date} wraps at ${timeOf(day.wrap)}, after the call of ${next.date} at ${timeOf(next.call)}.`,
      });
  }
  const first = days[0];
  const last = days.at(-1);
  if (first && last) {
    const length = Temporal.PlainDate.from(first.date).until(last.date, { largestUnit: 'days' }).days + 1;
    if (length > LONGEST_JOB_DAYS)
      troubles.push({
        field: 'days',
        sentence: `From ${first.date} to ${last.date} are ${length} days. A job holds at most ${LONGEST_JOB_DAYS}; make it two jobs.`,
      });
  }
  return troubles;
}

function instant(wall: string, zone: string): number | string {
  try {
    return instantOf(wall, zone).epochMilliseconds;
  } catch (error) {
    if (error instanceof WallTimeError) return error.message;
    throw error;
  }
}

const timeOf = (wall: string) => wall.slice(11, 16);
