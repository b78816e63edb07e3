import { describe, expect, test } from 'vitest';
import type { InquiryFields, Reading } from '../../../core/contract/inquiries.ts';
import { jobOf } from '../../../core/inquiries/to-job.ts';
import { questionsForClient } from '../../../core/quotes/ask.ts';

const THUNDER_BAY = {
  key: 'geonames:6166142',
  name: 'Thunder Bay',
  region: 'Ontario',
  country: 'CA',
  lat: 48.38,
  lon: -89.25,
  zone: 'America/Toronto',
};
const USUAL = { homeZone: 'America/Chicago', dayMinutes: 600, halfMinutes: 300 };
const reading = (fields: InquiryFields, more: Partial<Reading> = {}): Reading => ({
  isInquiry: true,
  fields,
  questions: [],
  spans: [],
  ...more,
});
const job = (fields: InquiryFields, more: Partial<Reading> = {}) => jobOf(reading(fields, more), 'Hello there', '', USUAL);
const asked = (read: ReturnType<typeof job>) => read.questions.map(({ field, ask }) => `${field}: ${ask}`);

describe('days', () => {
  test('five days with a load-in the evening before', () => {
    const read = job(
      { start: '2026-12-06', end: '2026-12-10', firstCall: '2026-12-05T14:00', role: 'vision mixing' },
      { placeFound: THUNDER_BAY },
    );
    expect(read.facts.days[0]).toEqual({ date: '2026-12-05', kind: 'half', call: '2026-12-05T14:00', wrap: '2026-12-05T19:00' });
    expect(read.facts.days).toHaveLength(6);
    expect(read.facts.days[5]).toEqual({ date: '2026-12-10', kind: 'shoot', call: '2026-12-10T09:00', wrap: '2026-12-10T19:00' });
    expect(asked(read)).toEqual([
      'firstCall: At what time is the call on each day? 09:00 is assumed.',
      'lastWrap: How long is load-in on Sat 5 December 2026? 5 h are assumed.',
      'lastWrap: At what time is wrap on each day? 10 h after call are assumed.',
    ]);
  });

  test('one day with both times read asks nothing about them', () => {
    const read = job({ start: '2026-12-12', firstCall: '2026-12-12T07:00', lastWrap: '2026-12-13T01:00', role: 'shoot' });
    expect(read.facts.days).toEqual([{ date: '2026-12-12', kind: 'shoot', call: '2026-12-12T07:00', wrap: '2026-12-13T01:00' }]);
    expect(read.questions).toEqual([]);
  });

  test('a short one is a half day only when both of its times were read', () => {
    const times = { start: '2026-12-12', firstCall: '2026-12-12T09:00', role: 'shoot' } as const;
    expect(job({ ...times, lastWrap: '2026-12-12T14:00' }).facts.days[0]?.kind).toBe('half');
    expect(job({ ...times, lastWrap: '2026-12-12T14:01' }).facts.days[0]?.kind).toBe('shoot');
    expect(job(times).facts.days[0]?.kind).toBe('shoot');
  });

  test('days with others between them are taken as they were read', () => {
    const read = job({ start: '2026-12-08', end: '2026-12-10', days: 2 }, { datesFound: ['2026-12-08', '2026-12-10'] });
    expect(read.facts.days.map((day) => day.date)).toEqual(['2026-12-08', '2026-12-10']);
  });

  test('a number of days makes the end; without a first date there are none', () => {
    expect(job({ start: '2026-12-30', days: 4 }).facts.days.map((day) => day.date)).toEqual([
      '2026-12-30',
      '2026-12-31',
      '2027-01-01',
      '2027-01-02',
    ]);
    expect(job({ days: 4 }).facts.days).toEqual([]);
  });

  test('a call long before the first date is not load-in', () => {
    expect(job({ start: '2026-12-12', firstCall: '2026-12-01T10:00' }).facts.days).toHaveLength(1);
  });

  test('a call that the clock there skips is asked about, not moved', () => {
    const read = job({ start: '2027-03-14', firstCall: '2027-03-14T02:30', role: 'shoot' });
    expect(read.facts.days).toEqual([]);
    expect(asked(read)[0]).toBe(
      'firstCall: 2027-03-14 02:30 does not exist in America/Chicago: the clock jumps over it. Give a time before or after the change. Which days and times are meant?',
    );
  });
});

