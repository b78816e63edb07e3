import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { find } from '../../../electron/api/find.ts';
import { blankClient, blankHand } from '../../../core/people/blank.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { people } from '../../../electron/api/people.ts';
import { makeQuote } from '../jobs/made-quote.ts';
import { FARGO, world } from '../world.ts';

test('jobs, their papers and places by the beginnings of their words', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const { job } = await call(
    jobs.add,
    { facts: { title: 'Robotics final', organisation: 'Société 100 %_Gears', place: FARGO } },
    { context },
  );
  makeQuote(context, job.id);
  const found = async (text: string) =>
    (await call(find.search, { text }, { context })).found.map(({ kind, title, second }) => [kind, title, second]);
  expect(await found('societe')).toEqual([['job', 'Robotics final', 'Société 100 %_Gears, Fargo, quoted']]);
  expect(await found('ROBO fin')).toEqual([
    ['job', 'Robotics final', 'Société 100 %_Gears, Fargo, quoted'],
    ['paper', 'Quote.pdf', 'made Tue 1 December 2026'],
  ]);
  expect(await found('fargo')).toContainEqual(['place', 'Fargo', 'North Dakota, US']);
  expect(await found('%')).toEqual([]);
  expect(await found('obotics')).toEqual([]);
  expect(await found('')).toEqual([]);
});

test('clients by their contacts, hands by what they do; nobody that was put away', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const contacts = [{ name: 'Ilse Marrow', email: 'ilse@reading.example', phone: '', what: '' }];
  await call(people.saveClient, { fields: { ...blankClient('River Street Reading Club'), contacts } }, { context });
  const rates = [{ role: 'audio' as const, dayRate: '420.00', currency: 'USD', from: '2026-01-01' }];
  const { hand } = await call(people.saveHand, { fields: { ...blankHand('Cy Ek'), rates, home: FARGO } }, { context });
  const found = async (text: string) =>
    (await call(find.search, { text }, { context })).found.map(({ kind, title, second }) => [kind, title, second]);
  expect(await found('marrow')).toEqual([['client', 'River Street Reading Club', 'Ilse Marrow, ilse@reading.example']]);
  expect(await found('cy ek')).toEqual([['hand', 'Cy Ek', 'audio, Fargo']]);
  await call(people.putAway, { kind: 'hand', id: hand.id, version: hand.version }, { context });
  expect(await found('cy ek')).toEqual([]);
});
