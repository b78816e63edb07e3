/**
 * What a form asks for in a line of its own: for whom, and from which day to which.
 */
import { describe, expect, it } from 'vitest';
import { facts, readAt } from './reading.ts';

const form = (lines: string): string =>
  `Contact form submission\nFull name: Fiona Vane\n${lines}\nType of job: Conference\nLocation: Fargo\nCrew call: 07:30\nFinish: 17:45\nRole: Livestream\nBudget: 700 USD per day\nMessage: Last year we had a weak line in room 3, this year there is a wired one.`;

describe('a form', () => {
  it.each([
    ['Lakeside Enterprise Network', 'Organisation: Lakeside Enterprise Network\nFrom: 2027-11-08\nTo: 2027-11-09'],
    ['Lakeside Enterprise Network', 'Organisation: Lakeside Enterprise Network\nFrom: Mon 8 November 2027\nTo: Tue 9 November 2027'],
    ['Hill National School', 'School / club (if any): Hill National School\nFrom: 8 November 2027\nTo: 9 November 2027'],
    ['Brightwater FC', 'Organisation: Brightwater FC\nFrom: 08/11/2027\nTo: 09/11/2027'],
  ])('says that it is %s: %s', (organisation, lines) =>
    expect(facts(form(lines))).toMatchObject({ organisation, contactName: 'Fiona Vane' }),
  );
  it.each([
    'From: 2027-11-08\nTo: 2027-11-09',
    'Start date: 8 November 2027\nEnd date: 9 November 2027',
    'Event start: 8 Nov 2027\nEvent end: 9 Nov 2027',
    'First day: Mon 8 November 2027\nLast day: Tue 9 November 2027',
  ])('has its days in two lines: %s', (lines) =>
    expect(facts(form(lines))).toMatchObject({ start: '2027-11-08', end: '2027-11-09', days: 2, firstCall: '2027-11-08T07:30' }),
  );
  it.each([
    'From: 8 November 2027\nTo: 12 November 2027',
    'Start date: 8 November 2027\nEnd date: 12 November 2027',
    'First day: Mon 8 November 2027\nLast day: Fri 12 November 2027',
    'Event start: 8 Nov 2027\nEvent end: 12 Nov 2027',
    'Start: 8 Nov 2027\nFinish: 12 Nov 2027',
    'Von: 8. November 2027\nBis: 12. November 2027',
  ])('has all days between two lines: %s', (lines) =>
    expect(facts(form(lines))).toMatchObject({ start: '2027-11-08', end: '2027-11-12', days: 5, firstCall: '2027-11-08T07:30' }),
  );
  it('whose last day is before the first is asked about', () =>
    expect(facts(form('From: 2027-11-09\nTo: 2027-11-08')).start).toBeUndefined());
  it.each([
    'Start: 5 January 2027\nEnd: 23 February 2027\nWhen: every Tuesday',
    'From: 8 November 2027\nTo: 12 November 2027\nDays needed: 1',
    'Start date: 3 May 2027\nEnd date: 7 May 2027\nFilming: two days in that week, to be agreed',
    'Start date: 3 April 2027\nEnd date: 24 April 2027\nSaturdays only',
    'From: 8 November 2027\nTo: 12 November 2027\nNote: any day in the window',
    'Arrival date: 7 November 2027\nFrom: 8 November 2027\nUntil: 10 November 2027',
  ])('is asked about where not all between them is meant: %s', (lines) => {
    const { fields, questions } = readAt(form(lines));
    expect(fields.start).toBeUndefined();
    expect(questions.map(({ field }) => field)).toContain('start');
  });
  it('says a long name and a long body whole', () => {
    const long = 'Consolidated Saint Cuthbert and All Hallows Regional Choral Festival Association';
    const lines = form(`Organisation: ${long}\nFrom: 2027-11-08\nTo: 2027-11-09`);
    expect(facts(lines.replace('Fiona Vane', 'Bartholomew Featherstonehaugh-Wetherington'))).toMatchObject({
      organisation: long,
      contactName: 'Bartholomew Featherstonehaugh-Wetherington',
    });
  });
  it.each(['Yes', 'Not applicable', 'N/A'])('asks for nobody: %s', (value) =>
    expect(facts(form(`Company (optional): ${value}\nFrom: 2027-11-08\nTo: 2027-11-09`)).organisation).toBeUndefined(),
  );
});
