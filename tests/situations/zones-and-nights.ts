/**
 * Neighbours over zones, clock changes and the turn of dates.
 */
import {
  delhi,
  denver,
  duluth,
  kathmandu,
  london,
  paris,
  phoenix,
  stJohns,
  superior,
  thunderBay,
  utcPort,
  utcTown,
} from '../core/trips/places.ts';
import type { Situation } from './shape.ts';

export const zonesAndNights: readonly Situation[] = [
  {
    name: 'the night that the clock is set back is an hour longer: the rest fits',
    home: duluth,
    booked: [{ title: 'Masquerade', place: duluth, days: ['2026-10-31 16:00-23:30'] }],
    candidate: { place: duluth, days: ['2026-11-01 06:30-12:00'] },
    answer: 'free',
    findings: [],
  },
  {
    name: 'the night that the clock is put forward is an hour shorter: the rest does not fit',
    home: duluth,
    booked: [{ title: 'Spring gala', place: duluth, days: ['2026-03-07 16:00-23:30'] }],
    candidate: { place: duluth, days: ['2026-03-08 07:30-12:00'] },
    answer: 'free if',
    findings: [
      { kind: 'rest', hardness: 'settle', numbers: { have: 420, rest: 480, slack: -60 } },
      { kind: 'duty', hardness: 'know' },
    ],
  },
  {
    name: 'clocks that change on different nights: Europe has set back, home has not',
    home: london,
    ways: [{ between: [london, paris], minutes: 420 }],
    booked: [{ title: 'Autumn show', place: paris, days: ['2026-10-24 12:00-22:00'] }],
    candidate: { place: london, days: ['2026-10-25 14:00-18:00'] },
    // 22:00 in Paris is 20:00Z; 14:00 in London is 14:00Z after the change.
    answer: 'free',
    findings: [],
  },
  {
    name: 'a zone without a change beside one with: summer in Phoenix is an hour behind Denver',
    home: phoenix,
    ways: [{ between: [denver, phoenix], minutes: 780 }],
    booked: [{ title: 'Gem show', place: denver, days: ['2026-07-03 08:00-12:00 half'] }],
    candidate: { place: phoenix, days: ['2026-07-04 09:00-12:00 half'] },
    // 12:00 in Denver is 18:00Z, 09:00 in Phoenix is 16:00Z: 22 h, of which 13 h on the road and 8 h of rest.
    answer: 'free',
    findings: [],
  },
  {
    name: 'a half-hour zone: St. John’s is an hour and a half before Toronto',
    home: thunderBay,
    ways: [{ between: [thunderBay, stJohns], minutes: 300, mode: 'flight' }],
    booked: [{ title: 'Fishers’ day', place: stJohns, days: ['2026-07-01 08:00-18:00'] }],
    candidate: { place: thunderBay, days: ['2026-07-02 09:00-12:00 half'] },
    // 18:00 is 20:30Z, 09:00 is 13:00Z: 990 min; a flight of 300 with 120 before and 60 after leaves 510.
    answer: 'free',
    findings: [],
  },
  {
    name: 'a quarter-hour zone: Kathmandu is a quarter of an hour before Delhi',
    home: delhi,
    ways: [{ between: [delhi, kathmandu], minutes: 95, mode: 'flight' }],
    booked: [{ title: 'Trek film day', place: kathmandu, days: ['2026-07-01 08:00-20:30'] }],
    candidate: { place: delhi, days: ['2026-07-02 10:00-18:00'] },
    // 20:30 is 14:45Z, 10:00 is 04:30Z: 825 min; 95 + 180 over the border + 60 leave 490.
    answer: 'free',
    findings: [],
  },
  {
    name: 'the same a quarter of an hour earlier, as if both clocks agreed, does not fit',
    home: delhi,
    ways: [{ between: [delhi, kathmandu], minutes: 95, mode: 'flight' }],
    booked: [{ title: 'Trek film day', place: kathmandu, days: ['2026-07-01 08:00-20:45'] }],
    candidate: { place: delhi, days: ['2026-07-02 10:00-18:00'] },
    answer: 'free if',
    findings: [{ kind: 'rest', hardness: 'settle', numbers: { have: 810, way: 335, slack: -5 } }],
  },
  {
    name: 'a neighbour that lies a day away with a short way says nothing',
    home: duluth,
    booked: [{ title: 'Clinic opening', place: superior, days: ['2026-12-11 08:00-18:00'] }],
    candidate: { place: duluth, days: ['2026-12-12 08:00-18:00'] },
    answer: 'free',
    findings: [],
  },
  {
    name: 'a leap day is a day',
    home: duluth,
    booked: [{ title: 'Leap ball', place: duluth, days: ['2028-02-29 18:00-23:30'] }],
    candidate: { place: duluth, days: ['2028-03-01 07:00-12:00'] },
    answer: 'free if',
    findings: [{ kind: 'rest', hardness: 'settle', with: 'Leap ball', numbers: { have: 450, slack: -30 } }],
  },
  {
    name: 'the turn of the year is a night like any other',
    home: duluth,
    booked: [{ title: 'New Year’s Eve ball', place: duluth, days: ['2026-12-31 18:00-02:00'] }],
    candidate: { place: duluth, days: ['2027-01-01 10:00-16:00'] },
    answer: 'free',
    findings: [],
  },
  {
    name: 'a wrap past midnight belongs to the evening before: rest is asked for',
    home: duluth,
    booked: [{ title: 'Dance final', place: duluth, days: ['2026-12-11 20:00-02:30'] }],
    candidate: { place: duluth, days: ['2026-12-12 09:00-12:00 half'] },
    answer: 'free if',
    findings: [
      { kind: 'rest', hardness: 'settle', numbers: { have: 390, slack: -90 } },
      { kind: 'duty', hardness: 'know' },
    ],
  },
  {
    name: 'a call after midnight is on its own date',
    home: utcTown,
    ways: [{ between: [utcTown, utcPort], minutes: 300 }],
    booked: [{ title: 'Night market', place: utcTown, days: ['2026-06-12 12:00-20:00'] }],
    candidate: { place: utcPort, days: ['2026-06-13 01:00-06:00 half'] },
    // 5 h: the way fits to the minute, rest does not.
    answer: 'free if',
    findings: [
      { kind: 'rest', hardness: 'settle', numbers: { have: 300, way: 300, restLeft: 0, slack: -480 } },
      { kind: 'duty', hardness: 'know', numbers: { duty: 1380 } },
    ],
  },
  {
    name: 'travel and edit days of ink make no stay, but must be moved',
    home: duluth,
    booked: [{ title: 'Bakers’ recap', place: duluth, days: ['2026-12-10 09:00-17:00', '2026-12-12 09:00-15:00 edit'] }],
    candidate: { place: duluth, days: ['2026-12-12 08:00-18:00'] },
    answer: 'free if',
    findings: [{ kind: 'edit day', hardness: 'settle', with: 'Bakers’ recap', numbers: { overlap: 360 } }],
  },
];
