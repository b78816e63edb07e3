/**
 * What is said beside each of several days: its row, the lines under it, its clause, and what it shares with the day before it.
 */
import { lineAround, sentenceAround } from '../parts/sentences.ts';
import { MOST_MENTIONS } from './days-among.ts';
import { daysInPlace } from './in-place.ts';
import {
  NOT_MINE,
  REFUSAL,
  OF_THE_DAY,
  MINE,
  MINE_SAID,
  STRONG,
  BRACKETED,
  NOT_THE,
  PART_OF_DAY,
  STILL_MINE,
  ONLY_LEAD,
  ONLY_OF_ME,
  ONLY_AFTER,
  FEE_FOR,
  LABEL,
  LEFT,
  LEAD_WANTED,
  TAIL_WANTED,
  FOR_DAY,
  WE_NEED,
  EXCEPT,
  NEITHER,
  OTHER_HOUR,
  OF_AN_HOUR,
  TAKEN,
} from './mark-words.ts';
import type { Scene, Where } from './scene.ts';

/** "the band plays Saturday only" */
const PLAYS = /\b(?:plays?|performs?|speaks?|sings?|appears?|races?|competes?|headlines?)\s(?:on )?(?:the )?$/i;
const LONGEST_ROW = 200;
/** A row begins with its date, or with so few characters before it. */
const ROW_LEAD = 32;

