/**
 * What tells whether a message asks for one day or for more: all its words.
 */
import { OF_ELSE } from '../settle/days-among.ts';
import type { DateMention, Scene } from '../settle/scene.ts';

/** A message is shorter than this. */
const MOST_TEXT = 6000;
/** Whole words here, with their endings: "days" says what "day" does not. */
const WORD = /[\p{L}\p{M}]+(?:['’]\p{L}+)*|\d+|[&+–-]/gu;
const wordsIn = (text: string): string[] =>
  Array.from(text.matchAll(WORD), ([word]) => (/^\d/.test(word) ? `#${word.length}` : word.toLowerCase()));

function named({ said, past, weekdayOnly, explicit, readings }: DateMention): string {
  if (said === 'reply' || said === 'delivery') return `<${said}>`;
  if (past) return '<past>';
  return `<${weekdayOnly ? 'weekday' : explicit ? 'date' : 'part'}${(readings[0]?.length ?? 0) > 1 ? 's' : ''}>`;
}

/** Of the whole message: its words in their full form, by one, two and three, and how many dates, days and hours it names. */
export function lengthFeatures({ text, dates, times }: Scene): Set<string> {
  const words: string[] = [];
  let at = 0;
  for (const date of dates.toSorted((a, b) => a.start - b.start)) {
    if (date.start < at || date.end > MOST_TEXT) continue;
    words.push(...wordsIn(text.slice(at, date.start)), named(date));
    at = date.end;
  }
  words.push(...wordsIn(text.slice(at, MOST_TEXT)));
  const ours = dates.filter(({ past, said }) => !past && !OF_ELSE.has(said));
  const days = Math.min(6, new Set(ours.flatMap(({ readings }) => readings[0] ?? [])).size);
  const mentions = Math.min(5, ours.length);
  return new Set([
    ...words,
    ...words.slice(1).map((word, index) => `${words[index]}_${word}`),
    ...words
      .slice(2)
      .map((word, index) => `${words[index]}_${words[index + 1]}_${word}`)
      .filter((three) => three.includes('<')),
    `k:${mentions}`,
    `d:${days}`,
    `kd:${mentions}:${days}`,
    `t:${Math.min(5, times.length)}`,
  ]);
}
