/**
 * "Each day call 9:00", "Crew call is 7:00 a.m. each day", "kick-off is at 10 every time, be there 9:15" behind a list of days: an hour of all of
 * them, and not of the one that stands before it.
 */
import type { SaidTime } from './scene.ts';

const EACH = String.raw`(?:(?:each|every|both|all(?: (?:the|these|those|two|three|four|five|six|\d))?) (?:days?|dates?|times?|evenings?|nights?|mornings?|afternoons?|games?|match(?:es)?|shows?|sessions?|occasions?)|each of (?:them|these|those)|daily)\b`;
const BEFORE = new RegExp(String.raw`\b${EACH}(?:[^.;!?\n\d]|\d{1,2}(?::\d\d)? ?[ap]\.?m\.?){0,60}$`, 'i');
const AFTER = new RegExp(String.raw`^(?: sharp| prompt)?,? \(?(?:on |for )?${EACH}`, 'i');
const REACH = 90;

/** The hours as they were read; those of every day without the one day before them. */
export const forEveryDay = (text: string, times: readonly SaidTime[], days: readonly string[]): SaidTime[] =>
  times.map((time) => {
    const { date, start, end } = time;
    if (days.length < 2 || date?.readings.length !== 1 || !date.readings[0]?.every((day) => days.includes(day))) return time;
    const between = text.slice(Math.max(date.end, start - REACH), start);
    const isOfAll = date.end <= start && (BEFORE.test(between) || AFTER.test(text.slice(end, end + REACH)));
    return isOfAll ? { ...time, date: undefined } : time;
  });