describe('what was assumed is put to a client as it is asked', () => {
  const run = { start: '2026-12-12', end: '2026-12-13', role: 'shoot' } as const;
  const one = { start: '2026-12-12', role: 'shoot' } as const;
  test.each<[string, InquiryFields, string[]]>([
    [
      'a call of which only the first day is told',
      { ...run, firstCall: '2026-12-12T08:00' },
      ['Shall I be there at 08:00 on every day?', 'Until when do you need me on each day, strike included?'],
    ],
    [
      'a wrap of which only the last day is told',
      { ...run, firstCall: '2026-12-12T08:00', lastWrap: '2026-12-13T18:00' },
      ['Shall I be there at 08:00 on every day?', 'Until when do you need me on the days before the last?'],
    ],
    [
      'nothing told of two days',
      run,
      ['When shall I be there on each day, load-in included?', 'Until when do you need me on each day, strike included?'],
    ],
    ['nothing told of one day', one, ['When shall I be there, load-in included?', 'Until when do you need me, strike included?']],
    [
      'a load-in the evening before',
      { ...one, firstCall: '2026-12-11T18:00' },
      [
        'When shall I be there on the day after load-in?',
        'How long do you need me for load-in on Fri 11 December 2026?',
        'Until when do you need me, strike included?',
      ],
    ],
    [
      'a call that the clock skips',
      { start: '2027-03-14', firstCall: '2027-03-14T02:30', role: 'shoot' },
      ['Which days and times are meant?'],
    ],
  ])('%s', (_name, fields, put) => expect(questionsForClient(job(fields).questions)).toEqual(put));
});

test('a role that was not read is assumed and asked', () => {
  const read = job({ start: '2026-12-12', firstCall: '2026-12-12T09:00', lastWrap: '2026-12-12T19:00' });
  expect(read.facts.role).toBe('shoot');
  expect(asked(read)).toEqual(['role: Which role is asked for? Filming is assumed.']);
});

test('what the reader asks already is not asked again', () => {
  const question = { field: 'firstCall' as const, ask: 'Is the call 08:00 or 18:00?', choices: [] };
  const read = job({ start: '2026-12-12', role: 'shoot', lastWrap: '2026-12-12T19:00' }, { questions: [question] });
  expect(read.questions).toEqual([question]);
});

test('what is kept of names is one visible line of at most 120 characters', () => {
  const { facts } = job({ organisation: `Gear\u202e\nLeague ${'x'.repeat(200)}`, deliverables: [' ', ' a  highlight\u0007 '] });
  expect(facts.organisation).toBe(`Gear League ${'x'.repeat(108)}`);
  expect(facts.deliverables).toEqual(['a highlight']);
});

test('reply-by is a moment at home', () => {
  expect(job({ replyBy: '2026-12-04T00:00' }).facts.replyBy).toEqual({
    wall: '2026-12-04T00:00',
    zone: 'America/Chicago',
    at: '2026-12-04T06:00:00Z',
  });
});

const titled = (fields: InquiryFields, message: string, title = '') => jobOf(reading(fields), message, title, USUAL).facts.title;

describe('a title', () => {
  test.each([
    ['as typed', { organisation: 'Gear League' }, 'x', 'Final', 'Final'],
    ['who and where', { organisation: 'Gear League', place: 'Fargo' }, 'x', '', 'Gear League, Fargo'],
    ['what and where', { role: 'vision mixing', place: 'Fargo' } as const, 'x', '', 'Vision mixing, Fargo'],
    ['the first words', {}, '\n> Subject: Re: Fwd: filming our open day\nHello', '', 'filming our open day'],
    ['nothing but marks', {}, '...', '', 'Inquiry'],
  ])('%s', (_name, fields, message, typed, expected) => expect(titled(fields, message, typed)).toBe(expected));

  test('a long one is cut at a word', () => {
    expect(titled({}, 'We would like to ask whether you could come and film our yearly meeting')).toBe(
      'We would like to ask whether you could come and film our …',
    );
  });
});
