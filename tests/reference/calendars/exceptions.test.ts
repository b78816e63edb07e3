/**
 * Exceptions, extra dates, changed occurrences, zones that a file defines, and times that a clock skips or repeats.
 * @source Internet Engineering Task Force, RFC 5545 (iCalendar), 3.3.5, 3.3.10, 3.6.1, 3.6.5, 3.8.4.4, 3.8.5.1, 3.8.5.2 and 3.8.5.3, 2009
 */
import { describe, expect, test } from 'vitest';
import { at, begins, calendarOf, eventOf, readText } from '../../calendar-text.ts';

const inUtc = (text: string) => begins(readText(text), 'UTC').map((each) => each.replace('+00:00', 'Z'));
const spans = (text: string) =>
  readText(text).busy.map(({ startAt, endAt }) =>
    [startAt, endAt].map((each) => Temporal.Instant.fromEpochMilliseconds(each).toString({ smallestUnit: 'minute' })).join('/'),
  );

describe('3.8.5.1 and 3.8.5.2', () => {
  test('the three dates of the example are taken out', () => {
    const event = eventOf(
      'UID:1',
      'DTSTART:19960401T010000Z',
      'DURATION:PT1H',
      'RRULE:FREQ=DAILY;COUNT=6',
      'EXDATE:19960402T010000Z,19960403T010000Z,19960404T010000Z',
    );
    expect(inUtc(calendarOf(event))).toEqual(['1996-04-01T01:00Z', '1996-04-05T01:00Z', '1996-04-06T01:00Z']);
  });

  test('the same time in UTC and on a clock is one, and is counted once', () => {
    const event = eventOf(
      'UID:1',
      'DTSTART:19970713T123000Z',
      'DURATION:PT1H',
      'RDATE:19970714T123000Z',
      'RDATE;TZID=America/New_York:19970714T083000',
    );
    expect(inUtc(calendarOf(event))).toEqual(['1997-07-13T12:30Z', '1997-07-14T12:30Z']);
  });

  test('a period brings its own end, as an end or as a length', () => {
    const event = eventOf(
      'UID:1',
      'DTSTART:19960402T010000Z',
      'DURATION:PT30M',
      'RDATE;VALUE=PERIOD:19960403T020000Z/19960403T040000Z,19960404T010000Z/PT3H',
    );
    expect(spans(calendarOf(event))).toEqual([
      '1996-04-02T01:00Z/1996-04-02T01:30Z',
      '1996-04-03T02:00Z/1996-04-03T04:00Z',
      '1996-04-04T01:00Z/1996-04-04T04:00Z',
    ]);
  });

  test('the dates of the example, each a whole day', () => {
    const event = eventOf('UID:1', 'DTSTART;VALUE=DATE:19970101', 'RDATE;VALUE=DATE:19970101,19970120,19970217,19970421,19970526');
    const { busy } = readText(calendarOf(event));
    expect(busy.map(({ allDay, endAt, startAt }) => [allDay, (endAt - startAt) / 3_600_000])).toEqual(
      Array.from({ length: 5 }, () => [true, 24]),
    );
  });
});

describe('3.8.4.4', () => {
  const weekly = eventOf(
    'UID:w',
    'SUMMARY:Choir',
    'DTSTART;TZID=America/New_York:20261005T180000',
    'DURATION:PT2H',
    'RRULE:FREQ=WEEKLY;COUNT=6',
  );

  test('one occurrence is moved, over the change of the clock', () => {
    const moved = eventOf(
      'UID:w',
      'SUMMARY:Choir',
      'RECURRENCE-ID;TZID=America/New_York:20261102T180000',
      'DTSTART;TZID=America/New_York:20261103T190000',
      'DURATION:PT3H',
    );
    // The end of summer time on 1 November 2026 lies between the fourth and the fifth.
    expect(spans(calendarOf(weekly, moved))).toEqual([
      '2026-10-05T22:00Z/2026-10-06T00:00Z',
      '2026-10-12T22:00Z/2026-10-13T00:00Z',
      '2026-10-19T22:00Z/2026-10-20T00:00Z',
      '2026-10-26T22:00Z/2026-10-27T00:00Z',
      '2026-11-04T00:00Z/2026-11-04T03:00Z',
      '2026-11-09T23:00Z/2026-11-10T01:00Z',
    ]);
  });

  test('one occurrence is named by its date alone', () => {
    const moved = eventOf('UID:w', 'SUMMARY:Choir', 'RECURRENCE-ID;VALUE=DATE:20261012', 'DTSTART:20261014T000000Z', 'DURATION:PT1H');
    const found = inUtc(calendarOf(weekly, moved));
    expect(found).toHaveLength(6);
    expect(found[1]).toBe('2026-10-14T00:00Z');
  });

  test('one occurrence is cancelled', () => {
    const gone = eventOf('UID:w', 'STATUS:CANCELLED', 'RECURRENCE-ID:20261012T220000Z', 'DTSTART:20261012T220000Z');
    expect(inUtc(calendarOf(weekly, gone))).toHaveLength(5);
    expect(inUtc(calendarOf(gone, weekly))).not.toContain('2026-10-12T22:00Z');
  });

  test('this and all later ones are moved by as much on the clock, and named anew', () => {
    const later = eventOf(
      'UID:w',
      'SUMMARY:Choir, new hall',
      'RECURRENCE-ID;RANGE=THISANDFUTURE;TZID=America/New_York:20261026T180000',
      'DTSTART;TZID=America/New_York:20261027T193000',
      'DURATION:PT1H',
    );
    const { busy } = readText(calendarOf(weekly, later));
    expect(busy.map(({ title }) => title)).toEqual([...Array<string>(3).fill('Choir'), ...Array<string>(3).fill('Choir, new hall')]);
    expect(begins(readText(calendarOf(weekly, later)), 'America/New_York').slice(3)).toEqual([
      '2026-10-27T19:30-04:00',
      '2026-11-03T19:30-05:00',
      '2026-11-10T19:30-05:00',
    ]);
  });

  test('of two changes of one occurrence the higher sequence stands', () => {
    const change = (sequence: number, hour: string) =>
      eventOf(
        'UID:w',
        `SEQUENCE:${sequence}`,
        'RECURRENCE-ID;TZID=America/New_York:20261005T180000',
        `DTSTART;TZID=America/New_York:20261005T${hour}0000`,
        'DURATION:PT1H',
      );
    expect(begins(readText(calendarOf(weekly, change(2, '20'), change(1, '07'))), 'America/New_York')[0]).toBe('2026-10-05T20:00-04:00');
  });
});

