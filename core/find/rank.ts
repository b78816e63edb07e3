/**
 * What the find box shows first: the very word before its beginning, that before a word inside or in the text, that before what is like it;
 * then what is called so before what has to do with it, then what was last changed.
 */
import { nearness } from './near.ts';
import { wordsOf } from './words.ts';

/** Something that can be found: what it is called, the names that belong to it, and when it was last changed (epoch ms). */
export type Candidate = { title: string; names: string; at: number };
export type Standing = { grade: number; inTitle: number; at: number; /** Words of title and names that were meant. */ words: string[] };

const EXACT = 5;
const BEGINNING = 4;
/** A word of the longer text, and one there that is like the typed one. */
export const IN_TEXT = 3;
export const LIKE_IN_TEXT = 0.1;
const INSIDE = 2;
/** A word of two letters is inside of too many. */
const SHORTEST_INSIDE = 3;

/** How well a word answers a typed one: 5 the same, 4 begins with it, 2 holds it, above 0 and below 1 is like it, 0 not at all. */
export function gradeOf(typed: string, word: string): number {
  if (word === typed) return EXACT;
  if (word.startsWith(typed)) return BEGINNING;
  if (typed.length >= SHORTEST_INSIDE && word.includes(typed)) return INSIDE;
  return nearness(typed, word);
}

function best(typed: string, words: readonly string[]): { grade: number; word: string } {
  let found = { grade: 0, word: '' };
  for (const word of words) {
    const grade = gradeOf(typed, word);
    if (grade > found.grade) found = { grade, word };
  }
  return found;
}

/**
 * Where something stands among what was found, or undefined when a typed word is not in it.
 * @param ofText the grade of a typed word that neither title nor names hold, where the longer text is known to hold it; else 0
 */
export function standingOf(typed: readonly string[], { title, names, at }: Candidate, ofText: number): Standing | undefined {
  if (typed.length === 0) return undefined;
  const [ofTitle, ofNames] = [wordsOf(title), wordsOf(names)];
  const words: string[] = [];
  let [grade, inTitle] = [EXACT, 0];
  for (const each of typed) {
    const [called, belonging] = [best(each, ofTitle), best(each, ofNames)];
    const met = called.grade >= belonging.grade ? called : belonging;
    if (met.grade < ofText) {
      grade = Math.min(grade, ofText);
      continue;
    }
    if (met.grade === 0) return undefined;
    if (met === called) inTitle += 1;
    words.push(met.word);
    grade = Math.min(grade, met.grade);
  }
  return { grade, inTitle, at, words };
}

/** The better first: by grade, then by words in the title, then the later one. */
export const byStanding = (a: Standing, b: Standing): number => b.grade - a.grade || b.inTitle - a.inTitle || b.at - a.at;
