/**
 * A thing as typed: text in every input, turned into the contract's fields when it is saved.
 */
import type { Trouble } from '../../../core/contract/base.ts';
import type { KitItemFields } from '../../../core/contract/kit.ts';
import type { Money } from '../../../core/contract/parts.ts';
import { gramsIn, sizeIn, sizeInWords, weightInWords } from '../../../core/kit/measures.ts';
import { exponentOf } from '../../../core/money/currencies.ts';
import { fixedText } from '../../../core/money/exact.ts';
import { amountOf, majorOf } from '../../../core/money/money.ts';
import { parseAmount, parseLength, parseNumber, type Read } from '../../../core/money/parse.ts';
import { lengthInWords } from '../../../core/words/amounts.ts';
import { Reader } from '../../parts/reader.ts';

type TypedService = { from: string; to: string; count: string };
type Told = Pick<KitItemFields, 'name' | 'does' | 'resetOnRoad' | 'subHire' | 'owner' | 'battery' | 'note'>;
export type TypedItem = Told & {
  owned: string;
  serials: string;
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
};

const amountText = (amount: Money | null): string => (amount ? fixedText(majorOf(amount), exponentOf(amount.currency)) : '');

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
      serials: fields.serials.join('\n'),
      reset: lengthInWords(fields.resetMinutes),
      services: fields.services.map(({ from, to, count }) => ({ from, to, count: String(count) })),
      weight: fields.grams === null ? '' : weightInWords(fields.grams),
      size: fields.size ? sizeInWords(fields.size) : '',
      wattHours: fields.wattHours ?? '',
      drawWatts: fields.drawWatts ?? '',
      currency: fields.value?.currency ?? fields.wearPerDay?.currency ?? currency,
      value: amountText(fields.value),
      wearPerDay: amountText(fields.wearPerDay),
      bought: fields.bought ?? '',
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
    serials: typed.serials.split('\n').flatMap((serial) => serial.trim() || []),
    resetMinutes: reset && 'minutes' in reset ? reset.minutes : 0,
    services: typed.services.map(({ from, to, count }, at) => {
      if (from === '') reader.refuse(`services[${at}].from`, 'is empty; say from which date');
      if (to === '') reader.refuse(`services[${at}].to`, 'is empty; say to which date');
      return { from, to, count: number(`services[${at}].count`, count) };
    }),
    grams: optional('grams', typed.weight, gramsIn),
    size: optional('size', typed.size, sizeIn),
    wattHours: battery === 'none' ? null : optional('wattHours', typed.wattHours, parseNumber),
    drawWatts: optional('drawWatts', typed.drawWatts, parseNumber),
    value: amount('value', typed.value),
    bought: typed.bought || null,
    wearPerDay: amount('wearPerDay', typed.wearPerDay),
  };
  return reader.trouble ? { trouble: reader.trouble } : { fields };
}