/** What joins a day to the one before it in the same breath. */
const JOINS =
  /^\)?(?:\s\p{L}{2,9})?\s?(?:\([^()\n]{0,30}\))?(?:,[^.;,\n]{0,14};)?\s?(?:,|;|and|&|\+|und|et|y|en|e|og)\s(?:on )?(?:(?:the|am|le|el) )?(?:\p{L}{4,12} \()?$/iu;

const numbers = ['', 'one', 'two', 'three', 'four', 'five', 'six'];
/** A number in figures or as a word up to six. */
export const numberOf = (word: string): number => (/\d/.test(word) ? Number(word) : numbers.indexOf(word.toLowerCase()));

/** What is said beside the days, by what it says of them. */
export type Marks = {
  /** Told with "only". */
  only: Set<string>;
  /** Told to be wanted. */
  told: Set<string>;
  no: Set<string>;
  /** Told with "except". */
  except: Set<string>;
  yes: Set<string>;
  strong: Set<string>;
  /** Days of rows of which nothing is told. */
  quiet: Set<string>;
  /** Days of rows, in their order. */
  rows: Set<string>;
};

/** What is said beside a day: the rest of its row, the lines under it where it is a heading, else its clause. */
function beside(text: string, mention: Where, previous: Where | undefined, next: Where | undefined): { said: string; row: boolean } {
  const line = lineAround(text, mention);
  const lead = text.slice(line.start, mention.start);
  const until = next && next.start < line.end ? next.start : line.end;
  const table = /[|\t]/.test(text.slice(line.start, line.end));
  if (
    line.end - line.start <= LONGEST_ROW &&
    ((lead.length <= ROW_LEAD && !lead.includes(':')) || table) &&
    !/[.!?;]\s*\p{L}|[a-z]\sthe\s$|\p{L}\s(?:on|is|from|for|of|in|by|at|until|and)\s$/u.test(lead)
  ) {
    const rest = text.slice(mention.end, until);
    if (rest.replace(/[^\p{L}]/gu, '').length <= 10 && next && next.start > line.end) {
      const blank = text.indexOf('\n\n', line.end);
      const under = text.slice(line.end, Math.min(lineAround(text, next).start, blank < 0 ? text.length : blank, line.end + 400));
      if (under.trim() !== '') return { said: `${lead}${rest}${under}`, row: true };
    }
    return { said: `${previous && previous.start >= line.start ? '' : lead} ${rest}`, row: true };
  }
  const sentence = sentenceAround(text, mention.start, mention.end);
  const from = Math.max(sentence.start, previous?.end ?? 0);
  const to = Math.min(sentence.end, next?.start ?? text.length);
  return { said: `${text.slice(from, mention.start)} ${text.slice(mention.end, to)}`, row: false };
}

/** Days that a place in a text names. */
export type Named = Where & { days: string[] };

/** Days that are named by their place in the run: "the second night is private", "Day 2 we need you". */
export function byPlace(text: string, mentions: readonly Where[], known: readonly string[]): Named[] {
  if (known.length < 2 || known.length > MOST_PLACED) return [];
  return [...text.matchAll(PLACED)].slice(0, MOST_MENTIONS).flatMap(({ index, 0: words, 1: number, 2: place, 3: several }) => {
    const end = index + words.length;
    // "Day 2, Wednesday 7 June": the date says it.
    if (
      mentions.some(
        (mention) =>
          mention.start < end + BESIDE_DATE &&
          mention.end > index - BESIDE_DATE &&
          !/[.;!?\n\p{L}]/u.test(text.slice(Math.min(mention.end, index), index)),
      )
    )
      return [];
    const count = several ? numberOf(several) : 1;
    const days = number ? known.slice(numberOf(number) - 1).slice(0, count) : daysInPlace(place ?? '', known, count);
    return days.length === count ? [{ start: index, end, days }] : [];
  });
}
const PLACED =
  /\b(?:day (\d|one|two|three)\b|the (first|second|third|fourth|last|final|middle)(?: (two|three|four|2|3|4))?(?: (?:nights?|days?|evenings?|ones?|shows?|dates?|performances?|sessions?|hearings?|concerts?|afternoons?|mornings?)\b|(?='s\b|[,.;:!?]| (?:is|are|was|would|should|on)\b)))/gi;
const MOST_PLACED = 6;
const BESIDE_DATE = 12;

const TOWN = String.raw`(\p{Lu}[\p{L}'-]{2,}(?: \p{Lu}\p{L}+)?)`;
const TOWN_BEFORE = new RegExp(String.raw`(?:^|[\s(,:])${TOWN}(?:,? on|,|:| -|\s\()?(?: the)?\s?$`, 'u');
const TOWN_AFTER = new RegExp(String.raw`^\)?(?:,| in| at|:| -)*\s${TOWN}(?=[\s,.;:)!?\n]|$)`, 'u');

/** Days that are named by their towns: "Hamburg on Monday 3 July and Köln on Wednesday 5 July. We only need you in Hamburg." */
export function byTown(text: string, mentions: readonly Named[]): Named[] {
  const days = mentions.filter((mention) => mention.days.length > 0);
  const pairs = days.map((mention, at) => {
    const lead = text.slice(Math.max(days[at - 1]?.end ?? 0, mention.start - TOWN_REACH), mention.start);
    const tail = text.slice(mention.end, Math.min(days[at + 1]?.start ?? text.length, mention.end + TOWN_REACH));
    return { mention, before: TOWN_BEFORE.exec(lead)?.[1], after: TOWN_AFTER.exec(tail)?.[1] };
  });
  const towns = (['before', 'after'] as const)
    .map((side) => new Map(pairs.flatMap(({ mention, [side]: town }) => (town === undefined ? [] : [[town, mention] as const]))))
    .find(({ size }) => size > 1 && size === days.length);
  const last = pairs.at(-1);
  const from = (last?.mention.end ?? 0) + (towns?.has(last?.after ?? '') ? TOWN_REACH : 0);
  return [...(towns ?? [])].flatMap(([town, mention]) => {
    const start = text.indexOf(town, from);
    return start < 0 ? [] : [{ start, end: start + town.length, days: mention.days }];
  });
}
const TOWN_REACH = 32;

/** "last set ends 11pm on the Saturday and that's you": done, not wanted. */
const THAT_IS_YOU = /^,? (?:and )?that(?:'s| is) you\b/i;
const ENDS = /\b(?:ends?|finish(?:es)?|over|done|wraps?|out|off|until|till|last|clear)\b/i;

/** The marks of every day that is named, in the order in which they are named. */
export function marksOf(scene: Scene, mentions: readonly Named[], known: readonly string[]): Marks {
  const { text } = scene;
  const marks: Marks = {
    only: new Set(),
    told: new Set(),
    no: new Set(),
    except: new Set(),
    yes: new Set(),
    strong: new Set(),
    quiet: new Set(),
    rows: new Set(),
  };
  let before: Set<string> | undefined;
  for (const [at, mention] of mentions.entries()) {
    const { days } = mention;
    const previous = mentions[at - 1];
    const between = text.slice(previous?.end ?? mention.start, mention.start);
    const under = before === marks.told && /^[^\n]{0,160}\n\s*$/.test(between);
    const joined = previous && before && (under || (between.length <= 60 && JOINS.test(between)));
    const comma =
      !/\p{L}|[&+]/u.test(between) && !/^\s?(?:[,;.)(&+?!]|and\b|und\b|et\b|y\b|$)/iu.test(text.slice(mention.end, mention.end + 8));
    const inherited = joined && (under || !comma) ? before : undefined;
    before = undefined;
    if (days.length === 0 || days.length === known.length) continue;
    const sentence = sentenceAround(text, mention.start, mention.end);
    const lead = text.slice(Math.max(sentence.start, mention.start - 120, previous?.end ?? 0), mention.start);
    // "5 July. We would only need you": what begins a new sentence is not said of the day before it.
    const over = text[mention.end - 1] === '.' && /^\s\p{Lu}/u.test(text.slice(mention.end, mention.end + 2));
    // "Saturday's covered"
    const stem = text.slice(mention.start, mention.end).endsWith("'s") ? mention.end - 2 : mention.end;
    const tail = over ? '' : text.slice(stem, Math.min(text.length, stem + 60));
    const { said, row } = beside(text, mention, previous, mentions[at + 1]);
    const refused = NOT_MINE.test(said) || TAKEN.test(tail) || (row && OF_THE_DAY.test(text.slice(mention.end, mention.end + 80)));
    const rest = refused ? said.replace(REFUSAL, ' ') : said;
    const denied = /\b(?:not|no)\b[^.;]{0,20}$/i.test(lead);
    // "the first two days only, as the third": said of the days before.
    const ownLead = previous && previous.end >= sentence.start ? lead.replace(/^\)?,?\s?(?:only|alone)\b/i, '') : lead;
    const only =
      (ONLY_LEAD.test(ownLead) && (ONLY_OF_ME.test(lead) || ONLY_OF_ME.test(tail.split(/[.;!?\n]/)[0] ?? ''))) ||
      (ONLY_AFTER.test(tail) && !PLAYS.test(lead) && !OF_AN_HOUR.test(lead));
    const told =
      FEE_FOR.test(lead) ||
      LABEL.test(text.slice(Math.max(0, mention.start - 60), mention.start)) ||
      LEFT.test(lead) ||
      LEAD_WANTED.test(lead) ||
      (TAIL_WANTED.test(tail) && !(THAT_IS_YOU.test(tail) && ENDS.test(lead))) ||
      (FOR_DAY.test(lead) && WE_NEED.test(tail));
    const add = (set: Set<string>): void => {
      for (const day of days) set.add(day);
    };
    if (row) add(marks.rows);
    // "day 2 and day 3 only"
    if (ONLY_AFTER.test(tail) && joined && previous) for (const day of previous.days) marks.only.add(day);
    if (EXCEPT.test(lead)) {
      if (!OTHER_HOUR.test(tail)) add(marks.except);
    } else if (NOT_THE.test(lead) && !PART_OF_DAY.test(tail)) add(marks.no);
    else if (only && !denied) add((before = marks.only));
    else if (told && !denied) add((before = marks.told));
    else if (inherited) add((before = inherited));
    else if (NEITHER.test(text.slice(sentence.start, sentence.end))) add(marks.no);
    else if (row ? STRONG.test(rest) : BRACKETED.test(rest)) add(marks.strong);
    else if (refused) add(STILL_MINE.test(rest) ? marks.yes : marks.no);
    else if ((row ? MINE : MINE_SAID).test(rest)) add(marks.yes);
    else if (row) add(marks.quiet);
  }
  return marks;
}
