/** What is going on while the sample is looked at: in Milwaukee, with a clinic and a final ahead, and an inquiry that collides. */
import type { SampleJob } from '../shape.ts';

const CURLING = `Hello Odaline,

our vision mixer broke her wrist this morning and the women's curling championship begins in two days. Could you run the vision mixer for us in Thunder Bay, Ontario, from {today +2} to {today +6}? Five days. Load-in is at 14:00 on the first day, and on the last day we are done at 21:00. The desk, four cameras and the crew are here; bring only what you like to work with.

Our budget is CAD 1,500 a day and we book your hotel. Please let me know by tomorrow noon, or I must ask elsewhere.

Kind regards
Fenella Strand
Northstone Curling Union
fenella@northstone.example
+1 807 555 0148`;

const READING = `Hi Odaline, it's Ondine from the Tamarack Library Friends. Would you film another reading for us in Duluth on {week 6 Thu}, 17:00 to 20:30? One camera as always. We have USD 500 for it.

Ondine Marsh
Tamarack Library Friends
ondine@tamarackfriends.example`;

export const now: readonly SampleJob[] = [
  {
    key: 'congress',
    title: 'Bakers’ trade congress',
    client: 'Guild of Crust and Crumb Bakers',
    place: 'Milwaukee, Wisconsin',
    first: 'today -2',
    days: [
      '0 shoot 08:00-18:00',
      '1 shoot 08:00-21:30',
      '2 shoot 09:00-18:00',
      '3 shoot 11:00-22:30',
      '5 edit 09:00-17:00',
      '6 edit 09:00-17:00',
    ],
    presets: ['Two cameras'],
    kit: [{ item: 'Wireless microphone', count: 4 }],
    deliverables: [
      { what: 'Highlight film, 3 min', due: 13 },
      { what: 'Awards evening, 45 min', due: 24, hours: '12' },
    ],
    notes: 'Awards on the second evening (bread) and on the last (pastry).',
    steps: [
      ['62d 09:20', 'asked', {}],
      ['62d 11:05', 'quote', { pencil: true }],
      ['60d 16:40', 'quote', { pencil: true, changes: [{ op: 'discount', percent: '5' }] }],
      ['59d 10:12', 'ink', { who: 'Perpetua Quillan', how: 'signed quote by mail' }],
      [
        '40d 14:00',
        'knows',
        {
          purchaseOrder: { required: true, number: 'GCC-1187' },
          insurance: { due: 20, sent: 24, detail: 'Guild and hall to be named; two million' },
          onSite: [
            { name: 'Perpetua Quillan', phone: '+1 414 555 0121', what: 'congress office' },
            { name: 'Ruben Lathe', phone: '+1 414 555 0193', what: 'hall master' },
          ],
          dock: 'Dock 3 on the river side; van until 07:30, then the car park on the roof.',
          access: 'Badges at the north desk, one for a hand.',
          power: 'Two circuits at the stage; the hall’s electrician sets the third.',
          network: 'Wired at the stage, wireless is full by ten.',
          dress: 'Dark, no logos',
          meals: 'Crew lunch at 12:30',
          sessions: 'Opening, four demonstrations, bread awards, members’ hour, pastry awards',
          mustHave: 'Every prize winner with their loaf; the sponsors’ wall; the youngest apprentice.',
          names: 'From the Guild’s list, printed on the day.',
          overtimeApprover: 'Perpetua Quillan',
          cutsApprover: 'Perpetua Quillan',
        },
      ],
    ],
  },
  {
    key: 'clinic',
    title: 'Clinic opening',
    client: 'Fernhollow Clinics',
    place: 'Duluth, Minnesota',
    first: 'Wed after 8',
    days: ['0 shoot 08:30-17:30'],
    presets: ['One camera', 'Interview light'],
    deliverables: [{ what: 'Opening film, 2 min', due: 10, hours: '4' }, 'Six interviews, one minute each'],
    steps: [
      ['41d 08:50', 'asked', {}],
      [
        '41d 13:15',
        'quote',
        {
          pencil: true,
          changes: [{ op: 'add', section: 'extras', what: 'Subtitles in two languages', quantity: '1', unit: 'film', unitPrice: '180.00' }],
        },
      ],
      ['40d 09:30', 'ink', { who: 'Dr. Ismene Tarrow', how: 'by mail' }],
      [
        '38d 10:00',
        'knows',
        {
          taxForm: { sent: 38 },
          confidentiality: { mayShow: false, until: 30, detail: 'Nothing is shown before their press day.' },
          onSite: [{ name: 'Dr. Ismene Tarrow', phone: '+1 218 555 0109', what: 'medical lead' }],
          mustHave: 'Ribbon, first patient walking in (form first), the roof garden.',
          cutsApprover: 'Dr. Ismene Tarrow',
        },
      ],
    ],
  },
  {
    key: 'robotics-final',
    title: 'Robotics league final',
    client: 'Prairie Gearbox League',
    place: 'Fargo, North Dakota',
    first: 'Sat after 9',
    days: ['0 shoot 08:00-18:30', '1 shoot 08:00-17:00'],
    presets: ['Two cameras'],
    budget: { amount: 3000, currency: 'USD', per: 'job' },
    deliverables: [{ what: 'Final rounds uncut', due: 2, hours: '2' }, 'League film, 4 min'],
    steps: [
      ['19d 09:40', 'asked', {}],
      ['19d 15:10', 'quote', { pencil: true }],
      ['18d 10:00', 'pencil', { until: 'in 1870m' }],
    ],
  },
  {
    key: 'curling',
    title: 'Curling championship',
    client: 'Northstone Curling Union',
    place: 'Thunder Bay, Ontario',
    role: 'vision mixing',
    first: 'today +2',
    days: [],
    steps: [['35m ago', 'asked', { message: CURLING }]],
  },
  {
    key: 'reading-ahead',
    title: 'Reading by lamplight',
    client: 'Tamarack Library Friends',
    place: 'Duluth, Minnesota',
    first: 'week 6 Thu',
    days: [],
    steps: [['310m ago', 'asked', { message: READING }]],
  },
];
