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
];
