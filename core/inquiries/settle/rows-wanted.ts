/**
 * A programme in rows and a sentence that names what of it is to be filmed: "We would like both concerts recorded", "video of the party only".
 * The days are then those of the rows that are named, where the sentence says "only" or "both"; otherwise whether only these are meant is asked.
 * What a sentence names that says "not" or "apart from" may be the row that is left out: then the rows are asked about one by one.
 */
import { lineAround, sentenceAround } from '../parts/sentences.ts';
import { plainText } from '../../places/fold.ts';
import { askedDays, MOST_MENTIONS } from './days-among.ts';
import type { EventDays, Scene } from './scene.ts';

const WISH =
  /\b(?:film\p{L}*|record\p{L}*|cover\p{L}*|shoot|shot|stream\p{L}*|video\p{L}*|capture\p{L}*|camera\p{L}*|(?:want|need|like|love|have|hire|book) you|for you|yours)\b|\b(?:our|my|mine|yours?)s? (?:is|are|would be) (?:just|only)\b/giu;
/** A word of a row tells it from the others only if it is no weekday, no hour and no small word. */
const WORD = /\p{L}{4,}/gu;
/** So much of a word is compared: "concert" and "concerts", "lecture" and "lectures". */
const STEM = 5;
const BUT_NOT = /\b(?:not|no|never|nobody|nothing|without|except|apart|besides|but|skip|instead|rather)\b|n't\b/i;
const ONLY = /\b(?:only|alone|nothing (?:else|more))\b/i;
const ALL_DAYS =
  /\b(?:all (?:of )?(?:the |these |those |them|two|three|four|five|six|\d)|every) ?(?:two|three|four|five|six|\d)? ?(?:days?|dates?|evenings?|nights?|sessions?|rows?)\b/i;
const LOOKED_THROUGH = 6000;
const NOTHING_TOLD =
  /^(?:from|till|until|with|and|then|noon|midnight|about|around|doors?|start\p{L}*|open\p{L}*|clos\p{L}*|mon|tues?|wednes|thurs?|fri|satur|sun)/u;

const stemsOf = (words: string): Set<string> =>
  new Set((plainText(words).match(WORD) ?? []).filter((word) => !NOTHING_TOLD.test(word)).map((word) => word.slice(0, STEM)));

/** The days, or those of the rows that a wish names as a question beside all of them. */
export function heldAgainstRows({ text, dates: mentions }: Scene, event: EventDays): EventDays {
  if (event.dates.length < 2 || event.dropped) return event;
  const rows = mentions.slice(0, MOST_MENTIONS).flatMap(({ start, end, readings, explicit }) => {
    const line = lineAround(text, { start, end });
    const [day, ...more] = readings.length === 1 ? (readings[0] ?? []) : [];
    const leads = /^[\s*+•–-]*(?:\p{L}{2,10}[.,]? )?$/u.test(text.slice(line.start, start));
    return explicit && leads && day !== undefined && more.length === 0 && event.dates.includes(day)
      ? [{ day, line, stems: stemsOf(text.slice(end, line.end)) }]
      : [];
  });
  if (rows.length < 2 || new Set(rows.map(({ day }) => day)).size < 2) return event;
  const [named, told] = [new Set<string>(), new Set<string>()];
  let denied = false;
  for (const { index, 0: words } of text.slice(0, LOOKED_THROUGH).matchAll(WISH)) {
    if (rows.some(({ line }) => index >= line.start && index < line.end)) continue;
    const sentence = sentenceAround(text, index, index + words.length);
    const said = text.slice(sentence.start, sentence.end);
    // "You'd be camera 2 on a long lens, all three dates, released after strike"
    if (ALL_DAYS.test(said)) return event;
    const telling = [...stemsOf(said)].filter((stem) => rows.some(({ stems }) => !stems.has(stem)));
    const days = new Set(rows.filter(({ stems }) => telling.some((stem) => stems.has(stem))).map(({ day }) => day));
    const sure = ONLY.test(said) || (/\bboth\b/i.test(said) && days.size === 2);
    for (const day of days) (sure ? told : named).add(day);
    denied ||= days.size > 0 && BUT_NOT.test(said);
  }
  const some = event.dates.filter((day) => named.has(day) || told.has(day));
  if (some.length === 0) return event;
  // Of two sentences one may tell what is not for me.
  if (denied || (told.size > 0 && some.length > told.size))
    return askedDays(event.where, [...event.dates.map((day) => [day]), event.dates]);
  if (some.length === event.dates.length) return event;
  return told.size > 0
    ? { dates: some, where: event.where, choices: [], dropped: event.dates.filter((day) => !told.has(day)) }
    : askedDays(event.where, [some, event.dates]);
}
