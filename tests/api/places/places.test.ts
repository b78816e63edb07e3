import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { jobs } from '../../../electron/api/jobs.ts';
import { places } from '../../../electron/api/places.ts';
import { DULUTH, world } from '../world.ts';

test('home decides between towns of one name', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const found = await call(places.search, { text: 'Duluth' }, { context });
  expect(found.places.slice(0, 2).map((place) => place.region)).toEqual(['Minnesota', 'Georgia']);
  expect(found.places[0]).toMatchObject({ kind: 'city', people: 86_110, zone: 'America/Chicago' });
});

test('a place once typed by hand is found again', async () => {
  const { context } = await world('2026-12-01T15:00:00Z');
  const barn = { ...DULUTH, key: 'own:0198d0aa-0000-7000-8000-000000000001', name: 'Birch Ridge Barn' };
  await call(jobs.add, { facts: { title: 'Barn dance', place: barn } }, { context });
  await call(jobs.add, { facts: { title: 'Barn dance again', place: barn } }, { context });
  expect((await call(places.search, { text: 'birch' }, { context })).places.map(({ name, kind }) => [name, kind])).toContainEqual([
    'Birch Ridge Barn',
    'own',
  ]);
});
