/**
 * One day of a run, pointed at by what happens on it: "the highlight is the signing on Saturday 1 May. Only for this we need you",
 * "on the last day, Friday 7, we make a gala. Can you record just the gala?"
 */
import { sentenceAround } from '../parts/sentences.ts';
import { inMonthOf, MOST_MENTIONS, namedAmong, OF_ELSE, union } from './days-among.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

const WANT = String.raw`(?:need|want|like|ask|book|hire|require|film|record|cover|shoot|capture)`;
/** It stands behind what is meant. */
const THIS = new RegExp(
  String.raw`\b(?:only|just|solely) (?:for )?(?:this|that)(?: (?:one|day|evening|part|bit|event|night))?,? (?:do |would |will |that )?(?:we|i)(?:'d| would| do)? ${WANT}\b|\b${WANT}(?: you)?(?: to (?:film|record|cover|shoot))? (?:only|just|solely) (?:for )?(?:this|that)\b(?! (?:is|was|\p{L}{4,}))`,
  'giu',
);
const NOUN = String.raw`(?!(?:filmed|recorded|covered|captured|shot|please|with|from|this|that|which|when|where|shall|should|will|would|must|could|needs?|wants?|have|been|being|really)\b)(\p{L}{4,})`;
/** It is named: the word in the group stands beside its day as well. */
const THE = new RegExp(
  String.raw`\b(?:only|just|solely)(?: (?:be )?${WANT}(?:ing)?)?(?: you)?(?: there)?(?: (?:for|to (?:film|record|cover|shoot|capture)))? the (?:\p{L}{3,12} )?${NOUN}\b|\b${WANT}(?:ing)?(?: you)? (?:only|just|solely) (?:for )?the (?:\p{L}{3,12} )?${NOUN}\b|\b(?:only|just) ${NOUN} (?:needs?|wants?) (?:to be )?(?:film|record|cover|captur|stream)(?:ed|ing)\b`,
  'giu',
);
const MOST_POINTED = 5;

/** The days of the run on which that happens; nothing where words do not lead to one mention. */
export function onlyThat(scene: Scene, { dates: settled }: EventDays): string[] | undefined {
  const { text, dates: mentions } = scene;
  const dates = union(settled, numbersBehind(scene, settled));
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
  for (const { index, 0: words, 1: first, 2: second, 3: third } of [...text.matchAll(THE)].slice(0, MOST_POINTED)) {
    // "only the drinks and the brunch" are more than one day.
    if (AND_MORE.test(text.slice(index + words.length, index + words.length + MORE))) continue;
    if (third !== undefined && EACH_DAY.test(text.slice(index))) continue;
    const noun = (first ?? second ?? third ?? '').toLowerCase();
    const beside = named.filter(({ mention }) => tells(text, mention, noun, index, words.length));
    const days = new Set(beside.map((one) => one.days.join()));
    if (days.size === 1) return beside[0]?.days;
    const nearer = beside.filter(({ mention }) => isOf(text, mention, noun));
    if (new Set(nearer.map((one) => one.days.join())).size === 1) return nearer[0]?.days;
  }
  return undefined;
}
const REACH = 160;

/** "12 and 13 January, followed on the 14th by the lecture": a number in the sentence of the days is of their month. */
function numbersBehind({ text, dates: mentions }: Scene, settled: readonly string[]): string[] {
  const first = settled[0];
  return mentions.slice(0, MOST_MENTIONS).flatMap(({ start, sequence: { items }, explicit, said, past, by }, at) => {
    const before = mentions[at - 1];
    const [item, ...more] = items;
    if (first === undefined || !before?.explicit || explicit || past || by || OF_ELSE.has(said) || more.length > 0) return [];
    if (!before.readings.some((reading) => reading.some((day) => settled.includes(day)))) return [];
    const day = item?.atom.day === undefined ? undefined : inMonthOf(first, item.atom.day);
    return day !== undefined && day > first && start < sentenceAround(text, before.start, before.end).end ? [day] : [];
  });
}

/** "on the 12th the board meets and on the 13th there is the debate", "a gala on the 14th": which of several days of a sentence a word is of. */
function isOf(text: string, { start, end }: DateMention, noun: string): boolean {
  const word = String.raw`(?<!\p{L})${noun}(?!\p{L})`;
  const before = new RegExp(String.raw`${word}(?: \p{L}+){0,2} (?:is |are |being |follows |takes place )?(?:on|is|being) (?:the )?$`, 'iu');
  const behind = new RegExp(String.raw`^[^.;!?\d]{0,50}${word}(?!(?: \p{L}+){0,2} (?:on|is) (?:the )?\d)`, 'iu');
  const lead = text.slice(Math.max(0, start - CLAUSE), start);
  // "12 and 13 October with a gala on the 14th" is no gala of the 13th.
  return (
    before.test(lead) ||
    (behind.test(text.slice(end, end + CLAUSE)) &&
      !ANOTHER_DAY.test(
        text
          .slice(end, end + CLAUSE)
          .toLowerCase()
          .split(noun.toLowerCase())[0] ?? '',
      ))
  );
}
const CLAUSE = 70;
const ANOTHER_DAY = /\b(?:on|and) (?:the )?(?:\d|(?:mon|tues|wednes|thurs|fri|satur|sun)day)/i;
const AND_MORE = /^(?: \p{L}+)?,? (?:and|&|\+|plus|or|as well as|then) (?:the |an? )?\p{L}/iu;
const MORE = 30;
/** "Only keynotes need filming, two each day" */
export const EACH_DAY = /\b(?:both|each|every|all|two|three)(?: of)?(?: the)? (?:days?|nights?|evenings?|dates?)\b/i;

/** True where a word stands in the sentence of a day, outside of the words that point at it. */
function tells(text: string, { start, end }: DateMention, noun: string, from: number, length: number): boolean {
  const sentence = sentenceAround(text, start, end);
  const cut = (at: number): number => Math.min(Math.max(at - sentence.start, 0), sentence.end - sentence.start);
  const said = text.slice(sentence.start, sentence.end).toLowerCase();
  const rest = `${said.slice(0, cut(from))} ${said.slice(cut(from + length))}`;
  return new RegExp(`(?<!\\p{L})${noun}(?!\\p{L})`, 'u').test(rest);
}
