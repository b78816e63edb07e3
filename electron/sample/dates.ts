/**
 * Dates and moments of the sample year, worked out from the day on which it is loaded.
 */
import type { SampleDate, SampleDay, SampleJob, SampleTime } from '../../assets/sample/shape.ts';
import type { JobDay } from '../../core/contract/jobs.ts';
import { dateLater, wrapAfter } from '../../core/time/wall.ts';

const MINUTE = 60_000;
const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
/** How far back the sample looks for a night in which the clocks changed, in weeks. */
const WEEKS = 60;

/** The day of loading as the sample needs it. */
export type Today = {
  /** Epoch milliseconds. */
  now: number;
  /** Home zone. */
  zone: string;
  /** Date at home. */
  date: Temporal.PlainDate;
  /** The Saturday that `clock change` stands for. */
  clockChange: string;
};

/** @throws RangeError when every night of a clock change has a job already */
export function todayAt(now: number, zone: string, jobs: readonly SampleJob[]): Today {
  const date = Temporal.Instant.fromEpochMilliseconds(now).toZonedDateTimeISO(zone).toPlainDate();
  const today = { now, zone, date, clockChange: '' };
  const taken = new Set(
    jobs
      .filter(({ first }) => first !== 'clock change')
      .flatMap((job) => daysOf(job, today).flatMap(({ call, wrap }) => [call, wrap]))
      .map((wall) => wall.slice(0, 10)),
  );
  const lastSaturday = date.subtract({ days: (date.dayOfWeek + 1) % 7 });
  for (let back = 0; back < WEEKS; back += 1) {
    const saturday = lastSaturday.subtract({ weeks: back });
    const sunday = saturday.add({ days: 1 });
    const changes = sunday.toZonedDateTime(zone).hoursInDay !== 24;
    if (changes && sunday.until(date).days > 0 && ![saturday, sunday].some((day) => taken.has(day.toString())))
      return { ...today, clockChange: saturday.toString() };
  }
  throw new RangeError('No night of a clock change is free in the sample year.');
}

/** A date of the sample as YYYY-MM-DD. @throws RangeError for what is not written as one */
export function dateOf(rule: SampleDate, today: Today): string {
  if (rule === 'clock change') return today.clockChange;
  const [word = '', second = '', third = ''] = rule.split(' ');
  if (word === 'today') return today.date.add({ days: Number(second) }).toString();
  if (word === 'week')
    return monday(today)
      .add({ days: 7 * Number(second) + weekday(third) })
      .toString();
  if (word === 'month')
    return today.date
      .with({ day: 1 })
      .add({ months: Number(second) })
      .toString();
  const earliest = today.date.add({ days: Number(third) });
  return earliest.add({ days: (weekday(word) - (earliest.dayOfWeek - 1) + 7) % 7 }).toString();
}

/** A moment of a job's story, epoch milliseconds. */
export function momentOf(time: SampleTime, first: string, { now, zone }: Today): number {
  const ago = /^(\d+)m ago$/.exec(time);
  if (ago) return now - Number(ago[1]) * MINUTE;
  const ahead = /^in (\d+)m$/.exec(time);
  if (ahead) return now + Number(ahead[1]) * MINUTE;
  const [, days, hour] = /^(-?\d+)d (\d\d:\d\d)$/.exec(time) ?? [];
  if (days === undefined || hour === undefined) throw new RangeError(`"${time}" is no time of the sample.`);
  return momentAt(dateLater(first, -Number(days)), hour, zone);
}

/** A time of day at home, epoch milliseconds. */
export function momentAt(date: string, hour: string, zone: string): number {
  return Temporal.PlainDateTime.from(`${date}T${hour}`).toZonedDateTime(zone).epochMilliseconds;
}

/** Days of a job as the contract has them. */
export function daysOf(job: SampleJob, today: Today): JobDay[] {
  const first = dateOf(job.first, today);
  return job.days.map((day) => dayOf(day, first));
}

function dayOf(day: SampleDay, first: string): JobDay {
  const [, offset, kind, from, to] = /^(-?\d+) (\w+) (\d\d:\d\d)-(\d\d:\d\d)$/.exec(day) ?? [];
  if (offset === undefined || from === undefined || to === undefined) throw new RangeError(`"${day}" is no day of the sample.`);
  const date = dateLater(first, Number(offset));
  const call = `${date}T${from}`;
  return { date, kind: kind as JobDay['kind'], call, wrap: wrapAfter(call, to) };
}

/** `-1 09:10`, days after the first date and a wall time. */
export function wallOf(wall: string, first: string): string {
  const [days = '', hour = ''] = wall.split(' ');
  return `${dateLater(first, Number(days))}T${hour}`;
}

/** A message with its dates filled in: `{today +2}` becomes "Saturday, November 28". */
export function filledIn(message: string, today: Today): string {
  return message.replaceAll(/\{([^}]+)\}/g, (_, rule: string) =>
    Temporal.PlainDate.from(dateOf(rule as SampleDate, today)).toLocaleString('en-US', { weekday: 'long', month: 'long', day: 'numeric' }),
  );
}

function monday({ date }: Today): Temporal.PlainDate {
  return date.subtract({ days: date.dayOfWeek - 1 });
}

function weekday(name: string): number {
  const index = WEEKDAYS.indexOf(name);
  if (index < 0) throw new RangeError(`"${name}" is no weekday of the sample.`);
  return index;
}
