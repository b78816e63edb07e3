/**
 * Everything that is kept of a client or a hand as words under their labels, for reading and for comparing two states.
 */
import type { ClientFields, HandFields } from '../../../core/contract/people.ts';
import { formatNumber, formatPrice } from '../../../core/money/format.ts';
import { closedInWords } from '../../../core/people/closed.ts';
import { countInWords } from '../../../core/words/amounts.ts';
import { paperDate } from '../../../core/words/dates.ts';
import { joined } from '../../../core/words/lists.ts';
import type { Said } from '../../parts/clash-note.tsx';
import { placeInWords } from '../../parts/place-field.tsx';

/** What a client may always ask for, in the order of the form. */
export const askLabels = {
  purchaseOrder: 'a purchase-order number',
  insurance: 'an insurance certificate',
  taxForm: 'a tax form',
  confidentiality: 'confidentiality',
} satisfies Record<keyof ClientFields['asks'], string>;
export const askNames = Object.keys(askLabels) as (keyof ClientFields['asks'])[];

/** "a purchase-order number and a tax form"; nothing when they ask for nothing. */
export const asksInWords = ({ asks }: Pick<ClientFields, 'asks'>): string =>
  joined(askNames.filter((name) => asks[name]).map((name) => askLabels[name]));

export const listInWords = (...parts: string[]): string => parts.filter((part) => part !== '').join(', ');
const taxInWords = { charge: 'charged', exempt: 'exempt', 'reverse charge': 'reverse charge' };
const yes = (so: boolean): string => (so ? 'yes' : 'no');

export function clientInWords(of: ClientFields): Said[] {
  return [
    { label: 'Name', text: of.name },
    { label: 'Contacts', text: of.contacts.map((one) => listInWords(one.name, one.what, one.email, one.phone)).join('; ') },
    { label: 'Billed to', text: listInWords(of.billing.name, of.billing.address, of.billing.email) },
    { label: 'Country', text: of.country ?? '' },
    { label: 'Tax id', text: of.taxId },
    { label: 'My tax', text: listInWords(taxInWords[of.tax], of.taxReason) },
    { label: 'Currency', text: of.currency ?? 'as the rate card' },
    { label: 'Pays within', text: of.payDays === null ? 'as the rate card' : countInWords(of.payDays, 'day') },
    { label: 'Deposit', text: of.depositPercent === null ? 'as the rate card' : `${formatNumber(of.depositPercent)} %` },
    { label: 'Own holidays', text: closedInWords(of.closed ?? []) },
    { label: 'Always asks for', text: asksInWords(of) },
    { label: 'Notes', text: of.notes },
  ];
}

const ratesInWords = (rates: HandFields['rates']): string =>
  rates.map((rate) => `${rate.role} ${rate.currency} ${formatPrice(rate.dayRate, rate.currency)} from ${paperDate(rate.from)}`).join('; ');

export function handInWords(of: HandFields): Said[] {
  return [
    { label: 'Name', text: of.name },
    { label: 'Mail', text: of.email },
    { label: 'Phone', text: of.phone },
    { label: 'Rates', text: ratesInWords(of.rates) },
    { label: 'Home', text: of.home ? placeInWords(of.home) : '' },
    { label: 'Own kit', text: of.ownKit },
    { label: 'Tax form on file', text: yes(of.taxForm) },
    { label: 'Insured until', text: of.insuredUntil ? paperDate(of.insuredUntil) : '' },
    { label: 'I pay within', text: countInWords(of.payDays, 'day') },
    { label: 'Backup', text: yes(of.backup) },
    { label: 'Notes', text: of.notes },
  ];
}
