import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { inquiries } from '../../../electron/api/inquiries.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { refused } from '../../../electron/api/trouble.ts';
import { FARGO, refusal, world } from '../world.ts';

const message = (date: string, from = 'ada@northfield.example') =>
  `Can you run cameras in Moorhead on ${date}? $900 a day.\n\nAda Byrd\nNorthfield Seed Co-op\n${from}\n`;

async function corrected() {
  const { context, at } = await world('2026-11-12T15:00:00Z');
  const taken = await call(inquiries.take, { text: message('12 December') }, { context });
  const changes = { place: FARGO, role: 'second camera' as const, budget: { amount: 900, currency: 'CAD', per: 'day' as const } };
  const { job } = await call(jobs.change, { id: taken.jobId, version: 1, changes }, { context });
  at('2026-11-20T15:00:00Z');
  return { context, job };
}

test('take, change, take: the second message is read as the first was corrected, and says so', async () => {
  const { context, job: first } = await corrected();
  expect((await call(jobs.history, { id: first.id }, { context })).entries[0]?.sentence).toBe(
    'Changed: role, place, budget. Remembered for this sender: place, role, currency.',
  );
  const { jobId, reading } = await call(inquiries.take, { text: message('19 December') }, { context });
  expect(reading.fields).toMatchObject({ start: '2026-12-19', place: 'Fargo', role: 'second camera', budget: { currency: 'CAD' } });
  const { job } = await call(jobs.get, { id: jobId }, { context });
  expect(job).toMatchObject({ version: 1, place: FARGO, role: 'second camera', budget: { amount: 900, currency: 'CAD', per: 'day' } });
  expect(job.remembered?.map(({ fact, at }) => [fact, at])).toEqual([
    ['currency', '2026-11-12T15:00:00Z'],
    ['place', '2026-11-12T15:00:00Z'],
    ['role', '2026-11-12T15:00:00Z'],
  ]);
});

test('another sender is read as ever, and so is a plain reading; a reading with memory is asked for', async () => {
  const { context } = await corrected();
  const other = await call(inquiries.take, { text: message('19 December', 'bo@elsewhere.example') }, { context });
  expect(other.reading).toMatchObject({ fields: { place: 'Moorhead', role: 'shoot' } });
  expect(other.reading.remembered).toBeUndefined();
  const input = { text: message('19 December'), receivedAt: '2026-11-20T09:00:00-06:00[America/Chicago]', homeZone: 'America/Chicago' };
  expect((await call(inquiries.read, input, { context })).fields.place).toBe('Moorhead');
  expect((await call(inquiries.read, { ...input, remember: true }, { context })).fields.place).toBe('Fargo');
});

test('forgotten, the job stays as it is and the next message is read as it stands', async () => {
  const { context } = await corrected();
  const second = await call(inquiries.take, { text: message('19 December') }, { context });
  const { job } = await call(jobs.get, { id: second.jobId }, { context });
  const place = job.remembered?.find(({ fact }) => fact === 'place');
  const forgotten = await call(jobs.forget, { id: job.id, version: job.version, correction: place!.id }, { context });
  expect(forgotten.job).toMatchObject({ version: 2, place: FARGO });
  expect(forgotten.job.remembered?.map(({ fact }) => fact)).toEqual(['currency', 'role']);
  const again = { id: job.id, version: 2, correction: place!.id };
  expect((await refusal(call(jobs.forget, again, { context }))).code).toBe('NOT_FOUND');
  const third = await call(inquiries.take, { text: message('9 January') }, { context });
  expect(third.reading.fields).toMatchObject({ place: 'Moorhead', role: 'second camera' });
});

test('a remembered fact that is changed back is forgotten; changed otherwise, the newer correction holds', async () => {
  const { context } = await corrected();
  const second = await call(inquiries.take, { text: message('19 December') }, { context });
  const changes = { role: 'shoot' as const, budget: { amount: 900, currency: 'EUR', per: 'day' as const } };
  const { job } = await call(jobs.change, { id: second.jobId, version: 1, changes }, { context });
  expect(job.remembered?.map(({ fact }) => fact)).toEqual(['place']);
  const third = await call(inquiries.take, { text: message('9 January') }, { context });
  expect(third.reading.fields).toMatchObject({ place: 'Fargo', role: 'shoot', budget: { currency: 'EUR' } });
  expect(third.reading.remembered?.map(({ fact }) => fact)).toEqual(['currency', 'place']);
});

test('a job put on the books by hand teaches nothing', async () => {
  const { context } = await world('2026-11-12T15:00:00Z');
  const { job } = await call(jobs.add, { facts: { title: 'By hand' } }, { context });
  await call(jobs.change, { id: job.id, version: 1, changes: { role: 'audio' } }, { context });
  expect((await call(jobs.history, { id: job.id }, { context })).entries[0]?.sentence).toBe('Changed: role.');
});

test('a message that cannot be read again teaches nothing, its job is changed all the same; one that is new is refused and not taken', async () => {
  const { context } = await world('2026-11-12T15:00:00Z');
  const taken = await call(inquiries.take, { text: message('12 December') }, { context });
  const slow = { ...context, readMessage: () => Promise.reject(refused('Reading this message took too long.', 'Paste less of it.')) };
  const { job } = await call(jobs.change, { id: taken.jobId, version: 1, changes: { role: 'audio' } }, { context: slow });
  expect(job.role).toBe('audio');
  expect((await call(jobs.history, { id: job.id }, { context })).entries[0]?.sentence).toBe('Changed: role.');
  expect((await refusal(call(inquiries.take, { text: message('19 December') }, { context: slow }))).todo).toBe('Paste less of it.');
  expect((await call(jobs.list, {}, { context })).jobs).toHaveLength(1);
});
