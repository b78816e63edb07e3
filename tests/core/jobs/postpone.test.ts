import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { JobDay } from '../../../core/contract/jobs.ts';
import { postponed } from '../../../core/jobs/postpone.ts';
import { dateLater } from '../../../core/time/wall.ts';
import { tried } from '../laws.ts';

const days: JobDay[] = [
  { date: '2026-10-31', kind: 'shoot', call: '2026-10-31T18:00', wrap: '2026-11-01T02:00' },
  { date: '2026-11-02', kind: 'half', call: '2026-11-02T09:00', wrap: '2026-11-02T13:00' },
];

test('dates, calls and wraps keep their distance and their wall times', () => {
  expect(postponed(days, '2026-12-30')).toEqual([
    { date: '2026-12-30', kind: 'shoot', call: '2026-12-30T18:00', wrap: '2026-12-31T02:00' },
    { date: '2027-01-01', kind: 'half', call: '2027-01-01T09:00', wrap: '2027-01-01T13:00' },
  ]);
});

test('there and back again is where it was; nothing to move stays nothing', () => {
  expect(postponed([], '2026-12-30')).toEqual([]);
  fc.assert(
    fc.property(fc.integer({ min: -400, max: 400 }), (distance) => {
      expect(postponed(postponed(days, dateLater('2026-10-31', distance)), '2026-10-31')).toEqual(days);
    }),
    tried,
  );
});
