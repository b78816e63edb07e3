/**
 * What the models see of a message and of each date and time in it.
 */
import { readContext, type Context, type Network } from '../context/network.ts';
import { sequenceOf } from '../context/sequence.ts';
import { lineStart, sentenceAround } from '../parts/sentences.ts';
import { OF_ELSE } from '../settle/days-among.ts';
import type { DateMention, SaidTime, Scene, Where } from '../settle/scene.ts';
import { wordAt, wordsOf, type Mark, type Word } from './words.ts';

/** A message with its words, each once, and what the network makes of it, which it reads when it is asked. */
export type Page = { scene: Scene; words: readonly Word[]; head: string; context: (network: Network) => Context };

/** A message is shorter than this; of a longer text only the beginning is weighed. */
const MOST_TEXT = 20_000;
/** More words than this say nothing more of the kind of a message. */
const MOST_READ = 1500;
const BEFORE = 12;
const AFTER = 9;
const BESIDE = 8;
const LABEL = /^[\s\-*|>]*([^:=|\n]{1,30})[:=|]/;
const LONGEST_LABEL = 160;

/**
 * A page from which features are taken.
 * @param head what machines and mail programs wrote above and below the sender's own words
 */
export function pageOf(scene: Scene, phones: readonly Where[], head: string): Page {
  const as =
    (kind: Mark['kind']) =>
    ({ start, end }: Where): Mark => ({ start, end, kind });
  const marks = [
    ...scene.dates.map(as('date')),
    ...scene.times.map(as('time')),
    ...scene.amounts.filter(({ mark }) => mark !== undefined).map(as('money')),
    ...phones.map(as('phone')),
  ].toSorted((a, b) => a.start - b.start || b.end - a.end);
  return {
    scene,
    words: wordsOf(
      scene.text.slice(0, MOST_TEXT),
      marks.filter(({ end }) => end <= MOST_TEXT),
    ),
    head,
    context: readOnce(scene, phones),
  };
}

function readOnce(scene: Scene, phones: readonly Where[]): Page['context'] {
  let read: { by: Network; context: Context } | undefined;
  return (network) => {
    if (read?.by !== network) read = { by: network, context: readContext(network, sequenceOf(scene, phones)) };
    return read.context;
  };
}

/** Fewer words and signs than this tell of little beside what they ask. */
const BRIEF = 40;
/** Whether a message is so short that the weights, which know whole messages, are heard less against the rules. */
export const isBrief = ({ words }: Pick<Page, 'words'>): boolean => words.length < BRIEF;

const upTo = (most: number, count: number): number => Math.min(most, count);
const spelled = (words: readonly Word[]): string[] => words.map(({ word }) => word);

/** Of the sender's words: each, and each pair. */
export function wordsFeatures({ words: all }: Page): Set<string> {
  const words = spelled(all.slice(0, MOST_READ));
  return new Set([...words, ...words.slice(1).map((word, at) => `${words[at]}_${word}`)]);
}

/** Of the whole message: its words, pairs of them, the words of its head and foot, and how much there is of each. */
export function messageFeatures(page: Page): Set<string> {
  const { scene, head } = page;
  const today = scene.received.toPlainDate().toString();
  const ahead = scene.dates.filter(({ readings }) => readings.some((reading) => reading.some((date) => date >= today))).length;
  return new Set([
    ...wordsFeatures(page),
    ...spelled(wordsOf(head.slice(0, MOST_TEXT)).slice(0, MOST_READ)).map((word) => `w:${word}`),
    `ahead:${upTo(3, ahead)}`,
    `times:${upTo(3, scene.times.length)}`,
    `money:${upTo(3, scene.amounts.filter(({ mark }) => mark !== undefined).length)}`,
    `long:${Math.floor(Math.log2(Math.min(page.words.length, MOST_READ) + 1))}`,
  ]);
}

/** The words around a stretch of text: each with how near it is, in pairs, with the label of its line and the sentences beside. */
export function around({ scene: { text }, words }: Page, { start, end }: Where): string[] {
  const sentence = sentenceAround(text, start, end);
  const [first, here, next, last] = [sentence.start, start, end, sentence.end].map((offset) => wordAt(words, offset)) as [
    number,
    number,
    number,
    number,
  ];
  const before = spelled(words.slice(Math.max(first, here - BEFORE), here)).toReversed();
  const after = spelled(words.slice(next, Math.min(last, next + AFTER)));
  const line = lineStart(text, start);
  const label = LABEL.exec(text.slice(Math.max(line, start - LONGEST_LABEL), start));
  return [
    ...before.flatMap((word, at) => [`b:${word}`, ...(at < 3 ? [`b${at}:${word}`] : []), ...(at < 5 ? [`B:${word}`] : [])]),
    ...after.flatMap((word, at) => [`a:${word}`, ...(at < 3 ? [`a${at}:${word}`] : []), ...(at < 5 ? [`A:${word}`] : [])]),
    ...before.slice(1, 7).map((word, at) => `bb:${word}_${before[at]}`),
    ...after.slice(1, 5).map((word, at) => `aa:${after[at]}_${word}`),
    `ba:${before[0] ?? ''}_${after[0] ?? ''}`,
    ...(label ? spelled(wordsOf(label[0])).map((word) => `L:${word}`) : ['L']),
    ...(line >= sentence.start ? ['first'] : []),
    ...spelled(words.slice(Math.max(0, first - BESIDE), first)).map((word) => `p:${word}`),
    ...spelled(words.slice(last, last + BESIDE - 1)).map((word) => `n:${word}`),
    ...(text.slice(end, sentence.end + 1).includes('?') ? ['?'] : []),
  ];
}

