import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { callProcedure } from '../../../electron/api/serve.ts';
import { trips } from '../../../electron/api/trips.ts';
import { dump } from '../../dump.ts';
import { refusal, world } from '../world.ts';

const TEXT = 'Flight ZQ 412, Monday 14 December 2026, Duluth (DLH) 06:15, Chicago (ORD) 07:40. Total paid: USD 212.60';

test('a confirmation is read into legs and nothing is saved', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const before = context.store.read((db) => dump(db.$client));
  const { legs, total, spans, sentence } = await call(trips.readConfirmation, { text: TEXT }, { context });
  expect(legs).toMatchObject([
    {
      mode: 'flight',
      number: 'ZQ 412',
      from: { key: 'iata:DLH' },
      to: { key: 'iata:ORD' },
      depart: '2026-12-14T06:15',
      arrive: '2026-12-14T07:40',
      asks: [],
    },
  ]);
  expect(total).toEqual({ minor: 21_260, currency: 'USD' });
  expect(spans.map(({ start, end }) => TEXT.slice(start, end))).toContain('ZQ 412');
  expect(sentence).toBe('One leg was read.');
  expect(context.store.read((db) => dump(db.$client))).toEqual(before);
});

test('what is not clear is asked in words', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const read = await call(trips.readConfirmation, { text: 'Flight ZQ 412 on 14 Dec 2026 from DLH to ORD departs at 06:15' }, { context });
  expect(read.sentence).toBe('One leg was read. Something is not clear and is asked.');
  expect(read.legs[0]).toMatchObject({ arrive: null, asks: [{ field: 'arrive', question: 'At what time does it arrive?' }] });
});

test('words without a leg say what to do', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const { sentence } = await call(trips.readConfirmation, { text: 'Thank you for your order.' }, { context });
  expect(sentence).toBe('No leg was found in these words. Paste the part with places, dates and times, or type the leg.');
});

test.each([
  ['nothing', '   ', 'is empty; paste the confirmation as it came'],
  ['a megabyte', 'Flight '.repeat(150_000), 'is longer than 200,000 characters; paste the part with the times'],
  ['a file', 'Flight\u0000ZQ', 'holds bytes that are not text; copy the words, not the file'],
])('%s is bad input', async (_, text, sentence) => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const { code, fields } = await refusal(callProcedure(context, 'trips.readConfirmation', { text }));
  expect([code, fields?.map((each) => each.sentence)]).toEqual(['BAD_INPUT', [sentence]]);
});

test('a job that is not there is said', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const jobId = '0196f000-0000-7000-8000-000000000000';
  expect((await refusal(call(trips.readConfirmation, { jobId, text: TEXT }, { context }))).code).toBe('NOT_FOUND');
});
