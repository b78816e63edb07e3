/**
 * The money of the sample year, by the keys of its jobs: hours as they were worked, deposits, bills, payments, and what went wrong with some.
 */
import type { SampleJob, SampleTime } from './shape.ts';

type Steps = SampleJob['steps'];
/**
 * What is the same for most jobs. `last`: days from the first date to the last. `deposit`: days before the first date on which its invoice
 * went out and was paid. `paid`: days from the bill to its payment, null while it is open.
 */
type Wrapped = { last: number; deposit?: readonly [out: number, paid: number | null]; paid: number | null };

/** `days` after the first date. */
const after = (days: number, hour: '00:10' | '08:40' | '09:20' | '10:30'): SampleTime => `${-days}d ${hour}`;

function depositOf([out, paid]: readonly [number, number | null]): Steps {
  return [
    [`${out}d 20:45`, 'bill', { kind: 'deposit' }],
    ...(paid === null ? [] : ([[`${paid}d 10:15`, 'paid', { kind: 'deposit' }]] satisfies Steps)),
  ];
}

/** Hours and bill on the morning after, money some days later. */
function wrapped({ last, deposit, paid }: Wrapped, ...more: Steps): Steps {
  return [
    ...(deposit ? depositOf(deposit) : []),
    [after(last + 1, '08:40'), 'worked', {}],
    [after(last + 1, '09:20'), 'bill', {}],
    ...(paid === null ? [] : ([[after(last + 1 + paid, '10:30'), 'paid', {}]] satisfies Steps)),
    ...more,
  ];
}

const parking = (day: number, amount: string) => ({ day, category: 'parking' as const, what: 'Parking', amount, billed: true });
const room = (day: number, amount: string) => ({ day, category: 'lodging' as const, what: 'Room for a night', amount });

