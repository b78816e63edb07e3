/**
 * The weights that ship with the program. What learns them anew does not read them: a model may be missing there.
 */
import { readFileSync } from 'node:fs';
import { readLearned, type Learned } from '../../core/inquiries/learned/models.ts';

export const learned: Learned = readLearned(readFileSync(new URL('../../assets/reader/learned.tsv', import.meta.url), 'utf8'));
