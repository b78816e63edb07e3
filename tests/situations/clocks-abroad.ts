/**
 * Clock changes, odd zones and the date line, and rest and duty to the minute. The instants in the comments were worked out by hand.
 */
import { auckland, delhi, duluth, fargo, honolulu, kathmandu, london, paris, stPaul, thunderBay } from '../core/trips/places.ts';
import type { Place } from '../../core/contract/parts.ts';
import type { Situation } from './shape.ts';

const lordHowe: Place = {
  key: 'test:Lord Howe',
  name: 'Lord Howe',
  region: '',
  country: 'AU',
  lat: -31.55,
  lon: 159.08,
  zone: 'Australia/Lord_Howe',
};
const chatham: Place = {
  key: 'test:Chatham',
  name: 'Chatham',
  region: '',
  country: 'NZ',
  lat: -43.95,
  lon: -176.56,
  zone: 'Pacific/Chatham',
};

export const clocksAbroad: readonly Situation[] = [
  {
    name: 'Europe puts the clock forward between a wrap in one city and a call in another',
    home: london,
    ways: [{ between: [london, paris], minutes: 420 }],
    booked: [{ title: 'Spring show', place: paris, days: ['2027-03-27 12:00-22:00'] }],
    candidate: { place: london, days: ['2027-03-28 10:00-14:00 half'] },
    // 22:00 in Paris is 21:00Z, 10:00 in London 09:00Z: 12 h, and not the 13 h that the wall times say.
    answer: 'free if',
    findings: [
      {
        kind: 'rest',
        hardness: 'settle',
        with: 'Spring show',
        numbers: { have: 720, way: 420, rest: 480, need: 900, restLeft: 300, slack: -180, by: 'direct' },
        says: 'You wrap in Paris on Saturday 27 March 22:00 (21:00 at home). With 8 h of rest and 7 h on the road you reach London on Sunday 13:00, 3 h after your first call at 10:00',
      },
    ],
  },
  {
    name: 'in the southern spring the night is an hour shorter too: eight hours to the minute',
    home: auckland,
    booked: [{ title: 'Harbour gala', place: auckland, days: ['2026-09-26 14:00-23:00'] }],
    candidate: { place: auckland, days: ['2026-09-27 08:00-12:00 half'] },
    answer: 'free',
    findings: [],
  },
  {
    name: 'in the southern spring half an hour less is not rest',
    home: auckland,
    booked: [{ title: 'Harbour gala', place: auckland, days: ['2026-09-26 14:00-23:00'] }],
    candidate: { place: auckland, days: ['2026-09-27 07:30-12:00 half'] },
    answer: 'free if',
    findings: [{ kind: 'rest', hardness: 'settle', numbers: { have: 450, slack: -30, restLeft: 450 } }],
  },
  {
    name: 'a clock that is set back by half an hour only: eight hours to the minute',
    home: lordHowe,
    booked: [{ title: 'Lagoon gala', place: lordHowe, days: ['2027-04-03 15:00-23:00'] }],
    candidate: { place: lordHowe, days: ['2027-04-04 06:30-11:00 half'] },
    answer: 'free',
    findings: [],
  },
  {
    name: 'a clock that is set back by half an hour only: a minute less',
    home: lordHowe,
    booked: [{ title: 'Lagoon gala', place: lordHowe, days: ['2027-04-03 15:00-23:00'] }],
    candidate: { place: lordHowe, days: ['2027-04-04 06:29-11:00 half'] },
    answer: 'free if',
    findings: [{ kind: 'rest', hardness: 'settle', numbers: { have: 479, slack: -1 } }],
  },
  {
    name: 'a zone of twelve hours and three quarters: to the minute',
    home: auckland,
    ways: [{ between: [auckland, chatham], minutes: 130, mode: 'flight' }],
    booked: [{ title: 'Sail day', place: auckland, days: ['2026-06-10 09:00-17:00'] }],
    candidate: { place: chatham, days: ['2026-06-11 06:55-11:00 half'] },
    // 05:00Z to 18:10Z are 790 min: 130 + 120 + 60 and 480 of rest.
    answer: 'free',
    findings: [],
  },
  {
    name: 'a zone of twelve hours and three quarters: a minute less, with both clocks in the sentence',
    home: auckland,
    ways: [{ between: [auckland, chatham], minutes: 130, mode: 'flight' }],
    booked: [{ title: 'Sail day', place: auckland, days: ['2026-06-10 09:00-17:00'] }],
    candidate: { place: chatham, days: ['2026-06-11 06:54-11:00 half'] },
    answer: 'free if',
    findings: [
      {
        kind: 'rest',
        hardness: 'settle',
        numbers: { have: 789, way: 310, restLeft: 479, slack: -1 },
        says: 'you reach Chatham on Thursday 06:55 (06:10 at home), 1 min after your first call at 06:54 (06:09 at home)',
      },
    ],
  },
  {
    name: 'from a half-hour zone home to a quarter-hour zone',
    home: kathmandu,
    ways: [{ between: [delhi, kathmandu], minutes: 95, mode: 'flight' }],
    booked: [{ title: 'Fort lights', place: delhi, days: ['2026-07-01 10:00-20:00'] }],
    candidate: { place: kathmandu, days: ['2026-07-02 07:00-15:00'] },
    // 20:00 is 14:30Z, 07:00 is 01:15Z: 645 min for 95 + 180 over the border + 60, and 8 h.
    answer: 'free if',
    findings: [
      {
        kind: 'rest',
        hardness: 'settle',
        numbers: { have: 645, way: 335, restLeft: 310, slack: -170 },
        says: 'on Wednesday 1 July 20:00 (20:15 at home)',
      },
    ],
  },
  {
    name: 'over the date line on one date by the calendar: no rest is asked for, but the way is',
    home: auckland,
    ways: [{ between: [auckland, honolulu], minutes: 525, mode: 'flight' }],
    booked: [{ title: 'Harbour gala', place: auckland, days: ['2027-02-13 14:00-22:00'] }],
    candidate: { place: honolulu, days: ['2027-02-13 09:00-12:00 half'] },
    // 22:00 is 09:00Z, 09:00 is 19:00Z: 600 min for 525 + 180 + 60.
    answer: 'not possible',
    findings: [
      {
        kind: 'between',
        hardness: 'blocks',
        with: 'Harbour gala',
        numbers: { have: 600, way: 765, rest: 0, slack: -165, source: 'typed' },
      },
    ],
  },
  {
    name: 'a way over the date line counts in duty though no rest is asked for',
    home: auckland,
    ways: [{ between: [auckland, honolulu], minutes: 525, mode: 'flight' }],
    booked: [{ title: 'Harbour gala', place: auckland, days: ['2027-02-13 14:00-22:00'] }],
    candidate: { place: honolulu, days: ['2027-02-13 12:00-15:00 half'] },
    answer: 'free',
    findings: [{ kind: 'duty', hardness: 'know' }],
  },
  {
    name: 'back over the date line the night is lost: the way alone fits by a quarter of an hour',
    home: auckland,
    ways: [{ between: [auckland, honolulu], minutes: 525, mode: 'flight' }],
    booked: [{ title: 'Surf final', place: honolulu, days: ['2027-02-13 12:00-20:00'] }],
    candidate: { place: auckland, days: ['2027-02-15 08:00-12:00 half'] },
    // 20:00 is 06:00Z on the 14th, 08:00 is 19:00Z on the 14th.
    answer: 'free if',
    findings: [
      {
        kind: 'rest',
        hardness: 'settle',
        numbers: { have: 780, way: 765, restLeft: 15, slack: -465 },
        says: 'You wrap in Honolulu on Saturday 13 February 20:00 (Sunday 19:00 at home)',
      },
    ],
  },
  {
    name: 'three hours before a flight over a border: a minute short',
    home: thunderBay,
    ways: [{ between: [thunderBay, stPaul], minutes: 90, mode: 'flight' }],
    booked: [{ title: 'Rink opening', place: thunderBay, days: ['2026-12-08 10:00-20:00'] }],
    candidate: { place: stPaul, days: ['2026-12-09 08:29-12:00 half'] },
    // 20:00 is 19:00 in Saint Paul: 809 min for 90 + 180 + 60 and 8 h.
    answer: 'free if',
    findings: [{ kind: 'rest', hardness: 'settle', numbers: { have: 809, way: 330, slack: -1 } }],
  },
  {
    name: 'a drive over a border needs no time before it',
    home: thunderBay,
    ways: [{ between: [thunderBay, duluth], minutes: 225 }],
    booked: [{ title: 'Rink opening', place: thunderBay, days: ['2026-12-08 10:00-20:00'] }],
    candidate: { place: duluth, days: ['2026-12-09 06:45-11:00 half'] },
    // 20:00 is 19:00 in Duluth: 705 min for 225 and 8 h.
    answer: 'free',
    findings: [],
  },
  {
    name: 'seven days over a leap day',
    home: duluth,
    booked: [{ title: 'Leap week', place: duluth, days: [23, 24, 25, 26, 27].map((date) => `2028-02-${date} 09:00-17:00`) }],
    candidate: { place: duluth, days: ['2028-02-28 09:00-17:00', '2028-02-29 09:00-17:00'] },
    answer: 'free',
    findings: [{ kind: 'seventh day', hardness: 'know', numbers: { daysInARow: 7, from: '2028-02-23', to: '2028-02-29' } }],
    silent: ['sixty hours', 'duty'],
  },
  {
    name: 'seven days over the turn of the year, told with both years',
    home: duluth,
    booked: [{ title: 'Year’s last', place: duluth, days: [28, 29, 30, 31].map((date) => `2026-12-${date} 09:00-16:00`) }],
    candidate: { place: duluth, days: ['2027-01-01 09:00-16:00', '2027-01-02 09:00-16:00', '2027-01-03 09:00-16:00'] },
    answer: 'free',
    findings: [{ kind: 'seventh day', hardness: 'know', numbers: { daysInARow: 7, from: '2026-12-28', to: '2027-01-03' } }],
  },
  {
    name: 'a day of travel of more than four hours is a day in the row',
    home: duluth,
    ways: [{ between: [duluth, fargo], minutes: 241 }],
    booked: [{ title: 'Clinic series', place: duluth, days: ['08', '09', '10', '11', '12'].map((date) => `2026-06-${date} 09:00-15:00`) }],
    candidate: { place: fargo, days: ['2026-06-14 08:00-15:00'] },
    // Leaving on the day would be at 03:59; driven the evening before from 15:59 to 20:00.
    answer: 'free',
    findings: [{ kind: 'seventh day', hardness: 'know', numbers: { daysInARow: 7, from: '2026-06-08', to: '2026-06-14' } }],
  },
  {
    name: 'four hours of travel to the minute are none',
    home: duluth,
    ways: [{ between: [duluth, fargo], minutes: 240 }],
    booked: [{ title: 'Clinic series', place: duluth, days: ['08', '09', '10', '11', '12'].map((date) => `2026-06-${date} 09:00-15:00`) }],
    candidate: { place: fargo, days: ['2026-06-14 08:00-15:00'] },
    answer: 'free',
    findings: [],
    silent: ['seventh day'],
  },
  {
    name: 'own driving counts towards sixty hours',
    home: duluth,
    ways: [{ between: [duluth, stPaul], minutes: 120 }],
    booked: [{ title: 'Clinic series', place: duluth, days: ['08', '09', '10', '11', '12'].map((date) => `2026-06-${date} 08:00-19:00`) }],
    candidate: { place: stPaul, days: ['2026-06-13 10:00-12:00 half'] },
    answer: 'free',
    // 5 x 11 h, 2 h, and 2 h each way.
    findings: [{ kind: 'sixty hours', hardness: 'know', numbers: { inAWeek: 3660, limit: 3600 } }],
  },
  {
    name: 'being carried by rail does not',
    home: duluth,
    ways: [{ between: [duluth, stPaul], minutes: 120, mode: 'rail' }],
    booked: [{ title: 'Clinic series', place: duluth, days: ['08', '09', '10', '11', '12'].map((date) => `2026-06-${date} 08:00-19:00`) }],
    candidate: { place: stPaul, days: ['2026-06-13 12:00-14:00 half'] },
    answer: 'free',
    findings: [],
    silent: ['sixty hours'],
  },
  {
    name: 'a window of 168 hours that begins with the first call of one week and ends inside a day of the next',
    home: duluth,
    booked: [{ title: 'Clinic series', place: duluth, days: ['08', '09', '10', '11', '12'].map((date) => `2026-06-${date} 08:00-20:00`) }],
    candidate: { place: duluth, days: ['2026-06-15 06:00-18:00'] },
    answer: 'free',
    // Monday 08:00 to Monday 08:00: 60 h and two of the candidate.
    findings: [{ kind: 'sixty hours', hardness: 'know', numbers: { inAWeek: 3720 } }],
  },
  {
    name: 'a day of fourteen hours and a minute with the ways on it',
    home: duluth,
    ways: [{ between: [duluth, stPaul], minutes: 150 }],
    booked: [],
    candidate: { place: stPaul, days: ['2026-06-09 10:00-19:01'] },
    answer: 'free',
    findings: [{ kind: 'duty', hardness: 'know', numbers: { duty: 841, driving: 300 } }],
  },
  {
    name: 'two own days with six hours between are one duty',
    home: duluth,
    booked: [],
    candidate: { place: duluth, days: ['2026-06-09 14:00-02:00', '2026-06-10 08:00-12:00 half'] },
    answer: 'free',
    findings: [{ kind: 'duty', hardness: 'know', numbers: { duty: 1320, driving: 0 } }],
  },
  {
    name: 'what is too long or too short on the books already is not told again',
    home: duluth,
    booked: [
      { title: 'Night one', place: duluth, days: ['2026-06-01 10:00-23:00'] },
      { title: 'Night two', place: duluth, days: ['2026-06-02 05:00-23:00'] },
      { title: 'Long row', place: duluth, days: [3, 4, 5, 6, 7, 8, 9].map((date) => `2026-06-0${date} 08:00-20:00`) },
    ],
    candidate: { place: duluth, days: ['2026-06-20 09:00-12:00 half'] },
    answer: 'free',
    findings: [],
    silent: ['rest', 'duty', 'seventh day', 'sixty hours', 'overlap'],
  },
];
