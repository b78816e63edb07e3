/**
 * The trip as a quote takes it: a plan from home to home, or home every night where the way is short.
 */
import type { Mode } from '../contract/trips.ts';
import type { BookDay } from '../fit/book.ts';
import { wallAt } from '../time/read.ts';
import type { DrivenLeg } from '../trips/driven.ts';
import type { Ticketed, TripPlan } from '../trips/plan.ts';
import type { WaySource } from '../trips/ways.ts';

/**
 * One way, with the date on which it is left for: at home on the way out, at the place on the way back.
 * By tickets only the way between home and them is driven.
 */
export type QuotedLeg = { name: 'out' | 'back'; date: string; ticketed?: Ticketed };
/**
 * A plan with what it is made by and each of its ways; `nights` and `hoursAway` leave out what is spent at home.
 * Its source is that of the way that is known least.
 */
export type QuotedTrip = Omit<TripPlan, 'source' | 'tickets'> & {
  source: WaySource | 'ticketed';
  mode: Mode;
  legs: QuotedLeg[];
  /** Drives as they were driven; they are charged in place of the ways that they stand for. */
  driven?: readonly DrivenLeg[];
};

export type TripFacts = { plan: TripPlan; mode: Mode; days: readonly BookDay[]; homeZone: string; placeZone: string; restMinutes: number };

const MINUTE = 60_000;
const dateAt = (at: number, zone: string): string => wallAt(at, zone).slice(0, 10);
/** Common practice: up to an hour each way one goes home for the night. */
const SHORT_WAY_MINUTES = 60;

/** The trip of a quote from the plan of the way. */
export function quotedTrip(facts: TripFacts): QuotedTrip {
  const { mode, homeZone, placeZone } = facts;
  const { tickets, ...plan } = facts.plan;
  const source = sourceOf(facts.plan);
  const days = facts.days.filter((day) => day.kind !== 'edit').toSorted((a, b) => a.callAt - b.callAt);
  if (!homeEveryNight(facts, days)) {
    const out: QuotedLeg = { name: 'out', date: dateAt(plan.doorOutAt, homeZone), ...ticketedBy(tickets.out) };
    const back: QuotedLeg = {
      name: 'back',
      date: dateAt(plan.doorInAt - plan.backMinutes * MINUTE, placeZone),
      ...ticketedBy(tickets.back),
    };
    return { ...plan, source, mode, legs: plan.away ? [out, back] : [] };
  }
  const legs = days.flatMap((day): QuotedLeg[] => [
    { name: 'out', date: dateAt(day.callAt - plan.outMinutes * MINUTE, homeZone) },
    { name: 'back', date: dateAt(day.wrapAt, placeZone) },
  ]);
  const minutes = days.reduce((sum, day) => sum + (day.wrapAt - day.callAt) / MINUTE + plan.outMinutes + plan.backMinutes, 0);
  return { ...plan, source, mode, legs, nights: 0, hoursAway: minutes / 60 };
}

function ticketedBy(ticketed: Ticketed | null): Pick<QuotedLeg, 'ticketed'> {
  return ticketed ? { ticketed } : {};
}

/** Of the two halves the one that is known least: an estimate, else what was typed, else tickets. */
function sourceOf({ source, tickets: { out, back } }: TripPlan): QuotedTrip['source'] {
  const all = [out, back].flatMap((half) => (half ? [half.toHome.source] : [source]));
  if (all.includes('estimated')) return 'estimated';
  if (!out && !back) return source;
  return out && back ? 'ticketed' : 'typed';
}

/** Several dates, a short way, and time enough between them for both ways and the rest that I ask for. */
function homeEveryNight({ plan, mode, restMinutes }: TripFacts, days: readonly BookDay[]): boolean {
  const short = Math.max(plan.outMinutes, plan.backMinutes) <= SHORT_WAY_MINUTES;
  if (plan.tickets.out || plan.tickets.back) return false;
  if (!plan.away || mode !== 'drive' || !short || days.length < 2) return false;
  const needed = (plan.outMinutes + plan.backMinutes + restMinutes) * MINUTE;
  return days.every((day, order) => {
    const next = days[order + 1];
    return !next || next.callAt - day.wrapAt >= needed;
  });
}
