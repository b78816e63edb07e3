/**
 * Kit over a border, insurance that is asked for, and licences.
 */
import { duluth, fargo, thunderBay } from '../core/trips/places.ts';
import type { OwnDocument, Situation } from './shape.ts';

const passport: OwnDocument = { kind: 'passport', country: 'US', until: '2031-04-01' };
const mayWork: OwnDocument = { kind: 'right to work', countries: ['CA'], until: '2027-12-31' };
const ways = [{ between: [duluth, thunderBay], minutes: 240 }] as const;
/** Calls at noon, so that one is there and home again on the same dates. */
const twoDays = ['2026-12-09 12:00-18:00 half', '2026-12-10 09:00-15:00 half'];
const there = { place: thunderBay, days: twoDays };
/** A Wednesday; Thanksgiving is the day after. */
const now = '2026-11-25T09:00';

const asked = { home: duluth, ways, now, booked: [] };

export const papersOfKit: readonly Situation[] = [
  {
    ...asked,
    name: 'kit over the border without a list and without a carnet',
    kit: [{ name: 'Camera', owned: 2 }],
    documents: [passport, mayWork],
    candidate: { ...there, kit: { Camera: 2 } },
    answer: 'free if',
    offers: ['Make the customs list', 'Ask for a carnet now'],
    findings: [
      { kind: 'customs', hardness: 'settle', numbers: { pieces: 2, lead: 3, left: 9 }, says: 'no customs list of this job is made' },
    ],
  },
  {
    ...asked,
    name: 'the customs list is tried on as made: whether it is enough stays to be asked',
    kit: [{ name: 'Camera', owned: 2 }],
    documents: [passport, mayWork],
    candidate: { ...there, kit: { Camera: 2 } },
    tryOn: { customsList: true },
    answer: 'free',
    findings: [{ kind: 'customs', hardness: 'know', says: 'Whether it is enough: ask' }],
  },
  {
    ...asked,
    name: 'a carnet that is asked for in time, across Thanksgiving and a weekend: three business days before a call on Wednesday',
    // From Wed 25 November: Fri 27, Mon 30 and Tue 1 lie between; Thu 26 is a holiday.
    holidays: ['2026-11-26'],
    kit: [{ name: 'Camera', owned: 2 }],
    documents: [passport, mayWork],
    candidate: { place: thunderBay, days: ['2026-12-02 12:00-18:00 half'], kit: { Camera: 1 } },
    tryOn: { documents: [{ kind: 'carnet', country: 'CA', asked: true }] },
    answer: 'free',
    findings: [{ kind: 'document tried on', hardness: 'know', says: 'As if the carnet for Canada were asked for today.' }],
    silent: ['lead time'],
  },
  {
    ...asked,
    name: 'the same carnet for a call a day sooner comes too late',
    holidays: ['2026-11-26'],
    kit: [{ name: 'Camera', owned: 2 }],
    documents: [passport, mayWork],
    candidate: { place: thunderBay, days: ['2026-12-01 12:00-18:00 half'], kit: { Camera: 1 } },
    tryOn: { documents: [{ kind: 'carnet', country: 'CA', asked: true }] },
    answer: 'free if',
    offers: ['Ask whether the carnet for Canada can come in time'],
    findings: [{ kind: 'lead time', hardness: 'settle', numbers: { lead: 3, left: 2 } }],
  },
  {
    ...asked,
    name: 'a carnet on file that is accepted until home again',
    kit: [{ name: 'Camera', owned: 2 }],
    documents: [passport, mayWork, { kind: 'carnet', countries: ['CA'], until: '2026-12-10' }],
    candidate: { ...there, kit: { Camera: 2 } },
    answer: 'free',
    findings: [],
    silent: ['customs'],
  },
  {
    ...asked,
    name: 'a carnet on file that runs out before one is home again',
    kit: [{ name: 'Camera', owned: 2 }],
    documents: [passport, mayWork, { kind: 'carnet', countries: ['CA'], until: '2026-12-09' }],
    candidate: { ...there, kit: { Camera: 2 } },
    answer: 'free if',
    findings: [{ kind: 'customs', hardness: 'settle', says: 'The carnet on file runs out on Wed 9 December 2026' }],
  },
  {
    ...asked,
    name: 'an insurance that the client asks for, on file but not for that country',
    documents: [
      passport,
      mayWork,
      { kind: 'liability insurance', until: '2027-06-30', countries: ['US'], limit: { minor: 100_000_000, currency: 'USD' } },
    ],
    candidate: { ...there, papers: { insurance: { limit: { minor: 100_000_000, currency: 'USD' } } } },
    answer: 'free if',
    findings: [{ kind: 'insurance', hardness: 'settle', says: 'does not say that it holds in Canada' }],
  },
  {
    ...asked,
    name: 'the same insurance, where nobody asks for it, is good to know',
    documents: [passport, mayWork, { kind: 'liability insurance', until: '2027-06-30', countries: ['US'] }],
    candidate: there,
    answer: 'free',
    findings: [{ kind: 'insurance', hardness: 'know', says: 'does not say that it holds in Canada' }],
  },
  {
    name: 'an insurance with a lower limit than is asked for',
    home: duluth,
    now,
    documents: [{ kind: 'liability insurance', until: '2027-06-30', countries: ['US'], limit: { minor: 100_000_000, currency: 'USD' } }],
    booked: [],
    candidate: { place: duluth, days: twoDays, papers: { insurance: { limit: { minor: 200_000_000, currency: 'USD' } } } },
    answer: 'free if',
    findings: [{ kind: 'insurance', hardness: 'settle', says: 'USD 2,000,000.00; USD 1,000,000.00 is on file' }],
  },
  {
    name: 'an insurance that is asked for and runs out on the day before the last blocks',
    home: duluth,
    now,
    documents: [{ kind: 'liability insurance', until: '2026-12-09' }],
    booked: [],
    candidate: { place: duluth, days: twoDays, papers: { insurance: { limit: null } } },
    answer: 'not possible',
    findings: [{ kind: 'insurance', hardness: 'blocks', numbers: { until: '2026-12-09', last: '2026-12-10' } }],
  },
  {
    name: 'a remote pilot licence that the job needs is not on file',
    home: duluth,
    now,
    documents: [],
    booked: [],
    candidate: { place: duluth, days: twoDays, papers: { needs: ['remote pilot licence'] } },
    answer: 'free if',
    offers: ['Note the remote pilot licence'],
    findings: [{ kind: 'licence', hardness: 'settle', says: 'How long that takes is not on file.' }],
  },
  {
    name: 'a driving licence that runs out on the road must be settled; somebody else may drive',
    home: duluth,
    ways: [{ between: [duluth, fargo], minutes: 240 }],
    now,
    documents: [{ kind: 'driving licence', until: '2026-12-09' }],
    booked: [],
    candidate: { place: fargo, days: twoDays },
    answer: 'free if',
    findings: [{ kind: 'licence', hardness: 'settle', numbers: { until: '2026-12-09', homeOn: '2026-12-10' } }],
  },
];
