/**
 * The list of places that ships with the program, read at first use.
 */
import { readFileSync } from 'node:fs';
import { readGazetteer, type Gazetteer } from '../../core/places/gazetteer.ts';

/** A getter for the context: the first call reads the file (about 40 ms), later ones answer at once. */
export function gazetteerFrom(file: string | URL = new URL('../../assets/places/places.tsv', import.meta.url)): () => Gazetteer {
  let gazetteer: Gazetteer | undefined;
  return () => (gazetteer ??= readGazetteer(readFileSync(file, 'utf8')));
}
