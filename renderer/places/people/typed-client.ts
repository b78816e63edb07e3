/**
 * A client as typed: text in every input, turned into the contract's fields when it is saved.
 */
import type { Trouble } from '../../../core/contract/base.ts';
import type { ClientFields, Closed } from '../../../core/contract/people.ts';
import { parseNumber } from '../../../core/money/parse.ts';
import { Reader } from '../../parts/reader.ts';

/** Stands for the currency of the rate card in a list of currencies. */
export const CARD_CURRENCY = 'as the rate card';

export type TypedClient = Omit<ClientFields, 'country' | 'currency' | 'payDays' | 'depositPercent' | 'closed'> & {
  /** An empty last date is the same as the first. */
  closed: Closed[];
  country: string;
  currency: string;
  payDays: string;
  depositPercent: string;
};

export function typedClient(fields: ClientFields): TypedClient {
  return {
    name: fields.name,
    contacts: fields.contacts,
    billing: fields.billing,
    country: fields.country ?? '',
    taxId: fields.taxId,
    tax: fields.tax,
    taxReason: fields.taxReason,
    currency: fields.currency ?? CARD_CURRENCY,
    payDays: fields.payDays === null ? '' : String(fields.payDays),
    depositPercent: fields.depositPercent ?? '',
    asks: fields.asks,
    closed: fields.closed ?? [],
    notes: fields.notes,
  };
}

/** The fields to save, or the trouble that names what cannot be read. Contacts and holidays left wholly empty are dropped. */
export function clientFields(typed: TypedClient): { fields: ClientFields } | { trouble: Trouble } {
  const reader = new Reader();
  const number = (field: string, text: string): string | null =>
    text.trim() === '' ? null : (reader.take(field, parseNumber(text)) ?? null);
  const payDays = number('payDays', typed.payDays);
  const fields: ClientFields = {
    ...typed,
    contacts: typed.contacts.filter((contact) => Object.values(contact).some((text) => text.trim() !== '')),
    country: typed.country.trim().toUpperCase() || null,
    currency: typed.currency === CARD_CURRENCY ? null : typed.currency,
    payDays: payDays === null ? null : Number(payDays),
    depositPercent: number('depositPercent', typed.depositPercent),
    closed: typed.closed
      .map((run) => ({ ...run, to: run.to || run.from }))
      .filter((run) => Object.values(run).some((text) => text.trim() !== '')),
  };
  return reader.trouble ? { trouble: reader.trouble } : { fields };
}
