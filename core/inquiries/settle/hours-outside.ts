/**
 * Days of the job held against the days of its hours: "27 to 29 November, come for 8 on Saturday, Monday wraps at 1" is no job of the Saturday alone.
 */
import { askedDays, inMonthOf, namedAmong } from './days-among.ts';
import { isEvent } from './pointed.ts';
import type { EventDays, SaidTime, Scene } from './scene.ts';

/** An hour before this is the end of the night before. */
const NIGHT_ENDS = 6 * 60;

/** Where only some days of a run were taken and the end is told on another: the run where my hours begin and end it, a question where they do not. */
export function heldAgainstHours({ dates: mentions, times }: Scene, event: EventDays): EventDays {
  const { dates, dropped = [], where } = event;
  const [first] = dates;
  if (first === undefined) return event;
  const runs = mentions.flatMap((mention) =>
    mention.explicit && !mention.past && isEvent(mention) && mention.readings.length === 1 && mention.readings[0]?.includes(first)
      ? mention.readings[0]
      : [],
  );
  const near = dropped.filter((day) => inMonthOf(first, Number(day.slice(8))) === day);
  const known = [...new Set([...dates, ...near, ...runs])].toSorted();
  const told = (cue: SaidTime['said']): string[] =>
    times.flatMap(({ said, date, from, dayBefore }) =>
      date?.weekdayOnly && !date.past && !dayBefore && said === cue && from.minutes >= NIGHT_ENDS
        ? namedAmong(date, known).slice(cue === 'wrap' ? -1 : 0)
        : [],
    );
  const ends = told('wrap');
  if (ends.every((day) => dates.includes(day))) return event;
  const whole = [...new Set(runs)].toSorted();
  if (whole[0] !== undefined && told('call').includes(whole[0]) && ends.includes(whole.at(-1) ?? ''))
    return { dates: whole, where, choices: [] };
  return askedDays(where, [dates, known.filter((day) => dates.includes(day) || ends.includes(day))]);
}
