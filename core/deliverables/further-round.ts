/**
 * A round of notes beyond those that were agreed on: a line at the price of an edit hour, on the next bill of the job unless it is declined.
 */
import { exact, decimalText, type ExactSource } from '../money/exact.ts';
import { formatNumber, formatPrice } from '../money/format.ts';
import { lineAmount, type Money } from '../money/money.ts';
import { plural, type PricedLine } from '../quotes/line.ts';
import { countInWords, ordinalInWords } from '../words/amounts.ts';

/** What was said to the price: nobody said anything yet, yes, or no. */
type PriceState = 'asked' | 'agreed' | 'declined';

/** A further round as it was priced when its notes came; it keeps that price whatever the card says later. */
export type FurtherPrice = {
  /** Edit hours, exact decimal. */
  hours: string;
  /** Price of an edit hour, currency units. */
  editHour: string;
  currency: string;
  state: PriceState;
  /** Who said yes or no, when (instant) and how; empty and null while it is asked. */
  who: string;
  at: string | null;
  how: string;
};

/** The price as it is asked. @param card the frozen card of what was agreed on */
export function furtherPrice(hours: ExactSource, card: { editHour: string; currency: string }): FurtherPrice {
  return { hours: decimalText(exact(hours)), editHour: card.editHour, currency: card.currency, state: 'asked', who: '', at: null, how: '' };
}

/** Hours x price of an hour, rounded once. */
export function amountOfFurther({ hours, editHour, currency }: Pick<FurtherPrice, 'hours' | 'editHour' | 'currency'>): Money {
  return lineAmount(hours, editHour, currency);
}

/** `pass` is which pass of notes it is, `cut` on which cut, `of` which deliverable, `included` how many were agreed on. */
export type FurtherRound = { id: string; pass: number; cut: string; of: string; included: number; price: FurtherPrice };

/** How the names of their lines begin. */
const FURTHER = 'editing/further-';

/** The name of the line of a round. */
export const furtherLineId = (roundId: string): string => `${FURTHER}${roundId}`;
export const isFurtherLine = (lineId: string): boolean => lineId.startsWith(FURTHER);

/**
 * The line of a further round, and null for one that was declined. It was priced on its own, so no discount on the whole takes from it: while a
 * bill is priced it stands where expenses do, and on the paper under editing.
 */
export function furtherLine({ id, pass, of, included, price }: FurtherRound): PricedLine | null {
  if (price.state === 'declined') return null;
  const hours = exact(price.hours);
  return {
    id: furtherLineId(id),
    section: 'travel',
    what: `${capital(ordinalInWords(pass))} round of notes: ${of}`,
    quantity: hours,
    unit: plural(hours, 'hour'),
    unitPrice: exact(price.editHour),
    reason: `${capital(countInWords(included, 'round'))} ${included === 1 ? 'was' : 'were'} included; this is number ${pass}, ${formatNumber(hours)} edit ${plural(hours, 'hour')} at ${formatPrice(price.editHour, price.currency)}.`,
    estimated: false,
    changed: false,
  };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
