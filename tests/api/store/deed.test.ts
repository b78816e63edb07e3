import { expect, test } from 'vitest';
import { historyOf, writeHistory } from '../../../db/keeping.ts';
import { deed } from '../../../electron/api/deed.ts';
import { refusal, world } from '../world.ts';

const KEY = '01939c1e-0000-7000-8000-000000000001';

async function counting() {
  const { context } = await world('2026-12-01T15:00:00Z');
  const act = (input: { key?: string; text: string }, procedure = 'jobs.note') =>
    deed(context, procedure, input, (db) => {
      writeHistory(db, { subject: 'job', subjectId: 'a', deed: 'note', sentence: input.text, at: context.now() });
      return { done: historyOf(db, 'job', 'a').length };
    });
  const count = () => context.store.read((db) => historyOf(db, 'job', 'a').length);
  return { context, act, count };
}

test('a repeated key answers with the first result and changes nothing', async () => {
  const { act, count } = await counting();
  expect(act({ key: KEY, text: 'One.' })).toEqual({ done: 1 });
  expect(act({ text: 'Two.' })).toEqual({ done: 2 });
  expect(act({ key: KEY, text: 'One.' })).toEqual({ done: 1 });
  expect(count()).toBe(2);
});

test('a key that was used for something else is refused', async () => {
  const { act, count } = await counting();
  act({ key: KEY, text: 'One.' });
  const attempt = (input: { key: string; text: string }, procedure?: string) =>
    refusal(Promise.resolve().then(() => act(input, procedure)));
  expect((await attempt({ key: KEY, text: 'Other.' })).code).toBe('REFUSED');
  expect((await attempt({ key: KEY, text: 'One.' }, 'jobs.other')).code).toBe('REFUSED');
  expect(count()).toBe(1);
});

test('a deed that fails keeps no result, so that it can be tried again under its key', async () => {
  const { context, act } = await counting();
  const fail = () =>
    deed(context, 'jobs.note', { key: KEY }, () => {
      throw new RangeError('no');
    });
  expect(fail).toThrow(RangeError);
  expect(act({ key: KEY, text: 'One.' })).toEqual({ done: 1 });
});
