/**
 * A leg as typed: wall times on the clocks of its two ends, minutes as lengths; empty times before and after are the mode's own.
 */
import type { Trouble } from '../../../core/contract/base.ts';
import type { Place } from '../../../core/contract/parts.ts';
import type { LegFields } from '../../../core/contract/trips.ts';
import { exponentOf } from '../../../core/money/currencies.ts';
import { fixedText } from '../../../core/money/exact.ts';
import { amountOf, majorOf } from '../../../core/money/money.ts';
import { parseAmount, parseLength, parseNumber } from '../../../core/money/parse.ts';
import { lengthInWords } from '../../../core/words/amounts.ts';
import { Reader } from '../../parts/reader.ts';

export type TypedLeg = Omit<LegFields, 'from' | 'to' | 'before' | 'after' | 'fare' | 'baggage' | 'distance'> & {
  from: Place | null;
  to: Place | null;
  before: string;
  after: string;
  currency: string;
  fare: string;
  baggage: string;
  /** As it was driven, in the unit of Setup. */
  distance: string;
};

const typedMinutes = (minutes: number | null): string => (minutes === null ? '' : lengthInWords(minutes));

/** @param currency of a fare that is still to be typed */
export const typedLeg = (leg: LegFields, currency: string): TypedLeg => ({
  mode: leg.mode,
  from: leg.from,
  to: leg.to,
  depart: leg.depart,
  arrive: leg.arrive,
  source: leg.source,
  before: typedMinutes(leg.before),
  after: typedMinutes(leg.after),
  berth: leg.berth,
  currency: leg.fare?.currency ?? currency,
  fare: leg.fare ? fixedText(majorOf(leg.fare), exponentOf(leg.fare.currency)) : '',
  baggage: leg.baggage ?? '',
  distance: leg.distance ?? '',
  cost: leg.cost,
  note: leg.note,
});

/** A leg that is still to be typed. */
export const blankLeg = (from: Place | null, to: Place | null, currency: string): TypedLeg => ({
  mode: 'flight',
  from,
  to,
  depart: '',
  arrive: '',
  source: 'ticketed',
  before: '',
  after: '',
  berth: false,
  currency,
  fare: '',
  baggage: '',
  distance: '',
  cost: '',
  note: '',
});

/** The fields to save, or the trouble that names what cannot be read. */
export function legFields(typed: TypedLeg): { fields: LegFields } | { trouble: Trouble } {
  const reader = new Reader();
  const minutes = (field: string, text: string): number | null => {
    if (text.trim() === '') return null;
    const read = reader.take(field, parseLength(text));
    if (read && !('minutes' in read)) reader.refuse(field, 'is in days; write it as 2 h or 90 min');
    return read && 'minutes' in read ? read.minutes : null;
  };
  const { currency, fare: typedFare, distance: typedDistance, ...told } = typed;
  const { from, to, depart, arrive } = told;
  const amount = typedFare.trim() === '' ? undefined : reader.take('fare', parseAmount(typedFare, exponentOf(currency)));
  const driven = typed.mode === 'drive' && typedDistance.trim() !== '' ? reader.take('distance', parseNumber(typedDistance)) : undefined;
  if (!from) reader.refuse('from', 'is not chosen; begin to type a town');
  if (!to) reader.refuse('to', 'is not chosen; begin to type a town');
  if (depart === '') reader.refuse('depart', 'is not whole; give date and time');
  if (arrive === '') reader.refuse('arrive', 'is not whole; give date and time');
  const around = { before: minutes('before', typed.before), after: minutes('after', typed.after) };
  if (reader.trouble) return { trouble: reader.trouble };
  return from && to
    ? { fields: { ...told, from, to, ...around, distance: driven ?? null, fare: amount === undefined ? null : amountOf(amount, currency) } }
    : { trouble: { what: 'The leg has no two ends.', kept: 'Nothing was saved.', todo: 'Choose both places.' } };
}
