/**
 * What the reader learned from labelled messages, as it ships with the program, read at first use.
 */
import { readFileSync } from 'node:fs';
import { readNetwork } from '../../core/inquiries/context/file.ts';
import { readLearned, type Learned } from '../../core/inquiries/learned/models.ts';

/** A getter for the context: the first call reads the file, later ones answer at once. */
export function learnedFrom(folder: URL = new URL('../../assets/reader/', import.meta.url)): () => Learned {
  let learned: Learned | undefined;
  const read = (name: string): string => readFileSync(new URL(name, folder), 'utf8');
  return () => (learned ??= { ...readLearned(read('learned.tsv')), network: readNetwork(read('network.tsv')) });
}
