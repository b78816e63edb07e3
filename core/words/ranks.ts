/**
 * Ranks of a pencil on its dates, in words.
 */
import { ordinalInWords } from './amounts.ts';
import { datesInWords } from './dates.ts';
import { joined } from './lists.ts';

type Dated = { date: string; rank: number };
type Other = { jobId: string; title: string };

/** "first pencil on Sun 13 December 2026 and second pencil on Mon 14 December 2026". */
export function ranksInWords(ranks: readonly Dated[]): string {
  const byRank = [...Map.groupBy(ranks, ({ rank }) => rank)].sort(([a], [b]) => a - b);
  return joined(byRank.map(([rank, dates]) => `${ordinalInWords(rank)} pencil on ${datesInWords(dates.map(({ date }) => date))}`));
}

/** Where a pencil stands and who stands with it on its dates; no words for one that is alone. */
export function standingInWords(ranks: readonly (Dated & { before: readonly Other[]; behind: readonly Other[] })[]): string {
  const titles = (of: 'before' | 'behind') => [
    ...new Map(ranks.flatMap((rank) => rank[of]).map(({ jobId, title }) => [jobId, title])).values(),
  ];
  const [before, behind] = [titles('before'), titles('behind')];
  if (before.length + behind.length === 0) return '';
  const words = ranksInWords(ranks);
  const others = [
    before.length > 0 ? `behind ${joined(before)}` : '',
    behind.length > 0 ? `${joined(behind)} ${behind.length === 1 ? 'waits' : 'wait'} behind it` : '',
  ];
  return [words.charAt(0).toUpperCase() + words.slice(1), ...others].filter((part) => part !== '').join('; ') + '.';
}
