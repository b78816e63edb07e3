/**
 * An invented year of promised edits: each is taken in, sorted, cut, and locked after its client has seen it; due one to five weeks after
 * its shoot. The same number of edits gives the same year.
 */
import { openHalfHours } from '../../../core/deliverables/calendar.ts';
import type { Slot } from '../../../core/deliverables/schedule.ts';
import type { Stage } from '../../../core/deliverables/stages.ts';
import { dateLater } from '../../../core/time/wall.ts';

const zone = 'America/Chicago';
const FIRST = '2026-01-05';
const at = (date: string, time: string) => Temporal.ZonedDateTime.from(`${date}T${time}[${zone}]`).epochMilliseconds;
/** Spreads numbers over 0 to `below` - 1 without a pattern that one sees. */
const strewn = (number: number, below: number) => ((number * 7919 + 104_729) % 9973) % below;

/** A year of so many edits, four stages each, and the half hours of a day long enough that about nine tenths are used. */
export function yearOfEdits(count: number): { stages: Stage[]; slots: Slot[] } {
  const stages = Array.from({ length: count }, (_, edit) => {
    const shot = dateLater(FIRST, Math.floor((edit * 350) / count));
    const due = at(dateLater(shot, 7 + strewn(edit, 29)), '23:59');
    const seen = at(dateLater(shot, 4 + strewn(edit, 4)), '09:00');
    const works = [1, 1 + strewn(edit + 1, 3), 2 + strewn(edit + 2, 7), 1 + strewn(edit + 3, 2)];
    return works.map((halfHours, step) => ({
      id: `${edit}/${step}`,
      halfHours,
      releaseAt: step === 3 ? seen : at(dateLater(shot, 1), '09:00'),
      dueAt: due,
      after: step === 0 ? [] : [`${edit}/${step - 1}`],
    }));
  }).flat();
  const hours = stages.reduce((sum, { halfHours }) => sum + halfHours, 0) / 2;
  const pinned = Array.from({ length: count / 5 }, (_, block) => {
    const start = at(dateLater(FIRST, Math.floor((block * 1750) / count)), '10:00');
    return { start, end: start + 3_600_000 };
  });
  const slots = openHalfHours({
    zone,
    from: FIRST,
    days: 420,
    ceilingHours: Math.min(14, Math.ceil(hours / 230)),
    dayStart: '06:00',
    closed: new Set(),
    closedWeekdays: [6, 7],
    busy: pinned,
  });
  return { stages, slots };
}
