/**
 * Public holidays by country and region, from the list of the package date-holidays (assets/holidays/LICENCES.md).
 * They are a hint: such lists have errors, and not every holiday is kept by everybody. A person has the last word.
 */
import { createRequire } from 'node:module';
import type Holidays from 'date-holidays';
import type { PublicHoliday } from '../../core/contract/setup.ts';
import { foldName } from '../../core/places/fold.ts';
import { os } from './os.ts';

export type Where = { country: string; region: string };

/** A country's list, the code of the region that it is narrowed to, and the English that is spoken there. */
type Calendar = { list: Holidays; region: string | null; english: string; years: Map<number, PublicHoliday[]> };

// The list is large and takes a tenth of a second to read: only a quote or a question about holidays waits for it, and only once.
const load = createRequire(import.meta.url);
const calendars = new Map<string, Calendar>();

/**
 * Public holidays of whole days in some years, in order of date. A country that the list does not know has none.
 * @param where ISO 3166-1 alpha-2 country, and the region by its name; a region that is not known gets those of the whole country
 */
export function holidaysOf({ country, region, years }: Where & { years: readonly number[] }): PublicHoliday[] {
  const calendar = calendarOf({ country, region });
  return [...new Set(years)].toSorted((a, b) => a - b).flatMap((year) => yearOf(calendar, year));
}

/** The dates of those holidays from the year of one date to that of another. */
export function holidayDates(where: Where, from: string, to: string): ReadonlySet<string> {
  const [first, last] = [from, to].map((date) => Number(date.slice(0, 4))).toSorted((a, b) => a - b) as [number, number];
  const years = Array.from({ length: last - first + 1 }, (_, order) => first + order);
  return new Set(holidaysOf({ ...where, years }).map(({ date }) => date));
}

/** What to think of `holidaysOf` there, in a sentence. */
export function holidayHint(where: Where): string {
  const { list, region } = calendarOf(where);
  const country = new Intl.DisplayNames('en', { type: 'region' }).of(where.country) ?? where.country;
  if (!(where.country in list.getCountries())) return `No list of public holidays for ${country}.`;
  const missing = where.region !== '' && region === null ? ` Those of ${where.region} alone are not known.` : '';
  return `A hint from a public list for ${region === null ? '' : `${where.region}, `}${country}.${missing} Your own calendar decides.`;
}

function calendarOf({ country, region }: Where): Calendar {
  const key = `${country} ${region}`;
  const known = calendars.get(key);
  if (known) return known;
  const List = load('date-holidays') as typeof Holidays;
  const code = codeOf(new List(country).getStates(country, 'en') ?? {}, country, region);
  const list = code === null ? new List(country) : new List(country, code);
  const calendar = {
    list,
    region: code,
    english: list.getLanguages().find((language) => language.startsWith('en')) ?? 'en',
    years: new Map(),
  };
  calendars.set(key, calendar);
  return calendar;
}

function yearOf({ list, years, english }: Calendar, year: number): PublicHoliday[] {
  const known = years.get(year);
  if (known) return known;
  // What is observed on 31 December for the New Year belongs to the list of the year after.
  const found = [year, year + 1]
    .flatMap((each) => list.getHolidays(each, english))
    .filter(({ type, date, start, end }) => type === 'public' && date.startsWith(`${year}`) && isWholeDay(start, end))
    .map(({ date, name }) => ({ date: date.slice(0, 10), name }));
  const byDate = [...Map.groupBy(found, ({ date }) => date)]
    .map(([date, same]) => ({ date, name: [...new Set(same.map(({ name }) => name))].join(', ') }))
    .toSorted((a, b) => (a.date < b.date ? -1 : 1));
  years.set(year, byDate);
  return byDate;
}

/** A day with a clock change is an hour short. */
function isWholeDay(start: Date, end: Date): boolean {
  return end.getTime() - start.getTime() >= 23 * 3_600_000;
}

/** Regions that our gazetteer writes in another way than the list, by country. */
const otherNames: Record<string, Record<string, string>> = {
  CH: { Berne: 'BE', Zurich: 'ZH' },
  DE: {
    Bavaria: 'BY',
    Bremen: 'HB',
    Hamburg: 'HH',
    Hesse: 'HE',
    'Lower Saxony': 'NI',
    'North Rhine-Westphalia': 'NW',
    'Rhineland-Palatinate': 'RP',
    Saxony: 'SN',
    'Saxony-Anhalt': 'ST',
    Thuringia: 'TH',
  },
  ES: { 'Castilla y León': 'CL', 'Islas Baleares': 'IB', Madrid: 'MD', Murcia: 'MC', Navarra: 'NC', Valencia: 'VC' },
};

function codeOf(states: Record<string, string>, country: string, region: string): string | null {
  const plain = region.replace(/^Canton of /, '').replace(/ \(.*\)$/, '');
  const other = otherNames[country]?.[plain];
  if (other) return other;
  const found = Object.entries(states).find(([, name]) => foldName(name.replace(/^Canton of /, '')) === foldName(plain));
  return found?.[0] ?? null;
}

export const readHolidays = os.setup.holidays.handler(({ input }) => ({ holidays: holidaysOf(input), hint: holidayHint(input) }));
