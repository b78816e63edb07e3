/**
 * What is fine, in one line: the room before and after.
 */
import type { Finding } from '../contract/fit.ts';
import { staysOf } from '../trips/stays.ts';
import { countInWords, lengthInWords } from '../words/amounts.ts';
import { joined } from '../words/lists.ts';
import type { Neighbour } from './between.ts';
import type { BookDay } from './book.ts';

/** "Nothing else overlaps; 18 h 20 min to spare before Robotics final." Nothing where no day of it is mine. */
export function fineSentence(findings: readonly Finding[], neighbours: readonly Neighbour[], days: readonly BookDay[]): string {
  const overlapping = findings.some((finding) => 'overlap' in finding.numbers);
  const room = neighbours
    .filter((pair) => pair.verdict === 'fits')
    .map((pair) => `${spare(pair.slack)} to spare ${pair.before === pair.own ? 'before' : 'after'} ${pair.other.job.title}`);
  const parts = [
    overlapping ? 'Nothing else overlaps' : 'Nothing overlaps',
    ...(room.length > 0
      ? [joined([...new Set(room)])]
      : staysOf(days).length === 0
        ? ['editing can be done anywhere']
        : neighbours.length === 0 && !overlapping
          ? ['no other job is on the books for three weeks before and after']
          : []),
  ];
  return days.length === 0 ? '' : `${parts.join('; ')}.`;
}

/** Minutes below two days, whole days above. */
function spare(minutes: number): string {
  const days = Math.floor(minutes / 1440);
  return days >= 2 ? countInWords(days, 'day') : lengthInWords(minutes);
}
