/**
 * What of the books is written for other programs, and how it changed since it was written last.
 */
import type { OutEvent } from '../contract/calendars.ts';
import type { DayKind } from '../contract/parts.ts';
import { OWN_UID } from './expand.ts';
import type { Written } from './write.ts';

/** A paid date of a job that is held. Instants in epoch milliseconds. */
export type HeldDay = {
  jobId: string;
  title: string;
  inked: boolean;
  place: string;
  kind: DayKind;
  call: string;
  wrap: string;
  zone: string;
  callAt: number;
  wrapAt: number;
};
/** A film that is promised by a date; its id is the deliverable's, or one made of the job's while it has none. */
export type PromisedEdit = { id: string; title: string; what: string; due: string; inked: boolean };

/** How long what is over stays in the file, milliseconds: two years and a little, so that last year can be looked at. */
export const WRITTEN_FOR = 740 * 86_400_000;

/**
 * The events as they are to stand: pencil tentative, ink confirmed. The k-th day of a job keeps its UID, so that a job that is moved is
 * moved there too.
 * @param days by job and time
 */
export function outEvents(days: readonly HeldDay[], edits: readonly PromisedEdit[]): OutEvent[] {
  const counts = new Map<string, number>();
  const held = days.map((day): OutEvent => {
    const number = (counts.get(day.jobId) ?? 0) + 1;
    counts.set(day.jobId, number);
    const { call, wrap, zone, callAt, wrapAt } = day;
    return {
      uid: `${day.jobId}-${number}${OWN_UID}`,
      ...marked(day.inked, day.title),
      place: day.place,
      note: `${kindWords[day.kind]}, call ${call.slice(11)}, wrap ${wrap.slice(11)}.`,
      when: { from: call, to: wrap, zone, fromAt: callAt, toAt: wrapAt },
    };
  });
  const due = edits.map(({ id, title, what, due: date, inked }): OutEvent => ({
    uid: `${id}${OWN_UID}`,
    ...marked(inked, `Due: ${what}`),
    place: '',
    note: title,
    when: { date },
  }));
  return [...held, ...due];
}

/** Many programs do not show that an event is tentative, so its title says so too. */
function marked(inked: boolean, title: string): Pick<OutEvent, 'status' | 'title'> {
  return inked ? { status: 'CONFIRMED', title } : { status: 'TENTATIVE', title: `Pencil: ${title}` };
}

const kindWords: Readonly<Record<DayKind, string>> = {
  shoot: 'Shoot day',
  half: 'Half day',
  travel: 'Travel day',
  prep: 'Prep day',
  standby: 'Standby day',
  edit: 'Edit day',
};

/**
 * What changed against what stands written: each with its sequence raised (RFC 5545 3.8.7.4), what is gone as cancelled.
 * @param now epoch milliseconds
 */
export function outChanges(before: readonly Written[], wanted: readonly OutEvent[], now: number): Written[] {
  const known = new Map(before.map((event) => [event.uid, event]));
  const wantedUids = new Set(wanted.map(({ uid }) => uid));
  const changed = wanted.flatMap((event): Written[] => {
    const old = known.get(event.uid);
    if (!old) return [{ ...event, sequence: 0, changedAt: now }];
    return isSame(old, event) ? [] : [{ ...event, sequence: old.sequence + 1, changedAt: now }];
  });
  const gone = before
    .filter((event) => event.status !== 'CANCELLED' && !wantedUids.has(event.uid) && stillWritten(event, now))
    .map((event): Written => ({ ...event, status: 'CANCELLED', sequence: event.sequence + 1, changedAt: now }));
  return [...changed, ...gone];
}

/** As far as it concerns whoever reads the file: a rebuilt instant of the same wall time is the same. */
function isSame(a: OutEvent, b: OutEvent): boolean {
  const shown = ({ uid, status, title, place, note, when }: OutEvent): string =>
    JSON.stringify([uid, status, title, place, note, 'date' in when ? when.date : [when.from, when.to, when.zone]]);
  return shown(a) === shown(b);
}

/** What is old enough is left out of the file. `now` in epoch milliseconds. */
export function stillWritten({ when }: OutEvent, now: number): boolean {
  const end = 'date' in when ? Temporal.PlainDate.from(when.date).toZonedDateTime('UTC').epochMilliseconds : when.toAt;
  return end > now - WRITTEN_FOR;
}
