/**
 * First call and last wrap: the earliest and the latest paid moment at the place.
 */
import { settledPair } from '../times/find.ts';
import type { EventDays } from './event.ts';
import type { DateMention, SaidTime, Scene, Where } from './scene.ts';

export type Moment = { wall: string; where: Where[] };
export type Calls = {
  firstCall?: Moment;
  lastWrap?: Moment;
  /** Readings of which one is meant. */
  callChoices?: { walls: string[]; where: Where; why: 'open' | 'show' | 'day' };
  wrapChoices?: { walls: string[]; where: Where; why: 'open' | 'show' | 'day' };
};

const EVENING_EVENT = /\b(?:evening|tonight|night|dinner|gala|party|concert|gig|club|ball|awards|reception|late)\b/i;
/** A wrap at or before this is the small hours of the next date. */
const SMALL_HOURS = 6 * 60;

type Day = Temporal.PlainDate;
const day = (date: string): Day => Temporal.PlainDate.from(date);

/** `YYYY-MM-DDTHH:MM`; minutes may reach past midnight. */
export function wallOf(date: Day, minutes: number): string {
  const on = date.add({ days: Math.floor(minutes / 1440) });
  const rest = minutes % 1440;
  return `${on.toString()}T${String(Math.floor(rest / 60)).padStart(2, '0')}:${String(rest % 60).padStart(2, '0')}`;
}

/** The day that a date beside a call means, seen from the event: "Saturday" is the one at or just before its start. */
function callDay(time: SaidTime, days: readonly string[]): Day | undefined {
  const first = day(days[0] as string);
  const last = day(days.at(-1) as string);
  if (time.dayBefore) return first.subtract({ days: 1 });
  if (time.nthDay !== undefined) {
    const at = time.nthDay < 0 ? days.length - 1 : time.nthDay - 1;
    return days[at] === undefined ? undefined : day(days[at]);
  }
  const date = time.date;
  if (!date) return first;
  return dayBeside(date, first, last, days, 'call');
}

function dayBeside(date: DateMention, first: Day, last: Day, days: readonly string[], side: 'call' | 'wrap'): Day | undefined {
  const atom = date.sequence.items[0]?.atom;
  const weekday = atom?.weekday;
  if (date.weekdayOnly && date.sequence.items.length === 1 && weekday !== undefined) {
    const inside = days.map(day).filter((one) => one.dayOfWeek === weekday);
    const chosen = side === 'call' ? inside[0] : inside.at(-1);
    if (chosen) return chosen;
    if (side === 'wrap') return undefined;
    return first.subtract({ days: (first.dayOfWeek - weekday + 7) % 7 });
  }
  if (date.readings.length === 1) {
    const dates = date.readings[0] ?? [];
    const one = side === 'call' ? dates[0] : dates.at(-1);
    if (one === undefined) return undefined;
    const found = day(one);
    // A numbered day without a month is sought beside the event, not beside the message.
    if (!date.explicit && atom?.day !== undefined) {
      const near = [first.with({ day: 1 }), first.with({ day: 1 }).subtract({ months: 1 })]
        .map((month) => month.add({ days: (atom.day ?? 1) - 1 }))
        .find((candidate) => candidate.day === atom.day && Temporal.PlainDate.compare(candidate, last) <= 0);
      return near ?? found;
    }
    return found;
  }
  return undefined;
}

const MOST_DAYS_AHEAD = 6;

/** Minutes of a call that was said without morning or evening; undefined where it could be either. */
function openCall(time: SaidTime, scene: Scene): number | undefined {
  const minutes = time.from.minutes;
  if (!time.from.open) return minutes % 1440;
  if (time.evening || time.dayBefore)
    return /\bmorning\b/i.test(clauseOf(scene.text, time)) ? minutes : minutes < 720 ? minutes + 720 : minutes;
  if (minutes >= 720) return minutes;
  if (minutes >= 60 && minutes < 5 * 60 + 30) return minutes + 720;
  if (minutes >= 6 * 60 && minutes <= 11 * 60 + 59) return EVENING_EVENT.test(scene.text) ? undefined : minutes;
  return undefined;
}

const clauseOf = (text: string, where: Where): string => text.slice(Math.max(0, where.start - 40), where.end + 30);

type Point = { date: Day; minutes: number; where: Where[] };

