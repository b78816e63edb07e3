/**
 * Which countries a trip goes to and when, and when one is home again: what documents are held against.
 */
import type { Place } from '../../contract/parts.ts';
import { wallAt } from '../../time/read.ts';
import type { BookJob } from '../book.ts';
import type { Move } from '../moves.ts';

/** A country that is not home's, with the dates there on which one comes in and leaves. */
export type Visit = { country: string; enters: string; leaves: string };
export type Abroad = {
  visits: Visit[];
  /** The paid dates, at the place. */
  first: string;
  last: string;
  /** First call, epoch ms. */
  callAt: number;
  /** Home again, as a date at home. */
  homeOn: string;
  /** Part of the way is driven. */
  drives: boolean;
};

/**
 * What documents must cover. Ways count as they would be made, tickets as they are.
 * @param job with the days that one person works, at least one
 * @param moves of that person for this job
 */
export function abroadOf(job: BookJob, moves: readonly Move[], home: Place): Abroad {
  const { place, days, legs = [] } = job;
  const own = [
    ...days.flatMap(({ callAt, wrapAt }) => [
      { place, at: callAt },
      { place, at: wrapAt },
    ]),
    ...legs.flatMap(({ from, to, departAt, arriveAt }) => [
      { place: from, at: departAt },
      { place: to, at: arriveAt },
    ]),
    // A way may begin at another job's place; that job answers for its own country.
    ...moves.flatMap(({ from, to, start, end }) => [
      ...(from.country === place.country ? [{ place: from, at: start }] : []),
      ...(to.country === place.country ? [{ place: to, at: end }] : []),
    ]),
  ].map((moment) => ({ country: moment.place.country, at: moment.at, date: dateAt(moment.at, moment.place.zone) }));
  const abroad = own.filter(({ country }) => country !== home.country);
  const visits = [...Map.groupBy(abroad, ({ country }) => country)].map(([country, moments]) => {
    const dates = moments.map(({ date }) => date).sort();
    return { country, enters: dates[0] ?? '', leaves: dates.at(-1) ?? '' };
  });
  const dates = days.map(({ callAt, wrapAt }) => ({ call: dateAt(callAt, place.zone), wrap: dateAt(wrapAt, place.zone) }));
  const ends = [...own.map(({ at }) => at), ...moves.map(({ end }) => end)];
  return {
    visits: visits.sort((a, b) => (a.enters < b.enters || (a.enters === b.enters && a.country < b.country) ? -1 : 1)),
    first: dates.map(({ call }) => call).sort()[0] ?? '',
    last:
      dates
        .map(({ wrap }) => wrap)
        .sort()
        .at(-1) ?? '',
    callAt: Math.min(...days.map(({ callAt }) => callAt)),
    homeOn: dateAt(Math.max(...ends), home.zone),
    drives: moves.some(({ mode }) => mode === 'drive'),
  };
}

const dateAt = (at: number, zone: string): string => wallAt(at, zone).slice(0, 10);
