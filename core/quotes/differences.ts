/**
 * What differs between two quotes of a job, in sentences a person can read out.
 */
import type { Closed } from '../contract/people.ts';
import type { QuoteDraft, QuoteLine } from '../contract/quotes.ts';
import type { Terms } from '../contract/rates.ts';
import { formatMoney, formatNumber, formatPrice } from '../money/format.ts';
import { compare, subtract, type Money } from '../money/money.ts';
import { closedInWords } from '../people/closed.ts';
import { deadlineInWords } from '../words/dates.ts';
import { joined } from '../words/lists.ts';

type Compared = Pick<QuoteDraft, 'currency' | 'lines' | 'totals' | 'deposit' | 'validUntil' | 'terms' | 'clientClosed'>;

/** Every difference from the older to the newer quote; the total comes first. */
export function differencesOf(older: Compared, newer: Compared): string[] {
  if (older.currency !== newer.currency)
    return [`The quote is in ${newer.currency} instead of ${older.currency}; its amounts cannot be compared.`];
  const before = new Map(older.lines.map((line) => [line.id, line]));
  const after = new Map(newer.lines.map((line) => [line.id, line]));
  const gone = older.lines.filter((line) => !after.has(line.id)).map((line) => `Taken off: ${line.what}, ${formatMoney(line.amount)}.`);
  const come = newer.lines
    .filter((line) => !before.has(line.id))
    .map(
      (line) =>
        `Added: ${line.what}, ${formatNumber(line.quantity)} x ${formatPrice(line.unitPrice, newer.currency)}, ${formatMoney(line.amount)}.`,
    );
  const changed = newer.lines.flatMap((line) => {
    const was = before.get(line.id);
    return was ? lineDifference(was, line, newer.currency) : [];
  });
  return [
    ...moneyDifference('Total', older.totals.gross, newer.totals.gross),
    ...come,
    ...gone,
    ...changed,
    ...moneyDifference('Tax', older.totals.tax, newer.totals.tax),
    ...depositDifference(older.deposit, newer.deposit),
    ...(older.validUntil.at === newer.validUntil.at
      ? []
      : [`Valid until ${deadlineInWords(newer.validUntil)} instead of ${deadlineInWords(older.validUntil)}.`]),
    ...termDifferences(older.terms, newer.terms),
    ...closedDifference(older.clientClosed ?? [], newer.clientClosed ?? []),
  ];
}

function lineDifference(was: QuoteLine, line: QuoteLine, currency: string): string[] {
  const said = [
    was.what === line.what ? '' : `called "${line.what}" instead of "${was.what}"`,
    was.quantity === line.quantity
      ? ''
      : `${formatNumber(line.quantity)} instead of ${formatNumber(was.quantity)}${line.unit === '' ? '' : ` ${line.unit}`}`,
    was.unitPrice === line.unitPrice
      ? ''
      : `at ${formatPrice(line.unitPrice, currency)} instead of ${formatPrice(was.unitPrice, currency)}`,
    was.taxed === line.taxed ? '' : line.taxed ? 'taxed now' : 'not taxed any more',
  ].filter((part) => part !== '');
  if (said.length === 0) return [];
  const amounts = was.amount.minor === line.amount.minor ? '' : `: ${formatMoney(line.amount)} instead of ${formatMoney(was.amount)}`;
  return [`${was.what}: ${joined(said)}${amounts}.`];
}

function moneyDifference(name: string, was: Money, is: Money): string[] {
  const order = compare(is, was);
  if (order === 0) return [];
  const by = order > 0 ? `${formatMoney(subtract(is, was))} more` : `${formatMoney(subtract(was, is))} less`;
  return [`${name} ${formatMoney(is)} instead of ${formatMoney(was)}: ${by}.`];
}

function depositDifference(was: QuoteDraft['deposit'], is: QuoteDraft['deposit']): string[] {
  if (!was && !is) return [];
  if (!is) return ['No deposit any more.'];
  if (!was) return [`A deposit of ${formatMoney(is.amount)}, due ${is.due}.`];
  const due = was.due === is.due ? [] : [`The deposit is due ${is.due} instead of ${was.due}.`];
  return [...moneyDifference('Deposit', was.amount, is.amount), ...due];
}

function closedDifference(was: readonly Closed[], is: readonly Closed[]): string[] {
  const [before, now] = [closedInWords(was), closedInWords(is)];
  if (before === now) return [];
  return [`The client's own holidays until first call: ${now || 'none'} instead of ${before || 'none'}.`];
}

const termNames: Record<keyof Terms, string> = {
  validDays: 'Days that the quote is valid',
  depositPercent: 'Deposit, per cent',
  payDays: 'Days to pay',
  cancellation: 'The cancellation scale',
  cancelBy: 'How the notice of a cancellation is counted',
  rounds: 'Rounds of notes',
  overtimeApprover: 'Who approves overtime',
  illness: 'The term on illness',
  weather: 'The term on weather',
  usage: 'The term on usage',
  originals: 'The term on originals',
  postponement: 'The term on postponement',
};

function termDifferences(was: Terms, is: Terms): string[] {
  return (Object.keys(termNames) as (keyof Terms)[]).flatMap((key) => {
    const [before, now] = [saidOf(was, key), saidOf(is, key)];
    if (JSON.stringify(before) === JSON.stringify(now)) return [];
    const figures = typeof now === 'number' || key === 'depositPercent' || key === 'cancelBy';
    return figures
      ? [`${termNames[key]}: ${JSON.stringify(now)} instead of ${JSON.stringify(before)}.`.replaceAll('"', '')]
      : [`${termNames[key]} is worded anew.`];
  });
}

/** Terms that were frozen before notice could be counted in business days count it in hours. */
function saidOf(terms: Terms, key: keyof Terms) {
  return key === 'cancelBy' ? (terms.cancelBy ?? 'hours') : terms[key];
}
