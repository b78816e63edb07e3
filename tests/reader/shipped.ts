/**
 * The weights that ship with the program. What learns them anew does not read them: a model may be missing there.
 */
import { readFileSync } from 'node:fs';
import { readNetwork } from '../../core/inquiries/context/file.ts';
import { readLearned, type Learned } from '../../core/inquiries/learned/models.ts';

const read = (name: string): string => readFileSync(new URL(`../../assets/reader/${name}`, import.meta.url), 'utf8');

export const learned: Learned = { ...readLearned(read('learned.tsv')), network: readNetwork(read('network.tsv')) };
