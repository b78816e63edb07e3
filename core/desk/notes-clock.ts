/**
 * Notes that are awaited: a clock until they come, late once the client's window is over. Further rounds: a clock until they are billed. A running
 * clock that may have been forgotten: until it is stopped.
 */
import type { Clock } from '../contract/desk.ts';
import { amountOfFurther, type FurtherRound } from '../deliverables/further-round.ts';
import { businessDaysLate, dateMoved, windowEnds, type RoundCalendars } from '../deliverables/rounds.ts';
import { formatMoney } from '../money/format.ts';
import { instantText } from '../time/read.ts';
import { countInWords } from '../words/amounts.ts';
import { dateInWords, withoutYear } from '../words/dates.ts';
import { whenWords } from './when.ts';

export type AwaitedNotes = {
  id: string;
  job: { id: string; version: number; title: string };
  /** Of the deliverable, and its due date at home; null where none is known. */
  name: string;
  due: string | null;
  cut: string;
  /** Epoch milliseconds. */
  sentAt: number;
  dueBack: string;
};

/** @param now epoch milliseconds */
export function notesClock({ id, job, name, due, cut, sentAt, dueBack }: AwaitedNotes, calendars: RoundCalendars, now: number): Clock {
  const { zone } = calendars;
  const at = windowEnds(dueBack, zone);
  const late = at <= now;
  const lost = businessDaysLate(dueBack, now, calendars);
  const move =
    lost > 0 && due !== null
      ? `; if they come today, its date moves from ${withoutYear(dateInWords(due))} to ${dateInWords(dateMoved(due, lost, calendars))}`
      : '';
  const overdue = lost > 0 ? `overdue by ${countInWords(lost, 'business day')}` : 'overdue';
  return {
    id: `notes:${id}`,
    kind: 'notes',
    at: instantText(at),
    late,
    jobId: job.id,
    jobVersion: job.version,
    sentence: `${name}: notes on the ${cut} ${late ? overdue : `due by ${whenWords(at, zone, now)}`}`,
    second: `sent ${whenWords(sentAt, zone, now)}${move}; ${job.title}`,
    action: 'notes',
  };
}

type UnbilledRound = Pick<FurtherRound, 'id' | 'cut' | 'of' | 'price'> & { job: AwaitedNotes['job']; notesAt: number | null };

/** A further round that came after the bill at wrap. @param now epoch milliseconds */
export function furtherClock({ id, cut, of, price, notesAt, job }: UnbilledRound, now: number, homeZone: string): Clock {
  const at = notesAt ?? now;
  const said = price.state === 'agreed' ? `agreed by ${price.who}` : 'nobody has said yes or no';
  return {
    id: `further:${id}`,
    kind: 'bill',
    at: instantText(at),
    late: at <= now,
    jobId: job.id,
    jobVersion: job.version,
    sentence: `${of}: further round of ${formatMoney(amountOfFurther(price), { code: true })} to bill`,
    second: `notes on the ${cut} came ${whenWords(at, homeZone, now)}; ${said}; ${job.title}`,
    action: 'bill',
  };
}

/** Nobody edits longer than that without a pause: a clock that runs on was forgotten. Common practice. */
const FORGOTTEN_AFTER = 12 * 3_600_000;

type RunningClock = { job: AwaitedNotes['job']; name: string; stage: string; startAt: number };

/** A clock on an edit that has run for half a day; null before. Instants in epoch milliseconds. */
export function forgottenClock({ job, name, stage, startAt }: RunningClock, now: number, homeZone: string): Clock | null {
  const at = startAt + FORGOTTEN_AFTER;
  if (at > now) return null;
  return {
    id: `running:${job.id}`,
    kind: 'hours',
    at: instantText(at),
    late: true,
    jobId: job.id,
    jobVersion: job.version,
    sentence: `${name}: the clock on ${stage} still runs`,
    second: `started ${whenWords(startAt, homeZone, now)}; stop it at the moment when the work ended; ${job.title}`,
    action: 'open',
  };
}
