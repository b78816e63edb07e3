/**
 * Drives as they were driven: legs of a job whose distance was typed. They stand in place of the way that was planned or estimated.
 */
import type { Place } from '../contract/parts.ts';
import type { BookDay } from '../fit/book.ts';
import { wallAt } from '../time/read.ts';
import type { PlacedLeg } from './legs.ts';

/** Which part of the trip a drive is of: the way out, the way back, or one at the place. */
type Half = 'out' | 'back' | 'local';
/** `date` is that of leaving, on the clock of where it left from; `distance` is an exact decimal in `unit`. */
export type DrivenLeg = { half: Half; date: string; from: string; to: string; distance: string; unit: 'mi' | 'km' };

/** @param unit what distances are typed in */
export function drivenLegs(legs: readonly PlacedLeg[], place: Place, days: readonly BookDay[], unit: 'mi' | 'km'): DrivenLeg[] {
  return legs.flatMap((leg) =>
    leg.mode === 'drive' && leg.distance
      ? [
          {
            half: halfOf(leg, place, days),
            date: wallAt(leg.departAt, leg.from.zone).slice(0, 10),
            from: leg.from.name,
            to: leg.to.name,
            distance: leg.distance,
            unit,
          },
        ]
      : [],
  );
}

function halfOf({ from, to, departAt }: PlacedLeg, place: Place, days: readonly BookDay[]): Half {
  if (from.key === to.key) return 'local';
  if (to.key === place.key) return 'out';
  if (from.key === place.key) return 'back';
  if (departAt < Math.min(...days.map(({ callAt }) => callAt))) return 'out';
  return departAt >= Math.max(...days.map(({ wrapAt }) => wrapAt)) ? 'back' : 'local';
}

type PlannedWay = { name: 'out' | 'back'; date: string };

/** The planned ways that no drive stands for: where one is driven every day each date stands for itself, else each half. */
export function stillPlanned<W extends PlannedWay>(ways: readonly W[], driven: readonly DrivenLeg[]): W[] {
  const several = (name: PlannedWay['name']): boolean => ways.filter((way) => way.name === name).length > 1;
  return ways.filter(({ name, date }) => !driven.some((leg) => leg.half === name && (!several(name) || leg.date === date)));
}
