/**
 * The slow twin of part 5: every date from the first to the last is asked one by one whether a document holds on it, months are counted
 * by hand, and business days are walked.
 */
import type { Place } from '../../../core/contract/parts.ts';
import type { BookDocument, BookJob } from '../../../core/fit/book.ts';

type Verdict = 'blocks' | 'settle' | 'know' | 'fine';
type Trip = { job: BookJob; home: Place; leaves: string; homeOn: string; now: string; holidays: readonly string[] };

/** A generation of dates by Julian day numbers, so that nothing of the calendar library is used. */
function dayNumber(date: string): number {
  const [y = 0, m = 0, d = 0] = date.split('-').map(Number);
  const a = Math.floor((14 - m) / 12);
  const year = y + 4800 - a;
  const month = m + 12 * a - 3;
  return (
    d + Math.floor((153 * month + 2) / 5) + 365 * year + Math.floor(year / 4) - Math.floor(year / 100) + Math.floor(year / 400) - 32045
  );
}

const lengths = (year: number) => [
  31,
  (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0 ? 29 : 28,
  31,
  30,
  31,
  30,
  31,
  31,
  30,
  31,
  30,
  31,
];

function monthsOn(date: string, months: number): string {
  let [year = 0, month = 0, day = 0] = date.split('-').map(Number);
  for (let left = months; left > 0; left -= 1) [year, month] = month === 12 ? [year + 1, 1] : [year, month + 1];
  day = Math.min(day, lengths(year)[month - 1] ?? 31);
  return [String(year), String(month).padStart(2, '0'), String(day).padStart(2, '0')].join('-');
}

const holdsThrough = (one: BookDocument, from: string, to: string): boolean => {
  for (let day = dayNumber(from); day <= dayNumber(to); day += 1) if (one.until === null || day > dayNumber(one.until)) return false;
  return true;
};

/** A passport over one border, where a country asks so many months beyond leaving. */
export function twinPassport({ job, homeOn, leaves }: Trip, documents: readonly BookDocument[], months: number): Verdict {
  const passports = documents.filter(({ kind }) => kind === 'passport');
  if (passports.every(({ until }) => until === null)) return 'settle';
  const first = job.days[0]?.date ?? '';
  if (!passports.some((one) => holdsThrough(one, first, homeOn))) return 'blocks';
  return passports.some((one) => holdsThrough(one, first, monthsOn(leaves, months))) ? 'fine' : 'know';
}

/** Paid work in a country: a right to work on file for it that holds on each paid date. */
export function twinWork({ job }: Trip, documents: readonly BookDocument[]): Verdict {
  const country = job.place.country;
  if (documents.some(({ kind, country: issued }) => kind === 'passport' && issued === country)) return 'fine';
  const held = documents.filter((one) => one.kind === 'right to work' && (one.worldwide || one.countries.includes(country)));
  if (held.length === 0) return 'settle';
  // The one that lasts longest counts; a right without an end noted counts where nothing else is on file.
  const dated = held.filter(({ until }) => until !== null);
  if (dated.length === 0) return 'fine';
  return dated.some((one) => job.days.every(({ date }) => holdsThrough(one, date, date))) ? 'fine' : 'blocks';
}

/** Business days that lie wholly between today and the first call, walked day by day. */
export function twinLeft({ job, now, holidays }: Trip): number {
  let left = 0;
  const first = dayNumber(job.days[0]?.date ?? '');
  const closed = new Set(holidays.map(dayNumber));
  // Julian day 0 was a Monday.
  for (let day = dayNumber(now) + 1; day < first; day += 1) if (day % 7 < 5 && !closed.has(day)) left += 1;
  return left;
}
