/**
 * From first and last date to paid days. Where no time was read, a day is called at nine and has the length that the rate card sells;
 * each such assumption is asked.
 */
import type { InquiryFields, Question } from '../contract/inquiries.ts';
import type { JobDay } from '../contract/jobs.ts';
import { dateLater, nextDate, wallLater } from '../time/wall.ts';
import { lengthInWords } from '../words/amounts.ts';
import { dateInWords } from '../words/dates.ts';

export type UsualDay = { dayMinutes: number; halfMinutes: number };

const USUAL_CALL = '09:00';
const LONGEST_DAYS = 366;
/** A first call up to so many days before the first event day is its load-in; earlier it is something else. */
const LOAD_IN_DAYS = 3;

/**
 * Paid days in order and the questions about what was assumed; no days when no first date is known.
 * @param told the days themselves, where not all between the first and the last are meant
 */
export function assumedDays(fields: InquiryFields, usual: UsualDay, told?: readonly string[]): { days: JobDay[]; questions: Question[] } {
  const { start } = fields;
  if (start === undefined) return { days: [], questions: [] };
  const dates = told ?? datesFrom(start, fields.end ?? dateLater(start, (fields.days ?? 1) - 1));
  const loadIn = loadInOf(fields, start, usual);
  const call = callOf(fields, start);
  const last = dates.at(-1) ?? start;
  const wrap = wrapOf(fields, last, call.time);
  const kind = fields.role === 'edit only' ? 'edit' : 'shoot';
  const days = dates.map((date): JobDay => {
    const called = `${date}T${call.time}`;
    const wrapped = wrap !== undefined && date === last ? wrap : wallLater(called, usual.dayMinutes);
    return { date, kind, call: called, wrap: wrapped };
  });
  const only = days.length === 1 ? days[0] : undefined;
  if (only && call.read && wrap !== undefined && kind === 'shoot' && minutesBetween(only.call, only.wrap) <= usual.halfMinutes)
    only.kind = 'half';
  return { days: loadIn ? [loadIn, ...days] : days, questions: questionsOf({ call, wrap, dates, loadIn, usual }) };
}

function datesFrom(start: string, end: string): string[] {
  const dates = [start];
  for (let date = nextDate(start); date <= end && dates.length < LONGEST_DAYS; date = nextDate(date)) dates.push(date);
  return dates;
}

/** A call on a date before the first event day: load-in, sold as a half day. */
function loadInOf({ firstCall }: InquiryFields, start: string, usual: UsualDay): JobDay | null {
  const date = firstCall?.slice(0, 10);
  if (firstCall === undefined || date === undefined || date >= start || date < dateLater(start, -LOAD_IN_DAYS)) return null;
  return { date, kind: 'half', call: firstCall, wrap: wallLater(firstCall, usual.halfMinutes) };
}

type Call = { time: string; read: boolean };

function callOf({ firstCall }: InquiryFields, start: string): Call {
  return firstCall?.startsWith(start) ? { time: firstCall.slice(11), read: true } : { time: USUAL_CALL, read: false };
}

/** The wrap of the last day as it was read, if it is a wrap of that day. */
function wrapOf({ lastWrap }: InquiryFields, last: string, time: string): string | undefined {
  return lastWrap !== undefined && lastWrap > `${last}T${time}` && lastWrap < `${dateLater(last, 2)}T00:00` ? lastWrap : undefined;
}

type Assumed = { call: Call; wrap: string | undefined; dates: readonly string[]; loadIn: JobDay | null; usual: UsualDay };

function questionsOf({ call, wrap, dates, loadIn, usual }: Assumed): Question[] {
  const questions: Question[] = [];
  const ask = (field: Question['field'], sentence: string, put: string) => questions.push({ field, ask: sentence, put, choices: [] });
  const several = dates.length > 1;
  const onEach = several ? ' on each day' : '';
  const length = lengthInWords(usual.dayMinutes);
  if (!call.read)
    ask(
      'firstCall',
      `At what time is the call${onEach}? ${call.time} is assumed.`,
      loadIn ? `When shall I be there${onEach || ' on the day'} after load-in?` : `When shall I be there${onEach}, load-in included?`,
    );
  else if (several)
    ask('firstCall', `Is the call ${call.time} on every day? Only the first was named.`, `Shall I be there at ${call.time} on every day?`);
  if (loadIn) {
    const date = dateInWords(loadIn.date);
    ask(
      'lastWrap',
      `How long is load-in on ${date}? ${lengthInWords(usual.halfMinutes)} are assumed.`,
      `How long do you need me for load-in on ${date}?`,
    );
  }
  if (wrap === undefined)
    ask(
      'lastWrap',
      `At what time is wrap${onEach}? ${length} after call are assumed.`,
      `Until when do you need me${onEach}, strike included?`,
    );
  else if (several)
    ask(
      'lastWrap',
      `At what time is wrap on the days before the last? ${length} after call are assumed.`,
      'Until when do you need me on the days before the last?',
    );
  return questions;
}

function minutesBetween(call: string, wrap: string): number {
  return Temporal.PlainDateTime.from(call).until(Temporal.PlainDateTime.from(wrap)).total('minutes');
}
