import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import type { Place } from '../../../core/contract/parts.ts';
import { desk } from '../../../electron/api/desk.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { pencils } from '../../../electron/api/pencils.ts';
import { DULUTH, FARGO, refusal, type World, world } from '../world.ts';

async function pencilled({ context }: World, title: string, place: Place, ...dates: string[]) {
  const days = dates.map((date) => ({ date, kind: 'shoot' as const, call: `${date}T09:00`, wrap: `${date}T18:00` }));
  const { job } = await call(jobs.add, { facts: { title, place, days } }, { context });
  return (await call(jobs.pencil, { id: job.id, version: job.version, expires: '2026-12-10T12:00:00Z' }, { context })).job;
}

test('ranks are derived for each date, and those behind move up', async () => {
  const w = await world('2026-12-01T15:00:00Z');
  const first = await pencilled(w, 'Robotics final', FARGO, '2026-12-12', '2026-12-13');
  w.at('2026-12-01T16:00:00Z');
  const second = await pencilled(w, 'Clinic', DULUTH, '2026-12-13');
  w.at('2026-12-01T17:00:00Z');
  const third = await pencilled(w, 'Fair', DULUTH, '2026-12-13', '2026-12-16');
  const ranks = async (id: string) => (await call(pencils.ranks, { jobId: id }, w)).ranks.map(({ date, rank }) => `${date} ${rank}`);
  expect(await ranks(first.id)).toEqual(['2026-12-12 1', '2026-12-13 1']);
  expect(await ranks(second.id)).toEqual(['2026-12-13 2']);
  expect(await ranks(third.id)).toEqual(['2026-12-13 3', '2026-12-16 1']);
  const { ranks: ofSecond } = await call(pencils.ranks, { jobId: second.id }, w);
  expect(ofSecond[0]).toMatchObject({ before: [{ title: 'Robotics final' }], behind: [{ title: 'Fair' }] });

  const onDesk = async (id: string) => (await call(desk.see, {}, w)).clocks.find(({ jobId }) => jobId === id)?.second;
  expect(await onDesk(first.id)).toMatch(/^Clinic and Fair wait behind it; /);
  expect(await onDesk(third.id)).toMatch(/^behind Robotics final and Clinic; /);

  await call(jobs.letGo, { id: first.id, version: first.version }, w);
  expect(await ranks(second.id)).toEqual(['2026-12-13 1']);
  expect(await ranks(third.id)).toEqual(['2026-12-13 2', '2026-12-16 1']);
  expect(await ranks(first.id)).toEqual([]);
});

test('a challenge is for 24 h, never past door-out, and letting go is never done alone', async () => {
  const w = await world('2026-12-01T15:00:00Z');
  const job = await pencilled(w, 'Robotics final', DULUTH, '2026-12-12');
  const { challenge } = await call(pencils.challenge, { jobId: job.id }, w);
  expect(challenge).toEqual({
    until: { wall: '2026-12-02T09:00', zone: 'America/Chicago', at: '2026-12-02T15:00:00Z' },
    unanswered: false,
  });
  w.at('2026-12-02T15:00:00Z');
  expect((await call(pencils.ranks, { jobId: job.id }, w)).challenge).toMatchObject({ unanswered: true });
  expect((await call(jobs.get, { id: job.id }, w)).job.state).toBe('pencilled');
  const { challenge: late } = await call(pencils.challenge, { jobId: job.id, hours: 240 }, w);
  expect(late.until.wall).toBe('2026-12-12T09:00');
  w.at('2026-12-10T12:00:00Z');
  expect((await refusal(call(pencils.challenge, { jobId: job.id }, w))).code).toBe('REFUSED');
});

test('two pencils of one second stand in the order of their pencilling, also after one was given more time', async () => {
  const w = await world('2026-12-01T15:00:00.400Z');
  const first = await pencilled(w, 'Robotics final', DULUTH, '2026-12-12');
  w.at('2026-12-01T15:00:00.700Z');
  const second = await pencilled(w, 'Clinic', DULUTH, '2026-12-12');
  const rankOf = async (id: string) => (await call(pencils.ranks, { jobId: id }, w)).ranks.map(({ rank }) => rank);
  expect([await rankOf(first.id), await rankOf(second.id)]).toEqual([[1], [2]]);
  await call(jobs.pencil, { id: second.id, version: second.version, expires: '2026-12-11T12:00:00Z' }, w);
  expect([await rankOf(first.id), await rankOf(second.id)]).toEqual([[1], [2]]);
});
