/**
 * Whether changes of a draft speak of lines that are there.
 */
import type { DraftChange, QuoteDraft } from '../contract/quotes.ts';
import { isOwnLine } from './line.ts';

/** Ids that changes name though neither a line nor one that was taken off bears them. */
export function unknownLines(changes: readonly DraftChange[], draft: Pick<QuoteDraft, 'lines' | 'dropped' | 'offers'>): string[] {
  const known = new Set([draft, ...draft.offers].flatMap(({ lines, dropped }) => [...lines, ...dropped]).map((line) => line.id));
  const named = changes.flatMap((change) => ('id' in change ? [change.id] : []));
  return [...new Set(named.filter((id) => !known.has(id)))];
}

/** Ids of lines that changes would move though the rate card or the trip gives them their place. */
export function fixedLines(changes: readonly DraftChange[]): string[] {
  return changes.flatMap((change) => (change.op === 'move' && !isOwnLine(change.id) ? [change.id] : []));
}
