/**
 * What the clock says of a leg: on which day it arrives, and which of several towns of a name it can be.
 */
import type { Place } from '../../contract/parts.ts';
import type { Mode } from '../../contract/trips.ts';
import { distanceKm } from '../../places/distance.ts';
import { instantOf, WallTimeError } from '../../time/read.ts';
import { dateLater } from '../../time/wall.ts';
import { dateInWords } from '../../words/dates.ts';

/** A way by ticket takes no longer than this, hours. */
const LONGEST_WAY = 72;
/** Nothing on that way is faster, km/h; the fastest trains and aeroplanes in service stay below. */
const FASTEST: Record<Mode, number> = { flight: 1100, rail: 350, ferry: 90, ride: 130, drive: 130 };

const minutesBetween = (depart: string, from: Place, arrive: string, to: Place): number =>
  (instantOf(arrive, to.zone).epochMilliseconds - instantOf(depart, from.zone).epochMilliseconds) / 60_000;
const daysOn = (wall: string, days: number): string => `${dateLater(wall.slice(0, 10), days)}${wall.slice(10)}`;

type Ends = { from: readonly Place[]; to: readonly Place[] };

/** Of towns with one name, those that can be reached in the time. With no way at all they stay as they are, to be asked. */
export function reachable(ends: Ends, { depart, arrive, mode }: { depart: string; arrive: string; mode: Mode | null }): Ends {
  const pairs = ends.from.flatMap((from) => ends.to.map((to) => ({ from, to })));
  const ways = pairs.filter(({ from, to }) => {
    try {
      const minutes = minutesBetween(depart, from, arrive, to);
      const most = ((minutes > 0 ? minutes : minutes + 1440) / 60) * FASTEST[mode ?? 'flight'];
      return from.key !== to.key && distanceKm(from, to) <= most;
    } catch (error) {
      if (error instanceof WallTimeError) return true;
      throw error;
    }
  });
  if (ways.length === 0) return ends;
  return {
    from: ends.from.filter((each) => ways.some(({ from }) => from === each)),
    to: ends.to.filter((each) => ways.some(({ to }) => to === each)),
  };
}

type Given = {
  depart: string;
  /** On the day that is written, else on that of the departure. */
  arrive: string;
  from: Place;
  to: Place;
  /** How long the text says that it takes, minutes. */
  said: number | null;
  /** The day of arrival is written. */
  fixed: boolean;
};

/** The arrival where it is clear, else what to ask. Both ends count on their own clocks. */
export function settledArrival({
  depart,
  arrive,
  from,
  to,
  said,
  fixed,
}: Given): { arrive: string } | { field: 'depart' | 'arrive'; question: string } {
  const ask = (question: string) => ({ field: 'arrive' as const, question });
  try {
    // Where the length is written, it says the day.
    const fits =
      fixed || said === null
        ? undefined
        : [0, 1, 2].map((days) => daysOn(arrive, days)).find((each) => minutesBetween(depart, from, each, to) === said);
    if (fits) return { arrive: fits };
    const minutes = minutesBetween(depart, from, arrive, to);
    if (minutes <= 0 && fixed) return ask('By these dates it arrives before it leaves. When does it arrive?');
    if (minutes <= 0) return ask(`It would arrive before it leaves. Does it arrive on ${dateInWords(daysOn(arrive, 1).slice(0, 10))}?`);
    if (minutes > LONGEST_WAY * 60) return ask(`By these dates it takes ${Math.round(minutes / 60)} hours. When does it arrive?`);
    if (said !== null && minutes !== said)
      return ask(`By these times it takes ${hours(minutes)}; the text says ${hours(said)}. When does it arrive?`);
    return { arrive };
  } catch (error) {
    if (error instanceof WallTimeError)
      return { field: error.wall === depart && error.zone === from.zone ? 'depart' : 'arrive', question: error.message };
    throw error;
  }
}

const hours = (minutes: number): string => `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
