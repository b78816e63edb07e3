/**
 * Does a text hold the words that were typed?
 */
import { foldName } from '../places/fold.ts';

/** A test for texts in which every typed word begins a word; accents and case do not matter. Nothing typed holds nothing. */
export function holdsWords(typed: string): (...texts: readonly string[]) => boolean {
  const words = foldName(typed)
    .split(' ')
    .filter((word) => word !== '');
  return (...texts) => {
    if (words.length === 0) return false;
    const folded = ` ${foldName(texts.join(' '))}`;
    return words.every((word) => folded.includes(` ${word}`));
  };
}
