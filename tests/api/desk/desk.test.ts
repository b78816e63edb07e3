import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { desk } from '../../../electron/api/desk.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { makeQuote } from '../jobs/made-quote.ts';
import { FARGO, THUNDER_BAY, world } from '../world.ts';

const days = (...dates: string[]) => dates.map((date) => ({ date, kind: 'shoot' as const, call: `${date}T09:00`, wrap: `${date}T19:00` }));

test('an empty desk', async () => {
  const { context } = await world('2026-12-04T03:10:00Z', null);
  expect(await call(desk.see, {}, { context })).toEqual({
    now: { wall: '2026-12-03T21:10', zone: 'America/Chicago', at: '2026-12-04T03:10:00Z' },
    clocks: [],
    lines: [],
    stringline: null,
    month: null,
  });
});

test('an inquiry over ink says that it is not possible, and the stringline shows both', async () => {
  const { context } = await world('2026-12-04T03:10:00Z');
  const { job } = await call(
    jobs.add,
    { facts: { title: 'Robotics final', place: FARGO, days: days('2026-12-12', '2026-12-13') } },
    { context },
  );
  makeQuote(context, job.id);
  await call(jobs.ink, { id: job.id, version: job.version + 1, who: 'A', how: 'mail' }, { context });
  await call(jobs.add, { facts: { title: 'Curling', place: THUNDER_BAY, days: days('2026-12-13') } }, { context });

  const seen = await call(desk.see, {}, { context });
  expect(seen.clocks.map(({ kind, sentence }) => [kind, sentence])).toEqual([
    ['question', 'Curling: not answered, came 21:10'],
    ['call', 'Call Sat 12 Dec 09:00, Robotics final, day 1 of 2'],
  ]);
  expect(seen.clocks[0]?.second).toBe('Not possible; Sun 13 December 2026; Thunder Bay');
  expect(seen.stringline?.jobs.map(({ title, firmness }) => [title, firmness])).toEqual([
    ['Robotics final', 'ink'],
    ['Curling', 'candidate'],
  ]);
  expect(seen.month).toMatchObject({
    label: 'December 2026',
    inked: { minor: 240_000, currency: 'USD' },
    pencilled: { minor: 0, currency: 'USD' },
  });
});

test('what ran out more than fourteen days ago, and what is closed, is not looked at', async () => {
  const w = await world('2026-12-01T15:00:00Z');
  const { context } = w;
  const add = async (title: string) =>
    (await call(jobs.add, { facts: { title, place: FARGO, days: days('2027-03-12') } }, { context })).job;
  await add('Inquiry');
  const pencilled = await add('Pencilled');
  await call(jobs.pencil, { id: pencilled.id, version: 1 }, { context });
  makeQuote(context, (await add('Quoted')).id);
  const declined = await add('Declined');
  await call(jobs.decline, { id: declined.id, version: 1 }, { context });

  const titles = async () =>
    (await call(desk.see, {}, { context })).clocks.map(({ kind, sentence }) => `${kind}: ${sentence.split(':')[0]}`);
  expect(await titles()).toEqual(['question: Inquiry', 'pencil: Pencilled', 'quote: Quoted']);
  w.at('2026-12-16T15:00:00Z');
  expect(await titles()).toEqual(['ran out: Pencilled', 'quote: Quoted']);
  w.at('2026-12-22T15:00:00Z');
  expect(await titles()).toEqual([]);
});
