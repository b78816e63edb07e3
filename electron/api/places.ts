import { searchPlaces } from '../../core/places/search.ts';
import { setupRow } from '../../db/setup.ts';
import { ownPlaces } from '../../db/job-list.ts';
import { os } from './os.ts';

/** Places typed by hand for earlier jobs stand before those of the list. */
const search = os.places.search.handler(({ input, context }) => {
  const { home, own } = context.store.read((db) => ({ home: setupRow(db)?.fields.home ?? null, own: ownPlaces(db) }));
  const options = { near: home, country: input.country, limit: input.limit };
  const typed = searchPlaces(
    own.map((place) => ({ ...place, kind: 'own', people: null })),
    input.text,
    options,
  );
  const known = searchPlaces(context.gazetteer(), input.text, options);
  return { places: [...typed, ...known].slice(0, input.limit) };
});

export const places = { search };
