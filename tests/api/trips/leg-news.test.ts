import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import type { Leg, LegFields } from '../../../core/contract/trips.ts';
import { desk } from '../../../electron/api/desk.ts';
import { fit } from '../../../electron/api/fit.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { callProcedure } from '../../../electron/api/serve.ts';
import { trips } from '../../../electron/api/trips.ts';
import { makeQuote } from '../jobs/made-quote.ts';
import { DULUTH, FARGO, refusal, THUNDER_BAY, world, type World } from '../world.ts';

const flight = (from: LegFields['from'], to: LegFields['to'], depart: string, arrive: string): LegFields => ({
  mode: 'flight',
  from,
  to,
  depart,
  arrive,
  source: 'ticketed',
  before: 60,
  after: 30,
  berth: false,
  cost: '',
  note: 'ZQ 412',
});

/** A job in ink at Fargo on 14 and 15 December from 09:00, with a flight there the evening before and one back. */
async function booked(w: World): Promise<{ jobId: string; there: Leg }> {
  const { context } = w;
  const facts = {
    title: 'Robotics league final',
    place: FARGO,
    days: ['2026-12-14', '2026-12-15'].map((date) => ({ date, kind: 'shoot', call: `${date}T09:00`, wrap: `${date}T18:00` })),
  };
  const { job } = (await callProcedure(context, 'jobs.add', { facts })) as { job: { id: string } };
  makeQuote(context, job.id);
  const { version } = (await call(jobs.get, { id: job.id }, { context })).job;
  await call(jobs.ink, { id: job.id, version, who: 'Ada Byrd', how: 'mail' }, { context });
  const set = async (fields: LegFields) => (await call(trips.setLeg, { jobId: job.id, fields }, { context })).leg;
  const there = await set(flight(DULUTH, FARGO, '2026-12-13T17:00', '2026-12-13T18:05'));
  await set(flight(FARGO, DULUTH, '2026-12-15T20:30', '2026-12-15T21:35'));
  return { jobId: job.id, there };
}
const clocks = async ({ context }: World) => (await call(desk.see, {}, { context })).clocks.filter(({ kind }) => kind === 'leg');

test('a flight that is moved past the first call goes to the Desk with what it breaks, and leaves it when it goes as ticketed', async () => {
  const w = await world('2026-12-12T15:00:00Z');
  const { context } = w;
  const { jobId, there } = await booked(w);
  expect(await clocks(w)).toEqual([]);
  const told = { kind: 'moved' as const, depart: '2026-12-14T10:00', arrive: '2026-12-14T11:05' };
  const { leg } = await call(trips.legNews, { id: there.id, version: there.version, told }, { context });
  expect(leg).toMatchObject({
    depart: '2026-12-14T10:00',
    version: 2,
    news: { kind: 'moved', was: { depart: '2026-12-13T17:00', arrive: '2026-12-13T18:05' } },
  });
  const [clock, ...others] = await clocks(w);
  expect(others).toEqual([]);
  expect(clock).toMatchObject({
    jobId,
    at: '2026-12-14T16:00:00Z',
    late: false,
    action: 'leg',
    sentence: 'The flight ZQ 412 Duluth to Fargo now leaves on Mon 14 December 2026, 10:00 instead of Sun 13 December 2026, 17:00',
  });
  expect(clock?.second).toContain('Robotics league final');
  const { result } = await call(fit.check, { jobId }, { context });
  expect(result.answer).not.toBe('free');

  const back = await call(trips.legNews, { id: leg.id, version: leg.version, told: { kind: 'as ticketed' } }, { context });
  expect(back.leg).toMatchObject({ depart: '2026-12-13T17:00', arrive: '2026-12-13T18:05', news: null });
  expect(await clocks(w)).toEqual([]);
});

test('a delay that breaks nothing is kept and is no clock; told again, the times of the ticket stay those of the ticket', async () => {
  const w = await world('2026-12-12T15:00:00Z');
  const { context } = w;
  const { there } = await booked(w);
  const later = { kind: 'moved' as const, depart: '2026-12-13T17:40', arrive: '2026-12-13T18:45' };
  const first = await call(trips.legNews, { id: there.id, version: 1, told: later }, { context });
  expect(await clocks(w)).toEqual([]);
  const again = await call(
    trips.legNews,
    { id: there.id, version: first.leg.version, told: { ...later, depart: '2026-12-13T17:50' } },
    { context },
  );
  expect(again.leg).toMatchObject({ depart: '2026-12-13T17:50', news: { was: { depart: '2026-12-13T17:00' } } });
});

test('a cancelled flight counts nowhere until it goes after all; another in its place takes it off the Desk', async () => {
  const w = await world('2026-12-12T15:00:00Z');
  const { context } = w;
  const { jobId, there } = await booked(w);
  const { leg } = await call(trips.legNews, { id: there.id, version: 1, told: { kind: 'cancelled' } }, { context });
  const [clock] = await clocks(w);
  expect(clock?.sentence).toBe('The flight ZQ 412 Duluth to Fargo is cancelled');
  expect(clock?.second).toContain('Nothing stands in its place but the estimated way.');
  const { legs } = await call(trips.legs, { jobId }, { context });
  expect(legs.map(({ news }) => news?.kind ?? null)).toEqual(['cancelled', null]);
  await call(
    trips.setLeg,
    { jobId, fields: { ...flight(DULUTH, FARGO, '2026-12-13T12:00', '2026-12-13T13:05'), note: 'ZQ 414' } },
    { context },
  );
  expect(await clocks(w)).toEqual([]);
  await call(trips.legNews, { id: leg.id, version: leg.version, told: { kind: 'as ticketed' } }, { context });
  expect((await call(trips.legs, { jobId }, { context })).breaks.length).toBeGreaterThan(0);
});

test('once it has left, it is no clock any more', async () => {
  const w = await world('2026-12-12T15:00:00Z');
  const { there } = await booked(w);
  await call(trips.legNews, { id: there.id, version: 1, told: { kind: 'cancelled' } }, { context: w.context });
  w.at('2026-12-13T23:00:01Z');
  expect(await clocks(w)).toEqual([]);
});

test('what cannot be told is refused, and nothing changes', async () => {
  const w = await world('2026-12-12T15:00:00Z');
  const { context } = w;
  const { jobId, there } = await booked(w);
  const tell = (input: object) => refusal(callProcedure(context, 'trips.legNews', { id: there.id, version: 1, ...input }));
  expect((await tell({ told: { kind: 'moved', depart: '2026-12-14T10:00', arrive: '2026-12-14T09:00' } })).fields?.[0]?.sentence).toMatch(
    /arrives before it leaves/,
  );
  expect((await tell({ version: 9, told: { kind: 'cancelled' } })).code).toBe('STALE');
  expect((await tell({ id: jobId, told: { kind: 'cancelled' } })).code).toBe('NOT_FOUND');
  expect((await tell({ told: { kind: 'lost' } })).code).toBe('BAD_INPUT');
  const typed = await call(
    trips.setLeg,
    { jobId, fields: { ...flight(FARGO, THUNDER_BAY, '2026-12-16T09:00', '2026-12-16T19:00'), source: 'typed' } },
    { context },
  );
  expect((await tell({ id: typed.leg.id, told: { kind: 'cancelled' } })).code).toBe('REFUSED');
  expect((await call(trips.legs, { jobId }, { context })).legs.every(({ news, version }) => news === null && version === 1)).toBe(true);
});
