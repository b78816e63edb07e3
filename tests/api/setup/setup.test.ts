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

test('an account number that cannot be and a gap that nothing fills are refused by name; nothing is saved', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const payTo = { name: '', iban: 'DE89 3704 0044 0532 0130 01', bic: '', words: '' };
  const refused = await refusal(
    call(setup.save, { version: 1, fields: { ...SETUP, payTo, termsText: 'Pay {total} by {Friday} to {me}.' } }, { context }),
  );
  expect(refused.code).toBe('BAD_INPUT');
  expect(refused.fields).toEqual([
    { field: 'fields.payTo.iban', sentence: expect.stringContaining('The check figures of this IBAN do not fit') },
    { field: 'fields.termsText', sentence: expect.stringContaining('has {Friday}, which nothing fills') },
  ]);
  expect((await call(setup.get, {}, { context })).setup).toEqual({ ...SETUP, version: 1 });
});
