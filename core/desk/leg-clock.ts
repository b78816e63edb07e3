/**
 * A ticket that was moved or cancelled stands on the Desk while that breaks something, until it leaves.
 */
import type { Clock } from '../contract/desk.ts';
import type { Leg } from '../contract/trips.ts';
import { newsInWords } from '../trips/news.ts';
import { instantText } from '../time/read.ts';

/**
 * @param broken sentences of what is broken now and was not with the ticket as it was bought
 * @param leavesAt departure as it is now, epoch ms; of a cancelled leg that of its ticket
 * @returns null where nothing is broken
 */
export function legClock({
  leg,
  job,
  broken,
  leavesAt,
  now,
}: {
  leg: Leg;
  job: { id: string; version: number; title: string };
  broken: readonly string[];
  leavesAt: number;
  now: number;
}): Clock | null {
  const [first, ...more] = broken;
  if (!leg.news || first === undefined) return null;
  const others = more.length === 0 ? '' : ` And ${more.length} more.`;
  return {
    id: `leg:${leg.id}`,
    kind: 'leg',
    at: instantText(leavesAt),
    late: leavesAt <= now,
    jobId: job.id,
    jobVersion: job.version,
    sentence: newsInWords(leg, leg.news),
    second: `${first}${others} ${job.title}`,
    action: 'leg',
  };
}
