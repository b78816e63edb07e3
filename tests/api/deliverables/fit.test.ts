/**
 * The answer to an inquiry tells which promised edits would be late, what takes their time, and what would settle it; trying on saves nothing.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { deliverables } from '../../../electron/api/deliverables.ts';
import { fit } from '../../../electron/api/fit.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { DULUTH } from '../world.ts';
import { begun, inked } from './job.ts';

const days = ['14', '15', '16', '17', '18'].map((day) => ({
  date: `2026-12-${day}`,
  kind: 'shoot' as const,
  call: `2026-12-${day}T09:00`,
  wrap: `2026-12-${day}T17:00`,
}));

async function asked() {
  const { w, at } = await begun();
  const job = await inked(at, 'Bakers congress', ['2026-12-10', '2026-12-11'], {
    deliverables: ['Talks'],
    edits: [{ what: 'Talks', due: '2026-12-22', hours: '18' }],
  });
  const talks = (await call(deliverables.of, { jobId: job.id }, at)).deliverables[0];
  if (!talks) throw new Error('nothing promised');
  const { deliverable } = await call(deliverables.change, { id: talks.id, version: 1, changes: { rounds: 0 } }, at);
  const inquiry = (await call(jobs.add, { facts: { title: 'Curling', place: DULUTH, days } }, at)).job;
  return { w, at, talks: deliverable, inquiry };
}

test('with its days, names and lifts, and nearest dates that leave the edits in time', async () => {
  const { at, talks, inquiry } = await asked();
  const { result } = await call(fit.check, { jobId: inquiry.id }, at);
  const late = result.findings.filter(({ kind }) => kind === 'edit late');
  expect(late).toMatchObject([{ hardness: 'settle', numbers: { lateDaysBefore: 0 }, concerns: [{ title: 'Bakers congress' }] }]);
  expect(late[0]?.sentence).toMatch(
    /^With this job Talks of Bakers congress, due Tue 22 December 2026, would be done .* late\. What takes its time: \d days away for this job\.$/,
  );
  for (const lift of late[0]?.lifts ?? []) {
    const tried = await call(fit.check, { jobId: inquiry.id, tryOn: lift.tryOn }, at);
    expect(tried.result.findings.filter(({ kind }) => kind === 'edit late').length).toBeLessThanOrEqual(1);
  }
  expect(late[0]?.lifts.map(({ kind }) => kind)).toEqual(expect.arrayContaining(['later date', 'hire editor']));
  const { nearest } = await call(fit.nearest, { jobId: inquiry.id }, at);
  // From Sunday to Thursday: Friday is left, and Monday and Tuesday of the next week.
  expect(nearest.find(({ answer }) => answer === 'free')?.shiftDays).toBe(-1);
  const [now] = (await call(deliverables.of, { jobId: talks.jobId }, at)).deliverables;
  expect(now).toEqual(talks);
});

test('what the inquiry itself promises counts too, once its hours are known', async () => {
  const { at, inquiry } = await asked();
  const changes = { deliverables: ['Recap'], edits: [{ what: 'Recap', due: '2026-12-21', hours: '10' }] };
  await call(jobs.change, { id: inquiry.id, version: inquiry.version, changes }, at);
  const { result } = await call(fit.check, { jobId: inquiry.id }, at);
  expect(
    result.findings.filter(({ kind }) => kind === 'edit late').map(({ sentence }) => /its own Recap|Talks of/.exec(sentence)?.[0]),
  ).toEqual(['Talks of', 'its own Recap']);
});

test('without anything to deliver there is nothing to say of edits', async () => {
  const { at } = await begun();
  const { job } = await call(jobs.add, { facts: { title: 'Curling', place: DULUTH, days } }, at);
  const { result } = await call(fit.check, { jobId: job.id }, at);
  expect(result.findings.filter(({ kind }) => kind === 'edit late')).toEqual([]);
});
