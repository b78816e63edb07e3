/** Where the lines of the calendar stand on a strip of time, and what is written on them. */
export type Tick = {
  at: number;
  before: string;
  bold: string;
  after: string;
  major: boolean;
  /** Counts ticks of its kind from a fixed one, so that leaving some out leaves out the same ones wherever the strip begins. */
  order: number;
};
export type Shade = { from: number; to: number };

const WEEKDAYS = ['Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat', 'Sun'];
const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];
const DAY_MS = 86_400_000;

type Midnight = { index: number; at: number; day: number; month: number; year: number; weekday: number };

/** Midnights by zone and by days since 1970. A zoom asks for the same ones with every frame, and asking the engine is dear. */
const known = new Map<string, Map<number, Midnight>>();

function midnight(index: number, zone: string): Midnight {
  const ofZone = known.get(zone) ?? new Map<number, Midnight>();
  known.set(zone, ofZone);
  const before = ofZone.get(index);
  if (before) return before;
  const date = Temporal.PlainDate.from({ year: 1970, month: 1, day: 1 }).add({ days: index });
  const { day, month, year, dayOfWeek: weekday } = date;
  const made = { index, at: date.toZonedDateTime(zone).epochMilliseconds, day, month, year, weekday };
  ofZone.set(index, made);
  return made;
}

/** The midnights that begin the dates which show between two instants, the first of them at or before `from`. */
function dates(from: number, to: number, zone: string): Midnight[] {
  const all: Midnight[] = [];
  // A zone is at most a day away from UTC.
  for (let index = Math.floor(from / DAY_MS) - 1; ; index += 1) {
    const date = midnight(index, zone);
    if (date.at >= to) return all;
    if (midnight(index + 1, zone).at > from) all.push(date);
  }
}

/** Ticks for a strip: hours up to two days, dates up to three weeks, Mondays up to four months, firsts of a month beyond. */
export function ticks(from: number, to: number, zone: string): Tick[] {
  const days = (to - from) / DAY_MS;
  const all = dates(from, to, zone);
  if (days <= 2.1) return all.flatMap((date) => hours(date, zone)).filter((tick) => tick.at >= from && tick.at < to);
  const shown = all.filter((date) => date.at >= from);
  if (days <= 21.1) {
    return shown.map((date, index) => ({
      at: date.at,
      bold: String(date.day),
      before: WEEKDAYS[date.weekday - 1] ?? '',
      after: index === 0 || date.day === 1 ? (MONTHS[date.month - 1] ?? '') : '',
      major: true,
      order: date.index,
    }));
  }
  if (days <= 130)
    return shown
      .filter((date) => date.weekday === 1)
      .map((date) => ({
        at: date.at,
        before: '',
        bold: String(date.day),
        after: MONTHS[date.month - 1] ?? '',
        major: true,
        order: Math.floor(date.index / 7),
      }));
  return shown
    .filter((date) => date.day === 1)
    .map((date) => ({
      at: date.at,
      before: '',
      bold: MONTHS[date.month - 1] ?? '',
      after: date.month === 1 ? String(date.year) : '',
      major: true,
      order: date.year * 12 + date.month,
    }));
}

const knownHours = new Map<string, Tick[]>();

function hours(date: Midnight, zone: string): Tick[] {
  const key = `${zone} ${date.at}`;
  const before = knownHours.get(key);
  if (before) return before;
  const made = [0, 3, 6, 9, 12, 15, 18, 21].map((hour) => ({
    at: Temporal.PlainDateTime.from({ year: date.year, month: date.month, day: date.day, hour }).toZonedDateTime(zone).epochMilliseconds,
    bold: hour === 0 ? String(date.day) : `${String(hour).padStart(2, '0')}:00`,
    before: hour === 0 ? (WEEKDAYS[date.weekday - 1] ?? '') : '',
    after: '',
    major: hour === 0,
    order: date.index * 8 + hour / 3,
  }));
  knownHours.set(key, made);
  return made;
}

/** Weekends, as far as they can be told apart on the strip. */
export function weekends(from: number, to: number, zone: string): Shade[] {
  if ((to - from) / DAY_MS > 130) return [];
  return dates(from, to, zone)
    .filter((date) => date.weekday > 5)
    .map((date) => ({ from: Math.max(from, date.at), to: Math.min(to, midnight(date.index + 1, zone).at) }));
}
