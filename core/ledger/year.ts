/**
 * A year by month, by client and by job: what was billed and what came in. Both by the date of the paper or payment.
 */
import type { Money } from '../money/money.ts';
import type { Income } from './income.ts';
import { sumOf, weightOf, type Rated, type Sum } from './sums.ts';

/** Whom and what an amount is for. */
type About = { clientId: string | null; clientName: string; jobId: string | null; jobTitle: string };
/** An issued paper: what it asks for. Credit notes are below zero. */
export type Billed = About & { on: string; asked: Money; rate: string | null };
export type Received = About & Income;

type Row = { billed: Sum; received: Sum };
type MonthRow = Row & { month: string };
type ClientRow = Row & { clientId: string | null; name: string };
type JobRow = Row & { jobId: string | null; title: string };
export type YearSums = Row & { months: MonthRow[]; clients: ClientRow[]; jobs: JobRow[] };

type Entry = About & { on: string; billed: Rated | null; received: Rated | null };

/** @param year the calendar year of papers and payments; those of other years do not count */
export function yearSums(billed: readonly Billed[], received: readonly Received[], year: number, home: string): YearSums {
  const entries = [...billed.map(asBilled), ...received.map(asReceived)].filter(({ on }) => on.startsWith(`${year}-`));
  const rowOf = (same: readonly Entry[]): Row => ({
    billed: sumOf(
      same.flatMap((entry) => entry.billed ?? []),
      home,
    ),
    received: sumOf(
      same.flatMap((entry) => entry.received ?? []),
      home,
    ),
  });
  const groups = (keyOf: (entry: Entry) => string) => [...Map.groupBy(entries, keyOf).values()];
  return {
    ...rowOf(entries),
    months: Array.from({ length: 12 }, (_, index) => `${year}-${String(index + 1).padStart(2, '0')}`).map((month) => ({
      month,
      ...rowOf(entries.filter(({ on }) => on.startsWith(month))),
    })),
    clients: groups(({ clientId, clientName }) => clientId ?? `name ${clientName}`)
      .map((same) => ({ clientId: same[0]?.clientId ?? null, name: nameOf(same, 'clientName'), ...rowOf(same) }))
      .sort((a, b) => heavier(a, b) || inWords(a.name, b.name)),
    jobs: groups(({ jobId }) => jobId ?? '')
      .map((same) => ({ jobId: same[0]?.jobId ?? null, title: nameOf(same, 'jobTitle'), ...rowOf(same) }))
      .sort((a, b) => heavier(a, b) || inWords(a.title, b.title)),
  };
}

const asBilled = ({ asked, rate, ...about }: Billed): Entry => ({ ...about, billed: { amount: asked, rate }, received: null });

/** What came in is worth what the rate of its own date made of it. */
const asReceived = ({ amount, home, ...about }: Received): Entry => ({
  ...about,
  billed: null,
  received: { amount, rate: null, ...(home ? { worth: home.amount } : {}) },
});

/** The last name in time, so that the order of entry changes nothing. */
function nameOf(entries: readonly Entry[], key: 'clientName' | 'jobTitle'): string {
  return entries.toSorted((a, b) => inWords(b.on, a.on) || inWords(a[key], b[key]))[0]?.[key] ?? '';
}

const heavier = (a: Row, b: Row): number => weightOf(b.received) - weightOf(a.received) || weightOf(b.billed) - weightOf(a.billed);
const inWords = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
