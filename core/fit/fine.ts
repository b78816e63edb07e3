/**
 * What is fine, in one line: the room before and after.
 */
import type { Finding } from '../contract/fit.ts';
import { countInWords, lengthInWords } from '../words/amounts.ts';
import { joined } from '../words/lists.ts';
import type { Neighbour } from './between.ts';

/** "Nothing else overlaps; 18 h 20 min to spare before Robotics final." */
export function fineSentence(findings: readonly Finding[], neighbours: readonly Neighbour[], stays: number): string {
  const overlapping = findings.some((finding) => 'overlap' in finding.numbers);
  const room = neighbours
    .filter((pair) => pair.verdict === 'fits')
    .map((pair) => `${spare(pair.slack)} to spare ${pair.before === pair.own ? 'before' : 'after'} ${pair.other.job.title}`);
  const parts = [
    overlapping ? 'Nothing else overlaps' : 'Nothing overlaps',
    ...(room.length > 0
      ? [joined([...new Set(room)])]
      : neighbours.length === 0 && !overlapping
        ? ['no other job is on the books for three weeks before and after']
        : []),
  ];
  return stays === 0 ? '' : `${parts.join('; ')}.`;
}

/** Minutes below two days, whole days above. */
function spare(minutes: number): string {
  const days = Math.floor(minutes / 1440);
  return days >= 2 ? countInWords(days, 'day') : lengthInWords(minutes);
}
