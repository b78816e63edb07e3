import { CLOSED_MOST, type ClientFields } from '../contract/people.ts';
import { closedTogether } from './closed.ts';

/**
 * One client out of two: what the kept one says stands, what it leaves empty is filled, lists are joined.
 * Nothing when both name a tax id and the two differ: then they are not the same business.
 */
export function mergedClient(keep: ClientFields, fold: ClientFields): ClientFields | null {
  if (keep.taxId && fold.taxId && keep.taxId !== fold.taxId) return null;
  const known = new Set(keep.contacts.map(contactKey));
  return {
    ...keep,
    contacts: [...keep.contacts, ...fold.contacts.filter((contact) => !known.has(contactKey(contact)))].slice(0, 20),
    billing: {
      name: keep.billing.name || fold.billing.name,
      address: keep.billing.address || fold.billing.address,
      email: keep.billing.email || fold.billing.email,
    },
    country: keep.country ?? fold.country,
    taxId: keep.taxId || fold.taxId,
    currency: keep.currency ?? fold.currency,
    payDays: keep.payDays ?? fold.payDays,
    depositPercent: keep.depositPercent ?? fold.depositPercent,
    // Whatever either was known to ask for is asked for: a form too many costs less than one forgotten.
    asks: {
      purchaseOrder: keep.asks.purchaseOrder || fold.asks.purchaseOrder,
      insurance: keep.asks.insurance || fold.asks.insurance,
      taxForm: keep.asks.taxForm || fold.asks.taxForm,
      confidentiality: keep.asks.confidentiality || fold.asks.confidentiality,
    },
    closed: closedTogether(keep.closed ?? [], fold.closed ?? []).slice(0, CLOSED_MOST),
    notes: [...new Set([keep.notes, fold.notes])].filter(Boolean).join('\n').slice(0, 4000),
  };
}

const contactKey = ({ name, email, phone }: ClientFields['contacts'][number]) => [name, email, phone].join('\n').toLowerCase();
