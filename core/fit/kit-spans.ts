/**
 * When the kit of a job is away: from packing before it leaves home, or before a call at home, to being back. Where one comes home between
 * two stays the kit does too; a day of editing needs none.
 */
import type { Place } from '../contract/parts.ts';
import { staysOf } from '../trips/stays.ts';
import type { BookJob } from './book.ts';
import { PACK_BEFORE, type KitSpan } from './kit.ts';
import type { Move } from './moves.ts';

type Away = { from: number; to: number; fromHome: boolean; toHome: boolean };

/** @param moves of the job, as they are planned */
export function kitSpans(job: BookJob, moves: readonly Move[], home: Place): KitSpan[] {
  const stays = staysOf(job.days);
  const atHome = job.place.key === home.key;
  const away = stays.map(({ startAt, endAt }, index): Away => {
    const before = startingIn(moves, stays[index - 1]?.endAt ?? -Infinity, startAt);
    const after = startingIn(moves, endAt, stays[index + 1]?.startAt ?? Infinity);
    const outward = before.findLast(({ from }) => from.key === home.key) ?? (index === 0 ? before[0] : undefined);
    const homeward = after.find(({ to }) => to.key === home.key) ?? (index === stays.length - 1 ? after.at(-1) : undefined);
    return {
      from: Math.min(outward?.start ?? Infinity, startAt),
      to: Math.max(homeward?.end ?? -Infinity, endAt),
      fromHome: atHome || outward !== undefined,
      toHome: atHome || homeward !== undefined,
    };
  });
  const spans: KitSpan[] = [];
  for (const [index, { from, to, fromHome }] of away.entries()) {
    const before = spans.at(-1);
    if (before && !(fromHome && away[index - 1]?.toHome)) before.backAt = Math.max(before.backAt, to);
    else spans.push({ packAt: from - PACK_BEFORE, backAt: to });
  }
  return withTravelDays(spans, job);
}

function startingIn(moves: readonly Move[], from: number, to: number): Move[] {
  return moves.filter((move) => move.start >= from && move.start < to).sort((a, b) => a.start - b.start);
}

/** A paid travel day at either end is on the way. */
function withTravelDays(spans: KitSpan[], { days }: BookJob): KitSpan[] {
  const travel = days.filter(({ kind }) => kind === 'travel');
  const first = spans[0];
  const last = spans.at(-1);
  if (first) first.packAt = Math.min(first.packAt, ...travel.map(({ callAt }) => callAt - PACK_BEFORE));
  if (last) last.backAt = Math.max(last.backAt, ...travel.map(({ wrapAt }) => wrapAt));
  return spans;
}
