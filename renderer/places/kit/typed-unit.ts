/**
 * A unit as typed: empty is as the thing says.
 */
import type { KitItemFields, KitUnit } from '../../../core/contract/kit.ts';
import type { Money } from '../../../core/contract/parts.ts';
import { blankUnit } from '../../../core/kit/blank.ts';
import type { Reader } from '../../parts/reader.ts';
import { amountText } from './typed-amount.ts';

/** An owner of its own, or that of the thing. */
export type UnitOwner = KitItemFields['owner'] | 'as the thing';
export type TypedUnit = Pick<KitUnit, 'serial' | 'place' | 'services' | 'note'> & {
  owner: UnitOwner;
  bought: string;
  value: string;
  wearPerDay: string;
};

export const typedUnit = ({ serial, place, owner, services, bought, value, wearPerDay, note }: KitUnit): TypedUnit => ({
  serial,
  place,
  services,
  note,
  owner: owner ?? 'as the thing',
  bought: bought ?? '',
  value: amountText(value),
  wearPerDay: amountText(wearPerDay),
});

export const newUnit = (): TypedUnit => typedUnit(blankUnit(''));

/** The units to save; what cannot be read is refused on the reader. @param amount reads an amount that may be empty */
export function unitFields(typed: readonly TypedUnit[], reader: Reader, amount: (field: string, text: string) => Money | null): KitUnit[] {
  const serials = typed.map(({ serial }) => serial.trim().toLowerCase());
  return typed.map(({ serial, place, owner, services, bought, value, wearPerDay, note }, at) => {
    const path = `units[${at}]`;
    if (serial.trim() === '') reader.refuse(`${path}.serial`, 'is empty; a unit is told by its serial');
    else if (serials.indexOf(serial.trim().toLowerCase()) < at) reader.refuse(`${path}.serial`, 'stands twice');
    refuseDates(services, `${path}.services`, reader);
    return {
      serial: serial.trim(),
      place,
      services,
      note,
      owner: owner === 'as the thing' ? null : owner,
      bought: bought || null,
      value: amount(`${path}.value`, value),
      wearPerDay: amount(`${path}.wearPerDay`, wearPerDay),
    };
  });
}

/** Refuses spans of dates that are not whole or run backwards. */
export function refuseDates(spans: readonly { from: string; to: string }[], path: string, reader: Reader): void {
  for (const [at, { from, to }] of spans.entries()) {
    if (from === '') reader.refuse(`${path}[${at}].from`, 'is empty; say from which date');
    if (to === '') reader.refuse(`${path}[${at}].to`, 'is empty; say to which date');
    else if (to < from) reader.refuse(`${path}[${at}].to`, 'is before the first date');
  }
}
