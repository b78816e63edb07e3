/**
 * People with nothing known but a name, so that a form or a file only says what it knows.
 */
import type { ClientFields, HandFields } from '../contract/people.ts';

export function blankClient(name: string): ClientFields {
  return {
    name,
    contacts: [],
    billing: { name: '', address: '', email: '' },
    country: null,
    taxId: '',
    tax: 'charge',
    taxReason: '',
    currency: null,
    payDays: null,
    depositPercent: null,
    asks: { purchaseOrder: false, insurance: false, taxForm: false, confidentiality: false },
    notes: '',
  };
}

/** A hand is paid within thirty days unless agreed otherwise (common practice). */
export function blankHand(name: string): HandFields {
  return {
    name,
    email: '',
    phone: '',
    rates: [],
    home: null,
    ownKit: '',
    taxForm: false,
    insuredUntil: null,
    payDays: 30,
    backup: false,
    notes: '',
  };
}
