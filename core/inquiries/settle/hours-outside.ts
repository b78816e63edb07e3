/**
 * Days of the job held against the days of its hours: "27 to 29 November, come for 8 on Saturday, Monday wraps at 1" is no job of the Saturday alone.
 */
import { lineStart } from '../parts/sentences.ts';
import { askedDays, inMonthOf, namedAmong } from './days-among.ts';
import { isEvent } from './pointed.ts';
import type { EventDays, SaidTime, Scene } from './scene.ts';

/** Setting up, or what an older mail said. */
const CALLED_FOR_ELSE = /^>|\b(?:rig(?:ging)?|set(?:ting)?[- ]?up|load(?:ing)?[- ]?in|get-?in|bump-?in|build|arriv\w+)\b[^.;!?\n]{0,24}$/i;
/** An hour before this is the end of the night before. */
const NIGHT_ENDS = 6 * 60;

/** Where only some days of a run were taken and the end is told on another: the run where my hours begin and end it, a question where they do not. */
export function heldAgainstHours({ text, dates: mentions, times }: Scene, event: EventDays): EventDays {
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
  const told = (cue: SaidTime['said'], but?: RegExp): string[] =>
    times.flatMap(({ said, date, from, dayBefore }) =>
      date?.weekdayOnly &&
      !but?.test(text.slice(lineStart(text, date.start), date.start)) &&
      !date.past &&
      !dayBefore &&
      said === cue &&
      from.minutes >= NIGHT_ENDS
        ? namedAmong(date, known).slice(cue === 'wrap' ? -1 : 0)
        : [],
    );
  const ends = told('wrap');
  // "Thursday is rehearsal only, be at the hotel at 2": who is called on a day works on it, but for rigging the evening before.
  const called = told('call', CALLED_FOR_ELSE).filter((day) => near.includes(day) && day < first);
  if (called.length === 0 && ends.every((day) => dates.includes(day))) return event;
  const whole = [...new Set(runs)].toSorted();
  if (whole[0] !== undefined && told('call').includes(whole[0]) && ends.includes(whole.at(-1) ?? ''))
    return { dates: whole, where, choices: [] };
  return askedDays(where, [dates, known.filter((day) => dates.includes(day) || ends.includes(day) || called.includes(day))]);
}
