/**
 * All pairs of spans that meet, in one pass over their starts.
 */
type Span = { startAt: number; endAt: number };

/**
 * Every two spans that overlap, the earlier start first. Half-open: touching is not overlapping; no span may be empty.
 * Takes n log n for the sorting and then one step for each pair and each span: a span is looked at again only while it still lasts,
 * and then it meets the one that begins.
 */
export function meetingPairs<T extends Span>(spans: readonly T[]): [T, T][] {
  const pairs: [T, T][] = [];
  const lasting: T[] = [];
  for (const span of spans.toSorted((a, b) => a.startAt - b.startAt)) {
    let kept = 0;
    for (const other of lasting) {
      if (other.endAt <= span.startAt) continue;
      lasting[kept] = other;
      kept += 1;
      pairs.push([other, span]);
    }
    lasting.length = kept;
    lasting.push(span);
  }
  return pairs;
}
