/**
 * First call and last wrap: the earliest and the latest paid moment at the place.
 */
import { settledPair } from '../times/find.ts';
import { OF_ELSE } from './days-among.ts';
import { earlierCall } from './earlier.ts';
import { filmedThen } from './filmed-then.ts';
import { lastsFor } from './lasts-for.ts';
import { laterBy } from './later.ts';
import { endsNothing } from './ends-around.ts';
import { SMALL_CALL } from './ends-late.ts';
import { goesLate, isEvening, openCall, pairOf } from './half-of-call.ts';
import { firstOfMine, lastOfMine, orElse } from './mine.ts';
import { compare, type Calls, type Point } from './points.ts';
import type { DateMention, EventDays, SaidTime, Scene, Where } from './scene.ts';
import { forEveryDay } from './every-day.ts';
import { eachOnItsDay } from './row-of-hours.ts';
import { ownerOf } from './owner.ts';
import { ofJourney } from './journeys.ts';
import { ofOccasion } from './of-occasion.ts';
import { callDay, day, dayBeside, wallOf, type Day } from './walls.ts';
import { atDawn } from './at-dawn.ts';
import { endOfHours, wrapPoint } from './wraps.ts';

const MOST_DAYS_AHEAD = 6;

/** "8 June: you come at 8h30 ... last day: finished at 12" where one day was read: there are more, of which nothing is known. */
const ofAnotherDay = ({ nthDay }: SaidTime, times: readonly SaidTime[]): boolean =>
  nthDay !== undefined && nthDay !== 1 && times.some((one) => (one.said === 'call' || one.said === 'wrap') && one.nthDay !== nthDay);

/** An hour of a day on which the camera is not wanted. */
const onDropped = ({ date, dayBefore, nthDay, to }: SaidTime, { dates, dropped }: EventDays): boolean =>
  date !== undefined &&
  dropped !== undefined &&
  nthDay === undefined &&
  !dayBefore &&
  date.explicit &&
  date.readings.length === 1 &&
  // A call within a run that is named as one is of its first day.
  (to ? (date.readings[0] ?? []) : (date.readings[0] ?? []).slice(0, 1)).every((one) => dropped.includes(one) && !dates.includes(one));

