/**
 * Long duty, days in a row, and hours in a week.
 */
import { duluth, fargo, superior } from '../core/trips/places.ts';
import type { Situation } from './shape.ts';

const eightToSix = (...dates: string[]) => dates.map((date) => `2026-06-${date} 08:00-18:00`);
const dates = (from: number, to: number) => Array.from({ length: to - from + 1 }, (_, index) => String(from + index).padStart(2, '0'));

export const cautions: readonly Situation[] = [
  {
    name: 'duty over a drive before the call',
    home: duluth,
    ways: [{ between: [duluth, fargo], minutes: 240 }],
    booked: [],
    candidate: { place: fargo, days: ['2026-06-09 09:00-19:30'] },
    // 4 h + 10 h 30 min, and 4 h home.
    answer: 'free',
    findings: [{ kind: 'duty', hardness: 'know', numbers: { duty: 1110, driving: 480 } }],
  },
  {
    name: 'fourteen hours of duty to the minute are not over fourteen',
    home: duluth,
    ways: [{ between: [duluth, fargo], minutes: 240 }],
    booked: [],
    candidate: { place: fargo, days: ['2026-06-09 09:00-15:00'] },
    answer: 'free',
    findings: [],
    silent: ['duty'],
  },
  {
    name: 'the seventh day in a row',
    home: duluth,
    booked: [{ title: 'Clinic series', place: duluth, days: eightToSix(...dates(1, 6)).map((day) => day.replace('18:00', '12:00')) }],
    candidate: { place: superior, days: ['2026-06-07 08:00-12:00 half'] },
    answer: 'free',
    findings: [{ kind: 'seventh day', hardness: 'know', numbers: { daysInARow: 7 } }],
    silent: ['sixty hours', 'duty'],
  },
  {
    name: 'six days in a row are six',
    home: duluth,
    booked: [{ title: 'Clinic series', place: duluth, days: eightToSix(...dates(1, 5)).map((day) => day.replace('18:00', '12:00')) }],
    candidate: { place: superior, days: ['2026-06-06 08:00-12:00 half'] },
    answer: 'free',
    findings: [],
    silent: ['seventh day'],
  },
  {
    name: 'sixty hours to the minute are not over sixty',
    home: duluth,
    booked: [{ title: 'Clinic series', place: duluth, days: eightToSix(...dates(1, 5)) }],
    candidate: { place: duluth, days: ['2026-06-06 08:00-18:00'] },
    answer: 'free',
    findings: [],
    silent: ['sixty hours'],
  },
  {
    name: 'sixty hours and a minute in 168',
    home: duluth,
    booked: [{ title: 'Clinic series', place: duluth, days: eightToSix(...dates(1, 5)) }],
    candidate: { place: duluth, days: ['2026-06-06 08:00-18:01'] },
    answer: 'free',
    findings: [{ kind: 'sixty hours', hardness: 'know', numbers: { inAWeek: 3601 } }],
  },
  {
    name: 'pencils do not count in cautions',
    home: duluth,
    booked: [{ title: 'Clinic series', place: duluth, days: eightToSix(...dates(1, 6)), pencilled: 1 }],
    candidate: { place: duluth, days: ['2026-06-07 08:00-18:00'] },
    answer: 'free',
    findings: [],
    silent: ['seventh day', 'sixty hours'],
  },
];
