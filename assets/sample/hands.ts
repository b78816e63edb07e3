/** People that I hire, all invented. */
import type { SampleHand } from './shape.ts';

export const hands: readonly SampleHand[] = [
  {
    name: 'Thaddeus Moorcroft',
    email: 'thaddeus@moorcroft.example',
    phone: '+1 218 555 0155',
    home: 'Duluth, Minnesota',
    rates: [
      { role: 'second camera', dayRate: '450.00', currency: 'USD', from: 'month -15' },
      { role: 'shoot', dayRate: '600.00', currency: 'USD', from: 'month -15' },
      { role: 'second camera', dayRate: '480.00', currency: 'USD', from: 'month -5' },
    ],
    ownKit: 'Own camera body, two lenses, no audio.',
    taxForm: true,
    insuredUntil: 'week 20 Fri',
    payDays: 14,
    backup: true,
    notes: 'Can take over a whole day when I am ill.',
  },
  {
    name: 'Wilhelmina Askew',
    email: 'mina@askewsound.example',
    phone: '+1 612 555 0184',
    home: 'Minneapolis, Minnesota',
    rates: [
      { role: 'audio', dayRate: '520.00', currency: 'USD', from: 'month -14' },
      { role: 'vision mixing', dayRate: '650.00', currency: 'USD', from: 'month -10' },
    ],
    ownKit: 'Sound bag with four wireless channels.',
    taxForm: true,
    insuredUntil: 'week 3 Wed',
    payDays: 30,
    notes: 'Insurance runs out soon: ask for the new certificate.',
  },
  {
    name: 'Ignatius Bellweather',
    email: 'iggy@bellweather.example',
    phone: '+1 701 555 0112',
    home: 'Fargo, North Dakota',
    rates: [{ role: 'second camera', dayRate: '400.00', currency: 'USD', from: 'month -8' }],
    ownKit: '',
    taxForm: false,
    insuredUntil: null,
    payDays: 30,
    notes: 'Tax form still to come.',
  },
];