describe('3.8.5.3', () => {
  test.each([
    ['is one of those that are counted', 'FREQ=WEEKLY;BYDAY=FR;COUNT=2', ['2026-01-05T09:00Z', '2026-01-09T09:00Z']],
    ['stands before the end of its rule too', 'FREQ=WEEKLY;BYDAY=FR;UNTIL=20260101T000000Z', ['2026-01-05T09:00Z']],
  ])('the start, which its rule does not give, %s', (_, rule, expected) => {
    expect(inUtc(calendarOf(eventOf('UID:1', 'DTSTART:20260105T090000Z', 'DURATION:PT1H', `RRULE:${rule}`)))).toEqual(expected);
  });

  // Summer time ends there on 1 November 2026 at 02:00: the night from 31 October has an hour more.
  test.each([
    [
      'DTEND gives each exactly the length of the first',
      'DTEND;TZID=America/New_York:20261031T120000',
      '2026-10-31T16:00Z/2026-11-01T16:00Z',
    ],
    ['DURATION of a day is a day on the clock', 'DURATION:P1D', '2026-10-31T16:00Z/2026-11-01T17:00Z'],
    ['DURATION in hours is exact', 'DURATION:PT24H', '2026-10-31T16:00Z/2026-11-01T16:00Z'],
  ])('%s', (_, end, second) => {
    const event = eventOf('UID:1', 'DTSTART;TZID=America/New_York:20261030T120000', end, 'RRULE:FREQ=DAILY;COUNT=3');
    expect(spans(calendarOf(event))[1]).toBe(second);
  });
});

describe('3.3.5 and 3.3.10', () => {
  const once = (start: string) => inUtc(calendarOf(eventOf('UID:1', `DTSTART;TZID=America/New_York:${start}`, 'DURATION:PT1H')));
  test('of a time that occurs twice the first is meant', () => {
    expect(once('20071104T013000')).toEqual(['2007-11-04T05:30Z']);
  });
  test('of a time that does not occur, what the offset before the gap gives', () => {
    expect(once('20070311T023000')).toEqual(['2007-03-11T07:30Z']);
  });
  test('a rule passes over a time that does not occur, and does not count it', () => {
    const event = eventOf('UID:1', 'DTSTART;TZID=America/New_York:20070310T023000', 'DURATION:PT1H', 'RRULE:FREQ=DAILY;COUNT=3');
    expect(begins(readText(calendarOf(event)), 'America/New_York')).toEqual([
      '2007-03-10T02:30-05:00',
      '2007-03-12T02:30-04:00',
      '2007-03-13T02:30-04:00',
    ]);
  });
  test('a time that floats and a date are on the clock of the calendar', () => {
    const floating = calendarOf(
      eventOf('UID:1', 'DTSTART:19980118T230000', 'DURATION:PT1H'),
      eventOf('UID:2', 'DTSTART;VALUE=DATE:19980120'),
    );
    expect(begins(readText(floating, { zone: 'Pacific/Auckland' }), 'UTC')).toEqual(['1998-01-18T10:00+00:00', '1998-01-19T11:00+00:00']);
  });
});