export const money: Readonly<Record<string, Steps>> = {
  'reading-first': wrapped({ last: 0, paid: 9 }),
  'seminar-1': wrapped({ last: 1, deposit: [22, 15], paid: 12 }, ['-1d 21:00', 'spent', [parking(0, '18.00'), room(0, '139.00')]]),
  regatta: wrapped(
    { last: 1, deposit: [30, 21], paid: 13 },
    // The last heat ran late; the umpires' office said yes.
    ['-0d 19:40', 'overtime', { day: 0, minutes: 60, who: 'Jessamy Crake', said: true }],
  ),
  'pump-training': wrapped({ last: 0, deposit: [17, 3], paid: 44 }),
  symposium: wrapped({ last: 2, deposit: [43, 30], paid: 16 }, ['-2d 21:00', 'spent', [room(0, '151.00'), room(1, '151.00')]]),
  'festival-first': wrapped({ last: 2, deposit: [55, 41], paid: 20 }),
  premiere: wrapped({ last: 0, paid: 33 }, ['-22d 09:00', 'remind', { tone: 'kind' }]),
  'book-fair': [
    ...wrapped({ last: 0, paid: null }),
    ['-12d 11:00', 'paid', { amount: '1000.00', how: 'check' }],
    ['-40d 11:00', 'writeOff', { reason: 'The bank took it on the way' }],
  ],
  'clinic-training': wrapped({ last: 0, paid: 28 }),
  'seed-days': [
    ['62d 09:00', 'bill', { kind: 'deposit', rate: '1.082' }],
    ['51d 09:00', 'paid', { kind: 'deposit', rate: '1.091' }],
    ['-4d 08:40', 'worked', {}],
    ['-4d 09:20', 'bill', { rate: '1.085' }],
    ['-21d 09:00', 'paid', { rate: '1.079' }],
  ],
  'seminar-2': wrapped({ last: 0, deposit: [26, 17], paid: 11 }),
  qualifiers: wrapped({ last: 1, deposit: [28, 20], paid: 14 }),
  'members-day': wrapped({ last: 0, deposit: [33, 24], paid: 15 }, ['-0d 19:00', 'spent', [parking(0, '6.00')]]),
  'launch-cancelled': [
    ...depositOf([28, 12]),
    ['6d 10:00', 'bill', { kind: 'cancellation' }],
    ['-30d 10:00', 'paid', { kind: 'cancellation' }],
  ],
  concert: wrapped({ last: 0, deposit: [24, 13], paid: 10 }),
  gala: wrapped({ last: 0, paid: 41 }, ['-21d 09:00', 'remind', { tone: 'kind' }], ['-34d 09:00', 'remind', { tone: 'plain' }]),
  'studio-opening': [
    ...depositOf([37, 26]),
    ['12d 10:00', 'bill', { kind: 'cancellation' }],
    ['3d 10:00', 'paid', { kind: 'cancellation' }],
    ['-22d 08:40', 'worked', {}],
    ['-22d 09:20', 'bill', {}],
    ['-35d 10:30', 'paid', {}],
  ],
  winnipeg: [
    ['41d 09:00', 'bill', { kind: 'deposit', rate: '0.718' }],
    ['29d 09:00', 'paid', { kind: 'deposit', rate: '0.721' }],
    ['-2d 08:40', 'worked', {}],
    ['-2d 09:20', 'bill', { rate: '0.716' }],
    ['-17d 09:00', 'paid', { rate: '0.724' }],
  ],
  'budget-talk': wrapped({ last: 0, paid: 12 }),
  poets: wrapped({ last: 0, paid: 10 }),
  'ice-weekend': wrapped({ last: 2, deposit: [41, 30], paid: 15 }),
  'mill-film': wrapped({ last: 1, deposit: [34, 26], paid: 13 }, ['-1d 21:00', 'spent', [room(0, '118.00')]]),
  'staff-film': wrapped({ last: 3, paid: 29 }),
  'indoor-regatta': wrapped({ last: 0, deposit: [23, 12], paid: 14 }),
  dealers: [
    ...wrapped({ last: 2, deposit: [46, 4], paid: 44 }),
    // A morning less than billed: said so, and half a day given back.
    ['-6d 10:00', 'dispute', { why: 'The last morning was rained off by two hours' }],
    ['-9d 15:00', 'credit', { amount: '300.00', reason: 'Two hours less on the last morning' }],
    ['-9d 15:10', 'dispute', { why: null }],
  ],
  'prize-day': wrapped({ last: 0, deposit: [38, 27], paid: 12 }),
  'seminar-3': [
    ...wrapped({ last: 0, deposit: [26, 15], paid: null }),
    // They paid fifty too much; it stands to their credit.
    ['-12d 09:00', 'paid', { over: '50.00' }],
  ],
  'harbor-day': wrapped({ last: 0, paid: 21 }),
  'bread-contest': wrapped({ last: 1, deposit: [31, 18], paid: 24 }, ['-1d 21:00', 'spent', [parking(0, '22.00'), parking(1, '22.00')]]),
  'local-history': wrapped({ last: 0, paid: 8 }),
  'festival-second': wrapped({ last: 2, deposit: [70, 55], paid: 19 }, [
    '-1d 23:20',
    'overtime',
    { day: 1, minutes: 240, who: 'Rosalba Fenn', said: true },
  ]),
  lecture: wrapped({ last: 0, deposit: [20, 11], paid: 15 }),
  // Slow to pay: late still, with three letters gone out.
  'premiere-second': wrapped(
    { last: 0, deposit: [21, 8], paid: null },
    ['-22d 09:00', 'remind', { tone: 'kind' }],
    ['-36d 09:00', 'remind', { tone: 'plain' }],
    ['-57d 09:00', 'remind', { tone: 'firm' }],
  ),
  factory: wrapped({ last: 2, deposit: [32, 1], paid: 45 }),
  'open-day': wrapped({ last: 0, paid: 13 }),
  'pump-service': wrapped({ last: 0, paid: 43 }),
  'seminar-4': wrapped({ last: 0, deposit: [26, 16], paid: 12 }),
  'safety-days': [...wrapped({ last: 2, deposit: [27, 19], paid: null }), ['-20d 10:00', 'paid', { amount: '1500.00' }]],
  'choir-cancelled': [...depositOf([37, 25]), ['19d 10:30', 'giveBack', { reason: 'Cancelled in good time' }]],
  vaccination: wrapped({ last: 0, paid: 25 }),
  'night-of-lights': wrapped({ last: 0, paid: 38 }),
  // Twelve hours were agreed, thirteen were stayed: nobody said yes to the last.
  'league-regional': [
    ['24d 20:45', 'bill', { kind: 'deposit' }],
    ['15d 10:15', 'paid', { kind: 'deposit' }],
    ['-1d 08:40', 'worked', { instead: { 0: '08:00-21:00' } }],
    ['-1d 08:50', 'overtime', { day: 0, minutes: 60, who: 'Lucan Ostrander', said: false }],
    ['-2d 09:20', 'bill', {}],
    ['-8d 14:00', 'dispute', { why: 'The thirteenth hour was never agreed' }],
  ],
  letters: wrapped({ last: 0, paid: null }),
  congress: [
    ...depositOf([58, 44]),
    [after(1, '00:10'), 'worked', { days: [0] }],
    [after(2, '00:10'), 'worked', { days: [1] }],
    ['-1d 06:30', 'spent', [parking(0, '34.00')]],
  ],
  clinic: depositOf([39, 28]),
  'seminar-ahead': depositOf([58, 47]),
  'concert-ahead': [['13500m ago', 'bill', { kind: 'deposit' }]],
  'regatta-ahead': [
    ['24100m ago', 'bill', { kind: 'deposit' }],
    ['9000m ago', 'paid', { kind: 'deposit' }],
  ],
};
