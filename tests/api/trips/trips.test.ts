import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { trips } from '../../../electron/api/trips.ts';
import { DULUTH, FARGO, refusal, world } from '../world.ts';

const fields = { from: FARGO, to: DULUTH, mode: 'drive' as const, minutes: 245, distance: '252', note: '' };

test('a way is estimated until it is typed, then it is remembered in both directions', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const pair = { from: DULUTH, to: FARGO };
  const before = await call(trips.estimate, pair, { context });
  expect(before.source).toBe('estimated');
  expect(before.longMinutes).toBeGreaterThan(before.shortMinutes);
  expect(before.sentence).toMatch(
    /^Duluth to Fargo is estimated at 4 h \d+ min to 7 h \d+ min of driving, for 2\d\d to 3\d\d mi of road\./,
  );
  await call(trips.setWay, { fields }, { context });
  expect(await call(trips.estimate, pair, { context })).toMatchObject({ source: 'typed', shortMinutes: 245, longMinutes: 245 });
});

test('a way that is typed again is changed, not doubled; an old version is refused with both states', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const { way } = await call(trips.setWay, { fields }, { context });
  const again = await call(
    trips.setWay,
    { fields: { ...fields, from: DULUTH, to: FARGO, minutes: 250 }, version: way.version },
    { context },
  );
  expect(again.way).toMatchObject({ id: way.id, version: 2, minutes: 250 });
  expect((await call(trips.ways, {}, { context })).ways).toHaveLength(1);
  expect(await refusal(call(trips.setWay, { fields, version: 1 }, { context }))).toMatchObject({
    code: 'STALE',
    current: { minutes: 250 },
    mine: { minutes: 245 },
  });
  await call(trips.forgetWay, { id: way.id, version: 2 }, { context });
  expect((await call(trips.ways, {}, { context })).ways).toEqual([]);
});

test('a way from a place to itself is bad input', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  expect((await refusal(call(trips.setWay, { fields: { ...fields, to: FARGO } }, { context }))).code).toBe('BAD_INPUT');
});
