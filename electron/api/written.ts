/**
 * Papers as procedures write them.
 */
import { PaperError } from '../papers/trouble.ts';
import { refused } from './trouble.ts';

/** The bytes of a paper. @throws REFUSED where something does not go on paper */
export async function written(paper: Promise<Uint8Array>): Promise<Uint8Array> {
  try {
    return await paper;
  } catch (error) {
    if (error instanceof PaperError) throw refused(error.message, error.todo);
    throw error;
  }
}
