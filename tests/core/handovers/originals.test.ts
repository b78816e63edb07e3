import { describe, expect, test } from 'vitest';
import { mayGo, originalsInWords, originalsOnPaper, originalsProposed } from '../../../core/handovers/originals.ts';

const ON = '2026-11-30';

describe('what the terms say of originals', () => {
  test.each([
    ['Camera files are kept for 90 days after delivery, then deleted unless we agree otherwise.', 'kept until', '2027-02-28'],
    ['We keep originals three months.', 'kept until', '2027-02-28'],
    ['Kept a year.', 'kept until', '2027-11-30'],
    ['kept for 2 weeks', 'kept until', '2026-12-14'],
    ['Originals are not kept.', 'never kept', null],
    ['Originals are handed over on a disk of the client.', 'handed over', null],
    ['As agreed.', 'kept until', null],
  ])('%s', (terms, kind, until) => {
    const proposed = originalsProposed(terms, ON);
    expect(proposed).toMatchObject({ kind, until });
    expect(proposed.sentence).toContain(terms.replace(/\.$/, ''));
  });

  test('no date is guessed where none is said, and that is told', () => {
    expect(originalsProposed('  ', ON)).toEqual({
      kind: 'kept until',
      until: null,
      sentence: 'The terms say nothing of originals: agree on a date.',
    });
    expect(originalsProposed('As agreed.', ON).sentence).toBe('The terms say: As agreed. No length of time was read in it.');
  });

  test('a length of time that is not about keeping is no date', () =>
    expect(originalsProposed('Originals are never kept; edits 30 days.', ON)).toMatchObject({ kind: 'never kept', until: null }));
});

test('they may go from the day after their last date on, and only where they are kept', () => {
  const kept = { kind: 'kept until', until: '2027-03-01' } as const;
  expect(['2027-02-28', '2027-03-01', '2027-03-02'].map((today) => mayGo(kept, today))).toEqual([false, false, true]);
  expect(mayGo({ kind: 'kept until', until: null }, '2030-01-01')).toBe(false);
  expect(mayGo({ kind: 'never kept', until: null }, '2030-01-01')).toBe(false);
});

test('every state has its sentence, for the client and for me', () => {
  const kept = { kind: 'kept until', until: '2027-03-01' } as const;
  const asked = { kind: 'kept until', until: null } as const;
  expect(originalsOnPaper(kept)).toContain('until 1 March 2027');
  expect(originalsOnPaper(asked)).toContain('still to be agreed on');
  expect(originalsOnPaper({ kind: 'never kept', until: null })).toContain('are not kept');
  expect(originalsInWords(kept, null, '2027-03-01')).toBe('Originals are kept until Mon 1 March 2027; they may go the day after.');
  expect(originalsInWords(kept, null, '2027-03-02')).toBe('Originals were kept until Mon 1 March 2027 and may go.');
  expect(originalsInWords(kept, { on: '2027-03-02', why: '' }, '2027-03-02')).toBe('Originals deleted on Tue 2 March 2027.');
  expect(originalsInWords(kept, { on: '2027-02-02', why: 'the client has them.' }, '2027-03-02')).toBe(
    'Originals deleted on Tue 2 February 2027: the client has them.',
  );
  expect(originalsInWords(asked, null, ON)).toContain('must still be agreed on');
  expect(originalsInWords({ kind: 'handed over', until: null }, null, ON)).toBe('Originals handed over; none are kept.');
  expect(originalsInWords({ kind: 'never kept', until: null }, null, ON)).toBe('Originals are not kept.');
});
