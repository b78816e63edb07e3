/**
 * Which open inquiry is laid on the small stringline.
 */
import type { Clock } from '../contract/desk.ts';
import type { DeskJob } from './clocks.ts';

/** Of the inquiries that wait for an answer and have a call in the span (epoch ms, half-open), the one whose clock runs out first. */
export function laidOnDesk(jobs: readonly DeskJob[], clocks: readonly Clock[], span: { from: number; to: number }): string | undefined {
  const shown = new Set(jobs.filter(({ days }) => days.some(({ callAt }) => callAt >= span.from && callAt < span.to)).map(({ id }) => id));
  return (
    clocks.find(({ kind, jobId }) => (kind === 'reply-by' || kind === 'question') && jobId !== null && shown.has(jobId))?.jobId ?? undefined
  );
}
