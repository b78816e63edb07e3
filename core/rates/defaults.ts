/**
 * A new rate card. Every figure is common practice in the trade without one source, and a setting; the prices are the person's own to give.
 */
import type { RateCardFields, Terms } from '../contract/rates.ts';
import type { Role } from '../contract/parts.ts';
import { usMileage } from './mileage.ts';

/** The terms that a card starts with; texts are starting points, not legal advice. */
export const defaultTerms: Terms = {
  validDays: 14,
  depositPercent: '50',
  payDays: 14,
  cancellation: [
    { underHours: 14 * 24, percent: '25' },
    { underHours: 7 * 24, percent: '50' },
    { underHours: 48, percent: '100' },
  ],
  rounds: 2,
  overtimeApprover: 'the contact on site, before it begins',
  illness: 'If I fall ill I say so at once and look for a stand-in you agree to; what was paid for days that I cannot work is paid back.',
  weather: 'Days that weather keeps us waiting are standby days; a day called off for weather counts as cancelled.',
  usage: 'Own channels and internal use, without limit in time. Paid advertising is agreed apart.',
  originals: 'Camera files are kept for 90 days after delivery, then deleted unless we agree otherwise.',
  postponement: 'Moved to a date agreed within 30 days: half of what a cancellation would owe.',
};

const roleNames: Record<Role, string> = {
  shoot: 'Shooting',
  'second camera': 'Second camera',
  'vision mixing': 'Vision mixing',
  livestream: 'Livestream',
  'edit only': 'Editing',
  photo: 'Photography',
  audio: 'Sound',
  other: 'Other work',
};

/**
 * A card with the defaults of the trade for a role. Day rate and edit hour are zero: no price is invented, the person gives them.
 * @param validFrom first date (YYYY-MM-DD) on which a job may begin at this card
 */
export function defaultCard(role: Role, currency: string, validFrom: string): RateCardFields {
  return {
    name: `${roleNames[role]} ${validFrom.slice(0, 4)}`,
    role,
    currency,
    validFrom,
    validTo: null,
    dayRate: '0',
    dayHours: '10',
    halfUpToHours: '5',
    halfPercent: '60',
    graceMinutes: 0,
    halfGraceMinutes: 15,
    overtime: [
      { fromHours: '0', toHours: '4', times: '1.5' },
      { fromHours: '4', toHours: null, times: '2' },
    ],
    prepPercent: '50',
    standbyPercent: '50',
    travelPercent: '50',
    weekendPercent: '0',
    holidayPercent: '50',
    nightPercent: '0',
    turnaroundHours: '10',
    forcedTimes: '1',
    editHour: '0',
    rush: [
      { underHours: 72, percent: '25' },
      { underHours: 7 * 24, percent: '10' },
    ],
    mileage: currency === 'USD' ? usMileage.filter((rate) => rate.from >= '2026-01-01') : [],
    mileageUnit: currency === 'USD' || currency === 'GBP' ? 'mi' : 'km',
    allowanceNight: null,
    kit: [],
    terms: defaultTerms,
  };
}
