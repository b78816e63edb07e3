/**
 * Chains of tickets, ways by other modes, paid travel, several stays, and what is tried on.
 */
import { denver, duluth, fargo, losAngeles, milwaukee, stPaul, superior, thunderBay } from '../core/trips/places.ts';
import type { Situation } from './shape.ts';

export const more: readonly Situation[] = [
  {
    name: 'a way that comes after the first call is not laid before the second one: no long day is made of it',
    home: duluth,
    ways: [
      { between: [milwaukee, duluth], minutes: 390 },
      { between: [duluth, thunderBay], minutes: 240 },
    ],
    booked: [{ title: 'Congress', place: milwaukee, days: ['2026-12-04 14:30-22:30'] }],
    candidate: { place: thunderBay, days: ['2026-12-05 14:00-19:00 half', '2026-12-06 09:00-20:00', '2026-12-07 09:00-12:00 half'] },
    answer: 'free if',
    findings: [{ kind: 'rest', hardness: 'settle', with: 'Congress' }],
    silent: ['duty'],
  },
  {
    name: 'a connection at one airport needs no more than its own times',
    home: duluth,
    ways: [{ between: [stPaul, denver], minutes: 800 }],
    booked: [{ title: 'Gala', place: duluth, days: ['2026-06-08 12:00-20:00'] }],
    candidate: {
      place: denver,
      days: ['2026-06-09 18:00-22:00 half'],
      tickets: [
        { mode: 'flight', from: duluth, to: stPaul, depart: '2026-06-09T09:00', arrive: '2026-06-09T10:00' },
        { mode: 'flight', from: stPaul, to: denver, depart: '2026-06-09T10:50', arrive: '2026-06-09T12:00' },
      ],
    },
    answer: 'free',
    findings: [],
  },
  {
    name: 'tickets that are kept, with the long end of an estimate in another gap, are still short',
    // 218 km from home to the second airport: 159 to 251 min with breaks; 3 h are had before the flight, and a whole night after.
    home: duluth,
    booked: [{ title: 'Gala', place: duluth, days: ['2026-06-08 12:00-20:00'] }],
    candidate: {
      place: denver,
      days: ['2026-06-10 18:00-22:00 half'],
      tickets: [{ mode: 'flight', from: stPaul, to: denver, depart: '2026-06-09T01:00', arrive: '2026-06-09T02:00' }],
    },
    answer: 'free if',
    findings: [{ kind: 'ticket', hardness: 'settle', numbers: { source: 'estimated' } }],
  },
  {
    name: 'a flight that was typed has two hours before it and one after',
    home: duluth,
    ways: [{ between: [duluth, losAngeles], minutes: 300, mode: 'flight' }],
    booked: [{ title: 'Gala', place: duluth, days: ['2026-06-08 12:00-20:00'] }],
    candidate: { place: losAngeles, days: ['2026-06-09 09:59-14:00 half'] },
    // 20:00 in Duluth to 09:59 in Los Angeles, two hours behind: 959 min; 480 on the way and 480 of rest.
    answer: 'free if',
    findings: [{ kind: 'rest', hardness: 'settle', numbers: { have: 959, way: 480, slack: -1 } }],
  },
  {
    name: 'the quickest of two typed ways counts',
    home: duluth,
    ways: [
      { between: [duluth, losAngeles], minutes: 1800 },
      { between: [duluth, losAngeles], minutes: 300, mode: 'flight' },
    ],
    booked: [{ title: 'Gala', place: duluth, days: ['2026-06-08 12:00-20:00'] }],
    candidate: { place: losAngeles, days: ['2026-06-09 10:00-14:00 half'] },
    answer: 'free',
    findings: [],
  },
  {
    name: 'a paid travel day of the candidate over another job must be moved, it does not block',
    home: duluth,
    booked: [{ title: 'Clinic opening', place: duluth, days: ['2026-06-08 09:00-12:00 half'] }],
    candidate: { place: superior, days: ['2026-06-08 10:00-14:00 travel', '2026-06-09 09:00-18:00'] },
    answer: 'free if',
    findings: [{ kind: 'travel day', hardness: 'settle', with: 'Clinic opening', numbers: { overlap: 120 } }],
  },
  {
    name: 'two stays of a candidate with a job in ink on the date between',
    home: duluth,
    booked: [{ title: 'Clinic opening', place: superior, days: ['2026-06-09 09:00-17:00'] }],
    candidate: { place: duluth, days: ['2026-06-08 09:00-18:00', '2026-06-10 09:00-18:00'] },
    answer: 'free',
    findings: [],
  },
  {
    name: 'two neighbours at once: too late from the one and too early for the other',
    home: duluth,
    ways: [
      { between: [milwaukee, duluth], minutes: 415 },
      { between: [duluth, fargo], minutes: 240 },
    ],
    booked: [
      { title: 'Bread fair', place: milwaukee, days: ['2026-06-08 09:00-20:00'] },
      { title: 'Robotics final', place: fargo, days: ['2026-06-10 07:00-17:00'] },
    ],
    candidate: { place: duluth, days: ['2026-06-09 08:00-20:00'] },
    answer: 'free if',
    findings: [
      { kind: 'rest', hardness: 'settle', with: 'Bread fair', numbers: { have: 720, way: 415, slack: -175 } },
      { kind: 'rest', hardness: 'settle', with: 'Robotics final', numbers: { have: 660, way: 240, slack: -60 } },
    ],
  },
  {
    name: 'an earlier wrap that is tried on',
    home: duluth,
    ways: [{ between: [duluth, fargo], minutes: 240 }],
    booked: [{ title: 'Robotics final', place: fargo, days: ['2026-06-10 07:00-17:00'] }],
    candidate: { place: duluth, days: ['2026-06-09 08:00-20:00'] },
    tryOn: { lastWrapEarlierMinutes: 60 },
    answer: 'free',
    findings: [],
  },
  {
    name: 'a job that is taken off to try it on',
    home: duluth,
    booked: [{ title: 'Robotics final', place: duluth, days: ['2026-06-09 07:00-17:00'] }],
    candidate: { place: duluth, days: ['2026-06-09 08:00-20:00'] },
    tryOn: { withoutJobs: ['job-0'] },
    answer: 'free',
    findings: [],
  },
  {
    name: 'a candidate that was pencilled first stands before the pencil behind it',
    home: duluth,
    booked: [
      { title: 'Robotics final', place: duluth, days: ['2026-06-09 07:00-17:00'] },
      { title: 'Fair', place: duluth, days: ['2026-06-12 07:00-17:00'], pencilled: 1 },
    ],
    candidate: { place: duluth, days: ['2026-06-12 08:00-20:00'], pencilled: 0 },
    answer: 'free',
    findings: [{ kind: 'overlap', hardness: 'know', with: 'Fair' }],
  },
  {
    name: 'three pencils before it, each is named',
    home: duluth,
    booked: [1, 2, 3].map((order) => ({ title: `Fair ${order}`, place: duluth, days: ['2026-06-12 07:00-17:00'], pencilled: order })),
    candidate: { place: duluth, days: ['2026-06-12 08:00-20:00'] },
    answer: 'free if',
    findings: [1, 2, 3].map((order) => ({ kind: 'overlap', hardness: 'settle' as const, with: `Fair ${order}` })),
  },
  {
    name: 'a way that fits to the minute on one date, in two cities of two zones',
    home: duluth,
    ways: [{ between: [thunderBay, duluth], minutes: 225 }],
    booked: [{ title: 'Morning show', place: thunderBay, days: ['2026-06-09 06:00-11:00 half'] }],
    candidate: { place: duluth, days: ['2026-06-09 13:45-18:00 half'] },
    // 11:00 in Thunder Bay is 10:00 in Duluth: 225 min for a way of 225.
    answer: 'free',
    findings: [],
  },
  {
    name: 'one minute less than the way on one date blocks, with a way that was typed',
    home: duluth,
    ways: [{ between: [thunderBay, duluth], minutes: 226 }],
    booked: [{ title: 'Morning show', place: thunderBay, days: ['2026-06-09 06:00-11:00 half'] }],
    candidate: { place: duluth, days: ['2026-06-09 13:45-18:00 half'] },
    answer: 'not possible',
    findings: [{ kind: 'between', hardness: 'blocks', numbers: { have: 225, way: 226, rest: 0, slack: -1 } }],
  },
  {
    name: 'two tickets that jump name both',
    home: duluth,
    booked: [],
    candidate: {
      place: denver,
      days: ['2026-06-10 08:00-18:00'],
      tickets: [
        { mode: 'flight', from: duluth, to: stPaul, depart: '2026-06-08T09:00', arrive: '2026-06-08T10:00' },
        { mode: 'flight', from: milwaukee, to: denver, depart: '2026-06-09T09:00', arrive: '2026-06-09T12:00' },
      ],
    },
    answer: 'free if',
    findings: [
      {
        kind: 'legs',
        hardness: 'settle',
        says: 'The flight Duluth to Saint Paul ends in Saint Paul, but the flight Milwaukee to Denver begins in Milwaukee.',
      },
    ],
  },
];
