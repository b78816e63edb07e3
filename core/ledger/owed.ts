/**
 * Who owes me, as of a date: what is open and late, by age and by client.
 */
import { ageingOf, type AgeRow } from '../invoices/ageing.ts';
import { sum, type Money } from '../money/money.ts';
import { inOrder, sumOf, weightOf, type Rated, type Sum } from './sums.ts';

/** An issued invoice as it stands as of a date, as far as sums need it. */
export type OpenPaper = {
  clientId: string | null;
  billedTo: string;
  dueDate: string;
  open: Money;
  /** Stored on the invoice: home currency for one unit. */
  rate: { rate: string } | null;
  daysLate: number;
  state: string;
};

export type Owed = { open: Sum; openCount: number; late: Sum; lateCount: number; disputed: Sum };
export type Ageing = { currency: string; total: Money; rows: AgeRow[] };
export type ClientOwes = { clientId: string | null; name: string; open: Sum; late: Sum; count: number; daysLate: number };

const rated = ({ open, rate }: OpenPaper): Rated => ({ amount: open, rate: rate?.rate ?? null });
const isOpen = ({ open }: OpenPaper): boolean => open.minor !== 0;
const isLate = (paper: OpenPaper): boolean => isOpen(paper) && paper.daysLate > 0;

/** What is open and, of that, late and disputed. What is disputed counts as open: nobody has given it up. */
export function owedOf(papers: readonly OpenPaper[], home: string): Owed {
  const open = papers.filter(isOpen);
  const late = papers.filter(isLate);
  return {
    open: sumOf(open.map(rated), home),
    openCount: open.length,
    late: sumOf(late.map(rated), home),
    lateCount: late.length,
    disputed: sumOf(open.filter(({ state }) => state === 'disputed').map(rated), home),
  };
}

/** Ageing in each currency that something is open in; the buckets of a currency add up to what is open in it. */
export function ageings(papers: readonly OpenPaper[], asOf: string, home: string): Ageing[] {
  return [...Map.groupBy(papers.filter(isOpen), ({ open }) => open.currency)]
    .sort(([one], [other]) => inOrder(one, other, home))
    .map(([currency, same]) => ({
      currency,
      total: sum(
        currency,
        same.map(({ open }) => open),
      ),
      rows: ageingOf(currency, same, asOf),
    }));
}

/** Who owes, the most first. A client is one by its id; without one, by the name that it was billed to. */
export function clientsOwing(papers: readonly OpenPaper[], home: string): ClientOwes[] {
  return [...Map.groupBy(papers.filter(isOpen), ({ clientId, billedTo }) => clientId ?? `name ${billedTo}`).values()]
    .map((same) => ({
      clientId: same[0]?.clientId ?? null,
      name: newestName(same),
      open: sumOf(same.map(rated), home),
      late: sumOf(same.filter(isLate).map(rated), home),
      count: same.length,
      daysLate: Math.max(...same.map(({ daysLate }) => daysLate)),
    }))
    .sort((a, b) => weightOf(b.open) - weightOf(a.open) || (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
}

/** The name on the bill that is due last, so that the order of entry changes nothing. */
function newestName(papers: readonly OpenPaper[]): string {
  return (
    papers.toSorted((a, b) => (a.dueDate < b.dueDate ? 1 : a.dueDate > b.dueDate ? -1 : a.billedTo < b.billedTo ? -1 : 1))[0]?.billedTo ??
    ''
  );
}
