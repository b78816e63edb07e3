/**
 * Tickets of the candidate and of others, walked leg by leg: before the call, after the wrap, and where one is no longer where a flight leaves.
 */
import { denver, duluth, losAngeles, milwaukee, stPaul, thunderBay, utcPort, utcTown } from '../core/trips/places.ts';
import type { Situation } from './shape.ts';

export const ownTickets: readonly Situation[] = [
  {
    name: 'the same ticket twice on a trip is a chain that cannot be, and no earlier call is offered for it',
    home: duluth,
    booked: [{ title: 'Trade congress', place: milwaukee, days: ['2026-06-07 09:00-18:00'] }],
    candidate: {
      place: denver,
      days: ['2026-06-09 08:00-18:00'],
      tickets: [
        { mode: 'flight', from: duluth, to: denver, depart: '2026-06-08T14:15', arrive: '2026-06-08T15:20' },
        { mode: 'flight', from: duluth, to: denver, depart: '2026-06-08T14:15', arrive: '2026-06-08T15:20' },
      ],
    },
    answer: 'free if',
    findings: [
      { kind: 'ticket', hardness: 'settle' },
      { kind: 'legs', hardness: 'settle' },
    ],
  },
  {
    name: 'a flight home of its own that leaves an hour after the wrap: two hours are needed before it',
    home: duluth,
    booked: [],
    candidate: {
      place: denver,
      days: ['2026-06-09 08:00-18:00'],
      tickets: [{ mode: 'flight', from: denver, to: duluth, depart: '2026-06-09T19:00', arrive: '2026-06-09T22:00' }],
    },
    answer: 'free if',
    findings: [{ kind: 'ticket', hardness: 'settle', numbers: { overlap: 60 } }],
  },
  {
    name: 'a flight home of its own two hours after the wrap is in time',
    home: duluth,
    booked: [],
    candidate: {
      place: denver,
      days: ['2026-06-09 08:00-17:00'],
      tickets: [{ mode: 'flight', from: denver, to: duluth, depart: '2026-06-09T19:00', arrive: '2026-06-09T22:00' }],
    },
    answer: 'free',
    findings: [],
  },
  {
    name: 'a flight out of its own that lands half an hour before the call: an hour is needed after it',
    home: duluth,
    booked: [],
    candidate: {
      place: denver,
      days: ['2026-06-09 09:00-18:00'],
      tickets: [{ mode: 'flight', from: duluth, to: denver, depart: '2026-06-09T07:30', arrive: '2026-06-09T08:30', cost: '140.00' }],
    },
    answer: 'free if',
    findings: [{ kind: 'ticket', hardness: 'settle', numbers: { overlap: 30 }, says: 'Giving it up costs 140.00' }],
  },
  {
    name: 'a flight out of its own to another airport, from which the typed way is too long',
    home: duluth,
    ways: [{ between: [stPaul, milwaukee], minutes: 320 }],
    booked: [],
    candidate: {
      place: milwaukee,
      days: ['2026-06-09 14:00-18:00 half'],
      tickets: [{ mode: 'flight', from: duluth, to: stPaul, depart: '2026-06-09T08:00', arrive: '2026-06-09T09:00' }],
    },
    // From 10:00 there are 4 h for 5 h 20 min.
    answer: 'free if',
    findings: [{ kind: 'ticket', hardness: 'settle', numbers: { have: 240, way: 320 } }],
  },
  {
    name: 'a flight home of its own from another airport, which cannot be reached from the wrap',
    home: duluth,
    ways: [{ between: [stPaul, milwaukee], minutes: 320 }],
    booked: [],
    candidate: {
      place: milwaukee,
      days: ['2026-06-09 08:00-14:00'],
      tickets: [{ mode: 'flight', from: stPaul, to: duluth, depart: '2026-06-09T20:00', arrive: '2026-06-09T21:00' }],
    },
    // To be there by 18:00: 4 h for 5 h 20 min.
    answer: 'free if',
    findings: [{ kind: 'ticket', hardness: 'settle', numbers: { have: 240, way: 320 } }],
  },
  {
    name: 'taking it means not being where a flight home of another job leaves',
    home: duluth,
    ways: [{ between: [denver, losAngeles], minutes: 930 }],
    booked: [
      {
        title: 'Mile-high expo',
        place: denver,
        days: ['2026-06-08 08:00-18:00', '2026-06-09 08:00-18:00'],
        tickets: [{ mode: 'flight', from: denver, to: duluth, depart: '2026-06-12T06:00', arrive: '2026-06-12T09:00', cost: '210.00' }],
      },
    ],
    candidate: { place: losAngeles, days: ['2026-06-11 12:00-20:00'] },
    // 20:00 in Los Angeles is 03:00Z; to be at the flight by 04:00 in Denver, 10:00Z: 7 h for 15 h 30 min.
    answer: 'free if',
    findings: [{ kind: 'ticket', hardness: 'settle', with: 'Mile-high expo', numbers: { have: 420, way: 930 } }],
  },
  {
    name: 'in time for the flight home of another job there is nothing to settle',
    home: duluth,
    ways: [{ between: [denver, losAngeles], minutes: 930 }],
    booked: [
      {
        title: 'Mile-high expo',
        place: denver,
        days: ['2026-06-08 08:00-18:00'],
        tickets: [{ mode: 'flight', from: denver, to: duluth, depart: '2026-06-12T18:00', arrive: '2026-06-12T21:00' }],
      },
    ],
    candidate: { place: losAngeles, days: ['2026-06-10 12:00-20:00'] },
    answer: 'free',
    findings: [],
  },
  {
    name: 'the flight home of a pencil behind is good to know',
    home: duluth,
    booked: [
      {
        title: 'Mile-high expo',
        place: denver,
        days: ['2026-06-08 08:00-18:00'],
        pencilled: 2,
        tickets: [{ mode: 'flight', from: denver, to: duluth, depart: '2026-06-09T10:00', arrive: '2026-06-09T13:00' }],
      },
    ],
    candidate: { place: denver, days: ['2026-06-09 09:00-17:00'], pencilled: 1 },
    answer: 'free',
    findings: [{ kind: 'ticket', hardness: 'know', with: 'Mile-high expo' }],
  },
  {
    name: 'a free date inside a long trip, on the day of the flight home for the break',
    home: duluth,
    ways: [{ between: [denver, duluth], minutes: 930 }],
    booked: [
      {
        title: 'Mile-high expo',
        place: denver,
        days: ['2026-06-08 09:00-17:00', '2026-06-11 09:00-17:00'],
        tickets: [
          { mode: 'flight', from: denver, to: duluth, depart: '2026-06-09T10:00', arrive: '2026-06-09T13:00' },
          { mode: 'flight', from: duluth, to: denver, depart: '2026-06-10T18:00', arrive: '2026-06-10T19:00' },
        ],
      },
    ],
    candidate: { place: denver, days: ['2026-06-09 09:00-17:00'] },
    // From 08:00 in Denver (14:00Z) to 14:00 in Duluth (19:00Z); the days are 15:00Z to 23:00Z: 4 h.
    answer: 'free if',
    findings: [{ kind: 'ticket', hardness: 'settle', with: 'Mile-high expo', numbers: { overlap: 240 } }],
  },
  {
    name: 'a short night on a marked berth is short of rest',
    home: utcTown,
    booked: [{ title: 'Night market', place: utcTown, days: ['2026-06-12 12:00-20:30'] }],
    candidate: {
      place: utcPort,
      days: ['2026-06-13 06:30-11:00 half'],
      tickets: [{ mode: 'ferry', from: utcTown, to: utcPort, depart: '2026-06-12T22:30', arrive: '2026-06-13T05:30', berth: true }],
    },
    // 7 h on board.
    answer: 'free if',
    findings: [{ kind: 'rest', hardness: 'settle', numbers: { have: 600, restLeft: 420, slack: -60 } }],
  },
  {
    name: 'rest before a train and rest after it are never added up',
    home: utcTown,
    booked: [{ title: 'Night market', place: utcTown, days: ['2026-06-12 12:00-20:00'] }],
    candidate: {
      place: utcPort,
      days: ['2026-06-13 08:00-11:00 half'],
      tickets: [{ mode: 'rail', from: utcTown, to: utcPort, depart: '2026-06-13T01:00', arrive: '2026-06-13T02:00' }],
    },
    // 20:00 to 23:00, and 03:00 to 08:00.
    answer: 'free if',
    findings: [{ kind: 'rest', hardness: 'settle', numbers: { have: 720, restLeft: 300, slack: -180 } }],
  },
  {
    name: 'a ticket beats a typed way',
    home: duluth,
    ways: [{ between: [duluth, denver], minutes: 930 }],
    booked: [{ title: 'Clinic opening', place: duluth, days: ['2026-06-08 08:00-16:00'] }],
    candidate: {
      place: denver,
      days: ['2026-06-09 07:00-12:00 half'],
      tickets: [{ mode: 'flight', from: duluth, to: denver, depart: '2026-06-08T18:30', arrive: '2026-06-08T20:00' }],
    },
    answer: 'free',
    findings: [],
  },
  {
    name: 'my own time marked never over a ticket must be settled: the ticket can be changed',
    home: duluth,
    personal: [{ title: 'School concert', from: '2026-06-08T17:00', to: '2026-06-08T19:00', hardness: 'never' }],
    booked: [],
    candidate: {
      place: denver,
      days: ['2026-06-09 09:00-17:00'],
      tickets: [{ mode: 'flight', from: duluth, to: denver, depart: '2026-06-08T18:00', arrive: '2026-06-08T19:30' }],
    },
    // From 16:00 to 20:30 in Denver; both hours of the concert.
    answer: 'free if',
    findings: [{ kind: 'personal time', hardness: 'settle', with: 'School concert', numbers: { overlap: 120 } }],
  },
  {
    name: 'a ticket that arrives before it leaves must be put right',
    home: duluth,
    booked: [],
    candidate: {
      place: denver,
      days: ['2026-06-09 09:00-17:00'],
      tickets: [
        { mode: 'flight', from: duluth, to: stPaul, depart: '2026-06-08T12:00', arrive: '2026-06-08T13:00' },
        { mode: 'flight', from: stPaul, to: denver, depart: '2026-06-08T12:30', arrive: '2026-06-08T14:00' },
      ],
    },
    answer: 'free if',
    findings: [
      {
        kind: 'legs',
        hardness: 'settle',
        says: 'The flight Saint Paul to Denver leaves on Monday 8 June 12:30, before the flight Duluth to Saint Paul arrives on Monday 8 June 13:00.',
      },
    ],
  },
  {
    name: 'one flight home that serves two jobs is one movement',
    home: duluth,
    booked: [
      {
        title: 'Mile-high expo',
        place: denver,
        days: ['2026-06-08 08:00-12:00 half'],
        tickets: [{ mode: 'flight', from: denver, to: duluth, depart: '2026-06-10T10:00', arrive: '2026-06-10T13:00' }],
      },
    ],
    candidate: {
      place: denver,
      days: ['2026-06-09 08:00-17:00'],
      tickets: [{ mode: 'flight', from: denver, to: duluth, depart: '2026-06-10T10:00', arrive: '2026-06-10T13:00' }],
    },
    answer: 'free',
    findings: [],
    silent: ['ticket'],
  },
  {
    name: 'two flights at once: one of them must be given up',
    home: duluth,
    booked: [
      {
        title: 'Mile-high expo',
        place: denver,
        days: ['2026-06-08 08:00-12:00 half'],
        tickets: [{ mode: 'flight', from: denver, to: duluth, depart: '2026-06-10T10:00', arrive: '2026-06-10T13:00' }],
      },
    ],
    candidate: {
      place: denver,
      days: ['2026-06-09 08:00-17:00'],
      tickets: [{ mode: 'flight', from: denver, to: stPaul, depart: '2026-06-10T11:00', arrive: '2026-06-10T13:30' }],
    },
    // 08:00 in Denver to 14:00 in Duluth, and 09:00 to 14:30: 4 h together.
    answer: 'free if',
    findings: [
      {
        kind: 'ticket',
        hardness: 'settle',
        with: 'Mile-high expo',
        numbers: { overlap: 240 },
        says: 'Your flight from Denver to Saint Paul leaves on Wednesday 10 June 11:00 (12:00 at home): with the time before and after it, it takes 4 h of the flight for Mile-high expo.',
      },
    ],
  },
  {
    name: 'a ferry that must be reached from a wrap over a border: the three hours before it are not there',
    home: thunderBay,
    booked: [{ title: 'Rink opening', place: thunderBay, days: ['2026-06-08 08:00-14:00'] }],
    candidate: {
      place: duluth,
      days: ['2026-06-09 12:00-16:00 half'],
      tickets: [{ mode: 'ferry', from: thunderBay, to: duluth, depart: '2026-06-08T16:30', arrive: '2026-06-08T22:00' }],
    },
    // At the ferry by 13:30, half an hour before the wrap.
    answer: 'free if',
    findings: [{ kind: 'ticket', hardness: 'settle', with: 'Rink opening', numbers: { overlap: 30 } }],
  },
];
