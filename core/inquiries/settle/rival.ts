/**
 * A nearer day with words of the work beside a date that has none: which of them is meant is asked.
 */
import { askedDays, within } from './days-among.ts';
import type { DateMention, EventDays } from './scene.ts';

/** "The show is tomorrow ... 3 June": a date of no word for the work does not outweigh a nearer one that has one. */
export function rivalOf(main: readonly DateMention[], nearer: readonly DateMention[]): EventDays | undefined {
  if (main.some(({ said }) => said === 'event')) return undefined;
  const told = nearer.filter(
    ({ said, readings, doubt }) =>
      (said === 'event' || said === 'show') &&
      readings.length === 1 &&
      !doubt &&
      !main.some((mention) =>
        mention.readings.some((reading) => within(readings[0] ?? [], reading) || aboutThen(readings[0] ?? [], reading)),
      ),
  );
  if (told.length === 0) return undefined;
  return askedDays(
    [...told],
    [...told, ...main].flatMap(({ readings }) => readings),
  );
}

/** "in two weeks, Saturday 13 February": weeks are counted roughly. */
const aboutThen = ([near]: readonly string[], [date]: readonly string[]): boolean =>
  near !== undefined && date !== undefined && Math.abs(Temporal.PlainDate.from(near).until(date).days) <= ROUGHLY;
const ROUGHLY = 3;
