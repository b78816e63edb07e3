/**
 * Part 7 of the check: what time itself says. The client's reply-by, and whether one can still be there from home.
 */
import type { Finding } from '../contract/fit.ts';
import type { Moment, Place } from '../contract/parts.ts';
import { epochOf } from '../time/read.ts';
import type { WayFinder } from '../trips/ways.ts';
import { lengthInWords } from '../words/amounts.ts';
import { momentAt } from '../words/moments.ts';
import type { BookJob } from './book.ts';
import type { LaneEntry } from './lane.ts';

const MINUTE = 60_000;

/** Past at now >= reply-by. */
export function replyByFindings(replyBy: Moment | null, now: number, home: Place): Finding[] {
  if (!replyBy) return [];
  const past = Math.floor((now - epochOf(replyBy.at)) / MINUTE);
  if (now < epochOf(replyBy.at)) return [];
  return [
    {
      kind: 'reply-by',
      hardness: 'settle',
      concerns: [],
      numbers: { late: past },
      sentence: `They asked to hear by ${momentAt(epochOf(replyBy.at), replyBy, home)}; that was ${past === 0 ? 'this minute' : `${lengthInWords(past)} ago`}.`,
      lifts: [{ kind: 'ask', label: 'Ask whether it is still open' }],
    },
  ];
}

/** A candidate whose first call is over may have the wrong year in it. */
export function pastFindings({ firmness, place, days }: BookJob, home: Place, now: number): Finding[] {
  const first = Math.min(...days.map((day) => day.callAt));
  if (firmness === 'ink' || first > now) return [];
  const past = Math.floor((now - first) / MINUTE);
  return [
    {
      kind: 'past',
      hardness: 'know',
      concerns: [],
      numbers: { past },
      sentence: `The first call, on ${momentAt(first, place, home)}, is past.`,
      lifts: [],
    },
  ];
}

/** With nothing before it, the first call is reached from home, and one cannot leave before now. */
export function departureFindings(lane: readonly LaneEntry[], home: Place, find: WayFinder, now: number): Finding[] {
  const first = lane.find((entry) => entry.kind === 'stay' && entry.standing === 'own');
  if (!first || first.startAt <= now || lane.some((entry) => entry.endAt > now && entry.startAt < first.startAt)) return [];
  const way = find(home, first.from);
  const have = Math.floor((first.startAt - now) / MINUTE);
  if (have >= way.longMinutes) return [];
  const estimated = way.source === 'estimated';
  const quick = have >= way.shortMinutes;
  return [
    {
      kind: 'departure',
      hardness: estimated ? 'settle' : 'blocks',
      concerns: [],
      numbers: { have, way: way.longMinutes, wayShort: way.shortMinutes, slack: have - way.longMinutes },
      sentence: `The first call in ${first.from.name} is in ${lengthInWords(have)}, on ${momentAt(first.startAt, first.from, home)}; the way from ${home.name} takes ${estimated ? `an estimated ${lengthInWords(way.shortMinutes)} to ` : ''}${lengthInWords(way.longMinutes)}${quick ? ': only if the road is quick' : ''}.`,
      lifts: [
        {
          kind: 'later call',
          label: `Ask for the first call ${lengthInWords(way.longMinutes - have)} later`,
          tryOn: { firstCallLaterMinutes: way.longMinutes - have },
        },
      ],
    },
  ];
}
