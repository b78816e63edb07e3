/**
 * Part 1 of the check: the candidate's stays against everything that stands at the same time.
 */
import type { Finding, Lift } from '../contract/fit.ts';
import type { Place } from '../contract/parts.ts';
import { daysOnSite, staysOf } from '../trips/stays.ts';
import { lengthInWords } from '../words/amounts.ts';
import { momentAt, spanAt } from '../words/moments.ts';
import type { BookDay, BookJob } from './book.ts';
import { concerning, softened } from './findings.ts';
import { giveUpTicket, handLift, moveDay, secondPencil } from './lifts.ts';
import { overlaps, standingOf, type LaneEntry, type StayEntry, type TicketEntry } from './lane.ts';

const MINUTE = 60_000;

/** Overlaps of stays with stays, and of stays and tickets with tickets. */
export function overlapFindings(lane: readonly LaneEntry[], home: Place): Finding[] {
  const own = lane.filter((entry) => entry.standing === 'own');
  const others = lane.filter((entry) => entry.standing !== 'own');
  const overOthers = own.flatMap((mine) =>
    others
      .filter((other) => overlaps(mine, other) && !sameMovement(mine, other))
      .map((other) => (mine.kind === 'stay' && other.kind === 'stay' ? stayOverStay(mine, other, home) : overTicket(mine, other, home))),
  );
  return [...overOthers, ...ownTickets(own, home)];
}

/** Tickets of the candidate on its own paid days. Between two of its days one may well be moved, and a travel day is the movement itself. */
function ownTickets(own: readonly LaneEntry[], home: Place): Finding[] {
  const paid = own
    .filter((entry) => entry.kind === 'stay')
    .flatMap((entry) => daysOnSite(entry.stay.days).map((day): StayEntry => ({ ...entry, startAt: day.callAt, endAt: day.wrapAt })));
  const tickets = own.filter((entry) => entry.kind === 'ticket');
  return paid.flatMap((day) => tickets.filter((ticket) => overlaps(day, ticket)).map((ticket) => overTicket(day, ticket, home)));
}

function stayOverStay(own: StayEntry, other: StayEntry, home: Place): Finding {
  const minutes = common(own, other);
  const firmness =
    other.job.firmness === 'ink' ? 'in ink' : other.standing === 'behind' ? 'in pencil, behind this one' : 'in pencil, before this one';
  const lifts: Finding['lifts'] = [{ kind: 'other dates', label: 'Look for the nearest dates that work' }];
  if (other.standing === 'outranks')
    lifts.unshift(secondPencil(other.job), ...(other.job.id === null ? [] : [challenge(other.job.id, other.job.title)]));
  lifts.push(handLift(own.stay.days));
  return {
    kind: 'overlap',
    hardness: softened('blocks', other.standing),
    concerns: concerning(other.job),
    numbers: { overlap: minutes },
    sentence: `${other.job.title} ${firmness}: ${other.from.name}, ${spanAt(other.startAt, other.endAt, other.from, home)}, ${lengthInWords(minutes)} at the same time.`,
    lifts,
  };
}

/** One ticket that stands in two jobs is one movement. */
function sameMovement(a: LaneEntry, b: LaneEntry): boolean {
  if (a.kind !== 'ticket' || b.kind !== 'ticket') return false;
  return a.leg.departAt === b.leg.departAt && a.from.key === b.from.key && a.to.key === b.to.key;
}

function overTicket(own: LaneEntry, other: LaneEntry, home: Place): Finding {
  const [ticket, over] = (own.kind === 'ticket' ? [own, other] : [other, own]) as [TicketEntry, LaneEntry];
  const minutes = common(own, other);
  const cost = ticket.leg.cost === '' ? '' : ` Giving it up costs ${ticket.leg.cost}.`;
  return {
    kind: 'ticket',
    hardness: softened('settle', other.standing),
    concerns: concerning(other.job),
    numbers: { overlap: minutes, ...(ticket.leg.cost === '' ? {} : { cost: ticket.leg.cost }) },
    sentence: `${called(ticket)} from ${ticket.from.name} to ${ticket.to.name}${ticket.standing === 'own' ? '' : ` for ${ticket.job.title}`} leaves on ${momentAt(ticket.leg.departAt, ticket.from, home)}: with the time before and after it, it takes ${lengthInWords(minutes)} of ${what(over)}.${cost}`,
    lifts: [ticket, over].filter((entry) => entry.kind === 'ticket').map(giveUpTicket),
  };
}

function called({ standing, leg }: TicketEntry): string {
  return `${standing === 'own' ? 'Your' : 'The'} ${leg.mode}`;
}

function what(entry: LaneEntry): string {
  if (entry.kind === 'ticket') return `the ${entry.leg.mode} for ${entry.job.title}`;
  return entry.standing === 'own' ? 'your days' : entry.job.title;
}

/**
 * Travel and edit dates make no stay, but two things cannot be done in the same hours: they must be moved.
 */
export function movableFindings(lane: readonly LaneEntry[], candidate: BookJob, others: readonly BookJob[], home: Place): Finding[] {
  const stays = lane.filter((entry) => entry.kind === 'stay');
  const ofCandidate = movableDays(candidate).flatMap((day) =>
    stays
      .filter((stay) => stay.standing !== 'own' && overlaps(span(day), stay))
      .map((stay) => movable(day, candidate, stay, stay, stays, home)),
  );
  const ofOthers = others.flatMap((job) =>
    movableDays(job).flatMap((day) =>
      stays
        .filter((stay) => stay.standing === 'own' && overlaps(span(day), stay))
        .map((stay) => movable(day, job, stay, { standing: standingOf(job, candidate) }, stays, home)),
    ),
  );
  return [...ofCandidate, ...ofOthers];
}

function challenge(jobId: string, title: string): Lift {
  return { kind: 'challenge', label: `Ask ${title} for a yes or no within 24 h`, jobId, tryOn: { withoutJobs: [jobId] } };
}

function movable(
  day: BookDay,
  job: BookJob,
  stay: StayEntry,
  standing: Pick<StayEntry, 'standing'>,
  stays: readonly StayEntry[],
  home: Place,
): Finding {
  const minutes = common(span(day), stay);
  const other = stay.standing === 'own' ? job : stay.job;
  return {
    kind: `${day.kind} day`,
    hardness: softened('settle', standing.standing),
    concerns: concerning(other),
    numbers: { overlap: minutes },
    sentence: `${stay.standing === 'own' ? `The ${day.kind} day of ${job.title}` : `Your ${day.kind} day`} on ${spanAt(day.callAt, day.wrapAt, job.place, home)} falls on ${what(stay)} for ${lengthInWords(minutes)}: it must be moved.`,
    lifts: moveDay(day, job, stay.standing === 'own' ? job.id : null, stays),
  };
}

/** Days that make no stay. */
function movableDays({ days }: BookJob): BookDay[] {
  const staying = new Set(staysOf(days).flatMap((stay) => stay.days));
  return days.filter((day) => !staying.has(day));
}

function span(day: BookDay): { startAt: number; endAt: number } {
  return { startAt: day.callAt, endAt: day.wrapAt };
}

function common(a: { startAt: number; endAt: number }, b: { startAt: number; endAt: number }): number {
  return Math.ceil((Math.min(a.endAt, b.endAt) - Math.max(a.startAt, b.startAt)) / MINUTE);
}
