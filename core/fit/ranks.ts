/**
 * Ranks of pencils: for each date, the order of pencilling among live pencils whose stays cannot both be done.
 */
import type { BookJob } from './book.ts';
import { laneOf, overlaps, type StayEntry } from './lane.ts';
import type { Ground } from './moves.ts';
import { reach } from './reach.ts';

export type Rank = { date: string; rank: number; before: BookJob[]; behind: BookJob[] };

/** The ranks of one pencil among others that are live, for each date of its stays. */
export function ranksOf(job: BookJob, pencils: readonly BookJob[], ground: Ground): Rank[] {
  const others = pencils.filter((other) => other.id !== job.id && other.firmness === 'pencil');
  const lane = laneOf({ home: ground.home, jobs: others, ways: [], restMinutes: ground.restMinutes }, job);
  const stays = lane.filter((entry) => entry.kind === 'stay');
  return stays
    .filter((stay) => stay.standing === 'own')
    .flatMap((own) => {
      const rivals = stays.filter((other) => other.standing !== 'own' && !bothCanBeDone(own, other, ground));
      const inOrder = (standing: StayEntry['standing']) => [
        ...new Set(rivals.filter((rival) => rival.standing === standing).map((rival) => rival.job)),
      ];
      return own.stay.days.map(({ date }) => ({
        date,
        rank: inOrder('outranks').length + 1,
        before: inOrder('outranks'),
        behind: inOrder('behind'),
      }));
    })
    .sort((a, b) => (a.date < b.date ? -1 : 1));
}

/** Not at one time, and not with a way between them that even the short estimate does not allow. */
function bothCanBeDone(a: StayEntry, b: StayEntry, ground: Ground): boolean {
  if (overlaps(a, b)) return false;
  const [first, second] = a.startAt < b.startAt ? [a, b] : [b, a];
  const { verdict } = reach(first, second, [], ground);
  return verdict !== 'never' && verdict !== 'doubt';
}

/** Until when a holder is asked for a yes or no: so many hours from now, never past door-out. Epoch ms. */
export function challengeUntil(now: number, hours: number, doorOutAt: number): number {
  return Math.floor(Math.min(now + hours * 3_600_000, doorOutAt) / 60_000) * 60_000;
}
