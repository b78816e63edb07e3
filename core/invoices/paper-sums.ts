/**
 * The sum of a bill on paper: its lines, its taxes, what was billed before, what is to pay.
 */
import type { InvoiceContent } from '../contract/invoices.ts';
import type { Totals } from '../contract/quotes.ts';
import { exchanged } from '../money/exchange.ts';
import { formatMoney, formatNumber } from '../money/format.ts';
import { negate, sum, type Money } from '../money/money.ts';
import { onPaper, type PaperSum } from '../papers/content.ts';
import { isRelieved, plainSum, rateName, taxSums } from '../papers/sums.ts';
import { paperDate } from '../words/dates.ts';
import { paperText } from '../words/letters.ts';

type Group = Totals['taxes'][number];
type Bill = Pick<InvoiceContent, 'kind' | 'currency' | 'included' | 'totals' | 'credited' | 'toPay'>;

/** "VAT 20 %", or why it is not charged: "VAT, reverse charge" (Directive 2006/112/EC, Art. 226 points 11 and 11a). */
function groupName(group: Group): string {
  return isRelieved(group) ? `${paperText(group.name)}, ${group.state}` : rateName(group);
}

/** Net, taxes and total; then, where something was billed before, what it takes off, and what is left to pay with the tax in it. */
export function billSums({ kind, currency, included, totals, credited, toPay }: Bill): PaperSum[] {
  const turned = kind === 'credit note';
  const total = `${turned ? 'Total credited' : 'Total'} ${currency}`;
  const sums = taxSums({ totals, inside: included && totals.tax.minor !== 0, total, naming: groupName, taxInvoice: true });
  if (credited.length === 0) return sums;
  // A credit note that leaves nothing of its invoice gives back what that had set off.
  const before = turned ? 'Set off there: invoice' : 'Less invoice';
  const back =
    !turned && toPay.minor < 0
      ? `More was billed before than is owed: ${formatMoney(negate(toPay), { code: true })} goes back to you.`
      : '';
  const whole: PaperSum = {
    label: `${turned ? 'Taken off' : 'To pay'} ${currency}`,
    amount: onPaper(toPay),
    note: [taxLeftInWords({ totals, credited }), back].filter((text) => text !== '').join(' '),
    weight: 'total',
  };
  return [...sums, ...credited.map((one) => setOffSum(one, before)), whole];
}

/** What an earlier invoice takes off, by tax group as that invoice says. */
function setOffSum({ number, date, groups, gross }: Bill['credited'][number], before: string): PaperSum {
  const taxed = groups.length > 1 || groups.some(({ tax }) => tax.minor !== 0);
  const note = taxed ? groups.map((group) => `${rateName(group)}: net ${onPaper(group.net)}, tax ${onPaper(group.tax)}`).join('; ') : '';
  return plainSum(`${before} ${paperText(number)} of ${paperDate(date)}`, onPaper(gross), note);
}

/** "Of which VAT 20 % on 500.00: 100.00." What each tax group comes to after what was billed before. */
function taxLeftInWords({ totals, credited }: Pick<Bill, 'totals' | 'credited'>): string {
  const groups = [...totals.taxes, ...credited.flatMap((one) => one.groups)];
  if (groups.every(({ tax }) => tax.minor === 0)) return '';
  const { currency } = totals.gross;
  const left = [...Map.groupBy(groups, rateName)].map(([name, same]) => {
    const of = (pick: (group: (typeof same)[number]) => Money) => onPaper(sum(currency, same.map(pick)));
    return `${name} on ${of(({ net }) => net)}: ${of(({ tax }) => tax)}`;
  });
  return `Of which ${left.join('; ')}.`;
}

/**
 * The rate that was used, and where tax is charged the tax of what is to pay in the home currency
 * (VAT Regulations 1995 reg. 14(1)(l), Directive 2006/112/EC Art. 230). Empty in the home currency.
 */
export function rateInWords({
  rate,
  currency,
  totals,
  credited,
}: Pick<InvoiceContent, 'rate' | 'currency' | 'totals' | 'credited'>): string {
  if (!rate || rate.home === currency) return '';
  const tax = sum(currency, [totals.tax, ...credited.map((one) => one.tax)]);
  const said = `${currency} 1 = ${rate.home} ${formatNumber(rate.rate)} on ${paperDate(rate.date)}`;
  if (tax.minor === 0) return `${said}.`;
  const home = exchanged(tax, { from: currency, to: rate.home, rate: rate.rate, date: rate.date });
  return `${said}: the tax of ${onPaper(tax, { code: true })} is ${onPaper(home, { code: true })}.`;
}
