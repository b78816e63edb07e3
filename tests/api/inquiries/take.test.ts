import { randomUUID } from 'node:crypto';
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { jobs } from '../../../electron/api/jobs.ts';
import { take } from '../../../electron/api/take-inquiry.ts';
import { world } from '../world.ts';

const MESSAGE = `Hi,

can you run cameras for our sales meeting in Fargo 12-13 December? Call 8am Saturday, reply by Thursday noon. 900 a day.

Ada Byrd
Northfield Seed Co-op
`;

test('a pasted message is on the books as an inquiry, its assumptions asked', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const { jobId, reading } = await call(take, { text: MESSAGE }, { context });
  expect(reading.fields).toMatchObject({ start: '2026-12-12', end: '2026-12-13', place: 'Fargo' });
  const { job } = await call(jobs.get, { id: jobId }, { context });
  expect(job).toMatchObject({
    state: 'inquiry',
    version: 1,
    message: MESSAGE,
    received: { wall: '2026-12-01T09:00', zone: 'America/Chicago' },
    place: { name: 'Fargo', region: 'North Dakota' },
    replyBy: { wall: '2026-12-03T12:00', zone: 'America/Chicago', at: '2026-12-03T18:00:00Z' },
    days: [
      { date: '2026-12-12', kind: 'shoot', call: '2026-12-12T08:00', wrap: '2026-12-12T18:00' },
      { date: '2026-12-13', kind: 'shoot', call: '2026-12-13T08:00', wrap: '2026-12-13T18:00' },
    ],
  });
  expect(job.questions.map(({ ask }) => ask)).toContain('Is the call 08:00 on every day? Only the first was named.');
  expect(job.title).not.toBe('');
});

test('every span that is kept holds its words', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const { jobId } = await call(take, { text: MESSAGE }, { context });
  const { job } = await call(jobs.get, { id: jobId }, { context });
  expect(job.spans.length).toBeGreaterThan(0);
  for (const span of job.spans) expect(MESSAGE.slice(span.start, span.end)).toBe(span.text);
});

test('taken twice with one key it is one job; a title and a moment that were given are kept', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const input = { text: MESSAGE, title: 'Sales meeting', receivedAt: '2026-11-30T20:00:00-05:00[America/Toronto]', key: randomUUID() };
  const first = await call(take, input, { context });
  expect(await call(take, input, { context })).toEqual(first);
  const rows = (await call(jobs.list, {}, { context })).jobs;
  expect(rows.map(({ title }) => title)).toEqual(['Sales meeting']);
  expect((await call(jobs.get, { id: first.jobId }, { context })).job.received).toEqual({
    wall: '2026-11-30T20:00',
    zone: 'America/Toronto',
    at: '2026-12-01T01:00:00Z',
  });
});

test('before the first set-up, and from words that say nothing', async () => {
  const { context } = await world('2026-12-01T15:00:00Z', null);
  const { jobId } = await call(take, { text: 'hello?' }, { context });
  expect((await call(jobs.get, { id: jobId }, { context })).job).toMatchObject({
    title: 'hello?',
    place: null,
    days: [],
    replyBy: null,
    budget: null,
  });
});
