/**
 * What a chosen answer to an open question changes in the facts of a job.
 */
import type { Question } from '../contract/inquiries.ts';
import { Budget } from '../contract/inquiries.ts';
import { JobFacts } from '../contract/jobs.ts';
import type { JobDay } from '../contract/jobs.ts';
import { DateText, Place, Role, WallTime } from '../contract/parts.ts';
import { z } from 'zod';
import { dateLater, wallLater } from '../time/wall.ts';
import { instantOf, instantText, WallTimeError } from '../time/read.ts';

type Facts = z.infer<typeof JobFacts>;

/**
 * The changes that an answer means, or null where it must be typed by hand; a reply-by that the home clock skips or shows twice is such a one.
 * @param facts with the questions that are still open: a day whose wrap is among them keeps its length when its call moves
 * @param value the choice's value, as the question carries it
 * @param homeZone zone of a reply-by
 */
export function chosenChanges(
  facts: Facts & { questions?: readonly Question[] },
  field: Question['field'],
  value: unknown,
  homeZone: string,
): Partial<Facts> | null {
  switch (field) {
    case 'role':
      return taken(Role, value, (role) => ({ role }));
    case 'budget':
      return taken(Budget, value, (budget) => ({ budget }));
    case 'place':
      return taken(Place, value, (place) => ({ place }));
    case 'organisation':
      return typeof value === 'string' ? { organisation: value } : null;
    case 'contactName':
      return typeof value === 'string' ? { contact: { ...facts.contact, name: value } } : null;
    case 'contactEmail':
      return typeof value === 'string' ? { contact: { ...facts.contact, email: value } } : null;
    case 'contactPhone':
      return typeof value === 'string' ? { contact: { ...facts.contact, phone: value } } : null;
    case 'replyBy':
      return taken(WallTime, value, (wall) => replyByAt(wall, homeZone));
    case 'firstCall':
      return withDays(
        facts,
        taken(WallTime, value, (call) =>
          firstCallAt(facts.days, call, facts.questions?.some((open) => open.field === 'lastWrap') ?? false),
        ),
      );
    case 'lastWrap':
      return withDays(
        facts,
        taken(WallTime, value, (wrap) => facts.days.map((day, at) => (at === facts.days.length - 1 ? { ...day, wrap } : day))),
      );
    case 'start':
      return withDays(
        facts,
        taken(DateText, value, (date) => movedTo(facts.days, date)),
      );
    case 'end':
      return withDays(
        facts,
        taken(DateText, value, (date) => endingOn(facts.days, date)),
      );
    default:
      return null;
  }
}

/** The days behind a choice of first day: all of them, or the one day that older questions carry; undefined for anything else. */
export function daysBehind(value: unknown): string[] | undefined {
  const days = z
    .array(DateText)
    .min(1)
    .safeParse(typeof value === 'string' ? [value] : value);
  return days.success ? days.data : undefined;
}

function taken<T, R>(schema: z.ZodType<T>, value: unknown, use: (value: T) => R | null): R | null {
  const read = schema.safeParse(value);
  return read.success ? use(read.data) : null;
}

function replyByAt(wall: string, zone: string): Partial<Facts> | null {
  try {
    return { replyBy: { wall, zone, at: instantText(instantOf(wall, zone).epochMilliseconds) } };
  } catch (error) {
    if (error instanceof WallTimeError) return null;
    throw error;
  }
}

const withDays = (facts: Facts, days: JobDay[] | null): Partial<Facts> | null => (days && facts.days.length > 0 ? { days } : null);

const daysBetween = (from: string, to: string): number => Temporal.PlainDate.from(from).until(to, { largestUnit: 'day' }).days;
const moved = (wall: string, days: number): string => `${dateLater(wall.slice(0, 10), days)}${wall.slice(10)}`;
const shifted = (day: JobDay, days: number): JobDay => ({
  ...day,
  date: dateLater(day.date, days),
  call: moved(day.call, days),
  wrap: moved(day.wrap, days),
});

/** The first day begins at this call; its wrap stays, unless it is not known or lies before the call: then the day keeps its length. */
function firstCallAt([first, ...rest]: readonly JobDay[], call: string, wrapOpen: boolean): JobDay[] {
  if (!first) return [];
  const length = Temporal.PlainDateTime.from(first.call).until(first.wrap).total('minutes');
  return [
    { ...first, date: call.slice(0, 10), call, wrap: wrapOpen || first.wrap <= call ? wallLater(call, length) : first.wrap },
    ...rest,
  ];
}

/** All days moved so that the first is on this date. */
function movedTo(days: readonly JobDay[], date: string): JobDay[] {
  const first = days[0];
  return first ? days.map((day) => shifted(day, daysBetween(first.date, date))) : [];
}

/** Days up to this date: the later ones left out, missing ones like the last. */
function endingOn(days: readonly JobDay[], date: string): JobDay[] {
  const kept = days.filter((day) => day.date <= date);
  const last = kept.at(-1);
  if (!last) return [...days];
  const missing = daysBetween(last.date, date);
  return [...kept, ...Array.from({ length: missing }, (_, index) => shifted(last, index + 1))];
}
