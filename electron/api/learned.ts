/**
 * What the reader learned from labelled messages, as it ships with the program, read at first use.
 */
import { readFileSync } from 'node:fs';
import { readLearned, type Learned } from '../../core/inquiries/learned/models.ts';

/** A getter for the context: the first call reads the file, later ones answer at once. */
export function learnedFrom(file: string | URL = new URL('../../assets/reader/learned.tsv', import.meta.url)): () => Learned {
  let learned: Learned | undefined;
  return () => (learned ??= readLearned(readFileSync(file, 'utf8')));
}