test('3.6.1: a date without an end lasts that day, a time without an end takes no time, and the end of whole days is not part of them', () => {
  const days = calendarOf(
    eventOf('UID:1', 'DTSTART;VALUE=DATE:20070628', 'DTEND;VALUE=DATE:20070709', 'SUMMARY:Festival'),
    eventOf('UID:2', 'DTSTART;VALUE=DATE:19971102', 'RRULE:FREQ=YEARLY;COUNT=2'),
    eventOf('UID:3', 'DTSTART:19970903T163000Z'),
  );
  const read = readText(days);
  expect(read.busy.map(({ startAt, endAt }) => (endAt - startAt) / 86_400_000)).toEqual([1, 1, 11]);
  expect(read.leftOut).toEqual([{ why: 'no time', count: 1, example: 'An event without a title' }]);
});

describe('3.6.5', () => {
  const EASTERN = [
    'BEGIN:STANDARD',
    'DTSTART:20071104T020000',
    'RRULE:FREQ=YEARLY;BYMONTH=11;BYDAY=1SU',
    'TZOFFSETFROM:-0400',
    'TZOFFSETTO:-0500',
    'TZNAME:EST',
    'END:STANDARD',
    'BEGIN:DAYLIGHT',
    'DTSTART:20070311T020000',
    'RRULE:FREQ=YEARLY;BYMONTH=3;BYDAY=2SU',
    'TZOFFSETFROM:-0500',
    'TZOFFSETTO:-0400',
    'TZNAME:EDT',
    'END:DAYLIGHT',
  ];
  const FICTITIOUS = [
    'BEGIN:VTIMEZONE',
    'TZID:Fictitious',
    'BEGIN:STANDARD',
    'DTSTART:19671029T020000',
    'RRULE:FREQ=YEARLY;BYDAY=-1SU;BYMONTH=10',
    'TZOFFSETFROM:-0400',
    'TZOFFSETTO:-0500',
    'TZNAME:EST',
    'END:STANDARD',
    'BEGIN:DAYLIGHT',
    'DTSTART:19870405T020000',
    'RRULE:FREQ=YEARLY;BYDAY=1SU;BYMONTH=4;UNTIL=19980404T070000Z',
    'TZOFFSETFROM:-0500',
    'TZOFFSETTO:-0400',
    'TZNAME:EDT',
    'END:DAYLIGHT',
  ];
  const second = [
    'BEGIN:DAYLIGHT',
    'DTSTART:19990424T020000',
    'RRULE:FREQ=YEARLY;BYDAY=-1SU;BYMONTH=4',
    'TZOFFSETFROM:-0500',
    'TZOFFSETTO:-0400',
    'TZNAME:EDT',
    'END:DAYLIGHT',
  ];
  const window = { from: at('1996-01-01T00:00:00Z'), to: at('2002-01-01T00:00:00Z') };
  const noon = (date: string) => eventOf(`UID:${date}`, `DTSTART;TZID=Fictitious:${date}T120000`, 'DURATION:PT1H');
  const noons = ['19960701', '19970701', '19980701', '20000701'].map(noon);

  test('a zone whose summer time ended: no summer after 1997', () => {
    expect(
      begins(readText(calendarOf(...noons, ...FICTITIOUS, 'END:VTIMEZONE'), { window }), 'UTC').map((each) => each.slice(0, 13)),
    ).toEqual(['1996-07-01T16', '1997-07-01T16', '1998-07-01T17', '2000-07-01T17']);
  });

  test('a second rule picks it up again in 1999', () => {
    const read = readText(calendarOf(...FICTITIOUS, ...second, 'END:VTIMEZONE', ...noons), { window });
    expect(begins(read, 'UTC').map((each) => each.slice(0, 13))).toEqual([
      '1996-07-01T16',
      '1997-07-01T16',
      '1998-07-01T17',
      '2000-07-01T16',
    ]);
  });

  test('a zone of the file has the instants of the zone that it describes, in gaps and repeated hours too', () => {
    const walls = [
      '20260308T013000',
      '20260308T023000',
      '20260308T033000',
      '20260701T120000',
      '20261101T003000',
      '20261101T013000',
      '20261101T023000',
    ];
    const events = (zone: string) => walls.map((wall) => eventOf(`UID:${wall}`, `DTSTART;TZID=${zone}:${wall}`, 'DURATION:PT1H'));
    const own = calendarOf('BEGIN:VTIMEZONE', 'TZID:Our Own East', ...EASTERN, 'END:VTIMEZONE', ...events('Our Own East'));
    expect(inUtc(own)).toEqual(inUtc(calendarOf(...events('America/New_York'))));
    expect(inUtc(own)).toHaveLength(7);
  });

  test('a rule on such a clock keeps its time of day over the change', () => {
    const event = (zone: string) =>
      eventOf('UID:1', `DTSTART;TZID=${zone}:20261030T090000`, 'DURATION:PT1H', 'RRULE:FREQ=DAILY;UNTIL=20261103T140000Z');
    const own = calendarOf('BEGIN:VTIMEZONE', 'TZID:Our Own East', ...EASTERN, 'END:VTIMEZONE', event('Our Own East'));
    expect(inUtc(own)).toEqual(inUtc(calendarOf(event('America/New_York'))));
    expect(inUtc(own)).toHaveLength(5);
  });
});
