import type { TryOn } from '../../../core/contract/try-on.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import { wallLater } from '../../../core/time/wall.ts';
import type { FactChanges } from './change-job.ts';

/** The days as they are once the client agreed to a later first call or an earlier last wrap; null when neither was tried on or a day would vanish. */
export function agreedChanges(job: Job, tryOn: TryOn): FactChanges | null {
  const later = tryOn.firstCallLaterMinutes ?? 0;
  const earlier = tryOn.lastWrapEarlierMinutes ?? 0;
  if (later === 0 && earlier === 0) return null;
  const days = job.days.map((day, at) => {
    const call = at === 0 ? wallLater(day.call, later) : day.call;
    const wrap = at === job.days.length - 1 ? wallLater(day.wrap, -earlier) : day.wrap;
    return { ...day, date: call.slice(0, 10), call, wrap };
  });
  return days.every((day) => day.call < day.wrap) ? { days } : null;
}
