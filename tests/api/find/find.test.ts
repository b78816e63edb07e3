import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { find } from '../../../electron/api/find.ts';
import { blankItem, blankUnit } from '../../../core/kit/blank.ts';
import { kit } from '../../../electron/api/kit.ts';
import { blankClient, blankHand } from '../../../core/people/blank.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { people } from '../../../electron/api/people.ts';
import { makeQuote } from '../jobs/made-quote.ts';
import { FARGO, world } from '../world.ts';

test('jobs and their papers by the beginnings of their words', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const { job } = await call(
    jobs.add,
    { facts: { title: 'Robotics final', organisation: 'Société 100 %_Gears', place: FARGO } },
    { context },
  );
  makeQuote(context, job.id);
  const found = async (text: string) =>
    (await call(find.search, { text }, { context })).found.map(({ kind, title, second }) => [kind, title, second]);
  expect(await found('societe')).toEqual(await found('ROBO fin'));
  expect(await found('ROBO fin')).toEqual([
    ['job', 'Robotics final', 'Société 100 %_Gears, Fargo, quoted'],
    ['paper', 'Quote.pdf', 'made Tue 1 December 2026'],
  ]);
  expect(await found('%')).toEqual([]);
  expect(await found('obotics')).toEqual(await found('robo'));
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

test('kit by name, by what it does and by a unit’s serial; presets; a hit in a long text says its words', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const fields = { ...blankItem('Long lens'), does: 'lens', owned: 2, units: [blankUnit('LL-77'), blankUnit('LL-78')] };
  const { item } = await call(kit.save, { fields }, { context });
  await call(kit.savePreset, { fields: { name: 'Stage bag', needs: [{ item: item.id, count: 1 }] } }, { context });
  const notes = 'They want a second operator at the vision mixer from the third evening on, and nobody in the aisle.';
  await call(jobs.add, { facts: { title: 'Robotics final', notes } }, { context });
  const found = async (text: string) => (await call(find.search, { text }, { context })).found;
  expect(await found('ll-78')).toMatchObject([
    { kind: 'thing', id: item.id, title: 'Long lens', second: 'lens, 2 owned', why: 'lens LL-77 LL-78', grade: 5 },
  ]);
  expect(await found('stage')).toMatchObject([{ kind: 'preset', title: 'Stage bag', second: 'one thing' }]);
  const [mixer] = await found('mixer');
  expect(mixer).toMatchObject({ kind: 'job', title: 'Robotics final', words: ['mixer'], grade: 3 });
  expect(mixer?.why).toContain('vision mixer');
});

test('a slip of the fingers is forgiven where nothing holds the very words', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  await call(jobs.add, { facts: { title: 'Robotics final', organisation: 'Red River League', place: FARGO } }, { context });
  await call(jobs.add, { facts: { title: 'Harbour supper', notes: 'A toast in the chandlery.' } }, { context });
  const found = async (text: string) => (await call(find.search, { text }, { context })).found.map(({ title }) => title);
  for (const typed of ['robtoics', 'Frago', 'roobtics leauge', 'obotic', 'rver fargo'])
    expect([typed, await found(typed)]).toEqual([typed, ['Robotics final']]);
  expect(await found('chandelry')).toEqual(['Harbour supper']);
  expect(await found('zzzzzz')).toEqual([]);
});

test.each([
  '"',
  "'; drop table jobs; --",
  'title: x',
  'NEAR(a b)',
  '* OR *',
  '\0',
  'a\0b',
  '(',
  '^x',
  '{title}: final',
  '🎥',
  '\ud800',
  'x '.repeat(5_000),
  'x'.repeat(10_000),
  '%_',
])('no text is more than words to the search: %j', async (text) => {
  const { context } = await world('2026-12-01T15:00:00Z');
  await call(jobs.add, { facts: { title: 'Robotics final' } }, { context });
  await expect(call(find.search, { text }, { context })).resolves.toBeDefined();
});
