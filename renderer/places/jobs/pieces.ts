import type { FactName, Span } from '../../../core/contract/inquiries.ts';

const meanings: Record<FactName, string> = {
  start: 'first day',
  end: 'last day',
  firstCall: 'first call',
  lastWrap: 'last wrap',
  place: 'place',
  country: 'country',
  role: 'role',
  days: 'number of days',
  replyBy: 'reply by',
  budget: 'budget',
  contactName: 'contact',
  contactEmail: 'mail',
  contactPhone: 'phone',
  organisation: 'client',
  deliverables: 'deliverable',
};

type Piece = { at: number; text: string; meaning: string | null };
type Meant = { start: number; end: number; meaning: string };

/** The message cut at the words that were understood. */
export function pieces(text: string, spans: readonly Span[]): Piece[] {
  return piecesOf(
    text,
    spans.map(({ start, end, field }) => ({ start, end, meaning: meanings[field] })),
  );
}

/** A text cut at the words that were understood; a span inside another is left to the outer one. */
export function piecesOf(text: string, spans: readonly Meant[]): Piece[] {
  const sorted = [...spans]
    .filter((span) => span.end > span.start && span.end <= text.length)
    .sort((a, b) => a.start - b.start || b.end - a.end);
  const cut: Piece[] = [];
  let at = 0;
  for (const span of sorted) {
    if (span.start < at) continue;
    if (span.start > at) cut.push({ at, text: text.slice(at, span.start), meaning: null });
    const meaning = sorted.filter((each) => each.start < span.end && each.end > span.start).map((each) => each.meaning);
    cut.push({ at: span.start, text: text.slice(span.start, span.end), meaning: [...new Set(meaning)].join(', ') });
    at = span.end;
  }
  if (at < text.length) cut.push({ at, text: text.slice(at), meaning: null });
  return cut;
}
