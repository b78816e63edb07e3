/**
 * Days that a message leaves open, chosen on the job.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import type { Job } from '../../../core/contract/jobs.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { take } from '../../../electron/api/take-inquiry.ts';
import { world } from '../world.ts';

const MESSAGE = `Hi,

can you shoot our awards dinner in Fargo on the 12th or the 19th of March? We need you from 7. Budget is 1,400 for the job.

Ada Byrd
`;

async function taken(text = MESSAGE) {
  const { context } = await world('2026-12-01T15:00:00Z');
  const { jobId } = await call(take, { text }, { context });
  return { context, job: (await call(jobs.get, { id: jobId }, { context })).job };
}
const asked = ({ questions }: Job, field: string) => questions.filter((question) => question.field === field);

test('both choices stand on the job once, and taking one sets its days, hours, marks and what is still asked', async () => {
  const { context, job } = await taken();
  expect(job.days).toEqual([]);
  expect(asked(job, 'start').map(({ choices }) => choices)).toEqual([
    [
      { label: 'Fri 12 March 2027', value: ['2027-03-12'] },
      { label: 'Fri 19 March 2027', value: ['2027-03-19'] },
    ],
  ]);
  expect(asked(job, 'end')).toEqual([]);
  const corrected = await call(jobs.change, { id: job.id, version: job.version, changes: { role: 'second camera' } }, { context });
  const { job: chosen } = await call(jobs.chooseDays, { id: job.id, version: corrected.job.version, days: ['2027-03-19'] }, { context });
  expect(chosen.days).toMatchObject([{ date: '2027-03-19', kind: 'shoot' }]);
  expect(chosen.role).toBe('second camera');
  expect(asked(chosen, 'start')).toEqual([]);
  expect(asked(chosen, 'firstCall')[0]?.choices.map(({ value }) => value)).toEqual(['2027-03-19T07:00', '2027-03-19T19:00']);
  expect(job.spans.filter(({ field }) => field === 'firstCall')).toEqual([]);
  expect(chosen.spans.filter(({ field }) => field === 'firstCall').map(({ text }) => text)).toEqual(['7']);
  const { entries } = await call(jobs.history, { id: job.id }, { context });
  expect(entries[0]?.sentence).toBe('Chosen of the days that the message leaves open: Fri 19 March 2027.');
});

test('only days that are still open can be taken, and only of the job as it stands', async () => {
  const { context, job } = await taken();
  const choose = (days: string[], version = job.version) => call(jobs.chooseDays, { id: job.id, version, days }, { context });
  await expect(choose(['2027-03-13'])).rejects.toMatchObject({ code: 'REFUSED', data: { todo: 'Change its days instead.' } });
  await expect(choose(['2027-03-12'], job.version + 1)).rejects.toMatchObject({ code: 'STALE' });
  await choose(['2027-03-12']);
  const now = (await call(jobs.get, { id: job.id }, { context })).job;
  await expect(choose(['2027-03-19'], now.version)).rejects.toMatchObject({ code: 'REFUSED' });
  expect((await call(jobs.get, { id: job.id }, { context })).job).toEqual(now);
});

test('chosen days are taken back: what the message leaves open is asked again, and what was corrected stays', async () => {
  const { context, job } = await taken();
  const corrected = (await call(jobs.change, { id: job.id, version: job.version, changes: { role: 'second camera' } }, { context })).job;
  const open = (version: number) => call(jobs.openDays, { id: job.id, version }, { context });
  await expect(open(corrected.version)).rejects.toMatchObject({ code: 'REFUSED', data: { todo: 'Change its days instead.' } });
  const { job: chosen } = await call(jobs.chooseDays, { id: job.id, version: corrected.version, days: ['2027-03-19'] }, { context });
  const { job: again } = await open(chosen.version);
  expect({ ...again, version: 0, updatedAt: '' }).toEqual({ ...corrected, version: 0, updatedAt: '' });
  const { entries } = await call(jobs.history, { id: job.id }, { context });
  expect(entries[0]?.sentence).toBe('Open again: Fri 19 March 2027 had been chosen of the days that the message leaves open.');
});

test('dates that are held are neither chosen nor opened', async () => {
  const { context, job } = await taken();
  const { job: chosen } = await call(jobs.chooseDays, { id: job.id, version: job.version, days: ['2027-03-19'] }, { context });
  const { job: held } = await call(jobs.pencil, { id: job.id, version: chosen.version }, { context });
  const open = call(jobs.openDays, { id: job.id, version: held.version }, { context });
  await expect(open).rejects.toMatchObject({ code: 'REFUSED', message: expect.stringContaining('holds its dates') });
  expect((await call(jobs.get, { id: job.id }, { context })).job).toEqual(held);
});

test('days with others between them are those of the job, and not the ones between', async () => {
  const { job } = await taken('Please film our two concerts in Fargo on 3 March and 5 March 2027, call 9am, wrap 6pm. Ada Byrd');
  expect(job.days.map(({ date }) => date)).toEqual(['2027-03-03', '2027-03-05']);
});
