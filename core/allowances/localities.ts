/**
 * Which per-diem rates hold at a place, by whose rules one travels.
 */
import type { Place } from '../contract/parts.ts';
import { canada, usTier, type PerDiemRate } from './rates.ts';

/**
 * Tiers of localities, dollars a day: US General Services Administration, per diem rates, fiscal years 2025 and 2026.
 * Only some of those that have a rate of their own; others are not told apart from the standard rate here.
 */
const TIERS: Record<string, Record<string, string>> = {
  California: { 'San Diego': '86', 'Los Angeles': '86' },
  Colorado: { Denver: '92', Aurora: '92' },
  Illinois: { Chicago: '92' },
  Louisiana: { 'New Orleans': '80' },
  Michigan: { Detroit: '74' },
  Minnesota: { Minneapolis: '92', 'Saint Paul': '92' },
  Nevada: { 'Las Vegas': '86' },
  'New York': { 'New York City': '92' },
  Oregon: { Portland: '86' },
  Tennessee: { Nashville: '86' },
  Texas: { Austin: '80' },
  Washington: { Seattle: '92' },
  Wisconsin: { Milwaukee: '80', Madison: '80' },
};
const STANDARD = '68';
/** Their rates are set by others. */
const NOT_CONTIGUOUS = ['Alaska', 'Hawaii'];
const NORTH = ['Yukon', 'Northwest Territories', 'Nunavut'];

/**
 * The rates of a place, under its own name: those of the United States for who lives there, those of Canada's Travel Directive for who
 * lives in Canada (which pays the same figures in US dollars in the United States). Nothing where none is known.
 */
export function ratesAt(place: Pick<Place, 'name' | 'region' | 'country'>, homeCountry: string): PerDiemRate[] {
  const { name, region, country } = place;
  if (homeCountry === 'US' && country === 'US' && !NOT_CONTIGUOUS.includes(region)) {
    const own = TIERS[region]?.[name];
    const rate = usTier(name, own ?? STANDARD);
    if (!rate) return [];
    return [own ? rate : { ...rate, source: `${rate.source}: the standard rate; look whether ${name} has one of its own` }];
  }
  if (homeCountry === 'CA' && country === 'CA' && !NORTH.includes(region)) return [{ ...canada, place: name }];
  if (homeCountry === 'CA' && country === 'US' && region !== 'Alaska') return [{ ...canada, place: name, currency: 'USD' }];
  return [];
}
