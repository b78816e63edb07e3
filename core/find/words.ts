/**
 * Words as the find box compares them: small letters and figures without marks.
 */
import { plainText } from '../places/fold.ts';

/** Longer texts are cut: nobody looks for more, and each word costs a look into the store. */
const MOST_WORDS = 8;
const MOST_LETTERS = 40;

/** The words of a text, folded: "Bäkers’ No. 7" as bakers, no, 7. */
export function wordsOf(text: string): string[] {
  return plainText(text)
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');
}

/** What was typed into the find box, as words; no character of it means anything but itself. */
export function typedWords(text: string): string[] {
  return [...new Set(wordsOf(text.slice(0, 500)))].slice(0, MOST_WORDS).map((word) => word.slice(0, MOST_LETTERS));
}
