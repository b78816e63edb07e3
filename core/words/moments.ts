/**
 * Instants as a person at a place meets them, with the clock at home beside it where it shows something else:
 * "Saturday 5 December 18:10 (17:10 at home)".
 */

const WEEKDAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];

type Zoned = { zone: string };

/** "Saturday 5 December 18:10 (17:10 at home)", in the zone of the place. Epoch ms in. */
export function momentAt(at: number, place: Zoned, home: Zoned): string {
  const there = zoned(at, place.zone);
  return `${weekday(there)} ${there.day} ${MONTHS[there.month - 1]} ${clock(there)}${atHome(at, there, home)}`;
}

/** "Saturday 18:10 (17:10 at home)": without the date, for a moment near one that was said whole. */
export function weekdayAt(at: number, place: Zoned, home: Zoned): string {
  const there = zoned(at, place.zone);
  return `${weekday(there)} ${clock(there)}${atHome(at, there, home)}`;
}

/** "18:10 (17:10 at home)". */
export function clockAt(at: number, place: Zoned, home: Zoned): string {
  const there = zoned(at, place.zone);
  return `${clock(there)}${atHome(at, there, home)}`;
}

/** "Saturday 12 December 12:00 to 20:00", or with the second moment whole where it is on another date. */
export function spanAt(from: number, to: number, place: Zoned, home: Zoned): string {
  const sameDate = zoned(from, place.zone).toPlainDate().equals(zoned(to, place.zone).toPlainDate());
  return `${momentAt(from, place, home)} to ${sameDate ? clockAt(to, place, home) : momentAt(to, place, home)}`;
}

/** Nothing where both clocks agree; else what the clock at home shows, with its weekday where that differs. */
function atHome(at: number, there: Temporal.ZonedDateTime, home: Zoned): string {
  const here = zoned(at, home.zone);
  if (here.offsetNanoseconds === there.offsetNanoseconds) return '';
  return ` (${here.toPlainDate().equals(there.toPlainDate()) ? '' : `${weekday(here)} `}${clock(here)} at home)`;
}

function zoned(at: number, zone: string): Temporal.ZonedDateTime {
  return Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO(zone);
}

function weekday(day: Temporal.ZonedDateTime): string {
  return WEEKDAYS[day.dayOfWeek - 1] ?? '';
}

function clock(day: Temporal.ZonedDateTime): string {
  return `${String(day.hour).padStart(2, '0')}:${String(day.minute).padStart(2, '0')}`;
}
