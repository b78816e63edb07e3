/**
 * Pencils before and behind, and what the clock says.
 */
import { auckland, duluth, fargo, honolulu, milwaukee, stPaul, thunderBay } from '../core/trips/places.ts';
import type { Situation } from './shape.ts';

export const pencilsAndClocks: readonly Situation[] = [
  {
    name: 'a pencil holds before a candidate without one: second pencil is an answer',
    home: duluth,
    booked: [{ title: 'Robotics final', place: fargo, days: ['2026-12-12 09:00-18:00', '2026-12-13 09:00-17:00'], pencilled: 1 }],
    candidate: { place: duluth, days: ['2026-12-12 08:00-18:00'] },
    answer: 'free if',
    findings: [{ kind: 'overlap', hardness: 'settle', with: 'Robotics final', numbers: { overlap: 540 } }],
  },
  {
    name: 'a pencil behind is good to know',
    home: duluth,
    booked: [{ title: 'Robotics final', place: fargo, days: ['2026-12-12 09:00-18:00'], pencilled: 2 }],
    candidate: { place: duluth, days: ['2026-12-12 08:00-18:00'], pencilled: 1 },
    answer: 'free',
    findings: [{ kind: 'overlap', hardness: 'know', with: 'Robotics final' }],
  },
  {
    name: 'a way that cannot be made to a pencil before it must be settled, not more',
    home: duluth,
    ways: [{ between: [duluth, milwaukee], minutes: 400 }],
    booked: [{ title: 'Tasting', place: milwaukee, days: ['2026-12-13 00:30-09:00'], pencilled: 1 }],
    candidate: { place: duluth, days: ['2026-12-12 08:00-20:00'] },
    answer: 'free if',
    findings: [{ kind: 'between', hardness: 'settle', with: 'Tasting', numbers: { have: 270, way: 400 } }],
  },
  {
    name: 'behind a nearer pencil the nearest ink still counts',
    home: duluth,
    ways: [{ between: [duluth, milwaukee], minutes: 400 }],
    booked: [
      { title: 'Coffee morning', place: duluth, days: ['2026-12-11 21:00-22:00 half'], pencilled: 1 },
      { title: 'Tasting', place: milwaukee, days: ['2026-12-11 08:00-20:00'] },
    ],
    candidate: { place: duluth, days: ['2026-12-12 09:00-18:00'] },
    answer: 'free if',
    findings: [{ kind: 'rest', hardness: 'settle', with: 'Tasting', numbers: { have: 780, way: 400, slack: -100 } }],
  },
  {
    name: 'reply-by is past at its minute',
    home: duluth,
    booked: [],
    candidate: { place: duluth, days: ['2026-12-12 08:00-18:00'] },
    now: '2026-12-03T12:00',
    replyBy: '2026-12-03T12:00',
    answer: 'free if',
    findings: [{ kind: 'reply-by', hardness: 'settle', numbers: { late: 0 } }],
  },
  {
    name: 'a minute before, it is not',
    home: duluth,
    booked: [],
    candidate: { place: duluth, days: ['2026-12-12 08:00-18:00'] },
    now: '2026-12-03T11:59',
    replyBy: '2026-12-03T12:00',
    answer: 'free',
    findings: [],
  },
  {
    name: 'a call that cannot be reached any more from home, with a typed way',
    home: duluth,
    ways: [{ between: [duluth, thunderBay], minutes: 225 }],
    booked: [],
    candidate: { place: thunderBay, days: ['2026-12-05 14:00-19:00 half'] },
    now: '2026-12-05T10:00',
    answer: 'not possible',
    findings: [{ kind: 'departure', hardness: 'blocks', numbers: { have: 180, way: 225, slack: -45 } }],
  },
  {
    name: 'the same with an estimate must be settled',
    home: duluth,
    booked: [],
    candidate: { place: thunderBay, days: ['2026-12-05 14:00-19:00 half'] },
    now: '2026-12-05T10:00',
    answer: 'free if',
    findings: [{ kind: 'departure', hardness: 'settle', numbers: { have: 180 } }],
  },
  {
    name: 'over the date line one lands before one left: the wall times say no, the instants yes',
    home: auckland,
    ways: [{ between: [auckland, honolulu], minutes: 525, mode: 'flight' }],
    booked: [{ title: 'Harbour gala', place: auckland, days: ['2027-02-14 10:00-20:00'] }],
    candidate: { place: honolulu, days: ['2027-02-14 20:00-23:00 half'] },
    // 20:00 in Auckland is 07:00Z on the 14th, 20:00 in Honolulu 06:00Z on the 15th: 23 h for 525 + 180 + 60 min, on one date.
    answer: 'free',
    findings: [],
  },
  {
    name: 'over the date line the other way a calendar day is lost',
    home: auckland,
    ways: [{ between: [auckland, honolulu], minutes: 540, mode: 'flight' }],
    booked: [{ title: 'Surf final', place: honolulu, days: ['2027-02-14 08:00-18:00'] }],
    candidate: { place: auckland, days: ['2027-02-16 08:00-12:00 half'] },
    // 18:00 in Honolulu is 04:00Z on the 15th, 08:00 in Auckland 19:00Z on the 15th: 15 h for 13 h of flight and the rest.
    answer: 'free if',
    findings: [{ kind: 'rest', hardness: 'settle', with: 'Surf final', numbers: { have: 900, way: 780, restLeft: 120, slack: -360 } }],
  },
  {
    name: 'a way typed to try it on lifts an estimate',
    home: duluth,
    booked: [{ title: 'Clinic opening', place: duluth, days: ['2026-12-11 10:00-20:00'] }],
    candidate: { place: stPaul, days: ['2026-12-12 07:00-12:00 half'] },
    tryOn: { ways: [{ fromKey: 'test:Saint Paul', toKey: 'test:Duluth', mode: 'drive', minutes: 150 }] },
    answer: 'free',
    findings: [],
  },
];
