/**
 * The part of the day in which an hour is by the words after it: "5 in the morning", "11 this evening", "la una de la madrugada", "12 Uhr nachts".
 */
import type { Token } from '../parts/tokens.ts';
import { numberWord, weekdayWord } from '../words.ts';

type Tokens = readonly Token[];
/** The night goes on past midnight; noon is twelve and the hours around it. */
export type DayPart = 'am' | 'pm' | 'night' | 'noon';
export type PartAt = { part: DayPart; next: number };

const LATEST_OF_NIGHT = 4 * 60 + 59;
const EARLIEST_OF_NOON = 11 * 60;

/** Minutes after midnight of an hour of the dial in a part of the day; 1440 for the midnight that ends it. */
export function minutesIn(hour: number, minute: number, part: DayPart): number {
  const dial = (hour % 12) * 60 + minute;
  if (part === 'am') return dial;
  if (part === 'noon') return dial >= EARLIEST_OF_NOON ? dial : dial + 720;
  if (part === 'night' && dial <= LATEST_OF_NIGHT) return dial === 0 ? 1440 : dial;
  return dial + 720;
}

const partOfDay = new Map<string, DayPart>([
  ['morning', 'am'],
  ['evening', 'pm'],
  ['afternoon', 'pm'],
  ['night', 'night'],
]);

/** "in the morning", "this evening", "tonight", "at night" */
function inEnglish(tokens: Tokens, index: number): PartAt | undefined {
  const word = (offset: number): string => tokens[index + offset]?.lower ?? '';
  if (word(0) === 'tonight') {
    const hour = tokens[index - 1]?.num ?? numberWord(word(-1));
    return { part: hour === 12 ? 'night' : 'pm', next: index };
  }
  // "till 2 the following morning"
  const led = word(0) === 'the' ? 1 : 0;
  if (/^(?:following|next)$/.test(word(led)) && word(led + 1) === 'morning') return { part: 'am', next: index + led + 2 };
  // "five of the afternoon" of those who think in Spanish, Italian or French
  const skip = /^(?:in|of)$/.test(word(0)) && word(1) === 'the' ? 2 : word(0) === 'at' || word(0) === 'this' ? 1 : 0;
  const part = partOfDay.get(word(skip));
  if (part === undefined) return undefined;
  return { part, next: skip === 0 ? index : index + skip + 1 };
}

/** From which hour to which on the dial each part of the day goes, where it is named before the hour. */
const HOURS_OF: Readonly<Record<string, readonly [DayPart, number, number]>> = {
  morning: ['am', 5, 11],
  afternoon: ['pm', 1, 7],
  evening: ['pm', 4, 11],
};
const LEADS_TO = /^(?:at|from|by|around)$/;

/**
 * "Saturday morning 5:45", "in the evening at 7": the part of the day in which an hour is by the words just before it. Behind a comma something else
 * may begin ("nothing in the morning, 2:30 call"), unless it is the part of a weekday: "Saturday evening, 6:30".
 */
export function partBefore(tokens: Tokens, index: number, hour: number): DayPart | undefined {
  const word = (back: number): string => tokens[index - back]?.lower ?? '';
  let back = LEADS_TO.test(word(1)) ? 2 : 1;
  const comma = word(back) === ',';
  if (comma) back++;
  const found = HOURS_OF[word(back)];
  if (!found || hour < found[1] || hour > found[2] || (comma ? weekdayWord(word(back + 1)) === undefined : word(back + 1) === 'good'))
    return undefined;
  // "Good afternoon", and the hour on the next line.
  return tokens.slice(index - back + 1, index + 1).some(({ breaks }) => breaks > 0) ? undefined : found[0];
}

/** "half past six of the afternoon": no count of anything. */
export const ofThe = (tokens: Tokens, index: number): boolean =>
  tokens[index]?.lower === 'of' && tokens[index + 1]?.lower === 'the' && partOfDay.has(tokens[index + 2]?.lower ?? '');

/** "quarter past four (yes, am)" */
function inBracket(tokens: Tokens, index: number): PartAt | undefined {
  if (tokens[index]?.text !== '(') return undefined;
  const end = tokens.slice(index, index + LONGEST_BRACKET).findIndex(({ text }) => text === ')');
  const half = end < 1 ? undefined : tokens.slice(index, index + end).find(({ lower }) => lower === 'am' || lower === 'pm')?.lower;
  return half === 'am' || half === 'pm' ? { part: half, next: index + end + 1 } : undefined;
}
const LONGEST_BRACKET = 7;

const elsewhere: readonly (readonly [words: string, part: DayPart])[] = (
  [
    [
      'am',
      "de la madrugada|por la mañana|du matin|du mat|di mattina|del mattino|morgens|am morgen|am vormittag|in der früh|früh|vormittags|' s ochtends|' s morgens",
    ],
    [
      'pm',
      "de la tarde|por la tarde|du soir|de l'après|di sera|del pomeriggio|nachmittags|abends|am abend|am nachmittag|' s middags|' s avonds",
    ],
    ['night', "de la noche|de la nuit|di notte|in der nacht|nachts|' s nachts"],
    ['noon', 'del mediodía|de la mañana|mittags'],
  ] as const
).flatMap(([part, words]) => words.split('|').map((one) => [one, part] as const));

/** The part of the day that words after an hour tell in other languages, and the index after them. */
export function partElsewhere(tokens: Tokens, index: number): PartAt | undefined {
  for (const [words, part] of elsewhere) {
    const wanted = words.split(' ');
    if (wanted.every((word, at) => tokens[index + at]?.lower === word)) {
      // "las 12 de la mañana" is noon, "las 8 de la mañana" is not.
      return { part: words === 'de la mañana' && tokens[index - 1]?.num !== 12 ? 'am' : part, next: index + wanted.length };
    }
  }
  return undefined;
}

/** The part of the day that words after an hour tell, and the index after them. */
export const partAfter = (tokens: Tokens, index: number): PartAt | undefined =>
  inEnglish(tokens, index) ?? partElsewhere(tokens, index) ?? inBracket(tokens, index);
