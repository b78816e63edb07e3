/**
 * Editing can be done anywhere: its days make no stay, whatever else a job is made of.
 */
import { duluth, fargo, losAngeles, milwaukee } from '../core/trips/places.ts';
import type { Situation } from './shape.ts';

const threeOfEditing = ['2026-06-09 09:00-17:00 edit', '2026-06-10 09:00-17:00 edit', '2026-06-11 09:00-17:00 edit'];

export const editDays: readonly Situation[] = [
  {
    name: 'ink of edit days alone is no stay: each day under the candidate must be moved, and no way leads there',
    home: duluth,
    booked: [{ title: 'Recap cut', place: losAngeles, days: threeOfEditing }],
    candidate: { place: fargo, days: ['2026-06-10 08:00-18:00', '2026-06-11 08:00-12:00 half'] },
    answer: 'free if',
    findings: [
      { kind: 'edit day', hardness: 'settle', with: 'Recap cut', numbers: { overlap: 480 } },
      { kind: 'edit day', hardness: 'settle' },
    ],
    offers: ['Move the edit day of Recap cut to Fri 12 June'],
  },
  {
    name: 'a pencil of edit days alone, behind, is good to know',
    home: duluth,
    booked: [{ title: 'Recap cut', place: losAngeles, days: threeOfEditing, pencilled: 2 }],
    candidate: { place: fargo, days: ['2026-06-10 08:00-18:00'], pencilled: 1 },
    answer: 'free',
    findings: [{ kind: 'edit day', hardness: 'know', with: 'Recap cut' }],
  },
  {
    name: 'edit days far away leave time enough for the next call',
    home: duluth,
    booked: [{ title: 'Recap cut', place: losAngeles, days: threeOfEditing }],
    candidate: { place: duluth, days: ['2026-06-12 08:00-18:00'] },
    answer: 'free',
    findings: [],
    silent: ['between', 'rest', 'duty'],
  },
  {
    name: 'a candidate of edit days alone must keep off the stays in ink',
    home: duluth,
    booked: [{ title: 'Bakers’ congress', place: milwaukee, days: ['2026-06-11 08:00-18:00'] }],
    candidate: { place: losAngeles, days: threeOfEditing },
    answer: 'free if',
    findings: [{ kind: 'edit day', hardness: 'settle', with: 'Bakers’ congress', numbers: { overlap: 420 } }],
    offers: ['Move the edit day to Fri 12 June'],
  },
];
