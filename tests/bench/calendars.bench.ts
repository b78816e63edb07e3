/**
 * Calendars: 5,000 events written, against the quicker of two general-purpose writers on the same events; and the whole check with twenty
 * other calendars and thirty years on the books, against the same check without them.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import ical from 'ical-generator';
import ICAL from 'ical.js';
import { sync } from 'node-ical';
import type { Busy } from '../../core/calendars/expand.ts';
import { calendarText, type Written } from '../../core/calendars/write.ts';
import { zoneText } from '../../core/calendars/zone-text.ts';
import { keepCalendar, setCalendarRead } from '../../db/calendars.ts';
import { openStore } from '../../db/open.ts';
import { saveSetup } from '../../db/setup.ts';
import { contextOn } from '../context.ts';
import { callProcedure } from '../../electron/api/serve.ts';
import { SETUP, THUNDER_BAY } from '../api/world.ts';
import { strewn } from '../db/years.ts';
import { pair, report } from './harness.ts';

const HOUR = 3_600_000;
const DAY = 24 * HOUR;
const NOW = Temporal.Instant.from('2026-12-01T15:00:00Z').epochMilliseconds;
const EVENTS = 5_000;
const STATES = ['TENTATIVE', 'CONFIRMED', 'CANCELLED'] as const;
const ZONE = 'America/Toronto';

const zoned = Array.from({ length: EVENTS }, (_, index) => {
  const from = Temporal.ZonedDateTime.from(`2025-01-01T09:00[${ZONE}]`).add({ hours: index * 5 });
  return { from, to: from.add({ hours: 10 }) };
});
const wall = (time: Temporal.ZonedDateTime): string => time.toPlainDateTime().toString({ smallestUnit: 'minute' });
const events: Written[] = zoned.map(({ from, to }, index) => ({
  uid: `0190f3a0-${index}-1@kitbound`,
  status: STATES[index % 3] ?? 'CONFIRMED',
  title: `Robotics league final, day ${index}; north hall`,
  place: 'Thunder Bay, Ontario',
  note: 'Shoot day, call 09:00, wrap 19:00.\nA second line that is long enough to be folded where the octets end: é, ö, 漢字.',
  sequence: index % 4,
  changedAt: NOW,
  when: { from: wall(from), to: wall(to), zone: ZONE, fromAt: from.epochMilliseconds, toAt: to.epochMilliseconds },
}));
const first = zoned[0]?.from.epochMilliseconds ?? 0;
const last = zoned.at(-1)?.to.epochMilliseconds ?? 0;
const zone = zoneText(ZONE, first, last).lines.join('\r\n');
const changed = new Date(NOW);

/** Given the zone definition, which it cannot make; it holds the same properties otherwise. */
function byGenerator(): string {
  const calendar = ical({ prodId: { company: 'Kitbound', product: 'Kitbound' }, timezone: { name: null, generator: () => zone } });
  for (const [index, { uid, title, place, note, status, sequence }] of events.entries()) {
    const { from, to } = zoned[index] ?? { from: 0 as never, to: 0 as never };
    calendar.createEvent({
      id: uid,
      start: from,
      end: to,
      timezone: ZONE,
      summary: title,
      location: place,
      description: note,
      status: status as never,
      sequence,
      stamp: changed,
      lastModified: changed,
    });
  }
  return calendar.toString();
}

function byIcalJs(): string {
  const calendar = new ICAL.Component('vcalendar');
  calendar.addPropertyWithValue('version', '2.0');
  calendar.addPropertyWithValue('prodid', '-//Kitbound//Kitbound//EN');
  calendar.addSubcomponent(ICAL.Component.fromString(zone));
  const stamp = ICAL.Time.fromJSDate(changed, true);
  for (const [index, { uid, title, place, note, status, sequence }] of events.entries()) {
    const event = new ICAL.Component('vevent');
    const { from, to } = zoned[index] ?? { from: 0 as never, to: 0 as never };
    event.addPropertyWithValue('uid', uid);
    event.addPropertyWithValue('dtstamp', stamp);
    event.addPropertyWithValue('last-modified', stamp);
    event.addPropertyWithValue('sequence', sequence);
    event.addPropertyWithValue('status', status);
    for (const [name, { year, month, day, hour, minute }] of [
      ['dtstart', from],
      ['dtend', to],
    ] as const) {
      const property = new ICAL.Property(name);
      property.setParameter('tzid', ZONE);
      property.setValue(new ICAL.Time({ year, month, day, hour, minute, second: 0, isDate: false }, undefined as never));
      event.addProperty(property);
    }
    event.addPropertyWithValue('summary', title);
    event.addPropertyWithValue('location', place);
    event.addPropertyWithValue('description', note);
    calendar.addSubcomponent(event);
  }
  return calendar.toString();
}

