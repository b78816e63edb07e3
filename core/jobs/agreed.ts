/**
 * What a written yes fixes: the dates and what is done on them, the role and the budget. Calls, wraps and the rest may still be corrected.
 */
import type { Facts } from './facts.ts';

/** Sentences for what would be changed although it was agreed in ink. */
export function againstInk(before: Facts, changed: readonly (keyof Facts)[], after: Facts): string[] {
  return [
    ...(dates(before) === dates(after) ? [] : ['The dates and their kinds were agreed in ink; calls and wraps may be corrected.']),
    ...(changed.includes('role') ? ['The role was agreed in ink.'] : []),
    ...(changed.includes('budget') ? ['The budget belongs to the time before ink.'] : []),
    ...(changed.includes('replyBy') ? ['The reply was given; its date stays as it was.'] : []),
  ];
}

function dates({ days }: Facts): string {
  return days
    .map(({ date, kind }) => `${date} ${kind}`)
    .sort()
    .join();
}
