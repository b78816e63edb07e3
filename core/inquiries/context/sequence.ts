/**
 * A message as the network reads it: its words in their order, lines and paragraphs among them, each date and each hour one word with what its
 * figures say.
 */
import type { DateMention, SaidTime, Scene, Where } from '../settle/scene.ts';

/** A date or an hour among the words. */
export type Mention = {
  kind: 'date' | 'time';
  /** Index among the words. */
  at: number;
  /** Where it begins in the text. */
  start: number;
  /** What its figures say: mostly 0 or 1, and how far an hour is from those beside it in half days. */
  traits: readonly number[];
};
export type Sequence = { words: readonly string[]; mentions: readonly Mention[] };

/** Of a longer message the network reads the beginning. */
const MOST_TEXT = 6000;
const MOST_WORDS = 600;
const WORD = /[\p{L}\p{M}]+(?:'[\p{L}\p{M}]+)*|\d+|\n+|[^\s]/gu;
const LONGEST_COUNTED = 5;

/** How many traits a date has, and a time. */
export const TRAITS = { date: 30, time: 48 } as const;

const spelled = (word: string): string => {
  if (/^\d/.test(word)) return `#${Math.min(word.length, LONGEST_COUNTED)}`;
  if (word.startsWith('\n')) return word.length > 1 ? '<paragraph>' : '<line>';
  return word.toLowerCase();
};

/** One of so many, as that many figures. */
const oneOf = (index: number, count: number): number[] =>
  Array.from({ length: count }, (_, at) => (at === Math.max(0, Math.min(count - 1, index)) ? 1 : 0));
const flags = (...all: boolean[]): number[] => all.map(Number);

/** The words of a message with its dates and times; `phones` stand for what they cover. */
export function sequenceOf(scene: Scene, phones: readonly Where[]): Sequence {
  const { dates, times, numbers, amounts, text } = scene;
  type Mark = Where & { word: string; mention?: () => Omit<Mention, 'at' | 'start'> };
  const marks: Mark[] = [
    ...dates.map(({ start, end }, index) => ({ start, end, word: '<date>', mention: () => ofDate(scene, index) })),
    ...times.map((time) => ({ start: time.start, end: time.end, word: '<time>', mention: () => ofTime(scene, time) })),
    ...numbers.map((time) => ({
      start: time.start,
      end: time.end,
      word: spelled(text.slice(time.start, time.end)),
      mention: () => ofTime(scene, time),
    })),
    ...amounts.filter(({ mark }) => mark !== undefined).map(({ start, end }) => ({ start, end, word: '<money>' })),
    ...phones.map(({ start, end }) => ({ start, end, word: '<phone>' })),
  ].toSorted((a, b) => a.start - b.start || b.end - a.end);
  const words: string[] = [];
  const mentions: Mention[] = [];
  const take = (from: number, to: number): void => {
    for (const [word] of text.slice(from, Math.min(to, MOST_TEXT)).matchAll(WORD)) words.push(spelled(word));
  };
  let at = 0;
  for (const { start, end, word, mention } of marks) {
    if (start < at || end > MOST_TEXT) continue;
    take(at, start);
    if (mention) mentions.push({ ...mention(), at: words.length, start });
    words.push(word);
    at = end;
  }
  // What follows is cut off elsewhere: where the message ends, no line ends.
  take(at, text.trimEnd().length);
  return { words: words.slice(0, MOST_WORDS), mentions: mentions.filter((mention) => mention.at < MOST_WORDS) };
}

/** Days ahead up to which a date is of each nearness. */
const NEARNESS = [-1, 0, 2, 7, 21, 69, 299, Infinity];

function ofDate({ dates, received }: Scene, index: number): Omit<Mention, 'at' | 'start'> {
  const { readings, explicit, weekdayOnly } = dates[index] as DateMention;
  const days = readings.flat();
  const first = days[0];
  const all = dates.flatMap((one) => one.readings.flat());
  const ahead = first === undefined ? undefined : received.toPlainDate().until(Temporal.PlainDate.from(first)).days;
  const near = ahead === undefined ? NEARNESS.length : NEARNESS.findIndex((most) => ahead <= most);
  return {
    kind: 'date',
    traits: [
      ...oneOf(near, NEARNESS.length + 1),
      ...flags(explicit, weekdayOnly, days.length > 1, days.length === 2, days.length > 4, readings.length > 1),
      ...flags(
        first !== undefined && all.every((day) => day >= first),
        first !== undefined && all.every((day) => day <= (days.at(-1) ?? '')),
      ),
      ...flags(index === 0, index === dates.length - 1),
      ...oneOf(index, 5),
      ...oneOf(dates.length - 1, 6),
    ],
  };
}

const HALF_DAY = 720;

function ofTime({ times, numbers }: Scene, time: SaidTime): Omit<Mention, 'at' | 'start'> {
  const { from, to, date, start } = time;
  const before = times.findLast((other) => other.start < start);
  const after = times.find((other) => other.start > start);
  const all = [...times, ...numbers];
  return {
    kind: 'time',
    traits: [
      ...oneOf(Math.floor(from.minutes / 60) % 24, 24),
      ...flags(from.open, from.bare, to !== undefined, date !== undefined, numbers.includes(time)),
      ...flags(
        all.every((other) => other.from.minutes >= from.minutes),
        all.every((other) => other.from.minutes <= from.minutes),
      ),
      before ? (from.minutes - (before.to ?? before.from).minutes) / HALF_DAY : 0,
      after ? (after.from.minutes - from.minutes) / HALF_DAY : 0,
      ...flags(before === undefined, after === undefined),
      ...oneOf(all.indexOf(time), 6),
      ...oneOf(all.length - 1, 7),
    ],
  };
}
