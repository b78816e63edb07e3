/**
 * What is written is read back by two independent parsers, with nothing lost: texts, states, sequences, times with their zones, dates.
 * @source Internet Engineering Task Force, RFC 5545 (iCalendar), 3.4, 3.6.1, 3.6.5, 3.8.1.11, 3.8.4.7 and 3.8.7.4, 2009
 */
import { fc, test as lawTest } from '@fast-check/vitest';
import ICAL from 'ical.js';
import { sync } from 'node-ical';
import { expect, test } from 'vitest';
import { calendarText, type Written } from '../../../core/calendars/write.ts';
import { readText } from '../../calendar-text.ts';

type Back = { uid: string; title: string; place: string; note: string; status: string; sequence: number; changedAt: number; when: string };

const instant = (at: number): string => Temporal.Instant.fromEpochMilliseconds(at).toString({ smallestUnit: 'minute' });
/** An hour that its clock shows twice is in UTC: 3.3.5 means the first of the two, both parsers take the second. */
const isTwice = (wall: string, zone: string): boolean => {
  const [first, second] = (['earlier', 'later'] as const).map((disambiguation) =>
    Temporal.PlainDateTime.from(wall).toZonedDateTime(zone, { disambiguation }),
  );
  return first?.epochMilliseconds !== second?.epochMilliseconds;
};
const zoneWritten = ({ from, to, zone }: Exclude<Written['when'], { date: string }>): string =>
  [from, to].some((wall) => isTwice(wall, zone)) ? 'UTC' : zone;
const expected = (event: Written): Back => ({
  uid: event.uid,
  title: event.title,
  place: event.place,
  note: event.note,
  status: event.status,
  sequence: event.sequence,
  changedAt: event.changedAt,
  when: 'date' in event.when ? event.when.date : `${instant(event.when.fromAt)}/${instant(event.when.toAt)} ${zoneWritten(event.when)}`,
});
const inOrder = (events: Back[]): Back[] => events.sort((a, b) => (a.uid < b.uid ? -1 : 1));

/** Reads zones by their names, from its own data. */
function byNodeIcal(text: string): Back[] {
  const found = Object.values(sync.parseICS(text)).flatMap((part) => (part?.type === 'VEVENT' ? [part] : []));
  return inOrder(
    found.map((event) => {
      const whole = event.datetype === 'date';
      const { start } = event;
      return {
        uid: event.uid,
        title: textOf(event.summary),
        place: textOf(event.location),
        note: textOf(event.description),
        status: event.status ?? '',
        sequence: Number(event.sequence),
        changedAt: event.dtstamp.getTime(),
        // A date comes as midnight of this computer.
        when: whole
          ? [start.getFullYear(), start.getMonth() + 1, start.getDate()].map((part) => String(part).padStart(2, '0')).join('-')
          : `${instant(start.getTime())}/${instant(event.end?.getTime() ?? 0)} ${start.tz === 'Etc/UTC' ? 'UTC' : start.tz}`,
      };
    }),
  );
}

/** Knows no zone but those that the file defines. */
function byIcalJs(text: string): Back[] {
  const calendar = new ICAL.Component(ICAL.parse(text));
  const zones = new Map(
    calendar.getAllSubcomponents('vtimezone').map((part) => [textOf(part.getFirstPropertyValue('tzid')), new ICAL.Timezone(part)]),
  );
  return inOrder(
    calendar.getAllSubcomponents('vevent').map((part) => {
      const timeOf = (name: string) => {
        const tzid = part.getFirstProperty(name)?.getFirstParameter('tzid');
        const time = (part.getFirstPropertyValue(name) as unknown as InstanceType<typeof ICAL.Time>).clone();
        const zone = tzid === undefined ? undefined : zones.get(tzid);
        if (zone) time.zone = zone;
        return { time, name: tzid ?? 'UTC' };
      };
      const start = timeOf('dtstart');
      const text = (name: string) => textOf(part.getFirstPropertyValue(name));
      return {
        uid: text('uid'),
        title: text('summary'),
        place: text('location'),
        note: text('description'),
        status: text('status'),
        sequence: Number(part.getFirstPropertyValue('sequence')),
        changedAt: timeOf('dtstamp').time.toUnixTime() * 1000,
        when: start.time.isDate
          ? start.time.toString()
          : `${instant(start.time.toUnixTime() * 1000)}/${instant(timeOf('dtend').time.toUnixTime() * 1000)} ${start.name}`,
      };
    }),
  );
}

/** A text as either parser gives it: bare, or with its parameters. */
function textOf(value: unknown): string {
  if (typeof value === 'string') return value;
  return typeof value === 'object' && value !== null && 'val' in value ? String(value.val) : '';
}

function event(uid: string, start: string, hours: number, more: Partial<Written> = {}): Written {
  const zoned = Temporal.ZonedDateTime.from(start);
  const to = zoned.add({ hours });
  const wall = (time: Temporal.ZonedDateTime) => time.toPlainDateTime().toString({ smallestUnit: 'minute' });
  return {
    uid: `${uid}@kitbound`,
    status: 'CONFIRMED',
    title: 'Curling final',
    place: 'Thunder Bay, Ontario',
    note: '',
    sequence: 0,
    changedAt: 1_764_374_401_000,
    when: { from: wall(zoned), to: wall(to), zone: zoned.timeZoneId, fromAt: zoned.epochMilliseconds, toAt: to.epochMilliseconds },
    ...more,
  };
}

