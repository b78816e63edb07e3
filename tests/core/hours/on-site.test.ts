import { expect, test } from 'vitest';
import type { JobHours, Worked } from '../../../core/contract/hours.ts';
import { onSite } from '../../../core/hours/on-site.ts';
import { instantText } from '../../../core/time/read.ts';
import { at } from '../quotes/facts.ts';

const zone = 'America/Chicago';
const planned = ['2026-12-12', '2026-12-13'].map((date) => ({
  date,
  kind: 'shoot' as const,
  call: `${date}T17:00`,
  wrap: `${date.slice(0, 8)}${Number(date.slice(8)) + 1}T01:00`,
}));
const worked = (call: string, wrap: string | null): Worked => ({
  id: '01890000-0000-7000-8000-0000000000d1',
  version: 1,
  jobId: '01890000-0000-7000-8000-0000000000d2',
  handId: null,
  handName: '',
  date: call.slice(0, 10),
  kind: 'shoot',
  zone,
  call,
  wrap,
  callAt: instantText(at(call)),
  wrapAt: wrap === null ? null : instantText(at(wrap)),
  unpaidBreakMinutes: 0,
  note: '',
});
const sign = (wall: string, days: Worked[] = []) =>
  onSite({ now: instantText(at(wall)), zone, days } satisfies Pick<JobHours, 'now' | 'zone' | 'days'>, planned);

test('the sign comes twelve hours before a call and goes with its wrap', () => {
  expect(sign('2026-12-12T04:59')).toBeNull();
  expect(sign('2026-12-12T05:00')).toMatchObject({
    running: null,
    said: 'Not on the clock',
    plan: 'Call planned on Sat 12 December 2026, 17:00, wrap at Sun 13 December 2026, 01:00.',
  });
  expect(sign('2026-12-13T00:59')?.plan).toContain('Sat 12');
  expect(sign('2026-12-13T01:00')).toBeNull();
});

test('what runs is said with its length, past midnight and past the plan, and warns over 14 h', () => {
  const running = worked('2026-12-12T17:05', null);
  expect(sign('2026-12-13T00:30', [running])).toMatchObject({
    said: 'On the clock since 17:05, 7 h 25 min',
    plan: 'Wrap planned at Sun 13 December 2026, 01:00.',
    caution: '',
  });
  expect(sign('2026-12-13T07:05', [running])?.caution).toBe('');
  expect(sign('2026-12-13T07:06', [running])?.caution).toContain('nobody should be driving');
});

test('a date whose hours are in asks for no call; the next one does', () => {
  const done = worked('2026-12-12T17:00', '2026-12-13T01:00');
  expect(sign('2026-12-13T02:00', [done])).toBeNull();
  expect(sign('2026-12-13T05:00', [done])?.plan).toContain('Sun 13');
  expect(sign('2026-12-12T20:00', [{ ...worked('2026-12-12T17:00', null), handId: '01890000-0000-7000-8000-0000000000d3' }])?.said).toBe(
    'Not on the clock',
  );
});
