/**
 * Calendar files as tests write them, read by the program's own reader.
 */
import { CalendarReader, type Reading, type ReadingOptions } from '../core/calendars/read.ts';

export const CRLF = '\r\n';
const decode = (octets: string): string => Buffer.from(octets, 'latin1').toString('utf8');
const octetsOf = (text: string): string => Buffer.from(text, 'utf8').toString('latin1');

/** Lines of events in a calendar. */
export const calendarOf = (...lines: string[]): string =>
  ['BEGIN:VCALENDAR', 'VERSION:2.0', 'PRODID:-//Test//Test//EN', ...lines, 'END:VCALENDAR', ''].join(CRLF);
export const eventOf = (...lines: string[]): string => ['BEGIN:VEVENT', ...lines, 'END:VEVENT'].join(CRLF);

export const at = (instant: string): number => Temporal.Instant.from(instant).epochMilliseconds;

type Read = Reading & ReturnType<CalendarReader['endFile']>;

/** Read a text as a file is read. The window is 1990 to 2030, unless said otherwise. */
export const readText = (text: string, options: Partial<ReadingOptions> = {}): Read => readOctets(octetsOf(text), options);

/** The same for octets, each as the character of its number. */
export function readOctets(octets: string, options: Partial<ReadingOptions> = {}): Read {
  const window = { from: at('1990-01-01T00:00:00Z'), to: at('2030-01-01T00:00:00Z') };
  const reader = new CalendarReader({ window, today: window.from, zone: 'America/New_York', decode, enough: () => false, ...options });
  reader.push(octets);
  const facts = reader.endFile();
  return { ...reader.result(), ...facts };
}

/** "1997-09-02T09:00-04:00" and so on: when the stretches begin, on a clock. */
export const begins = ({ busy }: Reading, zone: string): string[] =>
  busy.map(({ startAt }) =>
    Temporal.Instant.fromEpochMilliseconds(startAt).toZonedDateTimeISO(zone).toString({ timeZoneName: 'never', smallestUnit: 'minute' }),
  );
