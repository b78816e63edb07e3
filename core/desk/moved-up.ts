/**
 * When a hold ends, the pencils behind it move up: what the Desk says of it.
 */
import type { DeskLine } from '../contract/desk.ts';
import type { BookJob } from '../fit/book.ts';
import type { Ground } from '../fit/moves.ts';
import { ranksOf } from '../fit/ranks.ts';
import { instantText } from '../time/read.ts';
import { ranksInWords } from '../words/ranks.ts';
import { whenWords } from './when.ts';

/** A hold that ended at an instant (epoch ms); of a pencil with the order that it stood in, of ink without one. */
export type GoneHold = { id: string; job: BookJob; at: number; how: 'let go' | 'ran out' | 'cancelled' };

type MovedUpInput = {
  /** A live pencil, where it stands now on each of its dates. */
  job: BookJob;
  ranks: readonly { date: string; rank: number }[];
  gone: readonly GoneHold[];
  ground: Ground;
  /** Epoch ms. */
  now: number;
  homeZone: string;
};

/** A line for each hold that this pencil waited behind when it ended, newest first. */
export function movedUp({ job, ranks, gone, ground, now, homeZone }: MovedUpInput): DeskLine[] {
  return gone
    .filter((hold) => hold.job.id !== job.id && waited(job, hold))
    .flatMap((hold) => {
      const before = { ...hold.job, pencilledAt: hold.job.pencilledAt ?? -Infinity };
      const dates = new Set(ranksOf(job, [before], ground).flatMap((rank) => (rank.before.length > 0 ? [rank.date] : [])));
      const standing = ranks.filter(({ date }) => dates.has(date));
      if (standing.length === 0 || job.id === null) return [];
      const when = whenWords(hold.at, homeZone, now);
      return [
        {
          id: `moved-up:${hold.id}:${job.id}`,
          at: instantText(hold.at),
          jobId: job.id,
          sentence: `${job.title} moved up: ${ranksInWords(standing)}.`,
          second: `${hold.job.title} ${endWords[hold.how]} ${when}`,
        },
      ];
    })
    .sort((a, b) => (a.at < b.at ? 1 : -1));
}

const endWords: Record<GoneHold['how'], string> = { 'let go': 'was let go', 'ran out': 'ran out', cancelled: 'was cancelled' };

/** Pencilled before the hold ended, and after it began; whoever is in pencil behind ink waits whenever it was pencilled. */
function waited(job: BookJob, { job: before, at }: GoneHold): boolean {
  return job.pencilledAt !== null && job.pencilledAt < at && (before.pencilledAt === null || before.pencilledAt < job.pencilledAt);
}
