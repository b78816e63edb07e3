/**
 * Kit, tickets, my own time, and the cautions.
 */
import { denver, duluth, fargo, milwaukee, stPaul, thunderBay } from '../core/trips/places.ts';
import type { Situation } from './shape.ts';

const eightToSix = (...dates: string[]) => dates.map((date) => `2026-06-${date} 08:00-18:00`);

export const kitAndTickets: readonly Situation[] = [
  {
    name: 'four batteries: three charge for six hours, two are wanted two hours after: short by one for four hours',
    home: duluth,
    kit: [{ name: 'Battery', owned: 4, resetHours: 6, resetOnRoad: true }],
    booked: [{ title: 'Clinic opening', place: duluth, days: ['2026-06-03 12:00-20:00'], kit: { Battery: 3 } }],
    candidate: { place: duluth, days: ['2026-06-03 22:00-23:30 half'], kit: { Battery: 2 } },
    answer: 'free if',
    findings: [{ kind: 'kit', hardness: 'settle', with: 'Clinic opening', numbers: { short: 1, demand: 5, owned: 4, lasts: 90 } }],
  },
  {
    name: 'the same until two in the morning',
    home: duluth,
    kit: [{ name: 'Battery', owned: 4, resetHours: 6, resetOnRoad: true }],
    booked: [{ title: 'Clinic opening', place: duluth, days: ['2026-06-03 12:00-20:00'], kit: { Battery: 3 } }],
    candidate: { place: duluth, days: ['2026-06-03 22:00-05:00'], kit: { Battery: 2 } },
    answer: 'free if',
    findings: [
      {
        kind: 'kit',
        hardness: 'settle',
        numbers: { short: 1, lasts: 240 },
        says: 'to Thursday 4 June 02:00 (4 h) while the last are made ready again',
      },
    ],
  },
  {
    name: 'the reset of the candidate itself counts against a later job',
    home: duluth,
    kit: [{ name: 'Battery', owned: 4, resetHours: 6, resetOnRoad: true }],
    booked: [{ title: 'Late show', place: duluth, days: ['2026-06-03 22:00-05:00'], kit: { Battery: 3 } }],
    candidate: { place: duluth, days: ['2026-06-03 12:00-20:00'], kit: { Battery: 2 } },
    answer: 'free if',
    findings: [{ kind: 'kit', hardness: 'settle', with: 'Late show', numbers: { short: 1, lasts: 240 } }],
  },
  {
    name: 'kit is handed on by the same person: the one camera goes straight from job to job',
    home: duluth,
    kit: [{ name: 'Camera', owned: 1 }],
    booked: [{ title: 'Bread fair', place: milwaukee, days: ['2026-06-03 08:00-12:00 half'], kit: { Camera: 1 } }],
    candidate: { place: milwaukee, days: ['2026-06-03 13:00-18:00 half'], kit: { Camera: 1 } },
    answer: 'free',
    findings: [],
  },
  {
    name: 'kit that is at home must be fetched: the way is by home, and half an hour for the change',
    home: duluth,
    ways: [
      { between: [milwaukee, duluth], minutes: 415 },
      { between: [duluth, thunderBay], minutes: 225 },
      { between: [milwaukee, thunderBay], minutes: 390 },
    ],
    kit: [{ name: 'Light', owned: 2 }],
    booked: [{ title: 'Bread fair', place: milwaukee, days: ['2026-06-03 08:00-20:00'] }],
    candidate: { place: thunderBay, days: ['2026-06-04 16:00-20:00 half'], kit: { Light: 2 } },
    // 19 h; 415 + 225 + 30 by home and 8 h of rest are 1,150.
    answer: 'free if',
    findings: [{ kind: 'rest', hardness: 'settle', numbers: { have: 1140, way: 670, slack: -10, by: 'home' } }],
  },
  {
    name: 'the same without kit goes direct',
    home: duluth,
    ways: [
      { between: [milwaukee, duluth], minutes: 415 },
      { between: [duluth, thunderBay], minutes: 225 },
      { between: [milwaukee, thunderBay], minutes: 390 },
    ],
    booked: [{ title: 'Bread fair', place: milwaukee, days: ['2026-06-03 08:00-20:00'] }],
    candidate: { place: thunderBay, days: ['2026-06-04 16:00-20:00 half'] },
    answer: 'free',
    findings: [],
  },
  {
    name: 'a reset that is not done on the road sends one home',
    home: duluth,
    ways: [
      { between: [milwaukee, duluth], minutes: 415 },
      { between: [milwaukee, stPaul], minutes: 300 },
      { between: [duluth, stPaul], minutes: 150 },
    ],
    kit: [{ name: 'Camera', owned: 1, resetHours: 2, resetOnRoad: false }],
    booked: [{ title: 'Bread fair', place: milwaukee, days: ['2026-06-03 08:00-20:00'], kit: { Camera: 1 } }],
    candidate: { place: stPaul, days: ['2026-06-04 13:00-18:00 half'], kit: { Camera: 1 } },
    answer: 'free if',
    findings: [{ kind: 'rest', hardness: 'settle', numbers: { have: 1020, way: 595, by: 'home' } }],
  },
  {
    name: 'counted stock is short for the two hours that two jobs of a crew overlap',
    home: duluth,
    kit: [{ name: 'Transmitter', owned: 4, subHire: '35.00 a day' }],
    booked: [{ title: 'League gala', place: duluth, days: ['2026-06-03 16:00-22:00'], pencilled: 2, kit: { Transmitter: 3 } }],
    candidate: { place: duluth, days: ['2026-06-03 08:00-18:00'], pencilled: 1, kit: { Transmitter: 2 } },
    answer: 'free',
    findings: [
      { kind: 'overlap', hardness: 'know' },
      { kind: 'kit', hardness: 'know', with: 'League gala', numbers: { short: 1, lasts: 120 } },
    ],
  },
  {
    name: 'a unit in service is not there: the last day of the service counts whole',
    home: duluth,
    kit: [{ name: 'Camera', owned: 2, service: ['2026-06-01', '2026-06-03', 1] }],
    booked: [],
    candidate: { place: duluth, days: ['2026-06-04 08:00-18:00'], kit: { Camera: 2 } },
    // Packed twelve hours before the call, at 20:00 on the last day of the service.
    answer: 'free if',
    findings: [{ kind: 'kit', hardness: 'settle', numbers: { short: 1, inService: 1, lasts: 240 } }],
  },
  {
    name: 'a service that ends the day before is over in time',
    home: duluth,
    kit: [{ name: 'Camera', owned: 2, service: ['2026-06-01', '2026-06-02', 1] }],
    booked: [],
    candidate: { place: duluth, days: ['2026-06-04 08:00-18:00'], kit: { Camera: 2 } },
    answer: 'free',
    findings: [],
  },
  {
    name: 'more is asked for than is owned, and a sub-hire that is tried on lifts it',
    home: duluth,
    kit: [{ name: 'Camera', owned: 2 }],
    booked: [],
    candidate: { place: duluth, days: ['2026-06-04 08:00-18:00'], kit: { Camera: 3 } },
    tryOn: { kitExtra: [{ item: 'Camera', count: 1 }] },
    answer: 'free',
    findings: [],
  },
  {
    name: 'another unit that can do the same lifts it too',
    home: duluth,
    kit: [
      { name: 'Camera A', owned: 1, does: 'camera' },
      { name: 'Camera B', owned: 1, does: 'camera' },
    ],
    booked: [],
    candidate: { place: duluth, days: ['2026-06-04 08:00-18:00'], kit: { 'Camera A': 2 } },
    tryOn: { kitInstead: [{ item: 'Camera A', other: 'Camera B', count: 1 }] },
    answer: 'free',
    findings: [],
  },
  {
    name: 'a thing that is not on the list is short',
    home: duluth,
    booked: [],
    candidate: { place: duluth, days: ['2026-06-04 08:00-18:00'], kit: { Crane: 1 } },
    answer: 'free if',
    findings: [{ kind: 'kit', hardness: 'settle', numbers: { short: 1, owned: 0 } }],
  },
  {
    name: 'a ticketed leg on the days must be settled, it never blocks by itself',
    home: duluth,
    booked: [
      {
        title: 'Mile-high expo',
        place: denver,
        days: eightToSix('10'),
        tickets: [{ mode: 'flight', from: duluth, to: denver, depart: '2026-06-09T10:00', arrive: '2026-06-09T12:00', cost: '180.00' }],
      },
    ],
    candidate: { place: duluth, days: ['2026-06-09 07:00-11:00 half'] },
    answer: 'free if',
    // Without the flight the way is an estimated drive, which leaves no rest.
    findings: [
      { kind: 'ticket', hardness: 'settle', with: 'Mile-high expo', says: 'Giving it up costs 180.00' },
      { kind: 'rest', hardness: 'settle', with: 'Mile-high expo', numbers: { source: 'estimated' } },
    ],
  },
  {
    name: 'open-jaw: flown out from home, on by the candidate, back by a ticket from another place',
    home: duluth,
    ways: [{ between: [denver, fargo], minutes: 840 }],
    booked: [
      {
        title: 'Mile-high expo',
        place: denver,
        days: eightToSix('10'),
        tickets: [{ mode: 'flight', from: duluth, to: denver, depart: '2026-06-09T10:00', arrive: '2026-06-09T12:00' }],
      },
    ],
    candidate: {
      place: fargo,
      days: eightToSix('12'),
      tickets: [{ mode: 'rail', from: fargo, to: duluth, depart: '2026-06-12T21:00', arrive: '2026-06-13T01:00' }],
    },
    answer: 'free',
    findings: [],
  },
  {
    name: 'the time before a ticketed leg must be met, not only the sum',
    home: duluth,
    ways: [{ between: [milwaukee, duluth], minutes: 415 }],
    booked: [
      { title: 'Bread fair', place: milwaukee, days: ['2026-06-08 08:00-20:00'] },
      {
        title: 'Mile-high expo',
        place: denver,
        days: ['2026-06-10 18:00-22:00 half'],
        tickets: [{ mode: 'flight', from: duluth, to: denver, depart: '2026-06-10T05:00', arrive: '2026-06-10T07:00' }],
      },
    ],
    candidate: { place: milwaukee, days: ['2026-06-09 12:00-21:00'] },
    // At the flight by 03:00: 6 h for a way of 6 h 55 min, though the call is not before 18:00.
    answer: 'free if',
    findings: [{ kind: 'ticket', hardness: 'settle', with: 'Mile-high expo' }],
  },
  {
    name: 'a marked berth overnight is a rest',
    home: duluth,
    booked: [
      {
        title: 'Bread fair',
        place: milwaukee,
        days: ['2026-06-08 08:00-20:00'],
        tickets: [{ mode: 'ferry', from: milwaukee, to: stPaul, depart: '2026-06-08T22:30', arrive: '2026-06-09T07:00', berth: true }],
      },
    ],
    candidate: { place: stPaul, days: ['2026-06-09 08:30-12:00 half'] },
    answer: 'free',
    findings: [],
  },
  {
    name: 'the same without a berth is not',
    home: duluth,
    booked: [
      {
        title: 'Bread fair',
        place: milwaukee,
        days: ['2026-06-08 08:00-20:00'],
        tickets: [{ mode: 'ferry', from: milwaukee, to: stPaul, depart: '2026-06-08T22:30', arrive: '2026-06-09T07:00' }],
      },
    ],
    candidate: { place: stPaul, days: ['2026-06-09 08:30-12:00 half'] },
    answer: 'free if',
    findings: [{ kind: 'rest', hardness: 'settle', with: 'Bread fair' }],
  },
  {
    name: 'my own time marked never blocks',
    home: duluth,
    personal: [{ title: 'Ida’s birthday', from: '2026-06-09T10:00', to: '2026-06-09T20:00', hardness: 'never' }],
    booked: [],
    candidate: { place: duluth, days: eightToSix('09') },
    answer: 'not possible',
    findings: [{ kind: 'personal time', hardness: 'blocks', with: 'Ida’s birthday', numbers: { overlap: 480 } }],
  },
  {
    name: 'my own time that is not marked must be settled, and touching is not overlapping',
    home: duluth,
    personal: [
      { title: 'Dentist', from: '2026-06-09T10:00', to: '2026-06-09T11:00', hardness: 'settle' },
      { title: 'Choir', from: '2026-06-09T18:00', to: '2026-06-09T20:00', hardness: 'never' },
    ],
    booked: [],
    candidate: { place: duluth, days: eightToSix('09') },
    answer: 'free if',
    findings: [{ kind: 'personal time', hardness: 'settle', with: 'Dentist', numbers: { overlap: 60 } }],
  },
  {
    name: 'my own time under a planned way is good to know',
    home: duluth,
    ways: [{ between: [duluth, fargo], minutes: 240 }],
    personal: [{ title: 'Choir', from: '2026-06-08T18:00', to: '2026-06-08T19:00', hardness: 'never' }],
    booked: [],
    candidate: { place: fargo, days: ['2026-06-09 07:00-18:00'] },
    answer: 'free',
    findings: [{ kind: 'personal time', hardness: 'know', with: 'Choir' }],
  },
];
