/**
 * Of several hours mine: the first call and the last wrap where others come and go at hours of their own.
 */
import { ownerOf } from './owner.ts';
import { compare, type Calls, type Point } from './points.ts';
import type { Scene, Where } from './scene.ts';
import { wallOf } from './walls.ts';

/** The earliest hour; where others are told to come then and I later, mine; asked where an earlier one is nobody's in particular. */
export function firstOfMine(scene: Scene, ordered: readonly Point[], answer: Calls): Point | undefined {
  const [earliest] = ordered;
  if (!earliest) return undefined;
  const owner = (point: Point): 'mine' | 'theirs' | undefined => (point.where[0] ? ownerOf(scene.text, point.where[0]) : undefined);
  const mine = ordered.find((point) => point.date.equals(earliest.date) && owner(point) === 'mine');
  if (owner(earliest) === 'theirs' && mine) return mine;
  if (owner(earliest) === 'theirs') {
    answer.callChoices ??= { walls: [wallOf(earliest.date, earliest.minutes)], where: earliest.where[0] as Where, why: 'day' };
    return earliest;
  }
  if (!mine || mine.minutes === earliest.minutes || owner(earliest) === 'mine') return earliest;
  answer.callChoices ??= {
    walls: [earliest, mine].map((point) => wallOf(point.date, point.minutes)),
    where: mine.where[0] as Where,
    why: 'day',
  };
  return earliest;
}

/** The latest hour; where I may go before it, mine. */
export function lastOfMine(scene: Scene, wraps: readonly Point[]): Point | undefined {
  const [latest, ...others] = wraps.toSorted((a, b) => compare(b, a));
  if (!latest) return undefined;
  const owner = (point: Point): 'mine' | 'theirs' | undefined => (point.where[0] ? ownerOf(scene.text, point.where[0]) : undefined);
  if (owner(latest) === 'mine') return latest;
  return (
    others.find((point) => point.date.equals(latest.date) && owner(point) === 'mine') ?? (owner(latest) === 'theirs' ? undefined : latest)
  );
}
