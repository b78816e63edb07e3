/** Where the lines of the calendar stand on a strip of time, and what is written on them. */
export type Tick = { at: number; before: string; bold: string; after: string; major: boolean };
export type Shade = { from: number; to: number };

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const DAY_MS = 86_400_000;

const month = (date: Temporal.PlainDate): string => MONTHS[date.month - 1] ?? '';
const at = (date: Temporal.PlainDate, zone: string): number => date.toZonedDateTime(zone).epochMilliseconds;

function dates(from: number, to: number, zone: string): Temporal.PlainDate[] {
  const all: Temporal.PlainDate[] = [];
  let date = Temporal.Instant.fromEpochMilliseconds(from).toZonedDateTimeISO(zone).toPlainDate();
  while (at(date, zone) < to) {
    all.push(date);
    date = date.add({ days: 1 });
  }
  return all;
}

/** Ticks for a strip: hours up to two days, dates up to three weeks, Mondays up to four months, firsts of a month beyond. */
export function ticks(from: number, to: number, zone: string): Tick[] {
  const days = (to - from) / DAY_MS;
  const all = dates(from, to, zone);
  if (days <= 2.1) return all.flatMap((date) => hours(date, zone)).filter((tick) => tick.at >= from && tick.at < to);
  if (days <= 21.1) {
    return all.map((date, index) => ({
      at: at(date, zone),
      bold: String(date.day),
      before: WEEKDAYS[date.dayOfWeek - 1] ?? '',
      after: index === 0 || date.day === 1 ? month(date) : '',
      major: true,
    }));
  }
  if (days <= 130)
    return all
      .filter((date) => date.dayOfWeek === 1)
      .map((date) => ({ at: at(date, zone), before: '', bold: String(date.day), after: month(date), major: true }));
  return all
    .filter((date) => date.day === 1)
    .map((date) => ({ at: at(date, zone), before: '', bold: month(date), after: date.month === 1 ? String(date.year) : '', major: true }));
}

function hours(date: Temporal.PlainDate, zone: string): Tick[] {
  return [0, 3, 6, 9, 12, 15, 18, 21].map((hour) => ({
    at: date.toZonedDateTime({ timeZone: zone, plainTime: Temporal.PlainTime.from({ hour }) }).epochMilliseconds,
    bold: hour === 0 ? String(date.day) : `${String(hour).padStart(2, '0')}:00`,
    before: hour === 0 ? (WEEKDAYS[date.dayOfWeek - 1] ?? '') : '',
    after: '',
    major: hour === 0,
  }));
}

/** Weekends, as far as they can be told apart on the strip. */
export function weekends(from: number, to: number, zone: string): Shade[] {
  if ((to - from) / DAY_MS > 130) return [];
  return dates(from, to, zone)
    .filter((date) => date.dayOfWeek > 5)
    .map((date) => ({ from: at(date, zone), to: Math.min(to, at(date.add({ days: 1 }), zone)) }));
}
