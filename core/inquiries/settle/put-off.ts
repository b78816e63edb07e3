/**
 * A day from which the job was moved without a date to tell where to: "our gala on 6 March has been postponed by a week", "the hall couldn't do 6 March
 * after all, so it's the following Saturday now". Which day it is then is asked about.
 */
import { weekdayWord } from '../words.ts';
import { askedDays, settledDay } from './days-among.ts';
import { CANNOT } from './no-longer.ts';
import { numberOf } from './marks.ts';
import type { EventDays, Scene } from './scene.ts';

const FAR = 170;
const LEAD = 60;
/** It was moved by so much. */
const MOVED_BY =
  /\b(?:been|be|we've|we have|had to|have to|is|was|it's|it has|date's|date has) (?:now |sadly |just )?(?:(?:postpone|delay|move|shift|push|bump)(?:d|ed)?|put|slipped|bring|brought)(?: (?:it|this|everything))?(?: (back|on|out|forward))?(?: by)? (a|an|one|two|three|[1-3]) (day|week|fortnight|month)s?\b(?: (earlier))?/i;
/** Another day that is told from the one that was named. */
const THE_NEXT =
  /\b(?:following|next|week after|day after)\b(?: (mon|tues|wednes|thurs|fri|satur|sun)day)?|\b(a|one|two) (days?|weeks?|fortnight) (?:later|after)\b/i;
const BESIDES = /\b(?:also|as well|too|both|again)\b/i;

/** The day that was settled, or with the one that takes its place as a question. */
export function heldAgainstPutOff({ text }: Scene, event: EventDays): EventDays {
  const day = settledDay(event);
  const told = event.where[0];
  if (day === undefined || !told) return event;
  const rest = text.slice(told.end, told.end + FAR);
  const date = Temporal.PlainDate.from(day);
  const moved = MOVED_BY.exec(rest);
  if (moved) {
    const [, way, count = '', unit = '', earlier] = moved;
    const by = spanOf(count, unit);
    const other = way?.toLowerCase() === 'forward' || earlier ? date.subtract(by) : date.add(by);
    return askedDays(event.where, [[other.toString()], [day]], 'open');
  }
  const next = CANNOT.test(text.slice(Math.max(0, told.start - LEAD), told.start)) ? THE_NEXT.exec(rest) : null;
  if (!next || BESIDES.test(rest)) return event;
  const weekday = weekdayWord(next[1]?.slice(0, 3).toLowerCase() ?? '');
  const ahead = weekday === undefined ? undefined : (weekday - date.dayOfWeek + 7) % 7 || 7;
  const by = ahead !== undefined ? { days: ahead } : spanOf(next[2] ?? 'a', next[3] ?? (/\bweek/i.test(next[0]) ? 'week' : 'day'));
  return askedDays(event.where, [[date.add(by).toString()], [day]], 'open');
}

/** "a week", "two days", "a fortnight" */
function spanOf(count: string, unit: string): { days: number } | { months: number } {
  const many = /^an?$/i.test(count) ? 1 : numberOf(count);
  if (/^month/i.test(unit)) return { months: many };
  return { days: many * (/^day/i.test(unit) ? 1 : /^week/i.test(unit) ? 7 : 14) };
}
