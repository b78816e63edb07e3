import { expect, test } from 'vitest';
import { deedByKey, forgetDeedsBefore, historyOf, keepDeed, writeHistory } from '../../db/keeping.ts';
import { NOW, temporaryStore } from '../store.ts';

const KEY = '01939c1e-0000-7000-8000-000000000001';

test('a deed is found again by its key, with its result', async () => {
  const store = await temporaryStore();
  const deed = { key: KEY, procedure: 'jobs.ink', at: NOW, inputHash: 'abc', result: { ok: true, list: [1, null] } };
  store.write((db) => keepDeed(db, deed));
  expect(store.read((db) => deedByKey(db, KEY))).toEqual(deed);
  store.write((db) => forgetDeedsBefore(db, NOW));
  expect(store.read((db) => deedByKey(db, KEY))).toEqual(deed);
  store.write((db) => forgetDeedsBefore(db, NOW + 1));
  expect(store.read((db) => deedByKey(db, KEY))).toBeUndefined();
});

test('history comes back newest first, with the row as it was', async () => {
  const store = await temporaryStore();
  const about = { subject: 'job', subjectId: KEY };
  store.write((db) => {
    writeHistory(db, { ...about, deed: 'take', sentence: 'Taken from a message.', at: NOW });
    writeHistory(db, { ...about, deed: 'change', sentence: 'Two days became three.', before: { days: 2 }, at: NOW + 1 });
    writeHistory(db, { ...about, subjectId: 'other', deed: 'take', sentence: 'Another.', at: NOW });
  });
  const rows = store.read((db) => historyOf(db, 'job', KEY));
  expect(rows.map(({ deed, before }) => [deed, before])).toEqual([
    ['change', { days: 2 }],
    ['take', null],
  ]);
});