const placed = (index: number, count: number): string[] => [
  `i:${upTo(4, index)}`,
  `k:${upTo(6, count)}`,
  `l:${upTo(3, count - 1 - index)}`,
];

/** Of one time, or of a number that might be one. */
export function timeFeatures(page: Page, time: SaidTime): Set<string> {
  const { times, numbers } = page.scene;
  return new Set([
    ...around(page, time),
    ...hoursBeside(page.scene, time),
    numbers.includes(time) ? NUMBER : 'hour',
    ...placed(times.filter(({ start }) => start < time.start).length, times.length),
    `h:${Math.floor(time.from.minutes / 60)}`,
    time.from.open ? 'open' : 'shut',
    time.from.bare ? 'bare' : 'marked',
    time.to ? 'range' : 'single',
    ...(time.date ? ['dated'] : []),
  ]);
}

/** The feature of a number that no rule makes an hour. */
export const NUMBER = 'number';

/** How far an hour of the dial is from the one before it, in coarse steps. */
const gap = (minutes: number): number => [0, 1, 45, 105, 180, 300, 480, 660].findLastIndex((step) => (minutes + 720) % 720 >= step);

/** What rules say of the hours before and after a time, how far on the dial it is from them, and whether it is the first or the last of them all. */
function hoursBeside({ times }: Scene, time: SaidTime): string[] {
  const ours = times.filter((other) => other !== time && !OF_ELSE.has(other.said));
  const before = ours.findLast(({ start }) => start < time.start);
  const after = ours.find(({ start }) => start > time.start);
  const name = (one: SaidTime | undefined): string => (one ? `${one.said ?? 'none'}${one.to ? '+' : ''}` : '-');
  const told = (cue: SaidTime['said']): string => (ours.some(({ said }) => said === cue) ? 'told' : 'not');
  const dial = time.from.minutes % 720;
  const since = before && gap(dial - ((before.to ?? before.from).minutes % 720));
  const until = after && gap((after.from.minutes % 720) - dial);
  return [
    `P:${name(before)}`,
    `N:${name(after)}`,
    `PN:${name(before)}:${name(after)}`,
    `has:${told('call')}:${told('wrap')}`,
    ...(before ? [`pg:${since}`, `pg:${before.said}:${since}`] : []),
    ...(after ? [`ng:${until}`, `ng:${after.said}:${until}`] : []),
    ...(time.from.open
      ? []
      : [
          `earliest:${ours.every(({ from }) => from.open || from.minutes > time.from.minutes)}`,
          `latest:${ours.every(({ from }) => from.open || from.minutes < time.from.minutes)}`,
        ]),
  ];
}

const distances: [number, string][] = [
  [-1, 'gone'],
  [0, 'today'],
  [2, 'd2'],
  [7, 'd7'],
  [21, 'd21'],
  [69, 'd69'],
  [299, 'd299'],
  [Infinity, 'far'],
];

/** Of one date; how far it is ahead counts from the day on which the message came. */
export function dateFeatures(page: Page, date: DateMention): Set<string> {
  const { dates, received } = page.scene;
  const days = date.readings.flat();
  const all = dates.flatMap(({ readings }) => readings.flat()).toSorted();
  const first = days[0];
  const ahead = first === undefined ? undefined : received.toPlainDate().until(Temporal.PlainDate.from(first)).days;
  return new Set([
    ...around(page, date),
    ...placed(dates.indexOf(date), dates.length),
    ahead === undefined ? 'unread' : (distances.find(([most]) => ahead <= most)?.[1] ?? ''),
    date.explicit ? 'full' : 'part',
    date.weekdayOnly ? 'weekday' : 'numbered',
    days.length > 1 ? 'many' : 'one',
    ...(first !== undefined && first === all[0] ? ['earliest'] : []),
    ...(first !== undefined && days.at(-1) === all.at(-1) ? ['latest'] : []),
  ]);
}
