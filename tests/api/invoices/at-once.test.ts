/**
 * Many bills at once: no number is missing, none is given twice, and each has its paper.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { newId } from '../../../db/ids.ts';
import { allPapers } from '../../../db/papers.ts';
import { invoices } from '../../../electron/api/invoices.ts';
import { callProcedure } from '../../../electron/api/serve.ts';
import { checkPapers } from '../../../electron/papers/keep.ts';
import { agreedJob } from './agreed-job.ts';
import { clonedJobs } from './cloned-jobs.ts';

test('bills issued at once, some of them twice by the same key and some refused, are numbered without gaps', async () => {
  const { at, job } = await agreedJob();
  const { context } = at;
  const ids = [job.id, ...clonedJobs(context.store, job.id, 11)];
  const issue = (jobId: string, key: string) => call(invoices.issue, { jobId, kind: 'deposit', draftVersion: 0, key }, { context });
  const through = (jobId: string, key: string) =>
    callProcedure(context, 'invoices.issue', { jobId, kind: 'deposit', draftVersion: 0, key });
  const results = await Promise.allSettled(
    ids.flatMap((id) => {
      const key = newId();
      // The same deed through two doors, and a deed that comes too late: a deposit is billed once.
      return [issue(id, key), through(id, key), issue(id, newId())];
    }),
  );
  const done = results.filter((result) => result.status === 'fulfilled');
  expect([done.length, results.length - done.length]).toEqual([24, 12]);
  const { invoices: all } = await call(invoices.list, {}, { context });
  const numbers = all.map(({ number }) => number).sort();
  expect(numbers).toEqual(Array.from({ length: 12 }, (_, order) => `2026-${String(order + 1).padStart(3, '0')}`));
  expect(new Set(all.map(({ jobId }) => jobId)).size).toBe(12);
  const papers = context.store.read(allPapers);
  expect(checkPapers(context.store.papers, papers)).toMatchObject({ lost: [], orphans: [] });
  expect(papers.filter(({ kind }) => kind === 'invoice')).toHaveLength(12);
});
