/**
 * A year of 300 deliverables is planned anew after every change without a stutter.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { deliverables } from '../../../electron/api/deliverables.ts';
import { desk } from '../../../electron/api/desk.ts';
import { fit } from '../../../electron/api/fit.ts';
import { road } from '../../../electron/api/road.ts';
import { DULUTH, world } from '../world.ts';
import { yearOfEdits } from './year.ts';

/** The least of some runs in CPU time, so that a busy computer is not what is measured; milliseconds. */
async function least(work: () => Promise<unknown>): Promise<number> {
  let best = Infinity;
  for (let run = 0; run < 4; run += 1) {
    const { user, system } = process.cpuUsage();
    await work();
    const spent = process.cpuUsage({ user, system });
    best = Math.min(best, (spent.user + spent.system) / 1000);
  }
  return best;
}

test('300 deliverables: the plan, its change, the answer, the Road and the Desk', async () => {
  const w = await world('2026-11-26T15:00:00Z');
  yearOfEdits(w, '2026-12-01', 300);
  const at = { context: w.context };
  const { plan } = await call(deliverables.plan, {}, at);
  expect(plan.edits).toHaveLength(300);
  const one = plan.edits[200];
  if (!one) throw new Error('nothing planned');
  const days = [0, 1, 2, 3, 4].map((step) => {
    const date = Temporal.PlainDate.from('2027-02-08').add({ days: step }).toString();
    return { date, kind: 'shoot' as const, call: `${date}T08:00`, wrap: `${date}T18:00` };
  });
  const candidate = { place: DULUTH, days, title: 'Asked', replyBy: null, legs: [], kit: [], role: 'shoot' as const };
  const took = {
    plan: await least(() => call(deliverables.plan, {}, at)),
    tryOn: await least(() => call(deliverables.tryOn, { tryOn: { moved: [{ deliverableId: one.deliverableId, due: '2027-12-01' }] } }, at)),
    check: await least(() => call(fit.check, { candidate }, at)),
    road: await least(() => call(road.see, { from: '2026-12-01', days: 365 }, at)),
    desk: await least(() => call(desk.see, {}, at)),
  };
  // Far above what a quiet computer takes: a plan that is searched for anew for each edit would take many seconds.
  expect(Math.max(took.plan, took.tryOn, took.road, took.desk)).toBeLessThan(1500);
  expect(took.check).toBeLessThan(4000);
});
