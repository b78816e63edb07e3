/**
 * The ends of a day: on which date, and in which half of it.
 */
import type { Calls, Point } from './points.ts';
import { ownerOf } from './owner.ts';
import type { SaidTime, Scene } from './scene.ts';
import { day, dayBeside, wallOf, type Day } from './walls.ts';
import { goesOnBehind, isWhole, ofEachDay } from './whole-hours.ts';

/** A wrap at or before this is the small hours of the next date, and one at or before the other where the day begins after it. */
const [SMALL_HOURS, LATEST_END] = [6 * 60, 9 * 60];
/** A shorter stay than this is no working day, a longer one is not meant by an hour without morning or evening. */
const SHORTEST_STAY = 60;
/** Nothing that is filmed at first light is over before this. */
const EARLIEST_END = 5 * 60;
const LONGEST_PACKING = 3 * 60;
const LONGEST_STAY = 14 * 60;
/** No day that is not one of a feast is as long. */
const LONGEST_PLAIN = 13 * 60;
const LATEST_MORNING = 10 * 60;

function wrapDay(time: SaidTime, days: readonly string[]): Day | undefined {
  const [first, last] = [day(days[0] as string), day(days.at(-1) as string)];
  if (time.nthDay !== undefined)
    return time.nthDay < 0 ? last : days[time.nthDay - 1] === undefined ? undefined : day(days[time.nthDay - 1] as string);
  if (!time.date) return last;
  // "wrap 5am Sunday" of a Saturday
  const next = last.add({ days: 1 });
  const ofNight =
    time.date.weekdayOnly &&
    !time.from.open &&
    time.from.minutes <= SMALL_HOURS &&
    time.date.sequence.items.some(({ atom }) => atom.weekday === next.dayOfWeek);
  return dayBeside(time.date, first, last, days, 'wrap') ?? (ofNight ? next : undefined);
}

/** What else is told of a job: whether it is of an evening, of first light, goes on into the night, and the minutes of its other hours. */
type Around = { evening: boolean; dawn: boolean; late: boolean; others: readonly number[] };
const onDial = (minutes: number): number => ((minutes % 720) + 720) % 720;

/** One end of a day. `calledOn` tells the minutes at which a day begins, where that is known; settled ends come before open ones. */
export function wrapPoint(
  time: SaidTime,
  days: readonly string[],
  calledOn: (day: Day) => number | undefined,
  wraps: Point[],
  answer: Calls,
  { evening, dawn, late, others }: Around,
): void {
  const last = day(days.at(-1) as string);
  const on = wrapDay(time, days);
  if (!on) return;
  const called = calledOn(on);
  const begun = days.length > 1 && called === undefined ? calledOn(day(days[0] as string)) : undefined;
  const { minutes, open, midnight } = time.from;
  const nextDate = time.date !== undefined && Temporal.PlainDate.compare(on, last) > 0;
  if (midnight) wraps.push({ date: on, minutes: 1440, where: [time] });
  else if (!open) {
    const small =
      called === undefined || called >= minutes ? minutes <= SMALL_HOURS || (called !== undefined && minutes <= LATEST_END) : false;
    wraps.push({ date: on, minutes: small && !nextDate ? minutes + 1440 : minutes, where: [time] });
  } else {
    const base = minutes % 720;
    const options = [base, base + 720, base + 1440].filter(
      (end) => (called === undefined || (end - called >= SHORTEST_STAY && end - called < LONGEST_STAY)) && end <= 1440 + SMALL_HOURS,
    );
    // "ends at noon and you're on the road by 1"
    const before = wraps.findLast((point) => point.date.equals(on) && (point.where[0]?.start ?? Infinity) < time.start)?.minutes;
    const soon =
      before === undefined ? undefined : [base, base + 720, base + 1440].find((end) => end >= before && end - before <= LONGEST_PACKING);
    // "wrap at 6" ends an ordinary day; "wrap at 1" may be at night or after lunch.
    const usual = called === undefined && !dawn && base >= 4 * 60 && base < (evening ? 11 * 60 + 59 : 10 * 60) ? base + 720 : undefined;
    // "be there 9.15, done 10.45": an hour or two, where the other half of the dial would be a day and a night.
    const near = options.length === 2 && !late && !evening ? (options[0] as number) : undefined;
    const short =
      called !== undefined &&
      near !== undefined &&
      near + 720 - called >= LONGEST_PLAIN &&
      others.every((one) => onDial(one - called) <= near - called)
        ? near
        : undefined;
    // "call 6am Saturday, Sunday we're out by 2": who begins a run in the morning ends it before the evening, if nothing goes on at night.
    const noonish = begun !== undefined && begun <= LATEST_MORNING && !late && base < 4 * 60 ? base + 720 : undefined;
    // "sunrise at 6:55 ... excused at 9"
    const early = dawn && called === undefined && base > EARLIEST_END ? base : undefined;
    const end = early ?? soon ?? usual ?? short ?? noonish ?? (options.length === 1 ? options[0] : undefined);
    if (end !== undefined) wraps.push({ date: on, minutes: end, where: [time] });
    else
      answer.wrapChoices ??= {
        walls: (called === undefined ? [base + 720, base + 1440] : options).map((one) => wallOf(on, one)),
        where: time,
        why: 'open',
      };
  }
}

/** Of what is filmed to its end; a show leaves the packing open. */
const STAYS = /\b(?:coverage|filming|party|reception|dinner|wedding|fair|f[eê]te|open day|event)\b/i;
const BESIDE = 40;

/** "11am-3pm coverage, arrive 10.30": the hours of the occasion end the day where nothing else is said to. */
export function endOfHours(
  scene: Scene,
  shows: readonly SaidTime[],
  days: readonly string[],
  pairOf: (time: SaidTime) => { from: number; to: number } | undefined,
): Point | undefined {
  const { text } = scene;
  const [first, last] = [day(days[0] as string), day(days.at(-1) as string)];
  const ofLast = (time: SaidTime): boolean => {
    if (time.date === undefined) return days.length === 1 || ofEachDay(text, time);
    return days.length === 1
      ? time.date.readings.every((dates) => dates.at(-1) === last.toString())
      : dayBeside(time.date, first, last, days, 'wrap')?.equals(last) === true;
  };
  const [only, ...others] = shows.filter((time) => time.to && !time.until && ofLast(time) && time.nthDay === undefined);
  const pair = only && pairOf(only);
  if (!only || !pair || others.length > 0 || ownerOf(text, only) === 'theirs') return undefined;
  const beside = text.slice(Math.max(0, only.start - BESIDE), only.end + BESIDE);
  if (goesOnBehind(text, only)) return undefined;
  if (!STAYS.test(beside) && !isWhole(scene, only, pair.to)) return undefined;
  return { date: last, minutes: pair.to <= pair.from ? pair.to + 1440 : pair.to, where: [only] };
}
