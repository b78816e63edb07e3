/**
 * Whether a message asks for one day or for more, as the learned weights make it of all its words: where one day was found and the words speak of
 * more, it is asked about.
 */
import { OF_ELSE } from '../settle/days-among.ts';
import type { DateMention, Scene } from '../settle/scene.ts';
import { chancesIn, type Learned } from './models.ts';

/** A message is shorter than this. */
const MOST_TEXT = 6000;
/** Whole words here, with their endings: "days" says what "day" does not. */
const WORD = /[\p{L}\p{M}]+(?:['’]\p{L}+)*|\d+|[&+–-]/gu;
/** From this chance on the days are not known yet. */
const OPEN = 0.5;

/** Below this chance one day is asked about however it was found; and below that one, where rules took it out of a run. */
const ONE = 0.8;
const ONE_OF_RUN = 0.2;
/** "We only need you on the Saturday", "just the last night": that one is wanted is said in so many words. */
const ONLY =
  /\b(?:only|just) (?:(?:really )?(?:need|want|require|like)s? )?(?:you|it|this|that|the|on|for)\b|\b(?:day|night|evening) (?:one|two|three|\d) (?:only|alone)\b/i;

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

/** True where the words of a message leave its days open, or hardly speak of the one day that was found. */
export function isOtherLength(scene: Scene, days: number, ofRun: boolean, learned: Learned): boolean {
  const { one = 0, open = 0 } = chancesIn(learned.length, lengthFeatures(scene));
  // The words speak of the whole run, also where one of its days is wanted.
  if (ofRun) return days === 1 && one < ONE_OF_RUN && !ONLY.test(scene.text);
  return open >= OPEN || (days === 1 && one < ONE);
}
