/**
 * The bill at wrap: the pricing of the quote that was agreed on, run again on the hours as they were worked, with what is charged on.
 */
import type { QuoteDraft, Totals } from '../contract/quotes.ts';
import type { BookDay } from '../fit/book.ts';
import { formatNumber } from '../money/format.ts';
import { differencesOf } from '../quotes/differences.ts';
import type { PriceInput } from '../quotes/input.ts';
import { priceOffer, type PricedOffer } from '../quotes/offer.ts';
import { taxesOf } from '../quotes/taxes.ts';
import { datesInWords } from '../words/dates.ts';
import { billLines, type BillLine } from './bill-lines.ts';

export type FinalFacts = {
  /** The quote as it was agreed on. */
  agreed: QuoteDraft;
  /** Which of its offers; 1 where it had none. */
  offer: number;
  /** What the quote was priced from, but with the days as they were, expenses, and the taxes in force now. */
  input: PriceInput;
  /** Dates of which no hours are known. */
  notEntered: readonly string[];
  /** What is to be said of overtime: who approved what, and what nobody did. */
  overtime: { sentences: readonly string[]; cautions: readonly string[] };
  /** The last wrap is past. */
  over: boolean;
};

export type Bill = {
  lines: BillLine[];
  dropped: PricedOffer['dropped'];
  differences: string[];
  cautions: string[];
  supply: { from: string; to: string } | null;
};

/**
 * Lines of the bill and what differs from what was agreed, in words.
 * @throws RangeError when an amount is past what is reckoned with
 */
export function finalBill({ agreed, offer, input, notEntered, overtime, over }: FinalFacts): Bill {
  const priced = priceOffer(input, offer);
  const { currency } = input.card;
  const mine = taxesOf(input.setup);
  const taxed = ratesChanged(agreed.totals, priced.totals);
  const open = notEntered.length === 0 ? [] : [`The hours of ${datesInWords(notEntered)} are not entered: billed as agreed.`];
  const estimated = priced.lines.filter((line) => line.estimated && line.section !== 'days').map((line) => line.what);
  return {
    lines: billLines({ ...priced, lines: settled(priced.lines), currency }, mine).map((line) =>
      overtime.cautions.length > 0 && line.id.startsWith(OVERTIME) ? { ...line, unapproved: true } : line,
    ),
    dropped: priced.dropped,
    differences: [...differencesOf(agreed, { ...priced, ...sameTerms(agreed), currency }), ...taxed, ...overtime.sentences],
    cautions: [
      ...(over ? [] : ['The job is not over yet.']),
      ...open,
      ...overtime.cautions,
      ...(estimated.length > 0 ? [`Still estimated: ${estimated.join(', ')}. Type the legs as they were, and the bill follows.`] : []),
      ...(taxed.length > 0 ? ['The rate in force at issue is billed; deposits are set off at the rate that they bore.'] : []),
      ...(agreed.cautions.some((caution) => caution.includes('tax adviser')) || mine.length > 0
        ? ['Whether tax is due here, and at which rate, is for your tax adviser to say.']
        : []),
    ],
    supply: supplyOf(input.days),
  };
}

/** How the ids of overtime lines begin. */
const OVERTIME = 'days/overtime';

/** Hours that were worked are no estimate any more. */
function settled(lines: QuoteDraft['lines']): QuoteDraft['lines'] {
  return lines.map((line) => (line.section === 'days' ? { ...line, estimated: false } : line));
}

/** Deposit, validity and terms were frozen: a bill does not change them. */
function sameTerms({
  deposit,
  validUntil,
  terms,
  clientClosed,
}: QuoteDraft): Pick<QuoteDraft, 'deposit' | 'validUntil' | 'terms' | 'clientClosed'> {
  return { deposit, validUntil, terms, ...(clientClosed ? { clientClosed } : {}) };
}

/** A tax whose rate is another now than when the quote was agreed on. */
function ratesChanged(was: Totals, is: Totals): string[] {
  return is.taxes.flatMap(({ name, percent, state }) => {
    const before = was.taxes.find((group) => group.name === name && (group.state ?? 'rated') === (state ?? 'rated'));
    return before && before.percent !== percent
      ? [`${name} is ${formatNumber(percent)} % instead of ${formatNumber(before.percent)} %.`]
      : [];
  });
}

/** From the first to the last date of work. */
function supplyOf(days: readonly BookDay[]): Bill['supply'] {
  const dates = days.map(({ date }) => date).sort();
  const [from, to] = [dates[0], dates.at(-1)];
  return from !== undefined && to !== undefined ? { from, to } : null;
}
