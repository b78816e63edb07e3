/**
 * Further rounds on bills: the lines that they make, and those that were billed already.
 */
import { furtherLine, furtherLineId, isFurtherLine } from '../../core/deliverables/further-round.ts';
import type { BillLine } from '../../core/invoices/bill-lines.ts';
import type { PricedLine } from '../../core/quotes/line.ts';
import { formatNumber } from '../../core/money/format.ts';
import { pricedRounds, type RoundRow } from '../../db/rounds.ts';
import type { ReadableDb } from '../../db/store.ts';
import { billedBefore, type BilledBefore } from './billed-before.ts';
import type { RoundFacts } from './round-facts.ts';
import { refused } from './trouble.ts';

/** The bill that holds a further round, by its number; undefined where none does. */
function billOf(db: ReadableDb, jobId: string, roundId: string): string | undefined {
  return billedBefore(db, jobId).standing.find(({ content }) => content.lines.some(({ id }) => id === furtherLineId(roundId)))?.number;
}

/** @throws REFUSED for a round that stands on a bill */
export function refuseBilled(db: ReadableDb, { job }: Pick<RoundFacts, 'job'>, { id, what }: RoundRow): void {
  const bill = billOf(db, job.id, id);
  if (bill !== undefined) throw refused(`The further round on the ${what} stands on the bill ${bill}.`, 'Credit that bill first.');
}

export type FurtherRounds = {
  lines: PricedLine[];
  /** Names of lines that nobody said yes to. */ asked: ReadonlySet<string>;
  cautions: string[];
};

/** Lines of a job's further rounds that were not declined; in another currency than the job's there is no line, but a caution. */
export function furtherRounds(db: ReadableDb, jobId: string, currency: string): FurtherRounds {
  const priced = pricedRounds(db, jobId).filter(({ price }) => price.state !== 'declined');
  const same = priced.filter(({ price }) => price.currency === currency);
  const open = same.filter(({ price }) => price.state === 'asked');
  return {
    lines: same.flatMap((round) => furtherLine(round) ?? []),
    asked: new Set(open.map(({ id }) => furtherLineId(id))),
    cautions: [
      ...open.map(
        ({ of, cut, price }) =>
          `Nobody has agreed to the further round on the ${cut} of ${of}, ${formatNumber(price.hours)} h: note a yes or a no.`,
      ),
      ...priced
        .filter((round) => !same.includes(round))
        .map(
          ({ of, cut, price }) =>
            `The further round on the ${cut} of ${of} is priced in ${price.currency} and this job in ${currency}: add its line by hand.`,
        ),
    ],
  };
}

/** Further rounds of a job that came after its last bill and are on none; empty while that bill is still to come. */
export function furtherToBill(db: ReadableDb, jobId: string): ReturnType<typeof pricedRounds> {
  const { standing } = billedBefore(db, jobId);
  if (!standing.some(({ kind }) => kind === 'final')) return [];
  const billed = billedLines(standing);
  return pricedRounds(db, jobId).filter(({ id, price }) => price.state !== 'declined' && !billed.has(furtherLineId(id)));
}

const billedLines = (standing: BilledBefore['standing']): ReadonlySet<string> =>
  new Set(standing.flatMap(({ content }) => content.lines.map(({ id }) => id)));

type Later = {
  later: true;
  lines: BillLine[];
  dropped: [];
  supply: { from: string; to: string };
  differences: string[];
  cautions: string[];
};

/**
 * Once the last bill stands, further rounds that are on none are billed by themselves; null while there are none.
 * @param lines of the bill as it would be now
 */
export function laterBill(
  { standing }: BilledBefore,
  lines: readonly BillLine[],
  { cautions }: FurtherRounds,
  today: string,
): Later | null {
  if (!standing.some(({ kind }) => kind === 'final')) return null;
  const billed = billedLines(standing);
  const left = lines.filter(({ id }) => isFurtherLine(id) && !billed.has(id));
  if (left.length === 0) return null;
  const differences = ['The bill at wrap stands; only what came after it is on this one.'];
  return { later: true, lines: left, dropped: [], supply: { from: today, to: today }, differences, cautions };
}
