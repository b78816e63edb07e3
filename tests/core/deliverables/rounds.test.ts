import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  businessDaysLate,
  dateMoved,
  notesDue,
  passOf,
  roundRelease,
  windowEnds,
  type RoundCalendars,
} from '../../../core/deliverables/rounds.ts';
import { businessDaysBetween, isBusinessDay } from '../../../core/time/business.ts';
import { epochOf, instantOf } from '../../../core/time/read.ts';
import { dateLater, nextDate } from '../../../core/time/wall.ts';
import { tried } from '../laws.ts';

const zone = 'America/Chicago';
const none = new Set<string>();
const plain: RoundCalendars = { zone, mine: none, theirs: none };
const at = (wall: string): number => instantOf(wall, zone).epochMilliseconds;

describe("the client's window", () => {
  test('begins on the day after that of sending', () => expect(notesDue(at('2026-11-03T23:50'), 3, plain)).toBe('2026-11-06'));
  test('sent on a Saturday, it counts from Monday', () => expect(notesDue(at('2026-11-07T10:00'), 3, plain)).toBe('2026-11-11'));
  test('no days: notes on the day of sending', () => expect(notesDue(at('2026-11-03T10:00'), 0, plain)).toBe('2026-11-03'));
  test('leaves out what either of us does not work', () => {
    const both = { zone, mine: new Set(['2026-11-04']), theirs: new Set(['2026-11-06']) };
    expect(notesDue(at('2026-11-03T10:00'), 3, both)).toBe('2026-11-10');
  });
  test('is counted on the clock of home', () =>
    // 03:00 UTC on Wednesday is Tuesday evening in Duluth.
    expect(notesDue(epochOf('2026-11-04T03:00:00Z'), 1, plain)).toBe('2026-11-04'));
});

describe('notes that come late', () => {
  test.each([
    ['2026-11-06T23:59', 0],
    // Saturday and Sunday after a Friday: nobody lost a day of work.
    ['2026-11-08T20:00', 0],
    ['2026-11-09T00:00', 1],
    ['2026-11-11T09:00', 3],
  ])('came %s: %d business days', (came, lost) => expect(businessDaysLate('2026-11-06', at(came), plain)).toBe(lost));
  test('my holiday is no day lost, the closed week of a client is', () => {
    expect(businessDaysLate('2026-11-25', at('2026-11-27T09:00'), { zone, mine: new Set(['2026-11-26']) })).toBe(1);
    const closed = new Set(['2026-11-09', '2026-11-10']);
    expect(businessDaysLate('2026-11-06', at('2026-11-10T09:00'), { ...plain, theirs: closed } as RoundCalendars)).toBe(2);
  });
  test('the due date moves by as many of my business days', () => {
    expect(dateMoved('2026-11-20', 3, plain)).toBe('2026-11-25');
    expect(dateMoved('2026-11-24', 2, { mine: new Set(['2026-11-26']) })).toBe('2026-11-27');
    expect(dateMoved('2026-11-22', 0, plain)).toBe('2026-11-22');
    expect(dateMoved('2026-11-22', 1, plain)).toBe('2026-11-23');
  });
});

describe('from when a round can be worked on', () => {
  const now = at('2026-11-03T12:00');
  test('from the notes, once they are there', () =>
    expect(roundRelease({ dueBack: '2026-11-06', notesAt: at('2026-11-05T15:00') }, zone, now)).toBe(at('2026-11-05T15:00')));
  test('else from the morning after they are due', () =>
    expect(roundRelease({ dueBack: '2026-11-06', notesAt: null }, zone, now)).toBe(at('2026-11-07T00:00')));
  test('overdue, from now', () => expect(roundRelease({ dueBack: '2026-11-01', notesAt: null }, zone, now)).toBe(now));
  test('a midnight that the clock skips', () =>
    expect(windowEnds('2026-04-23', 'Africa/Cairo')).toBe(instantOf('2026-04-24T01:00', 'Africa/Cairo').epochMilliseconds));
});

test('a cut that was approved without notes used up no round', () =>
  expect([[], ['one'], ['one', ''], ['', 'one', 'two']].map((notes) => passOf(notes.map((each) => ({ notes: each }))))).toEqual([
    1, 2, 2, 3,
  ]));

const date = fc.integer({ min: 0, max: 2000 }).map((days) => dateLater('2024-01-01', days));
const holidays = fc.array(date, { maxLength: 60 }).map((dates) => new Set(dates));
const hour = fc.integer({ min: 0, max: 23 });

test('law: the window holds as many days on which both work as it has, and ends on one', () =>
  fc.assert(
    fc.property(date, hour, fc.integer({ min: 1, max: 15 }), holidays, holidays, (sent, h, days, mine, theirs) => {
      const due = notesDue(epochOf(`${sent}T${String(h).padStart(2, '0')}:30:00Z`), days, { zone: 'UTC', mine, theirs });
      const both = mine.union(theirs);
      expect(isBusinessDay(due, both)).toBe(true);
      expect(businessDaysBetween(nextDate(sent), due, both)).toBe(days);
    }),
    tried,
  ));

test('law: notes in time move nothing, and a later note never moves the date to an earlier one', () =>
  fc.assert(
    fc.property(
      date,
      date,
      fc.integer({ min: -9, max: 40 }),
      fc.integer({ min: 0, max: 9 }),
      holidays,
      (dueBack, due, past, more, mine) => {
        const moved = (days: number): string => {
          const lost = businessDaysLate(dueBack, epochOf(`${dateLater(dueBack, days)}T12:00:00Z`), { zone: 'UTC', mine });
          return dateMoved(due, lost, { mine });
        };
        expect(moved(past) >= due).toBe(true);
        if (past <= 0) expect(moved(past)).toBe(due);
        expect(moved(past + more) >= moved(past)).toBe(true);
      },
    ),
    tried,
  ));

test('law: between the old date and the new one lie as many business days as were lost', () =>
  fc.assert(
    fc.property(date, fc.integer({ min: 0, max: 30 }), holidays, (due, lost, mine) => {
      const to = dateMoved(due, lost, { mine });
      expect(lost === 0 ? 0 : businessDaysBetween(nextDate(due), to, mine)).toBe(lost);
    }),
    tried,
  ));
