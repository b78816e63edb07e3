import { z } from 'zod';
import { reads } from './base.ts';
import { Id } from './parts.ts';

/** Whatever was typed or pasted; what is no word in it is left out. */
const Typed = z.string('must be text').max(20_000, 'is longer than 20,000 characters; type a few words of it');

export const Found = z.strictObject({
  kind: z.enum(['job', 'paper', 'client', 'hand', 'thing', 'preset', 'rate card']),
  id: Id,
  jobId: Id.nullable().describe('the job of a paper, or the job itself'),
  title: z.string(),
  second: z.string(),
  why: z.string().describe('the words around what was found, where neither title nor second line hold it'),
  words: z.array(z.string()).describe('the words that were met, in small letters without accents'),
  grade: z.number().describe('5 the very words, 4 their beginnings, 3 in the text, 2 inside of words, below 1 like them'),
});
export type Found = z.infer<typeof Found>;

export const find = {
  search: reads(
    'Jobs, papers, clients, hands, kit, presets and rate cards that hold the words, or words like them where none does; the best first.',
    z.strictObject({ text: Typed, limit: z.int().min(1).max(50).default(12) }),
    z.strictObject({ found: z.array(Found) }),
  ),
};
