/** Documents on file. No right to work abroad is among them, so that a job over the border has something to settle. */
import type { SampleDocument } from './shape.ts';

export const documents: readonly SampleDocument[] = [
  { kind: 'passport', issuedBy: 'US Department of State', country: 'US', from: 'month -82', until: 'month 38' },
  { kind: 'driving licence', issuedBy: 'State of Minnesota', country: 'US', until: 'month 22' },
  {
    kind: 'liability insurance',
    issuedBy: 'Lakehead Mutual',
    country: 'US',
    from: 'month -4',
    until: 'month 8',
    countries: ['US', 'CA'],
    limit: { minor: 200_000_000, currency: 'USD' },
    leadDays: 3,
  },
  {
    kind: 'equipment insurance',
    issuedBy: 'Lakehead Mutual',
    country: 'US',
    from: 'month -4',
    until: 'month 8',
    worldwide: true,
    limit: { minor: 3_500_000, currency: 'USD' },
  },
  { kind: 'vehicle', title: 'Van registration', issuedBy: 'State of Minnesota', country: 'US', until: 'month 5' },
];
