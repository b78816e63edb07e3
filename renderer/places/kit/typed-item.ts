/**
 * A thing as typed: text in every input, turned into the contract's fields when it is saved.
 */
import type { Trouble } from '../../../core/contract/base.ts';
import type { KitItemFields } from '../../../core/contract/kit.ts';
import type { Money } from '../../../core/contract/parts.ts';
import { gramsIn, sizeIn, sizeInWords, weightInWords } from '../../../core/kit/measures.ts';
import { exponentOf } from '../../../core/money/currencies.ts';
import { amountOf } from '../../../core/money/money.ts';
import { parseAmount, parseLength, parseNumber, type Read } from '../../../core/money/parse.ts';
import { lengthInWords } from '../../../core/words/amounts.ts';
import { Reader } from '../../parts/reader.ts';
import { amountText } from './typed-amount.ts';
import { refuseDates, typedUnit, unitFields, type TypedUnit } from './typed-unit.ts';

type TypedService = { from: string; to: string; count: string };
type Told = Pick<KitItemFields, 'name' | 'does' | 'resetOnRoad' | 'subHire' | 'owner' | 'battery' | 'note'>;
export type TypedItem = Told & {
  owned: string;
  units: TypedUnit[];
  reset: string;
  services: TypedService[];
  weight: string;
  size: string;
  wattHours: string;
  drawWatts: string;
  currency: string;
  value: string;
  wearPerDay: string;
  bought: string;
  origin: string;
};

/** All amounts of a thing are in one currency. */
const amountsOf = ({ value, wearPerDay, units }: KitItemFields): Money[] =>
  [value, wearPerDay, ...units.flatMap((unit) => [unit.value, unit.wearPerDay])].filter((amount) => amount !== null);

/** @param currency of amounts that are still to be typed */
export const typedItem =
  (currency: string) =>
  (fields: KitItemFields): TypedItem => {
    const { name, does, resetOnRoad, subHire, owner, battery, note } = fields;
    return {
      name,
      does,
      resetOnRoad,
      subHire,
      owner,
      battery,
      note,
      owned: String(fields.owned),
      units: fields.units.map(typedUnit),
      reset: lengthInWords(fields.resetMinutes),
      services: fields.services.map(({ from, to, count }) => ({ from, to, count: String(count) })),
      weight: fields.grams === null ? '' : weightInWords(fields.grams),
      size: fields.size ? sizeInWords(fields.size) : '',
      wattHours: fields.wattHours ?? '',
      drawWatts: fields.drawWatts ?? '',
      currency: amountsOf(fields)[0]?.currency ?? currency,
      value: amountText(fields.value),
      wearPerDay: amountText(fields.wearPerDay),
      bought: fields.bought ?? '',
      origin: fields.origin ?? '',
    };
  };

/** The fields to save, or the trouble that names what cannot be read. */
export function itemFields(typed: TypedItem): { fields: KitItemFields } | { trouble: Trouble } {
  const reader = new Reader();
  const optional = <T>(field: string, text: string, read: (text: string) => Read<T>): T | null =>
    text.trim() === '' ? null : (reader.take(field, read(text)) ?? null);
  const number = (field: string, text: string): number => Number(reader.take(field, parseNumber(text)) ?? '0');
  const amount = (field: string, text: string): Money | null => {
    const read = optional(field, text, (typedText) => parseAmount(typedText, exponentOf(typed.currency)));
    return read === null ? null : amountOf(read, typed.currency);
  };
  const reset = reader.take('resetMinutes', parseLength(typed.reset));
  if (reset && !('minutes' in reset)) reader.refuse('resetMinutes', 'is in days; write it in hours, as 6h');
  refuseDates(typed.services, 'services', reader);
  const { name, does, resetOnRoad, subHire, owner, battery, note } = typed;
  const fields: KitItemFields = {
    name,
    does,
    resetOnRoad,
    subHire,
    owner,
    battery,
    note,
    owned: number('owned', typed.owned),
    units: unitFields(typed.units, reader, amount),
    resetMinutes: reset && 'minutes' in reset ? reset.minutes : 0,
    services: typed.services.map(({ from, to, count }, at) => ({ from, to, count: number(`services[${at}].count`, count) })),
    grams: optional('grams', typed.weight, gramsIn),
    size: optional('size', typed.size, sizeIn),
    wattHours: battery === 'none' ? null : optional('wattHours', typed.wattHours, parseNumber),
    drawWatts: optional('drawWatts', typed.drawWatts, parseNumber),
    value: amount('value', typed.value),
    bought: typed.bought || null,
    origin: typed.origin.trim().toUpperCase() || null,
    wearPerDay: amount('wearPerDay', typed.wearPerDay),
  };
  return reader.trouble ? { trouble: reader.trouble } : { fields };
}
