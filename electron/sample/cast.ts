/**
 * The cast of the sample: everything that jobs speak of by name, and the procedures that they are called through.
 */
import { call } from '@orpc/server';
import type { SampleDeed, SampleDeeds, SampleJob } from '../../assets/sample/shape.ts';
import type { Place } from '../../core/contract/parts.ts';
import type { Context } from '../api/context.ts';
import { places } from '../api/places.ts';
import type { Today } from './dates.ts';

export type Cast = {
  context: Context;
  today: Today;
  /** Ids by name. */
  clients: Map<string, string>;
  /** A place by the words that a person would type. */
  place: (words: string) => Promise<Place>;
};

/** A job of the sample while its story is told; `id` once it has come in. */
export type Told = { job: SampleJob; id: string; first: string };

/** How one deed of a job is done. */
export type Doing<D extends SampleDeed> = (cast: Cast, told: Told, given: SampleDeeds[D]) => Promise<unknown>;

/** Finds places as a person does, each once. */
export function placeFinder(context: Context): Cast['place'] {
  const found = new Map<string, Place>();
  return async (words) => {
    const known = found.get(words);
    if (known) return known;
    const [first] = (await call(places.search, { text: words, limit: 1 }, { context })).places;
    if (!first) throw new RangeError(`There is no place "${words}" for the sample.`);
    const { kind: _kind, people: _people, ...place } = first;
    found.set(words, place);
    return place;
  };
}
