import { call } from '@orpc/server';
import { beforeEach, describe, expect, test } from 'vitest';
import { blankClient, blankHand } from '../../../core/people/blank.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { people } from '../../../electron/api/people.ts';
import { refusal, type World, world } from '../world.ts';

let here: World;
beforeEach(async () => {
  here = await world('2026-11-25T15:00:00Z');
});

describe('clients', () => {
  test('are kept, changed, refused when stale, put away and taken out again', async () => {
    const { client } = await call(people.saveClient, { fields: blankClient('Quay Hall') }, { context: here.context });
    const changed = await call(
      people.saveClient,
      { id: client.id, version: 1, fields: { ...blankClient('Quay Hall'), taxId: 'X1' } },
      { context: here.context },
    );
    expect(changed.client.version).toBe(2);
    const late = await refusal(
      call(people.saveClient, { id: client.id, version: 1, fields: blankClient('Key Hall') }, { context: here.context }),
    );
    expect(late).toMatchObject({ code: 'STALE', current: { taxId: 'X1' }, mine: { name: 'Key Hall' } });
    await call(people.putAway, { kind: 'client', id: client.id, version: 2 }, { context: here.context });
    expect((await call(people.clients, {}, { context: here.context })).clients).toEqual([]);
    expect((await call(people.away, {}, { context: here.context })).away).toMatchObject([{ name: 'Quay Hall', kind: 'client' }]);
    await call(people.takeOut, { kind: 'client', id: client.id }, { context: here.context });
    expect((await call(people.clients, { text: 'quay' }, { context: here.context })).clients).toMatchObject([
      { name: 'Quay Hall', jobs: 0 },
    ]);
  });

  test('a job names its client and is asked what they always ask; merging moves the jobs', async () => {
    const asks = { purchaseOrder: true, insurance: false, taxForm: true, confidentiality: true };
    const a = (await call(people.saveClient, { fields: { ...blankClient('Loaf Guild'), asks } }, { context: here.context })).client;
    const b = (
      await call(people.saveClient, { fields: { ...blankClient('Loaf Guild Inc'), notes: 'pays late' } }, { context: here.context })
    ).client;
    const { job } = await call(jobs.add, { facts: { title: 'Bread day' } }, { context: here.context });
    const named = await call(jobs.setClient, { id: job.id, version: job.version, clientId: a.id }, { context: here.context });
    expect(named.job).toMatchObject({ client: { id: a.id, name: 'Loaf Guild' }, version: job.version + 1 });
    expect(named.job.knows).toMatchObject({
      purchaseOrder: { required: true },
      taxForm: { asked: true },
      insurance: { asked: false },
      confidentiality: { mayShow: false },
    });
    const { doubles } = await call(people.doubles, {}, { context: here.context });
    expect(doubles).toMatchObject([{ kind: 'client', a: { id: a.id }, b: { id: b.id }, why: 'the same name but for its writing' }]);
    const merged = await call(people.merge, { keep: b.id, fold: a.id, keepVersion: 1, foldVersion: 1 }, { context: here.context });
    expect(merged.client).toMatchObject({ name: 'Loaf Guild Inc', asks, notes: 'pays late' });
    expect((await call(people.client, { id: b.id }, { context: here.context })).jobs).toMatchObject([{ title: 'Bread day' }]);
  });

  test('two with different tax ids are not folded', async () => {
    const a = (await call(people.saveClient, { fields: { ...blankClient('One'), taxId: 'A' } }, { context: here.context })).client;
    const b = (await call(people.saveClient, { fields: { ...blankClient('Two'), taxId: 'B' } }, { context: here.context })).client;
    expect(
      await refusal(call(people.merge, { keep: a.id, fold: b.id, keepVersion: 1, foldVersion: 1 }, { context: here.context })),
    ).toMatchObject({ code: 'REFUSED' });
  });
});

describe('files', () => {
  const text = 'Name,Organisation,Email\nAda Meer,Pier Nine,ada@pier.example\nBo Ek,,bo@\n,,\nAda M.,Pier 9,ADA@pier.example\n';
  test('are tried before anything is saved, then brought in once', async () => {
    const tried = await call(people.bring, { kind: 'client', format: 'csv', text, try: true }, { context: here.context });
    expect(tried.added).toBe(0);
    expect(tried.rows.map(({ line, fate }) => [line, fate])).toEqual([
      [2, 'new'],
      [3, 'refused'],
      [5, 'same as'],
    ]);
    expect((await call(people.clients, { text: 'pier' }, { context: here.context })).clients).toEqual([]);
    expect((await call(people.bring, { kind: 'client', format: 'csv', text, try: false }, { context: here.context })).added).toBe(1);
    expect((await call(people.bring, { kind: 'client', format: 'csv', text, try: false }, { context: here.context })).added).toBe(0);
  });
  test('that are no file of people change nothing', async () => {
    const wrong = await refusal(
      call(people.bring, { kind: 'hand', format: 'vcard', text: 'hello', try: false }, { context: here.context }),
    );
    expect(wrong).toMatchObject({ code: 'BAD_INPUT', kept: 'Nothing was changed.' });
    expect(wrong.what).toContain('BEGIN:VCARD');
  });
});

test('hands are kept with their dated rates', async () => {
  const fields = { ...blankHand('Cy Ek'), rates: [{ role: 'audio' as const, dayRate: '420.00', currency: 'USD', from: '2026-01-01' }] };
  const { hand } = await call(people.saveHand, { fields }, { context: here.context });
  expect((await call(people.hands, { text: 'audio' }, { context: here.context })).hands).toEqual([{ ...fields, id: hand.id, version: 1 }]);
  expect((await call(people.hand, { id: hand.id }, { context: here.context })).hand).toEqual(hand);
});
