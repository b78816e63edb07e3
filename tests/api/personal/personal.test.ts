import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { personal } from '../../../electron/api/personal.ts';
import { refusal, world } from '../world.ts';

const fields = { title: 'Dentist', from: '2026-12-09T10:00', to: '2026-12-09T11:00', zone: 'America/Chicago', hardness: 'settle' as const };

test('time of my own is kept, changed and taken off', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const { personal: kept } = await call(personal.save, { fields }, { context });
  await call(personal.save, { id: kept.id, version: 1, fields: { ...fields, hardness: 'never' } }, { context });
  expect((await call(personal.list, {}, { context })).personal).toMatchObject([{ id: kept.id, version: 2, hardness: 'never' }]);
  expect((await refusal(call(personal.drop, { id: kept.id, version: 1 }, { context }))).code).toBe('STALE');
  await call(personal.drop, { id: kept.id, version: 2 }, { context });
  expect((await call(personal.list, {}, { context })).personal).toEqual([]);
});

test('an end before its beginning is bad input', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  expect(await refusal(call(personal.save, { fields: { ...fields, to: fields.from } }, { context }))).toMatchObject({
    code: 'BAD_INPUT',
    what: expect.stringContaining('Dentist ends before it begins'),
  });
});
