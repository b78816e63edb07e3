/**
 * Where things are at a moment: out with a job in ink from packing until home again, in service, or at home.
 */
import type { Book, BookJob } from '../fit/book.ts';
import { PACK_BEFORE } from '../fit/kit.ts';
import { planTrip } from '../trips/plan.ts';

type Outing = { jobId: string; title: string; count: number; untilAt: number };
export type Standing = { id: string; home: number; out: Outing[]; service: { count: number; endAt: number }[] };

/** Every thing of the book at `now` (epoch ms). Pencils take nothing out of the house. */
export function whereabouts(book: Book, now: number): Standing[] {
  const away = book.jobs.flatMap((job) => outNow(job, book, now));
  return (book.kit ?? []).map((item) => {
    const out = away.flatMap(({ job, untilAt }) => {
      const count = (job.kit ?? []).filter((need) => need.item === item.id).reduce((sum, need) => sum + need.count, 0);
      return count > 0 && job.id !== null ? [{ jobId: job.id, title: job.title, count, untilAt }] : [];
    });
    const service = item.services
      .filter(({ startAt, endAt }) => startAt <= now && now < endAt)
      .map(({ count, endAt }) => ({ count, endAt }));
    const gone = [...out, ...service].reduce((sum, { count }) => sum + count, 0);
    return { id: item.id, home: Math.max(0, item.owned - gone), out, service };
  });
}

function outNow(job: BookJob, book: Book, now: number): { job: BookJob; untilAt: number }[] {
  if (job.firmness !== 'ink' || job.days.length === 0) return [];
  const { home, ways, restMinutes } = book;
  const { doorOutAt, doorInAt } = planTrip({ home, place: job.place, days: job.days, ways, restMinutes, tickets: job.legs ?? [] });
  return doorOutAt - PACK_BEFORE <= now && now < doorInAt ? [{ job, untilAt: doorInAt }] : [];
}
