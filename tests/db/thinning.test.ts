import { assert, constantFrom, integer, property, record, uniqueArray } from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Snapshot } from '../../core/contract/store.ts';
import { thinnedOut } from '../../db/thinning.ts';
import { tried } from '../core/laws.ts';
import { NOW } from '../store.ts';

const HOUR = 3_600_000;
const taken = (hoursAgo: number, why: Snapshot['why'] = 'daily') => {
  const takenAt = Temporal.Instant.fromEpochMilliseconds(NOW - hoursAgo * HOUR).toString({ fractionalSecondDigits: 3 });
  return { name: `${takenAt} ${why}`, takenAt, why };
};

describe('thinning, seen from 2026-12-01 15:00 UTC', () => {
  test('keeps all of the last 24 hours', () => {
    expect(
      thinnedOut(
        [0, 1, 2, 3, 23, 24].map((hours) => taken(hours)),
        NOW,
      ),
    ).toEqual([]);
  });
  test('keeps the newest of a day for 30 days', () => {
    // 30 and 33 hours ago are 30 November 09:00 and 06:00; 40 hours ago is 29 November 23:00.
    expect(thinnedOut([taken(30), taken(33), taken(40)], NOW)).toEqual([taken(33).name]);
  });
  test('keeps the newest of a month after that', () => {
    // 32, 40 and 61 days ago are 30 October, 22 October and 1 October; 62 days ago is 30 September.
    const [a, b, c, d] = [32, 40, 61, 62].map((days) => taken(days * 24));
    expect(
      thinnedOut(
        [a, b, c, d].flatMap((each) => each ?? []),
        NOW,
      ),
    ).toEqual([b?.name, c?.name]);
  });
  test('keeps what was taken before a migration for 90 days', () => {
    expect(thinnedOut([taken(80 * 24), taken(80 * 24 + 1, 'before migration')], NOW)).toEqual([]);
    // 91 days ago, on 1 September, it counts like any other of its month.
    expect(thinnedOut([taken(91 * 24 - 1), taken(91 * 24, 'before migration')], NOW)).toEqual([taken(91 * 24, 'before migration').name]);
  });
  test('keeps what seems to come from the future, as after a clock was moved back', () => {
    expect(
      thinnedOut(
        [-1, -2, -48, -900].map((hours) => taken(hours)),
        NOW,
      ),
    ).toEqual([]);
  });

  const snapshots = uniqueArray(
    record({ hours: integer({ min: -50, max: 12_000 }), why: constantFrom<Snapshot['why']>('asked', 'daily', 'before migration') }).map(
      ({ hours, why }) => taken(hours, why),
    ),
    { selector: ({ name }) => name, maxLength: 60 },
  );
  test('law: the newest stays, the order of the list is nothing, and what is left stays', () => {
    assert(
      property(snapshots, (list) => {
        const gone = new Set(thinnedOut(list, NOW));
        expect(new Set(thinnedOut(list.toReversed(), NOW)).size).toBe(gone.size);
        const left = list.filter(({ name }) => !gone.has(name));
        expect(thinnedOut(left, NOW)).toEqual([]);
        const newest = list
          .map(({ takenAt }) => takenAt)
          .toSorted()
          .at(-1);
        if (newest) expect(left.some(({ takenAt }) => takenAt === newest)).toBe(true);
      }),
      tried,
    );
  });
});