const events: Written[] = [
  event('plain', '2026-11-29T14:00[America/Toronto]', 9),
  event('over the change of the clock', '2026-10-31T18:00[America/Chicago]', 11),
  event('out of the gap', '2026-03-08T03:00[America/Chicago]', 4),
  event('over the border of a date', '2027-02-14T23:55[Pacific/Auckland]', 8),
  event('half an hour aside', '2026-07-01T09:00[America/St_Johns]', 10),
  event('without summer time', '2026-07-01T09:00[America/Phoenix]', 10),
  event('in UTC', '2026-07-01T09:00[UTC]', 10),
  event('pencil', '2026-12-05T08:00[America/Chicago]', 10, { status: 'TENTATIVE', title: 'Pencil: Bakers, "day 1"; hall\\4' }),
  event('gone', '2026-12-06T08:00[America/Chicago]', 10, { status: 'CANCELLED', sequence: 7 }),
  event('told at length', '2026-12-07T08:00[America/Chicago]', 10, {
    note: `Call 08:00, wrap 18:00.\n${'A line that is far longer than seventy-five octets, with é, 漢字 and 𝄞; '.repeat(6)}\nEnd.`,
  }),
  event('due', '2026-12-10T00:00[America/Chicago]', 1, { title: 'Due: recap film', place: '', when: { date: '2026-12-10' } }),
  event('due at a new year', '2026-12-10T00:00[America/Chicago]', 1, { place: '', when: { date: '2026-12-31' } }),
];
const wanted = inOrder(events.map(expected));
const text = calendarText(events);

test('node-ical reads back all of it', () => {
  expect(byNodeIcal(text)).toEqual(wanted);
});

test('ical.js reads back all of it, by the zones that the file defines', () => {
  expect(byIcalJs(text)).toEqual(wanted);
});

test('of an hour that a clock shows twice either is read back as it is meant, and it is in UTC', () => {
  const twice = [
    event('the first of two hours', '2026-11-01T01:30-05:00[America/Chicago]', 9),
    event('the second of two hours', '2026-11-01T01:30-06:00[America/Chicago]', 9),
    event('until an hour that comes twice', '2025-10-25T05:00[Europe/Dublin]', 20),
    event('half an hour twice', '2026-04-04T20:00[Australia/Lord_Howe]', 6),
  ];
  const written = calendarText(twice);
  expect(byNodeIcal(written)).toEqual(inOrder(twice.map(expected)));
  expect(byIcalJs(written)).toEqual(inOrder(twice.map(expected)));
  expect(written.match(/^DTSTART:.*Z/gm)?.toSorted()).toEqual([
    'DTSTART:20251025T040000Z',
    'DTSTART:20260404T090000Z',
    'DTSTART:20261101T063000Z',
    'DTSTART:20261101T073000Z',
  ]);
});

test('the program itself reads none of it as busy: it is its own', () => {
  const { busy, leftOut } = readText(text);
  expect(busy).toEqual([]);
  expect(leftOut).toEqual([expect.objectContaining({ why: 'own', count: events.length })]);
});

test('the lines are those of the specification: ends, lengths, one definition for each zone', () => {
  expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  for (const line of text.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
  const zones = [...text.matchAll(/^TZID:(.*)\r$/gm)].map((match) => match[1]);
  expect(zones).toEqual(['America/Chicago', 'America/Phoenix', 'America/St_Johns', 'America/Toronto', 'Pacific/Auckland']);
});

test('the same events in another order are the same bytes', () => {
  expect(calendarText(events.toReversed())).toBe(text);
});

const ZONES = ['America/Chicago', 'Europe/Dublin', 'Australia/Lord_Howe', 'Asia/Kathmandu', 'America/Santiago', 'Africa/Casablanca', 'UTC'];
const anyEvent = fc
  .record({
    at: fc.integer({ min: 1_760_000_000, max: 1_860_000_000 }),
    zone: fc.constantFrom(...ZONES),
    hours: fc.integer({ min: 1, max: 40 }),
    title: fc.string({ unit: 'grapheme', minLength: 1, maxLength: 90 }),
    sequence: fc.nat({ max: 99 }),
  })
  .map(({ at, zone, hours, title, sequence }) =>
    event(
      `${at}`,
      Temporal.Instant.fromEpochMilliseconds(at * 1000 - ((at * 1000) % 60_000))
        .toZonedDateTimeISO(zone)
        .toString(),
      hours,
      {
        title: `x${title.replaceAll(/\p{C}|\p{Z}/gu, '-').toWellFormed()}x`,
        sequence,
      },
    ),
  );
lawTest.prop([fc.uniqueArray(anyEvent, { minLength: 1, maxLength: 8, selector: ({ uid }) => uid })])(
  'any titles on any clocks come back',
  (some) => {
    const back = inOrder(some.map(expected));
    const written = calendarText(some);
    expect(byNodeIcal(written)).toEqual(back);
    expect(byIcalJs(written)).toEqual(back);
  },
);
