/**
 * Lifts of the way and the kit that are tried on: travel on other days, flights, tickets given up, couriers.
 */
import { denver, duluth, fargo, milwaukee, thunderBay } from '../core/trips/places.ts';
import type { Situation } from './shape.ts';

const longDay: Situation = {
  name: 'travelled on the day itself, a long day is over fourteen hours',
  home: duluth,
  ways: [{ between: [duluth, fargo], minutes: 240 }],
  booked: [],
  candidate: { place: fargo, days: ['2026-06-09 09:00-19:30'] },
  answer: 'free',
  findings: [{ kind: 'duty', hardness: 'know', numbers: { duty: 1110, driving: 480 } }],
  offers: [
    'Travel the day before, leaving Monday 16:00: one more night',
    'Travel home the day after, leaving Wednesday 09:00: one more night',
  ],
};
const drive = { mode: 'drive' as const, source: 'ticketed' as const, before: 0, after: 0, berth: false, cost: '', note: '' };
const outBefore = { ...drive, from: duluth, to: fargo, depart: '2026-06-08T16:00', arrive: '2026-06-08T20:00' };
const homeAfter = { ...drive, from: fargo, to: duluth, depart: '2026-06-10T09:00', arrive: '2026-06-10T13:00' };
const flown = {
  ...drive,
  mode: 'flight' as const,
  before: null,
  after: null,
  from: milwaukee,
  to: denver,
  depart: '2026-06-09T11:00',
  arrive: '2026-06-09T13:00',
};
const fair = { title: 'Bread fair', place: milwaukee, days: ['2026-06-08 08:00-20:00'] };
const ticketed: Situation = {
  name: 'a ticket under the days: it is offered to give it up, with its cost',
  home: duluth,
  ways: [{ between: [duluth, denver], minutes: 900 }],
  booked: [
    {
      title: 'Mile-high expo',
      place: denver,
      days: ['2026-06-12 08:00-18:00'],
      tickets: [{ mode: 'flight', from: duluth, to: denver, depart: '2026-06-09T10:00', arrive: '2026-06-09T12:00', cost: 'USD 180' }],
    },
  ],
  candidate: { place: duluth, days: ['2026-06-09 07:00-11:00 half'] },
  answer: 'free if',
  findings: [{ kind: 'ticket', hardness: 'settle', with: 'Mile-high expo' }],
  offers: ['Change or give up the flight Duluth to Denver (USD 180)'],
};
const oneLight: Situation = {
  name: 'kit that lies at home sends one home between two towns, or is sent on',
  home: duluth,
  ways: [
    { between: [milwaukee, duluth], minutes: 415 },
    { between: [duluth, thunderBay], minutes: 225 },
    { between: [milwaukee, thunderBay], minutes: 390 },
  ],
  kit: [{ name: 'Light', owned: 2 }],
  booked: [{ title: 'Bread fair', place: milwaukee, days: ['2026-06-03 08:00-20:00'] }],
  candidate: { place: thunderBay, days: ['2026-06-04 16:00-20:00 half'], kit: { Light: 2 } },
  answer: 'free if',
  findings: [{ kind: 'rest', hardness: 'settle', numbers: { by: 'home' } }],
  offers: ['Send Light on by courier'],
};

export const liftsOnTheWay: readonly Situation[] = [
  longDay,
  {
    ...longDay,
    name: 'travelling before and after takes the ways out of the day',
    tryOn: { legs: [outBefore, homeAfter] },
    findings: [],
    offers: [],
    silent: ['duty'],
  },
  {
    ...longDay,
    name: 'travelling before alone leaves the way home on the day',
    tryOn: { legs: [outBefore] },
    findings: [{ kind: 'duty', hardness: 'know', numbers: { duty: 870, driving: 240 } }],
    offers: ['Travel home the day after, leaving Wednesday 09:00: one more night'],
  },
  {
    name: 'a drive that is too long is asked of a flight',
    home: duluth,
    booked: [fair],
    candidate: { place: denver, days: ['2026-06-09 14:00-19:00 half'] },
    answer: 'free if',
    findings: [{ kind: 'rest', hardness: 'settle', numbers: { source: 'estimated' } }],
    offers: ['If a flight lands in Denver by 13:00 (14:00 at home)'],
  },
  {
    name: 'a flight that is tried on is a ticket: its times before and after count',
    home: duluth,
    booked: [fair],
    candidate: { place: denver, days: ['2026-06-09 14:00-19:00 half'] },
    tryOn: { legs: [flown] },
    answer: 'free',
    findings: [],
  },
  ticketed,
  {
    ...ticketed,
    name: 'given up, it is settled, and its cost stays in sight',
    tryOn: { withoutTickets: [{ fromKey: duluth.key, toKey: denver.key, departAt: '2026-06-09T15:00:00Z' }] },
    answer: 'free',
    findings: [{ kind: 'ticket given up', hardness: 'know', with: 'Mile-high expo', says: 'That costs USD 180.' }],
    offers: [],
  },
  oneLight,
  { ...oneLight, name: 'sent on by courier one goes direct', tryOn: { couriers: ['Light'] }, answer: 'free', findings: [], offers: [] },
  {
    name: 'a courier makes no second unit where two jobs use it at once',
    home: duluth,
    kit: [{ name: 'Mixer', owned: 1, subHire: 'USD 90 a day' }],
    booked: [{ title: 'League gala', place: duluth, days: ['2026-06-03 16:00-22:00'], pencilled: 1, kit: { Mixer: 1 } }],
    candidate: { place: duluth, days: ['2026-06-03 08:00-18:00'], kit: { Mixer: 1 } },
    tryOn: { couriers: ['Mixer'] },
    answer: 'free if',
    findings: [
      { kind: 'overlap', hardness: 'settle' },
      { kind: 'kit', hardness: 'settle', numbers: { short: 1 } },
    ],
    offers: ['Sub-hire 1 Mixer at USD 90 a day'],
  },
  {
    name: 'what comes back from service after packing is brought by courier to the first call',
    home: duluth,
    kit: [{ name: 'Camera', owned: 2, service: ['2026-06-01', '2026-06-03', 1] }],
    booked: [],
    candidate: { place: duluth, days: ['2026-06-04 08:00-18:00'], kit: { Camera: 2 } },
    tryOn: { couriers: ['Camera'] },
    answer: 'free',
    findings: [],
  },
];
