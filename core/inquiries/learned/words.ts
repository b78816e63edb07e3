/**
 * Words as the models know them: lower case, endings cut, numbers by their length, and each date, time, price and phone number one word.
 */
import type { Where } from '../settle/scene.ts';

export type Mark = Where & { kind: 'date' | 'time' | 'money' | 'phone' };
export type Word = { word: string; start: number };

const WORD = /[\p{L}\p{M}]+(?:'[\p{L}\p{M}]+)*|\d+|[^\s]/gu;
const LONGEST_COUNTED = 5;

const cut = (word: string): string =>
  word.length > 5 ? word.replace(/(?:ing|ed|es|s)$/, '') : word.length > 3 ? word.replace(/s$/, '') : word;

/** The words of a text in their order; `marks` are in the order of the text and stand for what they cover. */
export function wordsOf(text: string, marks: readonly Mark[] = []): Word[] {
  const words: Word[] = [];
  const take = (from: number, to: number): void => {
    for (const match of text.slice(from, to).matchAll(WORD))
      words.push({
        word: /^\d/.test(match[0]) ? `#${Math.min(match[0].length, LONGEST_COUNTED)}` : cut(match[0].toLowerCase()),
        start: from + match.index,
      });
  };
  let at = 0;
  for (const { kind, start, end } of marks) {
    if (start < at) continue;
    take(at, start);
    words.push({ word: `<${kind}>`, start });
    at = end;
  }
  take(at, text.length);
  return words;
}

/** Index of the first word that does not stand before an offset. */
export function wordAt(words: readonly Word[], offset: number): number {
  let [low, high] = [0, words.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((words[middle] as Word).start < offset) low = middle + 1;
    else high = middle;
  }
  return low;
}
