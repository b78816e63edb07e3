/**
 * A hand as typed: text in every input, turned into the contract's fields when it is saved.
 */
import type { Trouble } from '../../../core/contract/base.ts';
import { Role } from '../../../core/contract/parts.ts';
import type { HandFields } from '../../../core/contract/people.ts';
import { parseAmount, parseNumber } from '../../../core/money/parse.ts';
import { Reader } from '../../parts/reader.ts';

type TypedRate = { role: string; dayRate: string; currency: string; from: string };
export type TypedHand = Omit<HandFields, 'rates' | 'insuredUntil' | 'payDays'> & {
  rates: TypedRate[];
  insuredUntil: string;
  payDays: string;
};

export function typedHand(fields: HandFields): TypedHand {
  return {
    name: fields.name,
    email: fields.email,
    phone: fields.phone,
    rates: fields.rates,
    home: fields.home,
    ownKit: fields.ownKit,
    taxForm: fields.taxForm,
    insuredUntil: fields.insuredUntil ?? '',
    payDays: String(fields.payDays),
    backup: fields.backup,
    notes: fields.notes,
  };
}

/** The fields to save, or the trouble that names what cannot be read. */
export function handFields(typed: TypedHand): { fields: HandFields } | { trouble: Trouble } {
  const reader = new Reader();
  const fields: HandFields = {
    ...typed,
    rates: typed.rates.map((rate, at) => {
      if (rate.from === '') reader.refuse(`rates[${at}].from`, 'is empty; say from which date it holds');
      return {
        ...rate,
        role: Role.catch('other').parse(rate.role),
        dayRate: reader.take(`rates[${at}].dayRate`, parseAmount(rate.dayRate, 9)) ?? '0',
      };
    }),
    insuredUntil: typed.insuredUntil || null,
    payDays: Number(reader.take('payDays', parseNumber(typed.payDays)) ?? '0'),
  };
  return reader.trouble ? { trouble: reader.trouble } : { fields };
}
