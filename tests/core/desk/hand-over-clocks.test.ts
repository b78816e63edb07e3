import { expect, test } from 'vitest';
import { approvalClock, originalsClock } from '../../../core/desk/hand-over-clocks.ts';

const zone = 'America/Chicago';
const at = (instant: string): number => Temporal.Instant.from(instant).epochMilliseconds;
const job = { id: 'j', version: 3, title: 'Curling championship' };

test('a yes is due when the window of business days is over, and asked for after it', () => {
  // Wed 6 January 2027 at 10:00, with a holiday of theirs on the Friday.
  const handed = { id: 'h', job, name: 'Highlights', at: at('2027-01-06T16:00:00Z'), windowDays: 3 };
  const calendars = { zone, mine: new Set<string>(), theirs: new Set(['2027-01-08']) };
  const waiting = approvalClock(handed, calendars, at('2027-01-07T16:00:00Z'));
  expect(waiting).toMatchObject({ kind: 'approval', late: false, at: '2027-01-13T06:00:00Z', jobVersion: 3, action: 'approval' });
  expect([waiting.sentence, waiting.second]).toEqual([
    'Highlights: handed over, not approved',
    'handed over Wed; a yes is due by the end of Tue; Curling championship',
  ]);
  const late = approvalClock(handed, calendars, at('2027-01-13T06:00:00Z'));
  expect([late.late, late.second]).toEqual([true, 'handed over Wed 6 Jan; ask whether it is good; Curling championship']);
  expect(approvalClock(handed, calendars, handed.at).second).toMatch(/^handed over today;/);
});

test('originals may go the day after their last date, and are never late', () => {
  const kept = { id: 'h', job, name: 'Highlights', until: '2027-04-06' };
  expect(originalsClock(kept, zone, at('2027-04-01T12:00:00Z'))).toMatchObject({
    at: '2027-04-07T05:00:00Z',
    late: false,
    sentence: 'Highlights: originals may go on Wed 7 April 2027',
    second: 'kept until Tue 6 April 2027; Curling championship',
  });
  // The last date itself still keeps them, whatever the hour.
  expect(originalsClock(kept, zone, at('2027-04-07T04:59:00Z')).sentence).toMatch(/on Wed 7 April 2027$/);
  expect(originalsClock(kept, zone, at('2027-05-01T12:00:00Z'))).toMatchObject({
    at: '2027-05-02T05:00:00Z',
    late: false,
    sentence: 'Highlights: originals may go now',
  });
});
