/**
 * Ways home between two jobs for the kit, where tickets stand between them, and ways that cannot be made at all.
 */
import { duluth, fargo, losAngeles, milwaukee, stPaul } from '../core/trips/places.ts';
import type { Situation } from './shape.ts';

export const waysHome: readonly Situation[] = [
  {
    name: 'kit that is reset at home alone is reset there after the flight home, not on a second way home before it',
    home: duluth,
    ways: [{ between: [duluth, fargo], minutes: 240 }],
    kit: [{ name: 'Camera', owned: 1, resetHours: 2, resetOnRoad: false }],
    booked: [{ title: 'Robotics final', place: fargo, days: ['2026-06-12 12:00-18:00'], kit: { Camera: 1 } }],
    candidate: {
      place: losAngeles,
      days: ['2026-06-10 08:00-17:00'],
      kit: { Camera: 1 },
      tickets: [
        { mode: 'flight', from: duluth, to: losAngeles, depart: '2026-06-09T10:00', arrive: '2026-06-09T13:00' },
        { mode: 'flight', from: losAngeles, to: duluth, depart: '2026-06-11T08:00', arrive: '2026-06-11T14:00' },
      ],
    },
    answer: 'free',
    findings: [],
    silent: ['ticket', 'between', 'rest'],
  },
  {
    name: 'a flight on to the next job passes home by: the kit that lies there sends one home in one gap, not in each',
    home: duluth,
    ways: [{ between: [duluth, stPaul], minutes: 150 }],
    kit: [{ name: 'Light', owned: 2 }],
    booked: [{ title: 'Bread fair', place: milwaukee, days: ['2026-06-10 08:00-14:00'], kit: { Light: 2 } }],
    candidate: {
      place: stPaul,
      days: ['2026-06-08 08:00-12:00'],
      tickets: [{ mode: 'flight', from: stPaul, to: milwaukee, depart: '2026-06-09T10:00', arrive: '2026-06-09T11:30' }],
    },
    // 150 + 150 + 30 before the flight.
    answer: 'free',
    findings: [],
  },
  {
    name: 'a drive that cannot be made is no duty: none is laid over the first call',
    home: duluth,
    ways: [{ between: [milwaukee, duluth], minutes: 780 }],
    booked: [{ title: 'Bakers’ congress', place: milwaukee, days: ['2026-06-05 12:00-22:30'] }],
    candidate: { place: duluth, days: ['2026-06-06 10:00-21:00'] },
    // Drawn after the rest it would last from 06:30 to 19:30, and the day with it 14 h 30 min.
    answer: 'not possible',
    findings: [{ kind: 'between', hardness: 'blocks', numbers: { have: 690, way: 780 } }],
    silent: ['duty'],
  },
  {
    name: 'nor is an estimated one of days laid after the first call',
    home: duluth,
    ways: [{ between: [duluth, fargo], minutes: 240 }],
    booked: [{ title: 'Night market', place: losAngeles, days: ['2026-06-05 12:00-22:30'] }],
    candidate: { place: fargo, days: ['2026-06-06 14:00-19:00 half'] },
    answer: 'free if',
    findings: [{ kind: 'between', hardness: 'settle', with: 'Night market' }],
    silent: ['duty', 'sixty hours'],
  },
  {
    name: 'a drive that fits without the rest alone is one',
    home: duluth,
    ways: [{ between: [milwaukee, duluth], minutes: 690 }],
    booked: [{ title: 'Bakers’ congress', place: milwaukee, days: ['2026-06-05 12:00-22:30'] }],
    candidate: { place: duluth, days: ['2026-06-06 10:00-21:00'] },
    answer: 'free if',
    findings: [
      { kind: 'rest', hardness: 'settle', numbers: { have: 690, way: 690 } },
      { kind: 'duty', hardness: 'know' },
    ],
  },
];
