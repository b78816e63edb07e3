/**
 * Money that is expected, by week: bills by their due dates, deposits and bills that are still to be issued.
 */
import { dateLater } from '../time/wall.ts';
import { addSums, sumOf, type Rated, type Sum } from './sums.ts';

/** How many weeks are shown one by one; what comes after stands together. */
const WEEKS = 12;
const SOON_WEEKS = 4;

/** `on` is when it is expected. What is disputed is shown and not counted. */
export type ToCome = Rated & { kind: 'due' | 'disputed' | 'deposit' | 'to bill'; on: string; what: string; jobId: string | null };
/** A week from Monday to Sunday. `from` null: late already; `to` null: later than the last week. */
export type ExpectedWeek = { from: string | null; to: string | null; sum: Sum; parts: ToCome[] };

/** Weeks that something is expected in, in order of time, what is late before them. What is still to be billed is never late: it counts from today. */
export function expectedByWeek(items: readonly ToCome[], asOf: string, home: string): ExpectedWeek[] {
  const monday = mondayOf(asOf);
  const last = dateLater(monday, 7 * WEEKS - 1);
  const spanOf = ({ kind, on }: ToCome): string => {
    if (on < asOf && (kind === 'due' || kind === 'disputed')) return 'late';
    return on > last ? 'later' : mondayOf(on < asOf ? asOf : on);
  };
  const place = (span: string): string => (span === 'late' ? '' : span === 'later' ? '~' : span);
  return [...Map.groupBy(items, spanOf)]
    .sort(([a], [b]) => (place(a) < place(b) ? -1 : 1))
    .map(([span, same]) => ({
      from: span === 'late' ? null : span === 'later' ? dateLater(last, 1) : span,
      to: span === 'late' ? dateLater(asOf, -1) : span === 'later' ? null : dateLater(span, 6),
      sum: sumOf(
        same.filter(({ kind }) => kind !== 'disputed'),
        home,
      ),
      parts: same.toSorted((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : a.what < b.what ? -1 : 1)),
    }));
}

/** What is expected from the week of a date on to four weeks later; what is late already is not in it. */
export function expectedSoon(weeks: readonly Pick<ExpectedWeek, 'from' | 'to' | 'sum'>[], asOf: string, home: string): Sum {
  const last = dateLater(asOf, 7 * SOON_WEEKS);
  const soon = weeks.filter(({ from, to }) => from !== null && to !== null && from <= last);
  return addSums(
    soon.map((week) => week.sum),
    home,
  );
}

/** The Monday of a date's week (ISO 8601). */
function mondayOf(date: string): string {
  return dateLater(date, 1 - Temporal.PlainDate.from(date).dayOfWeek);
}
