import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { overlaps } from '../../../core/fit/lane.ts';
import { meetingPairs } from '../../../core/fit/meeting.ts';
import { tried } from '../laws.ts';

const span = (startAt: number, endAt: number) => ({ startAt, endAt });

test('touching is not meeting; one inside another is', () => {
  const [a, b, c, d] = [span(0, 10), span(10, 20), span(12, 15), span(9, 11)];
  expect(meetingPairs([a, b, c, d])).toEqual([
    [a, d],
    [d, b],
    [b, c],
  ]);
});

test('law: the same pairs as comparing each with each', () => {
  const spans = fc.array(
    fc.tuple(fc.nat(60), fc.integer({ min: 1, max: 30 })).map(([start, length]) => span(start, start + length)),
    { maxLength: 30 },
  );
  fc.assert(
    fc.property(spans, (given) => {
      const keyOf = (pair: readonly { startAt: number; endAt: number }[]) =>
        pair
          .map((one) => given.indexOf(one))
          .toSorted((a, b) => a - b)
          .join();
      const slow = given.flatMap((one, index) =>
        given.slice(index + 1).flatMap((other) => (overlaps(one, other) ? [keyOf([one, other])] : [])),
      );
      expect(meetingPairs(given).map(keyOf).toSorted()).toEqual(slow.toSorted());
    }),
    tried,
  );
});