/** Decide on both; a time of doors or of the show alone is a question, not a call. */
export function callsOf(scene: Scene, event: EventDays): Calls {
  const days = event.dates;
  if (days.length === 0) return {};
  const first = day(days[0] as string);
  const last = day(days.at(-1) as string);
  const calls: Point[] = [];
  const wraps: Point[] = [];
  const answer: Calls = {};
  const shows: SaidTime[] = [];
  for (const time of scene.times) {
    if (time.said === 'reply' || time.said === 'delivery' || time.said === 'other' || time.said === 'past') continue;
    if (time.date && (time.date.said === 'reply' || time.date.said === 'delivery' || time.date.said === 'other' || time.date.past))
      continue;
    if (time.to) {
      const pair = settledPair(time.from, time.to);
      if (time.said === 'show') {
        shows.push(time);
        continue;
      }
      const on = callDay(time, days);
      if (!on) continue;
      if (!pair) {
        const from = time.from.minutes;
        if (time.from.open) answer.callChoices ??= { walls: [wallOf(on, from), wallOf(on, (from + 720) % 1440)], where: time, why: 'open' };
        else calls.push({ date: on, minutes: from, where: [time] });
        continue;
      }
      calls.push({ date: on, minutes: pair.from, where: time.date ? [time, time.date] : [time] });
      const setUp =
        time.said === 'call' &&
        /\b(?:load|set|rig|rehears|sound|access|tech|build|bump|get)/i.test(scene.text.slice(Math.max(0, time.start - 40), time.start));
      if (setUp) continue;
      const until =
        time.date || time.nthDay !== undefined
          ? time.date && time.date.readings.length === 1 && !time.dayBefore
            ? (dayBeside(time.date, first, last, days, 'wrap') ?? on)
            : on
          : last;
      const end = pair.to <= pair.from ? pair.to + 1440 : pair.to;
      if (Temporal.PlainDate.compare(until, last) >= 0) wraps.push({ date: until, minutes: end, where: [time] });
      continue;
    }
    if (time.said === 'call') {
      const on = callDay(time, days);
      if (!on) continue;
      const minutes = openCall(time, scene);
      if (minutes === undefined) {
        const base = time.from.minutes % 720;
        answer.callChoices ??= { walls: [wallOf(on, base), wallOf(on, base + 720)], where: time, why: 'open' };
      } else
        calls.push({ date: on, minutes: time.from.midnight && !time.date ? 1440 : minutes, where: time.date ? [time, time.date] : [time] });
    } else if (time.said === 'wrap') wrapPoint(scene, time, days, wraps, answer);
    else if (time.said === 'show') shows.push(time);
    else if (time.date && isEventDate(time.date) && !time.from.open) {
      const on = callDay(time, days);
      if (on) answer.callChoices ??= { walls: [wallOf(on, time.from.minutes % 1440)], where: time, why: 'show' };
    }
  }
  const earliest = calls
    .filter(({ date }) => date.until(first).days <= MOST_DAYS_AHEAD && Temporal.PlainDate.compare(date, last) <= 0)
    .toSorted((a, b) => compare(a, b))[0];
  if (earliest && !answer.callChoices) answer.firstCall = { wall: wallOf(earliest.date, earliest.minutes), where: earliest.where };
  else if (earliest && answer.callChoices?.why === 'show') {
    answer.firstCall = { wall: wallOf(earliest.date, earliest.minutes), where: earliest.where };
    delete answer.callChoices;
  }
  const latest = wraps.toSorted((a, b) => compare(b, a))[0];
  if (latest && !answer.wrapChoices) {
    const wall = wallOf(latest.date, latest.minutes);
    if (answer.firstCall === undefined || wall > answer.firstCall.wall) answer.lastWrap = { wall, where: latest.where };
  }
  const show = shows[0];
  if (show && !answer.firstCall && !answer.callChoices) {
    const on = callDay(show, days);
    const minutes = show.to ? settledPair(show.from, show.to)?.from : show.from.open ? undefined : show.from.minutes;
    if (on && minutes !== undefined) answer.callChoices = { walls: [wallOf(on, minutes % 1440)], where: show, why: 'show' };
  }
  return answer;
}

const isEventDate = (date: DateMention): boolean => date.said === undefined || date.said === 'event';
const compare = (a: Point, b: Point): number => Temporal.PlainDate.compare(a.date, b.date) || a.minutes - b.minutes;

function wrapPoint(scene: Scene, time: SaidTime, days: readonly string[], wraps: Point[], answer: Calls): void {
  const first = day(days[0] as string);
  const last = day(days.at(-1) as string);
  let on: Day | undefined = last;
  if (time.nthDay !== undefined)
    on = time.nthDay < 0 ? last : days[time.nthDay - 1] === undefined ? undefined : day(days[time.nthDay - 1] as string);
  else if (time.date) on = dayBeside(time.date, first, last, days, 'wrap');
  if (!on) return;
  const { minutes, open, midnight } = time.from;
  if (midnight) wraps.push({ date: on, minutes: 1440, where: [time] });
  else if (!open)
    wraps.push({
      date: on,
      minutes: minutes < SMALL_HOURS && !(time.date && Temporal.PlainDate.compare(on, last) > 0) ? minutes + 1440 : minutes,
      where: [time],
    });
  else {
    // "wrap at 6" ends an ordinary day; "wrap at 1" may be at night or after lunch.
    const late = minutes + 720;
    if (minutes >= 4 * 60 && minutes < 11 * 60 + 59) wraps.push({ date: on, minutes: late, where: [time] });
    else if (!answer.wrapChoices)
      answer.wrapChoices = {
        walls: [wallOf(on, minutes === 720 ? 720 : late), wallOf(on, (minutes % 720) + 1440)],
        where: time,
        why: 'open',
      };
  }
  void scene;
}
