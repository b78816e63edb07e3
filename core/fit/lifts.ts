/**
 * Lifts that more than one kind of finding offers. Each can be tried on.
 */
import type { Lift } from '../contract/fit.ts';
import type { Place } from '../contract/parts.ts';
import type { LegFields } from '../contract/trips.ts';
import { instantText, wallAt } from '../time/read.ts';
import { dateLater } from '../time/wall.ts';
import { placedLeg } from '../trips/legs.ts';
import { dateInWords, withoutYear } from '../words/dates.ts';
import { clockAt, momentAt } from '../words/moments.ts';
import type { BookDay, BookJob } from './book.ts';
import { dayMovedTo } from './day-changes.ts';
import { overlaps, type StayEntry, type TicketEntry } from './lane.ts';

const MINUTE = 60_000;
/** A day is moved by no more than two weeks. */
const FARTHEST = 14;

export function secondPencil({ title }: BookJob): Lift {
  return { kind: 'second pencil', label: `Take it as second pencil behind ${title}`, tryOn: { asSecondPencil: true } };
}

/**
 * A first call that is asked for later: on the same day, or on the day at which the stay would begin then; nothing where no day is left for it.
 * @param callAt epoch ms
 */
export function laterCall(own: StayEntry, callAt: number, home: Place): Lift[] {
  // Whoever is there before the call needs no later one.
  if (callAt <= own.startAt) return [];
  const begins = own.job.days.filter((day) => day.callAt >= own.startAt && day.wrapAt > callAt).sort((a, b) => a.callAt - b.callAt)[0];
  if (!begins) return [];
  const sameDay = begins.date === own.stay.days[0]?.date;
  const at = Math.max(callAt, begins.callAt);
  const label = sameDay ? `Ask for the first call at ${clockAt(at, own.from, home)}` : `Ask to begin on ${momentAt(at, own.from, home)}`;
  return [{ kind: 'later call', label, tryOn: { firstCallLaterMinutes: Math.round((callAt - own.startAt) / MINUTE) } }];
}

/** A hand for these days; who could be asked is filled in where hands are known. */
export function handLift(days: readonly { date: string }[]): Lift {
  return { kind: 'hand', label: 'Ask a hand to cover it', dates: [...new Set(days.map(({ date }) => date))].sort() };
}

export function giveUpTicket({ job, leg }: TicketEntry): Lift {
  const key = { fromKey: leg.from.key, toKey: leg.to.key, departAt: instantText(leg.departAt) };
  const cost = leg.cost === '' ? '' : ` (${leg.cost})`;
  return {
    kind: 'give up ticket',
    label: `Change or give up the ${leg.mode} ${leg.from.name} to ${leg.to.name}${cost}`,
    tryOn: { withoutTickets: [key] },
    ...(job.id === null ? {} : { jobId: job.id }),
  };
}

/**
 * A travel or edit day moved to the nearest date on which it falls on no stay: edits later if they can be, since what is edited is filmed first;
 * travel towards the side of its job's stays on which it lies.
 * @param jobId the job on the books whose day it is, null for the candidate's
 */
export function moveDay(day: BookDay, job: BookJob, jobId: string | null, stays: readonly StayEntry[]): Lift[] {
  const before = job.days.some((other) => other.callAt > day.callAt && other.kind !== day.kind);
  const sides = day.kind === 'travel' && before ? [-1] : day.kind === 'travel' ? [1] : [1, -1];
  const taken = job.days.filter((other) => other !== day);
  for (const side of sides) {
    for (let distance = 1; distance <= FARTHEST; distance += 1) {
      const moved = dayMovedTo(day, dateLater(day.date, side * distance), job.place.zone);
      if (!moved) continue;
      const span = { startAt: moved.callAt, endAt: moved.wrapAt };
      if (stays.some((stay) => overlaps(stay, span)) || taken.some((other) => other.date === moved.date)) continue;
      const change = { jobId, date: day.date, kind: day.kind, to: moved.date };
      const whose = jobId === null ? '' : ` of ${job.title}`;
      return [
        {
          kind: 'move day',
          label: `Move the ${day.kind} day${whose} to ${withoutYear(dateInWords(moved.date))}`,
          tryOn: { daysMoved: [change] },
          ...(jobId === null ? {} : { jobId }),
        },
      ];
    }
  }
  return [];
}

/** A movement as if it were on the trip; nothing where a clock skips its times or shows them twice. Epoch ms. */
export function legAsIf(mode: LegFields['mode'], from: Place, to: Place, departAt: number, arriveAt: number): LegFields[] {
  const depart = wallAt(departAt, from.zone);
  const arrive = wallAt(arriveAt, to.zone);
  const around = mode === 'flight' ? { before: null, after: null } : { before: 0, after: 0 };
  const fields: LegFields = { mode, from, to, depart, arrive, source: 'ticketed', ...around, berth: false, cost: '', note: '' };
  return typeof placedLeg(fields) === 'string' ? [] : [fields];
}
