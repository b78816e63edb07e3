import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { setup } from '../../../electron/api/setup.ts';
import { refusal, SETUP, world } from '../world.ts';

test('before the first set-up there is nothing but a suggested zone', async () => {
  const { context } = await world('2026-12-01T15:00:00Z', null);
  expect(await call(setup.get, {}, { context })).toEqual({ setup: null, suggestedZone: 'America/Chicago' });
});

test('saved, changed, and an old version refused with both states', async () => {
  const { context } = await world('2026-12-01T15:00:00Z', null);
  const first = await call(setup.save, { fields: SETUP }, { context });
  expect(first.setup.version).toBe(1);
  const second = await call(setup.save, { version: 1, fields: { ...SETUP, phone: '1' } }, { context });
  expect(second.setup).toEqual({ ...SETUP, phone: '1', version: 2 });

  const late = await refusal(call(setup.save, { version: 1, fields: { ...SETUP, phone: '2' } }, { context }));
  expect(late).toMatchObject({ code: 'STALE', current: { phone: '1', version: 2 }, mine: { phone: '2', version: 1 } });
  expect(await refusal(call(setup.save, { fields: SETUP }, { context }))).toMatchObject({ code: 'STALE' });
  expect((await call(setup.get, {}, { context })).setup).toMatchObject({ phone: '1', version: 2 });
});
