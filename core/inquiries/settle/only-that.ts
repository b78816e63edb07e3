/**
 * One day of a run, pointed at by what happens on it: "the highlight is the signing on Saturday 1 May. Only for this we need you",
 * "on the last day, Friday 7, we make a gala. Can you record just the gala?"
 */
import { sentenceAround } from '../parts/sentences.ts';
import { MOST_MENTIONS, namedAmong, OF_ELSE } from './days-among.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

const WANT = String.raw`(?:need|want|like|ask|book|hire|require|film|record|cover|shoot|capture)`;
/** It stands behind what is meant. */
const THIS = new RegExp(
  String.raw`\b(?:only|just|solely) (?:for )?(?:this|that)(?: (?:one|day|evening|part|bit|event|night))?,? (?:do |would |will |that )?(?:we|i)(?:'d| would| do)? ${WANT}\b|\b${WANT}(?: you)?(?: to (?:film|record|cover|shoot))? (?:only|just|solely) (?:for )?(?:this|that)\b(?! (?:is|was|\p{L}{4,}))`,
  'giu',
);
const NOUN = String.raw`(?!(?:filmed|recorded|covered|captured|shot|please|with|from|this)\b)(\p{L}{4,})`;
/** It is named: the word in the group stands beside its day as well. */
const THE = new RegExp(
  String.raw`\b(?:only|just|solely)(?: (?:be )?${WANT}(?:ing)?)?(?: you)?(?: there)?(?: (?:for|to (?:film|record|cover|shoot|capture)))? the (?:\p{L}{3,12} )?${NOUN}\b|\b${WANT}(?:ing)?(?: you)? (?:only|just|solely) (?:for )?the (?:\p{L}{3,12} )?${NOUN}\b`,
  'giu',
);
const MOST_POINTED = 5;

/** The days of the run on which that happens; nothing where words do not lead to one mention. */
export function onlyThat({ text, dates: mentions }: Scene, { dates }: EventDays): string[] | undefined {
  const named = mentions
    .slice(0, MOST_MENTIONS)
    .filter(({ past, by, said }) => !past && !by && !OF_ELSE.has(said))
    .map((mention) => ({ mention, days: namedAmong(mention, dates) }))
    .filter(({ days }) => days.length > 0 && days.length < dates.length);
  if (named.length === 0) return undefined;
  for (const { index } of [...text.matchAll(THIS)].slice(0, MOST_POINTED)) {
    const last = named.findLast(({ mention }) => mention.end <= index);
    if (last && index - last.mention.end < REACH) return last.days;
  }
  for (const { index, 0: words, 1: first, 2: second } of [...text.matchAll(THE)].slice(0, MOST_POINTED)) {
    // "only the drinks and the brunch" are more than one day.
    if (AND_MORE.test(text.slice(index + words.length, index + words.length + MORE))) continue;
    const noun = (first ?? second ?? '').toLowerCase();
    const beside = named.filter(({ mention }) => tells(text, mention, noun, index, words.length));
    const days = new Set(beside.map((one) => one.days.join()));
    if (days.size === 1) return beside[0]?.days;
  }
  return undefined;
}
const REACH = 160;
const AND_MORE = /^(?: \p{L}+)?,? (?:and|&|\+|plus|or|as well as|then) (?:the |an? )?\p{L}/iu;
const MORE = 30;

/** True where a word stands in the sentence of a day, outside of the words that point at it. */
function tells(text: string, { start, end }: DateMention, noun: string, from: number, length: number): boolean {
  const sentence = sentenceAround(text, start, end);
  const cut = (at: number): number => Math.min(Math.max(at - sentence.start, 0), sentence.end - sentence.start);
  const said = text.slice(sentence.start, sentence.end).toLowerCase();
  const rest = `${said.slice(0, cut(from))} ${said.slice(cut(from + length))}`;
  return new RegExp(`(?<!\\p{L})${noun}(?!\\p{L})`, 'u').test(rest);
}
