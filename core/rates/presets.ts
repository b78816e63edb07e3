/**
 * Sets of terms to start from. All figures are common practice; texts are starting points, not legal advice.
 */
import type { TermsPreset } from '../contract/rates.ts';
import { defaultTerms } from './defaults.ts';

/** Presets, the usual one first. */
export const termsPresets: readonly TermsPreset[] = [
  { name: 'Usual', about: 'Half to ink the dates, the rest two weeks after the invoice.', terms: defaultTerms },
  {
    name: 'Company that pays late',
    about: 'No deposit, 30 days to pay, a firmer cancellation scale instead.',
    terms: {
      ...defaultTerms,
      depositPercent: '0',
      payDays: 30,
      cancellation: [
        { underHours: 21 * 24, percent: '25' },
        { underHours: 10 * 24, percent: '50' },
        { underHours: 72, percent: '100' },
      ],
    },
  },
  {
    name: 'New client, short notice',
    about: 'Paid before first call; valid for three days.',
    terms: { ...defaultTerms, validDays: 3, depositPercent: '100', payDays: 0 },
  },
  {
    name: 'Old friend of the house',
    about: 'No deposit, and nothing owed until a week before.',
    terms: {
      ...defaultTerms,
      depositPercent: '0',
      payDays: 30,
      cancellation: [
        { underHours: 7 * 24, percent: '25' },
        { underHours: 48, percent: '50' },
      ],
    },
  },
];