/** Decide on both; a time of doors or of the show alone is a question, not a call. */
export function callsOf(read: Scene, event: EventDays): Calls {
  const days = event.dates;
  if (days.length === 0) return {};
  const scene = { ...read, times: forEveryDay(read.text, eachOnItsDay(read, days), days).filter((time) => !ofJourney(read.text, time)) };
  const first = day(days[0] as string);
  const last = day(days.at(-1) as string);
  const calls: Point[] = [];
  const wraps: Point[] = [];
  /** Hours from and to that name no day: two of them on several days cannot be told apart. */
  const undated: Point[] = [];
  const answer: Calls = {};
  const shows: SaidTime[] = [];
  const ends: SaidTime[] = [];
  /** An hour that is said to be the call leaves no doubt about hours that are not. */
  const toldCall = scene.times.some(
    ({ said, to, from }) => said === 'call' && !to && (!from.open || from.minutes < 5 * 60 + 30 || from.minutes >= 720),
  );
  const toldHours = scene.times.some((time) => time.said === 'call' && pairOf(time, scene));
  const laterCall = scene.times.some(({ said, from }) => said === 'call' && !from.open && from.minutes >= 720);
  for (const time of scene.times) {
    // "You'll be wrapped by 14:00 on the Sunday since we fly that evening": what the hour is said of goes before what its weekday is.
    const ownCue = (time.said === 'call' || time.said === 'wrap') && time.date?.weekdayOnly === true && time.date.said === 'other';
    if (OF_ELSE.has(time.said) || (time.date && !ownCue && (OF_ELSE.has(time.date.said) || time.date.past))) continue;
    if (onDropped(time, event) || (days.length === 1 && !event.dropped && ofAnotherDay(time, scene.times))) continue;
    if (time.to && time.until) {
      // "concert 6 to 9, then you're done": only its end is mine.
      const pair = settledPair(time.from, time.to);
      ends.push({ ...time, from: pair ? { ...time.to, minutes: pair.to % 1440, open: false, midnight: pair.to === 1440 } : time.to });
      shows.push(time);
      continue;
    }
    if (time.to) {
      const pair = pairOf(time, scene);
      // Where hours are said to be mine, others are those of the occasion.
      if (time.said === 'show' || (time.said !== 'call' && (toldHours || ofOccasion(scene.text, time)))) {
        shows.push(time);
        continue;
      }
      const on = callDay(time, days);
      if (!on) continue;
      if (!pair) {
        const from = time.from.minutes;
        if (time.from.open && time.said !== 'call' && scene.times.some(({ said, to }) => said === 'call' && !to)) continue;
        if (time.from.open) answer.callChoices ??= { walls: [wallOf(on, from), wallOf(on, (from + 720) % 1440)], where: time, why: 'open' };
        else calls.push({ date: on, minutes: from, where: [time] });
        continue;
      }
      const point = { date: on, minutes: pair.from, where: time.date ? [time, time.date] : [time] };
      // A call that is told goes before the hours of the occasion.
      if (time.said === 'call' || !toldCall || days.length > 1) calls.push(point);
      if (!time.date && time.nthDay === undefined && time.said !== 'call') undated.push(point);
      const setUp =
        time.said === 'call' &&
        /(?<![\w-])(?:load|set(?:ting)?[- ]?up|set\b|rig(?!ht)|rehears|sound ?check|access|tech|build|bump|get[- ]?in)\w*[^.;\n]{0,24}$/i.test(
          scene.text.slice(Math.max(0, time.start - 40), time.start),
        );
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
    // "first song 22:00, last one around 02:00"
    if (time.said === 'call' && laterCall && !time.date && !time.from.open && time.from.minutes < SMALL_CALL) {
      ends.push(time);
      continue;
    }
    if (time.said === 'call') {
      const on = callDay(time, days);
      if (!on) continue;
      const minutes = openCall(time, scene, days.length);
      if (minutes === undefined) {
        const base = time.from.minutes % 720;
        answer.callChoices ??= { walls: [wallOf(on, base), wallOf(on, base + 720)], where: time, why: 'open' };
      } else
        calls.push({ date: on, minutes: time.from.midnight && !time.date ? 1440 : minutes, where: time.date ? [time, time.date] : [time] });
    } else if (time.said === 'wrap') ends.push(time);
    else if (time.said === 'show') shows.push(time);
    else if (!time.from.open && (time.date ? isEventDate(time.date) : leads(scene.text, time))) {
      const on = callDay(time, days);
      // "at 14:00 ... until 20:30", "6:15am at the dock, out by 2pm": both ends of my time.
      // "7am on the Monday, done by 6pm on the Wednesday"
      const begins = !time.date || (days.length > 1 && time.from.minutes < 720 && on?.equals(first) === true);
      if (on && scene.times.some((other) => (other.until || (begins && other.said === 'wrap')) && other.start > time.start))
        calls.push({ date: on, minutes: time.from.minutes, where: [time] });
      else if (on && time.date && Math.abs(on.until(first).days) <= MOST_DAYS_AHEAD)
        answer.callChoices ??= { walls: [wallOf(on, time.from.minutes % 1440)], where: time, why: 'show' };
    }
  }
  const ordered = calls
    .filter(({ date }) => date.until(first).days <= MOST_DAYS_AHEAD && Temporal.PlainDate.compare(date, last) <= 0)
    .toSorted((a, b) => compare(a, b));
  const earliest = firstOfMine(scene, ordered, answer);
  // The first hour of a later day is no first call: that of the first day is not told.
  if (earliest && days.length > 1 && Temporal.PlainDate.compare(earliest.date, first) > 0 && answer.callChoices?.why !== 'open')
    answer.callChoices = { walls: [wallOf(first, earliest.minutes)], where: earliest.where[0] as Where, why: 'day' };
  const either = earliest && orElse(scene, earliest, false);
  if (either) answer.callChoices = either;
  const rivals = undated.filter((point) => days.length > 1 && point.minutes !== undated[0]?.minutes);
  if (rivals.length > 0 && undated.some((point) => point === earliest))
    answer.callChoices ??= {
      walls: [...new Set(undated.map((point) => wallOf(point.date, point.minutes)))],
      where: undated[0]?.where[0] ?? { start: 0, end: 0 },
      why: 'open',
    };
  // "2 to 4 pm, setup an hour before": the hours are the show's.
  const ahead = earlierCall(scene);
  // "filming starts at 9, allow an hour to set up before that"
  const told =
    earliest !== undefined &&
    scene.times.some(
      (time) => time.said === 'call' && earliest.where.includes(time) && !(time === ahead?.base && filmedThen(scene.text, time)),
    );
  const base = ahead?.base;
  // "filming from 11 to 2, get there an hour ahead"
  const ofHours = base?.to !== undefined && ahead !== undefined && base.end <= ahead.where.start;
  // "Start 10am (crew an hour earlier)"
  const ofCrew =
    base !== undefined &&
    ahead !== undefined &&
    // A call that is told elsewhere stands, whatever is done before another hour.
    (!told || earliest.where.includes(base)) &&
    base.end <= ahead.where.start &&
    CREW_BEFORE.test(scene.text.slice(base.end, ahead.where.start));
  if (ahead && (!told || ahead.open || ofHours || ofCrew || (base?.said === 'call' && base.start >= ahead.where.end))) {
    const on = base && callDay(base, days);
    const minutes = base && (base.to ? settledPair(base.from, base.to)?.from : openCall(base, scene, days.length));
    if (on && minutes !== undefined && minutes > ahead.minutes && (!told || earliest.where.includes(base))) {
      delete answer.callChoices;
      answer.firstCall = { wall: wallOf(on, minutes - ahead.minutes), where: [ahead.where, base] };
    } else if (earliest)
      answer.callChoices ??= {
        walls: [wallOf(earliest.date, earliest.minutes)],
        where: earliest.where[0] ?? { start: 0, end: 0 },
        why: 'day',
      };
  }
  // "Start 10am. Set-up: an hour before."
  else if (ahead && base && earliest?.where.includes(base) && ANOTHER_DEED.test(scene.text.slice(base.end, ahead.where.start)))
    answer.callChoices ??= {
      walls: [earliest.minutes - ahead.minutes, earliest.minutes].map((minutes) => wallOf(earliest.date, minutes)),
      where: ahead.where,
      why: 'day',
    };
  if (answer.firstCall !== undefined) {
    // Told from another hour.
  } else if (earliest && !answer.callChoices) answer.firstCall = { wall: wallOf(earliest.date, earliest.minutes), where: earliest.where };
  else if (earliest && answer.callChoices?.why === 'show') {
    answer.firstCall = { wall: wallOf(earliest.date, earliest.minutes), where: earliest.where };
    delete answer.callChoices;
  }
  const opens = scene.times
    .filter(
      (time) =>
        !time.from.open &&
        !/\bby\s$/i.test(scene.text.slice(Math.max(0, time.start - 3), time.start)) &&
        (time.said === 'show' || (time.said === undefined && !time.date && !time.until)),
    )
    .map(({ from }) => from.minutes)
    .toSorted((a, b) => a - b)[0];
  const evening = isEvening(scene);
  const dawn = atDawn(scene.text);
  const late = goesLate(scene);
  const called = (on: Day): number | undefined => {
    if (!earliest || Temporal.PlainDate.compare(earliest.date, first) < 0) return days.length > 1 || dawn ? undefined : opens;
    const same = ordered.find(({ date }) => date.equals(on));
    if (days.length > 1 && !on.equals(earliest.date)) return same?.minutes ?? (ofOneDay(earliest) ? undefined : earliest.minutes);
    return earliest.minutes;
  };
  for (const end of ends.toSorted((a, b) => Number(a.from.open) - Number(b.from.open)))
    wrapPoint(end, days, called, wraps, answer, { evening, dawn, late, others: othersThan(end, scene.times) });
  // The end of an earlier day is not that of the last.
  const onLast = wraps.filter(({ date }) => Temporal.PlainDate.compare(date, last) >= 0);
  const latest = rivals.length > 0 ? undefined : lastOfMine(scene, onLast);
  const eitherEnd = latest && orElse(scene, latest, true);
  if (latest && eitherEnd && (!answer.firstCall || wallOf(latest.date, latest.minutes) > answer.firstCall.wall))
    answer.wrapChoices ??= eitherEnd;
  const [lastHour] = latest?.where ?? [];
  if (latest && lastHour && endsNothing(scene.text, lastHour) && ownerOf(scene.text, lastHour) !== 'mine')
    answer.wrapChoices ??= { walls: [wallOf(latest.date, latest.minutes)], where: lastHour, why: 'show' };
  if (latest && !answer.wrapChoices) {
    const later = ends.some((end) => latest.where.includes(end)) ? laterBy(scene, latest.where[0] as Where) : undefined;
    const wall = wallOf(latest.date, latest.minutes + (later ?? 0));
    if (answer.firstCall === undefined || wall > answer.firstCall.wall) answer.lastWrap = { wall, where: latest.where };
  }
  if (!answer.lastWrap && !answer.wrapChoices && ends.length === 0) {
    const end = endOfHours(scene, shows, days, (time) => pairOf(time, scene));
    const wall = end && wallOf(end.date, end.minutes);
    // "The dance is from 4 pm to midnight": when they end tells my wrap only beside a call of mine.
    if (wall && !answer.firstCall && days.length === 1) answer.wrapChoices = { walls: [wall], where: end.where[0] as Where, why: 'show' };
    else if (wall && answer.firstCall && wall > answer.firstCall.wall) answer.lastWrap = { wall, where: end.where };
  }
  // "ten hours from 8", where no end is told
  const begins = answer.firstCall?.where[0];
  const lasts = begins && begins === earliest?.where[0] && days.length === 1 ? lastsFor(scene.text, begins) : undefined;
  if (earliest && lasts && !answer.lastWrap && !answer.wrapChoices && ends.length === 0)
    answer.lastWrap = { wall: wallOf(earliest.date, earliest.minutes + lasts.minutes), where: [lasts.where] };
  const show = shows[0];
  if (show && !answer.firstCall && !answer.callChoices) {
    const on = callDay(show, days);
    const minutes = show.to ? settledPair(show.from, show.to)?.from : show.from.open ? undefined : show.from.minutes;
    if (on && minutes !== undefined) answer.callChoices = { walls: [wallOf(on, minutes % 1440)], where: show, why: 'show' };
  }
  return answer;
}

/** The minutes of all other hours of the day. */
const othersThan = (end: SaidTime, times: readonly SaidTime[]): number[] =>
  times
    .filter(({ said, start, date }) => start !== end.start && !OF_ELSE.has(said) && !(date && OF_ELSE.has(date.said)))
    .flatMap(({ from, to }) => [from.minutes, ...(to ? [to.minutes] : [])]);

/** Right before how much earlier. */
const CREW_BEFORE =
  /^[\s,;:(–-]*(?:with |and )?(?:the |your |our )?(?:(?:crew|video|camera) )?(?:crew|video|cameras?|arrival|arrive|call|set-?up|load-?in|get-?in|access|you)(?: (?:call|time|in|arrives?|arriving|is|at|to be there|there|please))*:? $/i;
/** "The mass is at 11:30 ... you would have to arrive an hour before" */
const ANOTHER_DEED = /[.;\n]|\b(?:you|u)\b[^,]{0,24}\b(?:arrive|come|be|get|start|set)\b/i;

/** A call that is said of one day tells nothing of the others. */
const ofOneDay = ({ where }: Point): boolean => where.length > 1 || (where[0] as SaidTime | undefined)?.nthDay !== undefined;

/** A time that begins its clause and is followed by where to be. */
const leads = (text: string, time: SaidTime): boolean =>
  DAILY.test(text.slice(time.end, time.end + 20)) ||
  (/(?:^|[.,;:!?\n-])\s*$/.test(text.slice(Math.max(0, time.start - 4), time.start)) &&
    /^,?\s(?:at|in|on|outside)\s/i.test(text.slice(time.end, time.end + 10)));
const DAILY = /^,?\s(?:both|each|every|all (?:three|four|five|\d)) (?:days?|mornings?)\b|^,?\sdaily\b/i;
const isEventDate = (date: DateMention): boolean => date.said === undefined || date.said === 'event';
