/** What the weights say in a message that is not brief: a town of which they are sure, where rules find none or another, and a role that they doubt. */
import { expect, test } from 'vitest';
import { pageOf } from '../../../core/inquiries/learned/features.ts';
import type { Learned } from '../../../core/inquiries/learned/models.ts';
import { agreedTowns } from '../../../core/inquiries/learned/town.ts';
import { lookAt } from '../../../core/inquiries/look.ts';
import type { PlaceHit } from '../../../core/inquiries/places/hits.ts';
import { placesNamed } from '../../../core/places/search.ts';
import { gazetteer, homeOf, learned, readAt } from './reading.ts';

const LONG =
  'We are a small choir of amateurs who sing twice a year, and this time our conductor says goodbye after eleven years, so we would love to have something to keep of it all.';
const home = homeOf('leeds');
const find = (name: string): ReturnType<typeof placesNamed> => placesNamed(gazetteer, name);
/** Weights that are sure of a name behind the word "venue" alone. */
const sure: Learned = {
  ...learned,
  town: {
    classes: ['place', 'none'],
    weights: new Map([
      ['*', [-4, 4]],
      ['b0:venue', [200, -200]],
    ]),
  },
};

function townsOf(text: string, found: readonly PlaceHit[]): string[] {
  const sight = lookAt({
    text,
    receivedAt: '2026-11-25T09:12:00+00:00[Europe/London]',
    homeZone: 'Europe/London',
    homePlace: home,
    gazetteer,
  });
  const page = pageOf(sight.scene, sight.phones, sight.head);
  const hints = { home, homeCountry: 'GB', countries: new Set<string>() };
  return agreedTowns(found, [], { page, parts: sight.parts }, { home, find, hints, learned: sure }).map(({ name }) => name);
}
const hit = (name: string): PlaceHit => ({ start: 0, end: 1, name, candidates: [...find(name)], sure: true, countrySure: true, score: 2 });

test.each([
  ['taken', `${LONG} Venue Skipton as ever.`, [], ['Skipton']],
  ['asked about beside another', `${LONG} Venue Skipton as ever.`, [hit('Ripon')], ['Ripon', 'Skipton']],
  ['the same town once', `${LONG} Venue Ripon as ever.`, [hit('Ripon')], ['Ripon']],
  ['none of which the weights are not sure', `${LONG} Near Skipton as ever.`, [], []],
  ['none in a brief message', 'Venue Skipton as ever.', [], []],
])('%s', (_, text, found, towns) => expect(townsOf(text, found)).toEqual(towns));

test('a live stream of which the words hardly tell is asked about beside filming', () => {
  const { fields, questions } = readAt(
    `Hi Kit, ${LONG} It should also go out live for those abroad. Could you come to Ripon on Saturday 12 December with your cameras? We can pay £300.\nThanks, Dana Holt`,
    undefined,
    'leeds',
  );
  expect(fields.role).toBeUndefined();
  expect(questions.find(({ field }) => field === 'role')?.choices.map(({ value }) => value)).toEqual(
    expect.arrayContaining(['livestream', 'shoot']),
  );
});
