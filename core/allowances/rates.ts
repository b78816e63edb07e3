/**
 * Per-diem rates by place and date: meals and incidentals (M&IE) for one day away.
 */
export type Meal = 'breakfast' | 'lunch' | 'dinner';

/** What one day away is allowed at a place, in currency units, between two dates (both included). */
export type PerDiemRate = {
  place: string;
  currency: string;
  from: string;
  to: string;
  /** The whole day: meals and incidentals. */
  day: string;
  meals: Record<Meal, string>;
  incidental: string;
  source: string;
};

const US_YEARS = { from: '2024-10-01', to: '2026-09-30', currency: 'USD' };
const US_SOURCE = 'US General Services Administration, M&IE breakdowns, fiscal years 2025 and 2026';

/**
 * Meals and incidentals of the contiguous United States, by tier, dollars a day: US General Services Administration, "M&IE breakdowns",
 * fiscal years 2025 and 2026 (1 October 2024 to 30 September 2026); the standard rate is the tier of 68.
 * @param tier the day's rate of the locality, as the rate tables print it
 * @returns undefined for a tier that the tables do not know
 */
export function usTier(place: string, tier: string): PerDiemRate | undefined {
  const tiers: Record<string, [breakfast: string, lunch: string, dinner: string]> = {
    '68': ['16', '19', '28'],
    '74': ['18', '20', '31'],
    '80': ['20', '22', '33'],
    '86': ['22', '23', '36'],
    '92': ['23', '26', '38'],
  };
  const found = tiers[tier];
  if (!found) return undefined;
  const [breakfast, lunch, dinner] = found;
  return { ...US_YEARS, place, day: tier, meals: { breakfast, lunch, dinner }, incidental: '5', source: US_SOURCE };
}

/**
 * Canada, dollars a day, travel of up to 30 days: National Joint Council, Travel Directive, Appendix C, effective 1 April 2025.
 * The council issues new rates each April and October; those of October 2025 on are not known here.
 */
export const canada: PerDiemRate = {
  place: 'Canada',
  currency: 'CAD',
  from: '2025-04-01',
  to: '2025-09-30',
  day: '130.80',
  meals: { breakfast: '28.40', lunch: '27.40', dinner: '57.70' },
  incidental: '17.30',
  source: 'National Joint Council, Travel Directive, Appendix C, 1 April 2025',
};

/** The rate of a place that holds on a date (YYYY-MM-DD), if one is known. */
export function perDiemOn(rates: readonly PerDiemRate[], place: string, date: string): PerDiemRate | undefined {
  return rates.find((rate) => rate.place === place && rate.from <= date && date <= rate.to);
}