/** What a third reader finds in a text: all three writers must have written the same. */
function readBack(text: string): string {
  const found = Object.values(sync.parseICS(text)).flatMap((part) => (part?.type === 'VEVENT' ? [part] : []));
  return JSON.stringify(
    found
      .map(({ uid, summary, location, description, status, sequence, start, end }) => [
        uid,
        summary,
        location,
        description,
        status,
        Number(sequence),
        start.getTime(),
        end?.getTime(),
      ])
      .map((event) => JSON.stringify(event))
      .toSorted(),
  );
}
function proveSame(): void {
  const [ours, ...theirs] = [calendarText(events), byGenerator(), byIcalJs()].map(readBack);
  if (theirs.some((each) => each !== ours)) throw new Error('the writers did not write the same');
}

async function books(calendars: number) {
  const folder = mkdtempSync(join(tmpdir(), 'kitbound-bench-'));
  const store = await openStore({ folder, now: () => NOW });
  store.write((db) => {
    saveSetup(db, SETUP, NOW);
    strewn(db, { years: 30, until: NOW + 60 * DAY });
    for (let number = 0; number < calendars; number += 1) {
      const fields = {
        name: `Calendar ${number}`,
        path: `/calendars/${number}.ics`,
        zone: 'America/Chicago',
        hardness: 'settle' as const,
        isOn: true,
      };
      setCalendarRead(
        db,
        keepCalendar(db, undefined, fields, NOW).id,
        { busy: fourYears(number), leftOut: [], stamp: 's', readFrom: NOW },
        NOW,
      );
    }
  });
  const context = contextOn(store, NOW, 'UTC');
  const day = (date: string) => ({ date, kind: 'shoot', call: `${date}T09:00`, wrap: `${date}T19:00` });
  const candidate = { title: 'Curling', place: THUNDER_BAY, days: [day('2026-12-10'), day('2026-12-11')] };
  return {
    check: async () => {
      let answer: unknown;
      for (let turn = 0; turn < 5; turn += 1) answer = await callProcedure(context, 'fit.check', { candidate });
      return answer;
    },
    close() {
      store.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** Two meetings on every working day of four years, and a whole day now and then: about 2,300 stretches a calendar. */
function fourYears(number: number): Busy[] {
  const busy: Busy[] = [];
  for (let date = -366; date < 3 * 366; date += 1) {
    const startAt = NOW + date * DAY + (number % 9) * HOUR;
    if (date % 7 < 5)
      for (const later of [0, 4])
        busy.push({
          uid: `${number}-${later}`,
          title: `Meeting ${later}`,
          startAt: startAt + later * HOUR,
          endAt: startAt + (later + 1) * HOUR,
          allDay: false,
          tentative: later > 0,
        });
    if (date % 17 === 0) busy.push({ uid: `${number}-day`, title: 'Fair', startAt, endAt: startAt + DAY, allDay: true, tentative: false });
  }
  return busy;
}

proveSame();
const quickest = [byGenerator, byIcalJs]
  .map((write) => ({ write, name: write === byIcalJs ? 'ical.js' : 'ical-generator', took: timeOf(write) }))
  .sort((a, b) => a.took - b.took)[0];
function timeOf(write: () => string): number {
  write();
  const began = performance.now();
  write();
  write();
  return performance.now() - began;
}

const [none, twenty] = await Promise.all([books(0), books(20)]);
const rows = [
  await pair({
    name: `export of ${EVENTS} events`,
    against: `${quickest?.name}, the quicker of two general-purpose writers: the same properties, folded and escaped, the zone's definition given to it`,
    aim: 1,
    rounds: 12,
    ours: () => calendarText(events),
    theirs: quickest?.write ?? byIcalJs,
    prove: proveSame,
  }),
  await pair({
    name: 'whole check, 30 years and 20 other calendars',
    against: 'the same check without other calendars',
    aim: 1.5,
    rounds: 30,
    ours: twenty.check,
    theirs: none.check,
  }),
];
none.close();
twenty.close();
report(...rows);
