/**
 * Will it fly? What the published rules say of a lithium battery on a passenger flight. The operator decides; stricter rules win.
 * By watt-hours and number of spares: IATA, "Passengers travelling with lithium batteries", 2018. Two power banks a person, in the
 * cabin only, from 27 March 2026: ICAO Doc 9284 (2025-2026), Addendum No. 1.
 */
import type { KitItemFields } from '../contract/kit.ts';
import { exact } from '../money/exact.ts';

/** Watt-hours up to which nobody has to be asked, and up to which the operator may approve. */
const FREE = 100;
const APPROVED = 160;

export type Air = { words: string; barred: boolean };

/** How one battery may travel, in a few words; no words for a thing without a battery. */
export function airOf({ battery, wattHours }: Pick<KitItemFields, 'battery' | 'wattHours'>): Air {
  if (battery === 'none') return { words: '', barred: false };
  if (wattHours === null) return { words: 'Wh not known: look on its label', barred: false };
  const energy = exact(wattHours);
  if (energy.compare(APPROVED) > 0) return { words: 'not as baggage; as declared cargo only', barred: true };
  const where = battery === 'in device' ? 'cabin or hold' : 'cabin only';
  const atMost = battery === 'power bank' || (battery === 'spare' && energy.compare(FREE) > 0) ? 'two a person' : '';
  const asked = energy.compare(FREE) > 0 ? 'if the operator approves' : '';
  return { words: [where, atMost, asked].filter((part) => part !== '').join(', '), barred: false };
}
