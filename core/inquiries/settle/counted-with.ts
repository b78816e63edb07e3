/**
 * "A two-day booking: rehearsal on Tuesday the 9th, the show on Wednesday the 10th": one day was settled and more are counted, which the other dates
 * of the message make up.
 */
import { askedDays, OF_ELSE, union } from './days-among.ts';
import { daysSaid, ofOccasion } from './days.ts';
import type { EventDays, Scene } from './scene.ts';

/** The day that was settled with those that the count adds; as a question where they are not as many, or are the days of an occasion. */
export function heldAgainstCount({ text, dates }: Scene, event: EventDays): EventDays {
  if (event.dates.length !== 1 || event.dropped || event.counted) return event;
  const said = daysSaid(text).filter(({ days }) => days > 1);
  const [first] = said;
  if (!first || said.some(({ days }) => days !== first.days)) return event;
  const others = dates.filter(
    ({ explicit, past, by, said: of, readings }) => explicit && !past && !by && !OF_ELSE.has(of) && readings.length === 1,
  );
  const all = union(event.dates, ...others.flatMap(({ readings }) => readings));
  if (all.length === 1) return event;
  const where = [...event.where, ...others.filter(({ start }) => event.where.every((one) => one.start !== start))];
  return all.length === first.days && !ofOccasion(text, first) ? { dates: all, where, choices: [] } : askedDays(where, [event.dates, all]);
}
