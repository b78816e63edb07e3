/**
 * Dates, hours and place of a job as a paper or a reply says them.
 */
import type { z } from 'zod';
import type { Job, JobDay } from '../contract/jobs.ts';
import type { Place, Role } from '../contract/parts.ts';
import { countryInWords } from '../words/countries.ts';
import { dateInWords, wallInWords, zoneInWords } from '../words/dates.ts';

/** Dates on which the client sees me: everything but edit and travel days, or all days where there is nothing else. */
export function workDates({ days }: Pick<Job, 'days'>): string[] {
  const seen = workDays(days);
  return (seen.length > 0 ? seen : days).map((day) => day.date);
}

function workDays(days: readonly JobDay[]): JobDay[] {
  return days.filter((day) => day.kind !== 'edit' && day.kind !== 'travel').toSorted((a, b) => (a.call < b.call ? -1 : 1));
}

/** The most lines that hours may take before only the first call and the last wrap are given. */
const MOST_LINES = 6;

/**
 * Call to wrap: one line where all days share it, else a line for each run of days that do, or first call and last wrap where those are many.
 * Times are those of the place; its zone is named where it is not mine.
 */
export function hoursInWords({ days, place }: Pick<Job, 'days' | 'place'>, home: Place): string[] {
  const work = workDays(days);
  const [first] = work;
  const last = work.at(-1);
  if (!first || !last) return [];
  const zone = place && place.zone !== home.zone ? [`${zoneInWords(place.zone)} time`] : [];
  const runs = runsByHours(work);
  if (new Set(work.map(spanInWords)).size === 1)
    return [[spanInWords(first), ...(work.length > 1 ? ['each day'] : []), ...zone].join(', ')];
  if (runs.length > MOST_LINES) return [`first call ${wallInWords(first.call)}`, `last wrap ${wallInWords(last.wrap)}`, ...zone];
  return [...runs.map((run) => `${daysOnly(run)}: ${spanInWords(run[0] ?? first)}`), ...zone];
}

/** Days in a row with the same hours. */
function runsByHours(work: readonly JobDay[]): JobDay[][] {
  const runs: JobDay[][] = [];
  for (const day of work) {
    const before = runs.at(-1)?.at(-1);
    if (before && spanInWords(before) === spanInWords(day) && isDayAfter(day.date, before.date)) runs.at(-1)?.push(day);
    else runs.push([day]);
  }
  return runs;
}

function isDayAfter(date: string, before: string): boolean {
  return Temporal.PlainDate.from(before).add({ days: 1 }).toString() === date;
}

/** "Sun 6 to Thu 10": the month stands in the line above. */
function daysOnly(run: readonly JobDay[]): string {
  const ends = run.length > 1 ? [run[0], run.at(-1)] : [run[0]];
  return ends.flatMap((day) => (day ? [dateInWords(day.date).split(' ').slice(0, 2).join(' ')] : [])).join(' to ');
}

/** "08:00 to 18:00"; a wrap on a later date says so. */
function spanInWords({ call, wrap }: JobDay): string {
  return `${call.slice(11)} to ${wrap.slice(11)}${wrap.slice(0, 10) > call.slice(0, 10) ? ' next day' : ''}`;
}

/** "Thunder Bay, Ontario, Canada": the country only where it is not mine. */
export function placeInWords(place: Place, home: Place): string {
  const country = place.country === home.country ? '' : countryInWords(place.country);
  return [place.name, place.region, country].filter((part) => part !== '').join(', ');
}

const ROLES: Record<z.infer<typeof Role>, string> = {
  shoot: 'Filming',
  'second camera': 'Second camera',
  'vision mixing': 'Vision mixing',
  livestream: 'Livestream',
  'edit only': 'Editing',
  photo: 'Photography',
  audio: 'Sound',
  other: '',
};

/** What I do on a job, as a client would say it; empty where it fits no word. */
export function roleInWords(role: z.infer<typeof Role>): string {
  return ROLES[role];
}
