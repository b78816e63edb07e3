import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import type { Place } from '../../../core/contract/parts.ts';
import { desk } from '../../../electron/api/desk.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { makeQuote } from '../jobs/made-quote.ts';
import { DULUTH, FARGO, refusal, type World, world } from '../world.ts';

const EXPIRES = '2026-12-10T12:00:00Z';

async function pencilled({ context }: World, title: string, place: Place, dates: string[], expires = EXPIRES) {
  const days = dates.map((date) => ({ date, kind: 'shoot' as const, call: `${date}T09:00`, wrap: `${date}T18:00` }));
  const { job } = await call(jobs.add, { facts: { title, place, days } }, { context });
  return (await call(jobs.pencil, { id: job.id, version: job.version, expires }, { context })).job;
}
const linesOn = async (w: World) => (await call(desk.see, {}, w)).lines.map(({ sentence, second }) => `${sentence} ${second}`);

/** Robotics first on both days, then Clinic, then Fair on the second. */
async function three(expires?: string) {
  const w = await world('2026-12-01T15:00:00Z');
  const first = await pencilled(w, 'Robotics final', FARGO, ['2026-12-12', '2026-12-13'], expires);
  w.at('2026-12-01T16:00:00Z');
  const second = await pencilled(w, 'Clinic', DULUTH, ['2026-12-13']);
  w.at('2026-12-01T17:00:00Z');
  const third = await pencilled(w, 'Fair', DULUTH, ['2026-12-13', '2026-12-16']);
  return { w, first, second, third };
}

test('one that is let go moves up those behind it, and each line is put away and brought back', async () => {
  const { w, first } = await three();
  expect(await linesOn(w)).toEqual([]);
  w.at('2026-12-02T16:30:00Z');
  await call(jobs.letGo, { id: first.id, version: first.version }, w);
  const { lines } = await call(desk.see, {}, w);
  expect(lines.map(({ sentence, second }) => `${sentence} ${second}`).sort()).toEqual([
    'Clinic moved up: first pencil on Sun 13 December 2026. Robotics final was let go 10:30',
    'Fair moved up: second pencil on Sun 13 December 2026. Robotics final was let go 10:30',
  ]);
  const clinic = lines.find(({ sentence }) => sentence.startsWith('Clinic'))!;
  await call(desk.putAway, { line: clinic.id }, w);
  await call(desk.putAway, { line: clinic.id }, w);
  expect(await linesOn(w)).toEqual(['Fair moved up: second pencil on Sun 13 December 2026. Robotics final was let go 10:30']);
  await call(desk.bringBack, { line: clinic.id }, w);
  expect(await linesOn(w)).toHaveLength(2);
  expect(await refusal(call(desk.putAway, { line: 'all of them' }, w))).toMatchObject({ code: 'BAD_REQUEST' });
});

test('one that runs out moves them up at that moment; renewed it goes last and the lines stay', async () => {
  const { w, first, second } = await three('2026-12-03T12:00:00Z');
  w.at('2026-12-03T11:59:59Z');
  expect(await linesOn(w)).toEqual([]);
  w.at('2026-12-03T12:00:00Z');
  const told = ['Clinic moved up: first pencil on Sun 13 December 2026.', 'Fair moved up: second pencil on Sun 13 December 2026.'].map(
    (sentence) => `${sentence} Robotics final ran out 06:00`,
  );
  expect((await linesOn(w)).sort()).toEqual(told);
  const ranOut = await call(jobs.get, { id: first.id }, w);
  await call(jobs.pencil, { id: first.id, version: ranOut.job.version, expires: EXPIRES }, w);
  expect((await linesOn(w)).sort()).toEqual(told);
  // More time for a live pencil keeps its place, and nobody moves.
  await call(jobs.pencil, { id: second.id, version: second.version, expires: '2026-12-11T12:00:00Z' }, w);
  expect((await linesOn(w)).sort()).toEqual(told);
});

test('nobody is told who did not wait: pencilled later, on other dates, or let go since; and not after a fortnight', async () => {
  const { w, first, second } = await three();
  w.at('2026-12-01T17:30:00Z');
  await call(jobs.letGo, { id: first.id, version: first.version }, w);
  w.at('2026-12-01T18:00:00Z');
  await pencilled(w, 'Supper', DULUTH, ['2026-12-13']);
  await pencilled(w, 'Match', DULUTH, ['2026-12-20']);
  w.at('2026-12-01T19:00:00Z');
  await call(jobs.letGo, { id: second.id, version: second.version }, w);
  expect(await linesOn(w)).toEqual([
    'Fair moved up: first pencil on Sun 13 December 2026. Clinic was let go 13:00',
    'Supper moved up: second pencil on Sun 13 December 2026. Clinic was let go 13:00',
    'Fair moved up: first pencil on Sun 13 December 2026. Robotics final was let go 11:30',
  ]);
  w.at('2026-12-10T11:00:00Z');
  expect(await linesOn(w)).toHaveLength(3);
  w.at('2026-12-16T00:00:00Z');
  expect(await linesOn(w)).toEqual([]);
});

test('ink takes the dates: nobody moves up', async () => {
  const { w, first } = await three();
  makeQuote(w.context, first.id);
  const { job } = await call(jobs.get, { id: first.id }, w);
  await call(jobs.ink, { id: job.id, version: job.version, who: 'Ada Byrd', how: 'mail' }, w);
  expect(await linesOn(w)).toEqual([]);
});
