/**
 * Hands who said yes to dates of the candidate or of jobs on the books, with dates of their own.
 */
import { duluth, fargo, milwaukee, stPaul } from '../core/trips/places.ts';
import type { Situation } from './shape.ts';

const bo = { name: 'Bo', home: duluth, role: 'shoot' as const, dayRate: '400.00' };
const cy = { name: 'Cy', home: stPaul, role: 'shoot' as const, dayRate: '450.00' };
const wide = '2026-12-12 08:00-18:00';
const saidYes: Situation = {
  name: 'a hand said yes to the only day: my own ink beside it does not matter',
  home: duluth,
  hands: [bo],
  booked: [{ title: 'Robotics final', place: fargo, days: ['2026-12-12 09:00-18:00'] }],
  candidate: { place: duluth, days: [wide], covers: { Bo: ['2026-12-12'] } },
  answer: 'free',
  findings: [{ kind: 'hand cost', hardness: 'know', numbers: { days: 1, cost: 'USD 400.00' }, says: 'Bo said yes for Sat 12 December' }],
};
const busy = (pencilled?: number): Situation => ({
  ...saidYes,
  hands: [{ ...bo, jobs: [{ title: 'Clinic', place: duluth, days: ['2026-12-12 12:00-20:00'], ...(pencilled ? { pencilled } : {}) }] }],
  name: 'stands in for the name',
  answer: 'not possible',
  findings: [],
});

export const handsWhoSaidYes: readonly Situation[] = [
  saidYes,
  {
    ...busy(),
    name: 'a hand who said yes to another job of mine at that time cannot do both',
    findings: [{ kind: 'overlap', hardness: 'blocks', with: 'Clinic', numbers: { overlap: 360 }, says: 'For Bo: Clinic in ink' }],
  },
  {
    ...busy(1),
    name: 'a hand who holds that time in pencil must be settled with',
    answer: 'free if',
    findings: [{ kind: 'overlap', hardness: 'settle', with: 'Clinic', says: 'For Bo: Clinic in pencil, before this one' }],
  },
  {
    ...busy(),
    name: 'a hand who is taken is not offered where another is free',
    hands: [...(busy().hands ?? []), cy],
    candidate: { place: duluth, days: [wide] },
    findings: [{ kind: 'overlap', hardness: 'blocks', with: 'Robotics final' }],
    offers: ['Ask Cy to cover the shoot on Sat 12 December'],
  },
  {
    ...saidYes,
    name: 'a hand who wraps too far away the evening before does not get there rested',
    hands: [{ ...bo, jobs: [{ title: 'Trade congress', place: milwaukee, days: ['2026-12-11 12:00-23:00'] }] }],
    ways: [{ between: [milwaukee, duluth], minutes: 415 }],
    answer: 'free if',
    findings: [
      {
        kind: 'rest',
        hardness: 'settle',
        with: 'Trade congress',
        numbers: { have: 540, way: 415 },
        says: 'For Bo: they wrap in Milwaukee',
      },
    ],
  },
  {
    ...saidYes,
    name: 'with time enough between, the hand does both',
    hands: [{ ...bo, jobs: [{ title: 'Trade congress', place: milwaukee, days: ['2026-12-10 12:00-23:00'] }] }],
  },
  {
    ...saidYes,
    name: 'of a hand without a home the days themselves are still compared',
    hands: [{ name: 'Bo', role: 'shoot', dayRate: '400.00', jobs: busy().hands?.[0]?.jobs ?? [] }],
    answer: 'not possible',
    findings: [
      { kind: 'overlap', hardness: 'blocks', with: 'Clinic' },
      { kind: 'hand home', hardness: 'know' },
    ],
  },
  {
    name: 'a day of a job on the books that a hand does is free for me',
    home: duluth,
    hands: [bo],
    booked: [{ title: 'Clinic', place: duluth, days: [], handDays: [wide] }],
    candidate: { place: duluth, days: [wide] },
    answer: 'free',
    findings: [],
  },
  {
    name: 'its kit is out with the hand all the same',
    home: duluth,
    hands: [bo],
    kit: [{ name: 'Mixer', owned: 1 }],
    booked: [{ title: 'Clinic', place: duluth, days: [], handDays: [wide], kit: { Mixer: 1 } }],
    candidate: { place: duluth, days: [wide], kit: { Mixer: 1 } },
    answer: 'free if',
    findings: [{ kind: 'kit', hardness: 'settle', numbers: { short: 1 } }],
  },
  {
    name: 'one day of two with a hand: the other must still be reached by me',
    home: duluth,
    hands: [bo],
    ways: [{ between: [fargo, duluth], minutes: 260 }],
    booked: [{ title: 'Robotics final', place: fargo, days: ['2026-12-12 09:00-23:00'] }],
    candidate: {
      place: duluth,
      days: ['2026-12-12 08:00-18:00', '2026-12-13 08:00-18:00'],
      covers: { Bo: ['2026-12-12'] },
    },
    answer: 'free if',
    findings: [{ kind: 'rest', hardness: 'settle', with: 'Robotics final', numbers: { have: 540, way: 260 } }],
  },
];
