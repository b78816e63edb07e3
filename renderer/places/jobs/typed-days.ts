/** The days of a job as they are typed. */
import type { Trouble } from '../../../core/contract/base.ts';
import type { JobDay } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import { parseClock } from '../../../core/time/clock.ts';
import { dateIn, nextDate, wrapAfter } from '../../../core/time/wall.ts';
import { Reader } from '../../parts/reader.ts';

export type TypedDay = { date: string; kind: JobDay['kind']; call: string; wrap: string };

export const typedDay = (day: JobDay): TypedDay => ({ date: day.date, kind: day.kind, call: day.call.slice(11), wrap: day.wrap.slice(11) });

/** The day after the last, with its times; the first one is tomorrow at home, nine to seven. */
export function following(days: readonly TypedDay[], home: Place): TypedDay {
  const last = days.at(-1);
  if (last?.date) return { ...last, date: nextDate(last.date) };
  return { date: nextDate(dateIn(home.zone, Temporal.Now.instant().epochMilliseconds)), kind: 'shoot', call: '09:00', wrap: '19:00' };
}

/** The days to save, or the trouble that names what is not a date or a time. */
export function readDays(typed: readonly TypedDay[]): { days: JobDay[] } | { trouble: Trouble } {
  const reader = new Reader();
  const time = (field: string, text: string): string => {
    const read = parseClock(text);
    if (read === undefined) reader.refuse(field, 'is not a time; write it as 14:00');
    return read ?? '00:00';
  };
  const days = typed.flatMap(({ date, kind, call, wrap }, at) => {
    const times = { call: time(`days[${at}].call`, call), wrap: time(`days[${at}].wrap`, wrap) };
    if (date === '') reader.refuse(`days[${at}].date`, 'is not given');
    const start = `${date}T${times.call}`;
    return date === '' ? [] : [{ date, kind, call: start, wrap: wrapAfter(start, times.wrap) }];
  });
  return reader.trouble ? { trouble: reader.trouble } : { days };
}
