import { describe, expect, test } from 'vitest';
import type { WorkedFields } from '../../../core/contract/hours.ts';
import { actualDays, bookDay, toEnter } from '../../../core/hours/actual-days.ts';
import { liesOn, placedHours, whichOfTwo, type WorkedHours } from '../../../core/hours/worked.ts';
import { at } from '../quotes/facts.ts';

const NOW = at('2026-12-20T12:00');
const fields = (given: Partial<WorkedFields> = {}): WorkedFields => ({
  handId: null,
  kind: 'shoot',
  zone: 'America/Chicago',
  call: '2026-12-12T07:00',
  wrap: '2026-12-12T22:40',
  unpaidBreakMinutes: 60,
  note: '',
  ...given,
});
const hours = (given: Partial<WorkedFields> = {}): WorkedHours => {
  const placed = placedHours(fields(given), NOW);
  if ('field' in placed) throw new Error(placed.sentence);
  return placed;
};
const wrong = (given: Partial<WorkedFields>) => {
  const placed = placedHours(fields(given), NOW);
  return 'field' in placed ? [placed.field, placed.sentence] : placed;
};

describe('hours that cannot be', () => {
  test.each([
    ['a wrap before the call', { wrap: '2026-12-12T06:59' }, 'fields.wrap', 'is not after the call'],
    ['a wrap at the call', { wrap: '2026-12-12T07:00' }, 'fields.wrap', 'is not after the call'],
    ['a 30-hour day', { wrap: '2026-12-13T13:00' }, 'fields.wrap', 'From call to wrap are 30 h. One call lasts at most 24 h'],
    ['24 h and a minute', { wrap: '2026-12-13T07:01' }, 'fields.wrap', '24 h 1 min'],
    ['breaks as long as the day', { unpaidBreakMinutes: 940 }, 'fields.unpaidBreakMinutes', 'leave nothing of the 15 h 40 min'],
    ['a call to come', { call: '2026-12-20T12:01', wrap: null }, 'fields.call', 'is still to come'],
    ['a wrap to come', { call: '2026-12-20T07:00', wrap: '2026-12-20T18:00' }, 'fields.wrap', 'leave it open until then'],
    ['a time that the clock jumps over', { call: '2026-03-08T02:30', wrap: '2026-03-08T09:00' }, 'fields.call', 'does not exist'],
    ['a time that the clock showed twice', { call: '2026-10-31T18:00', wrap: '2026-11-01T01:30' }, 'fields.wrapIs', 'twice, an hour apart'],
  ])('%s', (_, given, field, sentence) => expect(wrong(given)).toEqual([field, expect.stringContaining(sentence)]));
});

test('24 h to the minute, and breaks one minute short of the day, are kept', () => {
  expect(hours({ wrap: '2026-12-13T07:00' }).wrapAt).toBe(at('2026-12-13T07:00'));
  expect(hours({ unpaidBreakMinutes: 939 }).unpaidBreakMinutes).toBe(939);
});

test('a date is that of its call: 02:00 belongs to the evening before', () =>
  expect(hours({ call: '2026-12-11T18:00', wrap: '2026-12-12T02:00' })).toMatchObject({ date: '2026-12-11' }));

test('the night the clock is set back: the first 01:30 is 7 h 30 after 18:00, the second 8 h 30', () => {
  const night = { call: '2026-10-31T18:00', wrap: '2026-11-01T01:30' };
  const long = (wrapIs: 'first' | 'second') => {
    const { callAt, wrapAt } = hours({ ...night, wrapIs });
    return ((wrapAt ?? 0) - callAt) / 60_000;
  };
  expect([long('first'), long('second')]).toEqual([450, 510]);
  const { wrapAt } = hours({ ...night, wrapIs: 'second' });
  expect(whichOfTwo(night.wrap, 'America/Chicago', wrapAt ?? 0)).toBe('second');
  expect(whichOfTwo(night.call, 'America/Chicago', at(night.call))).toBeUndefined();
});

test('hours of one person may touch and not overlap; another person may work at the same time', () => {
  const morning = hours({ call: '2026-12-12T07:00', wrap: '2026-12-12T12:00' });
  expect(liesOn(hours({ call: '2026-12-12T12:00' }), [morning], NOW)).toBeUndefined();
  expect(liesOn(hours({ call: '2026-12-12T11:59' }), [morning], NOW)).toBe(morning);
  expect(liesOn(hours({ handId: 'other' }), [morning], NOW)).toBeUndefined();
  const running = hours({ wrap: null });
  expect(liesOn(hours({ call: '2026-12-14T07:00', wrap: '2026-12-14T09:00' }), [running], NOW)).toBe(running);
});

test('my hours take the place of the planned date; others keep their plan and are named', () => {
  const planned = [
    bookDay({ ...hours(), wrap: '2026-12-12T17:00', wrapAt: at('2026-12-12T17:00') }),
    {
      ...bookDay({
        ...hours({ call: '2026-12-13T07:00', wrap: '2026-12-13T17:00' }),
        wrap: '2026-12-13T17:00',
        wrapAt: at('2026-12-13T17:00'),
      }),
    },
  ];
  const worked = [hours(), hours({ handId: 'h', call: '2026-12-13T07:00', wrap: '2026-12-13T12:00' })];
  const { days, notEntered } = actualDays(planned, worked);
  expect(days.map(({ date, wrap }) => [date, wrap.slice(11)])).toEqual([
    ['2026-12-12', '22:40'],
    ['2026-12-13', '17:00'],
  ]);
  expect(notEntered).toEqual(['2026-12-13']);
  expect(toEnter(planned, worked, at('2026-12-13T16:59'))).toEqual([]);
  expect(toEnter(planned, worked, at('2026-12-13T17:00'))).toEqual(['2026-12-13']);
  expect(toEnter(planned, [hours({ wrap: null })], at('2026-12-12T20:00'))).toEqual([]);
});
