/**
 * What calendars of other programs take against the candidate: its stays and tickets, and the ways as they would be planned. What one
 * event takes at several times is told once.
 */
import type { Finding } from '../contract/fit.ts';
import type { Place } from '../contract/parts.ts';
import { countInWords, lengthInWords } from '../words/amounts.ts';
import { spanAt } from '../words/moments.ts';
import type { ImportedTime } from './book.ts';
import { overlaps, type LaneEntry } from './lane.ts';
import { giveUpTicket } from './lifts.ts';
import type { Move } from './moves.ts';
import { within } from './personal.ts';

const MINUTE = 60_000;
type Spell = { startAt: number; endAt: number };
/** So many times of one event can be tried on as if they were moved. */
const MOVABLE = 50;

/** Over a stay or a ticket it counts with the hardness of its calendar; where only a way as it is planned is met, that is good to know. */
export function importedFindings(
  imported: readonly ImportedTime[],
  lane: readonly LaneEntry[],
  moves: readonly Move[],
  home: Place,
): Finding[] {
  const own = lane.filter((entry) => entry.standing === 'own');
  const ways = moves.map(({ start, end }) => ({ startAt: start, endAt: end }));
  const spans = [...own, ...ways];
  const from = Math.min(...spans.map(({ startAt }) => startAt));
  const to = Math.max(...spans.map(({ endAt }) => endAt));
  const near = imported.filter((time) => time.startAt < to && time.endAt > from);
  const events = Map.groupBy(near, ({ calendarId, title, hardness }) => JSON.stringify([calendarId, title, hardness]));
  return [...events.values()].flatMap((times) => eventFinding(times, own, ways, home));
}

function eventFinding(times: readonly ImportedTime[], own: readonly LaneEntry[], ways: readonly Spell[], home: Place): Finding[] {
  const met = times.filter((time) => own.some((entry) => overlaps(entry, time)));
  if (met.length === 0) {
    const onTheWay = times.filter((time) => ways.some((way) => overlaps(way, time)));
    return finding(onTheWay, 'know', 'the way as it is planned takes', ways, home);
  }
  const hit = own.filter((entry) => met.some((time) => overlaps(entry, time)));
  const overDays = hit.some(({ kind }) => kind === 'stay');
  const tickets = hit.flatMap((entry) => (entry.kind === 'ticket' ? [giveUpTicket(entry)] : []));
  return finding(met, hardnessOf(met, overDays), overDays ? 'your days take' : 'your tickets take', hit, home).map((found) => ({
    ...found,
    lifts: [...tickets, ...found.lifts],
  }));
}

/** A ticket can be changed, so it never blocks by itself; what is tentative is only good to know. */
function hardnessOf([first]: readonly ImportedTime[], overDays: boolean): Finding['hardness'] {
  if (first?.hardness === 'never') return overDays ? 'blocks' : 'settle';
  return first?.hardness ?? 'know';
}

/** Nothing where no time is met. @param spells what takes of them */
function finding(
  times: readonly ImportedTime[],
  hardness: Finding['hardness'],
  what: string,
  spells: readonly Spell[],
  home: Place,
): Finding[] {
  const [first, ...more] = times;
  if (!first) return [];
  const overlap = Math.ceil(times.reduce((sum, time) => sum + within(spells, time), 0) / MINUTE);
  const again = more.length === 0 ? '' : ` and ${countInWords(more.length, 'more time')}`;
  const tentative = first.hardness === 'know' ? ', not yet for certain' : '';
  const firm = first.hardness === 'never' ? ', never to be given up' : '';
  const found: Finding = {
    kind: 'imported time',
    hardness,
    concerns: [{ jobId: null, title: first.title }],
    numbers: { overlap, times: times.length, calendar: first.calendar },
    sentence: `${first.title} stands in the calendar ${first.calendar} on ${spanAt(first.startAt, first.endAt, home, home)}${again}${tentative}${firm}; ${what} ${lengthInWords(overlap)} of it.`,
    lifts: liftsOf(first, times, hardness),
  };
  return [found];
}

function liftsOf(first: ImportedTime, times: readonly ImportedTime[], hardness: Finding['hardness']): Finding['lifts'] {
  if (hardness === 'know') return [];
  if (hardness === 'blocks') return [{ kind: 'other dates', label: 'Look for the nearest dates that work' }];
  const withoutImported = times.slice(0, MOVABLE).map(importedKey);
  return [{ kind: 'move imported', label: `Move ${first.title} in the calendar ${first.calendar}`, tryOn: { withoutImported } }];
}

/** What tells one stretch of a calendar from another, however often the calendar is read anew. */
export const importedKey = ({ calendarId, startAt, endAt }: ImportedTime): string => `${calendarId}:${startAt}:${endAt}`;
