import { describe, expect, test } from 'vitest';
import { countInWords, lengthInWords, noticeInWords } from '../../core/words/amounts.ts';
import { datesInWords, dateInWords, deadlineInWords, paperDate, wallInWords, zoneInWords } from '../../core/words/dates.ts';
import { paperLines, paperText, uncovered } from '../../core/words/letters.ts';
import { joined } from '../../core/words/lists.ts';

describe('dates', () => {
  test.each([
    [[], ''],
    [['2026-12-12'], 'Sat 12 December 2026'],
    [['2026-12-13', '2026-12-12', '2026-12-12'], 'Sat 12 and Sun 13 December 2026'],
    [['2026-12-06', '2026-12-07', '2026-12-08', '2026-12-09', '2026-12-10'], 'Sun 6 to Thu 10 December 2026'],
    [['2026-11-29', '2026-11-30', '2026-12-01'], 'Sun 29 November to Tue 1 December 2026'],
    [['2026-12-30', '2026-12-31', '2027-01-01', '2027-01-02'], 'Wed 30 December 2026 to Sat 2 January 2027'],
    [['2026-12-31', '2027-01-01'], 'Thu 31 December 2026 and Fri 1 January 2027'],
    [['2026-12-12', '2026-12-13', '2026-12-18'], 'Sat 12, Sun 13 and Fri 18 December 2026'],
    [['2026-11-27', '2026-12-04', '2026-12-05', '2026-12-06'], 'Fri 27 November and Fri 4 to Sun 6 December 2026'],
    [['2028-02-28', '2028-02-29', '2028-03-01'], 'Mon 28 February to Wed 1 March 2028'],
  ])('%j', (dates, words) => expect(datesInWords(dates)).toBe(words));

  test('one date, a wall time, a deadline, a zone', () => {
    expect(dateInWords('2026-12-12')).toBe('Sat 12 December 2026');
    expect(paperDate('2026-12-03')).toBe('3 December 2026');
    expect(wallInWords('2026-12-12T08:05')).toBe('Sat 12 December 2026, 08:05');
    expect(deadlineInWords({ wall: '2026-12-19T23:59', zone: 'America/Chicago', at: '2026-12-20T05:59:00Z' })).toBe(
      'the end of Sat 19 December 2026',
    );
    expect(deadlineInWords({ wall: '2026-12-19T18:30', zone: 'America/Chicago', at: '2026-12-20T00:30:00Z' })).toBe(
      'Sat 19 December 2026, 18:30',
    );
    expect(zoneInWords('America/New_York')).toBe('New York');
    expect(zoneInWords('America/Argentina/Buenos_Aires')).toBe('Buenos Aires');
  });
});

describe('lengths, counts and lists', () => {
  test.each([
    [0, '0 min'],
    [45, '45 min'],
    [60, '1 h'],
    [640, '10 h 40 min'],
    [-250, '−4 h 10 min'],
  ])('%i minutes', (minutes, words) => expect(lengthInWords(minutes)).toBe(words));

  test('half a minute is no length', () => expect(() => lengthInWords(0.5)).toThrow(RangeError));

  test('counts, notices, lists', () => {
    expect([0, 1, 2].map((count) => countInWords(count, 'day'))).toEqual(['no days', '1 day', '2 days']);
    expect(countInWords(2, 'copy', 'copies')).toBe('2 copies');
    expect([48, 72, 168, 336, 100].map(noticeInWords)).toEqual(['48 hours', '3 days', '7 days', '14 days', '100 hours']);
    expect([[], ['a'], ['a', 'b'], ['a', 'b', 'c']].map((words) => joined(words))).toEqual(['', 'a', 'a and b', 'a, b and c']);
    expect(joined(['a', 'b'], 'or')).toBe('a or b');
  });
});

describe('letters', () => {
  test('composed, without unseen marks, blanks once', () => {
    expect(paperText('Tie\u0302\u0301ng  Vie\u0323\u0302t\t\u200b\ufeff ')).toBe('Tiếng Việt');
    expect(paperText('soft\u00adhyphen \u2764\ufe0f')).toBe('softhyphen \u2764');
    expect(paperLines('12 Row\r\n\r\n  Duluth ')).toEqual(['12 Row', 'Duluth']);
  });

  test('names the field and each letter once', () => {
    const latin = (codePoint: number) => codePoint < 0x250;
    expect(
      uncovered(
        [
          { field: 'a', text: 'plain' },
          { field: 'b', text: 'שלום שלום x' },
        ],
        latin,
      ),
    ).toEqual([{ field: 'b', letters: ['ש', 'ל', 'ו', 'ם'] }]);
  });
});
