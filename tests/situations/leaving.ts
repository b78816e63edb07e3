/**
 * Leaving from where one is, in time for the first call or the first ticket.
 */
import { denver, duluth, fargo, stPaul } from '../core/trips/places.ts';
import type { Situation } from './shape.ts';

export const leaving: readonly Situation[] = [
  {
    name: 'leaving now arrives at the call to the minute',
    home: duluth,
    ways: [{ between: [duluth, fargo], minutes: 240 }],
    booked: [],
    candidate: { place: fargo, days: ['2026-06-09 14:00-18:00 half'] },
    now: '2026-06-09T10:00',
    answer: 'free',
    findings: [],
  },
  {
    name: 'a minute later it does not',
    home: duluth,
    ways: [{ between: [duluth, fargo], minutes: 240 }],
    booked: [],
    candidate: { place: fargo, days: ['2026-06-09 14:00-18:00 half'] },
    now: '2026-06-09T10:01',
    answer: 'not possible',
    findings: [{ kind: 'departure', hardness: 'blocks', numbers: { have: 239, way: 240, slack: -1 } }],
  },
  {
    name: 'a pencil on the way there does not make it sooner: the call cannot be reached, whether or not the pencil goes',
    home: duluth,
    ways: [{ between: [duluth, fargo], minutes: 240 }],
    booked: [{ title: 'Coffee morning', place: duluth, days: ['2026-06-09 11:00-12:00 half'], pencilled: 1 }],
    candidate: { place: fargo, days: ['2026-06-09 14:00-18:00 half'] },
    now: '2026-06-09T10:30',
    answer: 'not possible',
    findings: [
      { kind: 'departure', hardness: 'blocks', numbers: { have: 210, way: 240, slack: -30 } },
      { kind: 'between', hardness: 'settle', with: 'Coffee morning', numbers: { have: 120, way: 240 } },
    ],
  },
  {
    name: 'in the middle of a job there, home is not where one leaves from',
    home: duluth,
    ways: [{ between: [duluth, fargo], minutes: 240 }],
    booked: [{ title: 'Robotics final', place: fargo, days: ['2026-06-09 08:00-12:00 half'] }],
    candidate: { place: fargo, days: ['2026-06-09 13:00-17:00 half'] },
    now: '2026-06-09T11:00',
    answer: 'free',
    findings: [],
  },
  {
    name: 'an hour after a wrap there one is still there, though nothing stands any more',
    home: duluth,
    ways: [{ between: [duluth, fargo], minutes: 240 }],
    booked: [{ title: 'Robotics final', place: fargo, days: ['2026-06-09 08:00-12:00 half'] }],
    candidate: { place: fargo, days: ['2026-06-09 15:00-19:00 half'] },
    now: '2026-06-09T13:00',
    answer: 'free',
    findings: [],
  },
  {
    name: 'a candidate whose first call is past says so, and no more',
    home: duluth,
    booked: [],
    candidate: { place: fargo, days: ['2026-06-09 13:00-17:00 half'] },
    now: '2026-06-09T13:10',
    answer: 'free',
    findings: [{ kind: 'past', hardness: 'know', numbers: { past: 10 } }],
    silent: ['departure'],
  },
  {
    name: 'a flight that cannot be reached from home any more must be settled',
    home: duluth,
    booked: [],
    candidate: {
      place: denver,
      days: ['2026-06-09 18:00-22:00 half'],
      tickets: [{ mode: 'flight', from: stPaul, to: denver, depart: '2026-06-09T12:00', arrive: '2026-06-09T13:00' }],
    },
    ways: [{ between: [duluth, stPaul], minutes: 150 }],
    now: '2026-06-09T08:00',
    // At the flight by 10:00: 2 h for 2 h 30 min.
    answer: 'free if',
    findings: [{ kind: 'departure', hardness: 'settle', numbers: { have: 120, way: 150, slack: -30 } }],
  },
  {
    name: 'a flight from home that leaves in an hour and a half: the two hours before it are not there',
    home: duluth,
    booked: [],
    candidate: {
      place: denver,
      days: ['2026-06-09 18:00-22:00 half'],
      tickets: [{ mode: 'flight', from: duluth, to: denver, depart: '2026-06-09T12:00', arrive: '2026-06-09T13:00' }],
    },
    now: '2026-06-09T10:30',
    answer: 'free if',
    findings: [
      {
        kind: 'departure',
        hardness: 'settle',
        numbers: { have: -30, way: 0, slack: -30 },
        says: 'You should have been at the flight from Duluth 30 min ago, on Tuesday 9 June 10:00.',
      },
    ],
  },
];
