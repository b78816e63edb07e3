/**
 * Lines of a priced quote as an invoice states them: each with the taxes that it bears, so that lines alone give the totals.
 */
import type { QuoteDraft, QuoteLine, Totals } from '../contract/quotes.ts';
import { isFurtherLine } from '../deliverables/further-round.ts';
import { decimalText } from '../money/exact.ts';
import { majorOf, sum } from '../money/money.ts';
import type { Tax } from '../money/taxes.ts';
import { discountedSections } from '../quotes/discount.ts';
import { sharesOf, type Piece } from '../quotes/totals.ts';
import { joined } from '../words/lists.ts';
import type { InvoiceLine } from './lines.ts';

/** A line of a draft bill: with how it came about. */
export type BillLine = InvoiceLine & { reason: string; estimated: boolean; changed: boolean; unapproved?: boolean };
type Priced = Pick<QuoteDraft, 'lines' | 'discount' | 'currency' | 'totals'>;

/** Expenses and further rounds stand beside travel while a bill is priced, since no discount takes from them; on paper each has its own head. */
const EXPENSE = 'expense/';

/** @param mine the taxes that my details put on every line */
export function billLines({ lines, discount, currency, totals }: Priced, mine: readonly Tax[]): BillLine[] {
  const goods = lines.filter((line) => line.section !== 'discount').map((line) => billLine(line, taxesBorne(line, totals, mine)));
  const off = lines.filter((line) => line.section === 'discount');
  const total = sum(
    currency,
    off.map((line) => line.amount),
  );
  const pieces = lines.flatMap((line): Piece[] =>
    line.section === 'discount' ? [] : [{ section: line.section, amount: line.amount, taxes: taxesBorne(line, totals, mine) }],
  );
  const shares = sharesOf(total, pieces, discountedSections(discount ?? { percent: '0', fixed: '0', over: null }));
  const byTaxes = [...Map.groupBy(shares, ({ taxes }) => JSON.stringify(taxes)).values()];
  const [only, ...others] = byTaxes;
  if (only && others.length === 0) return [...goods, ...off.map((line) => billLine(line, only[0]?.taxes ?? []))];
  const what = joined(off.map((line) => line.what));
  const parted = byTaxes.map((same, order): BillLine => {
    const amount = sum(
      currency,
      same.map((piece) => piece.amount),
    );
    return {
      id: `discount/part-${order + 1}`,
      section: 'discount',
      what,
      quantity: '1',
      unit: '',
      unitPrice: decimalText(majorOf(amount)),
      amount,
      taxes: same[0]?.taxes ?? [],
      reason: off.map((line) => line.reason).join(' '),
      estimated: false,
      changed: off.some((line) => line.changed),
    };
  });
  return [...goods, ...parted];
}

function billLine(
  { id, section, what, quantity, unit, unitPrice, amount, reason, estimated, changed }: QuoteLine,
  taxes: readonly Tax[],
): BillLine {
  return {
    id,
    section: id.startsWith(EXPENSE) ? 'expenses' : isFurtherLine(id) ? 'editing' : section,
    what,
    quantity,
    unit,
    unitPrice,
    amount,
    taxes,
    reason,
    estimated,
    changed,
  };
}

/** A quote names the taxes of a line; their rates are mine, and why one is not charged stands with its group. */
function taxesBorne({ bears, taxed }: QuoteLine, totals: Totals, mine: readonly Tax[]): readonly Tax[] {
  if (!bears) return taxed ? mine : [];
  const { state } = bears;
  if (state === 'rated') return mine.filter(({ name }) => bears.names.includes(name));
  return bears.names.map((name) => {
    const group = totals.taxes.find((each) => each.name === name && each.state === state);
    return { name, percent: '0', state, reason: group?.note ?? '' };
  });
}
