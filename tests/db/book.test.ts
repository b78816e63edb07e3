/**
 * The book that a check is given: near, live, and never the whole history.
 */
import { expect, test } from 'vitest';
import { JOBS_NEAR, loadBook } from '../../db/book.ts';
import { explain } from '../explain.ts';
import { NOW, temporaryStore } from '../store.ts';
import { DULUTH } from '../api/world.ts';
import { strewn } from './years.ts';

const DAY = 86_400_000;
const span = {
  home: DULUTH,
  from: NOW + 9 * DAY,
  to: NOW + 10 * DAY,
  now: NOW,
  leaveOutJob: null,
  restMinutes: 480,
  distance: 'mi' as const,
};

test('jobs near are found by the index of stays in both bounds, and their pencil by its own', async () => {
  const store = await temporaryStore();
  const plan = store.read((db) => explain(db, JOBS_NEAR, { from: 1, to: 2, now: 3 }));
  expect(plan).toContain('SEARCH stays USING COVERING INDEX stays_by_time (start_at>? AND start_at<?)');
  expect(plan.some((step) => step.includes('pencils_one_held'))).toBe(true);
  expect(plan.filter((step) => step.startsWith('SCAN') && !/^SCAN (near|\(subquery)/.test(step))).toEqual([]);
});

test('ten years of history give the same book as one', async () => {
  const short = await temporaryStore();
  const long = await temporaryStore();
  short.write((db) => strewn(db, { years: 1, until: NOW + 60 * DAY }));
  long.write((db) => strewn(db, { years: 10, until: NOW + 60 * DAY }));
  const book = short.read((db) => loadBook(db, span));
  expect(book.jobs.length).toBeGreaterThan(10);
  expect(long.read((db) => loadBook(db, span))).toEqual(book);
});

test('ink and live pencils only, without the job itself', async () => {
  const store = await temporaryStore();
  store.write((db) => strewn(db, { years: 1, until: NOW + 60 * DAY }));
  const book = store.read((db) => loadBook(db, span));
  expect(new Set(book.jobs.map(({ firmness }) => firmness))).toEqual(new Set(['ink', 'pencil']));
  expect(book.jobs.filter(({ expiresAt }) => expiresAt !== null && expiresAt <= NOW)).toEqual([]);
  const [first] = book.jobs;
  const without = store.read((db) => loadBook(db, { ...span, leaveOutJob: first?.id ?? null }));
  expect(without.jobs).toEqual(book.jobs.slice(1));
});
