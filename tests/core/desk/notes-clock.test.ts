import { expect, test } from 'vitest';
import { forgottenClock, furtherClock, notesClock } from '../../../core/desk/notes-clock.ts';
import { furtherPrice } from '../../../core/deliverables/further-round.ts';
import { epochOf } from '../../../core/time/read.ts';

const zone = 'America/Chicago';
const calendars = { zone, mine: new Set<string>(), theirs: new Set<string>() };
const job = { id: 'j', version: 4, title: 'Bakers congress' };
const awaited = {
  id: 'r',
  job,
  name: 'Highlights',
  due: '2026-12-18',
  cut: 'rough cut',
  sentAt: epochOf('2026-12-08T16:00:00Z'),
  dueBack: '2026-12-11',
};

test('notes that are due', () =>
  expect(notesClock(awaited, calendars, epochOf('2026-12-09T16:00:00Z'))).toEqual({
    id: 'notes:r',
    kind: 'notes',
    at: '2026-12-12T06:00:00Z',
    late: false,
    jobId: 'j',
    jobVersion: 4,
    sentence: 'Highlights: notes on the rough cut due by the end of Fri',
    second: 'sent Tue 10:00; Bakers congress',
    action: 'notes',
  }));

test.each([
  ['2026-12-12T06:00:00Z', true, 'overdue', 'sent Tue 10:00; Bakers congress'],
  [
    '2026-12-15T16:00:00Z',
    true,
    'overdue by 2 business days',
    'sent Tue 8 Dec 10:00; if they come today, its date moves from Fri 18 December to Tue 22 December 2026; Bakers congress',
  ],
])('at %s: %s %s', (now, late, said, second) =>
  expect(notesClock(awaited, calendars, epochOf(now))).toMatchObject({
    late,
    sentence: `Highlights: notes on the rough cut ${said}`,
    second,
  }),
);

test('a further round that is to be billed', () => {
  const price = furtherPrice('2', { editHour: '85', currency: 'USD' });
  const round = { id: 'r', cut: 'third cut', of: 'Highlights', price, notesAt: epochOf('2026-12-14T16:00:00Z'), job };
  expect(furtherClock(round, epochOf('2026-12-15T16:00:00Z'), zone)).toMatchObject({
    kind: 'bill',
    late: true,
    sentence: 'Highlights: further round of USD 170.00 to bill',
    second: 'notes on the third cut came Mon 10:00; nobody has said yes or no; Bakers congress',
  });
  expect(
    furtherClock({ ...round, price: { ...price, state: 'agreed', who: 'Ana Voss' } }, epochOf('2026-12-15T16:00:00Z'), zone).second,
  ).toContain('agreed by Ana Voss');
});

test('a clock that has run for half a day was forgotten', () => {
  const running = { job, name: 'Highlights', stage: 'rough cut', startAt: epochOf('2026-12-14T16:00:00Z') };
  expect(forgottenClock(running, epochOf('2026-12-15T03:59:00Z'), zone)).toBeNull();
  expect(forgottenClock(running, epochOf('2026-12-15T16:00:00Z'), zone)).toMatchObject({
    at: '2026-12-15T04:00:00Z',
    late: true,
    sentence: 'Highlights: the clock on rough cut still runs',
    second: 'started Mon 10:00; stop it at the moment when the work ended; Bakers congress',
  });
});
