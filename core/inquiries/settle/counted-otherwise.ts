/**
 * Days that a count tells otherwise than their dates: working days over a weekend, and a first Saturday or weekend of several: "five working days from Friday",
 * "three Saturdays in a row, the first of which is 6 November", "once a month, first on the 4th". The days are asked about.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { weekdayWord } from '../words.ts';
import { A_WEEK, askedDays, isWeekend } from './days-among.ts';
import { numberOf } from './marks.ts';
import type { EventDays, Scene } from './scene.ts';

const COUNT = '(two|three|four|five|six|seven|eight|nine|ten|[2-9]|10)';
const WORKING = new RegExp(String.raw`\b${COUNT} (?:working|business|week)[ -]?days\b(?! (?:notice|before|of notice|after|to))`, 'i');
/** The first of them, and no hour: "from 10 to 4" */
const ON_FROM = String.raw`\b(?:first|start(?:s|ing)?|begin(?:s|ning)?|onwards?|from (?:the )?(?:\p{L}+day|\d{1,2}(?:st|nd|rd|th)?(?: of)? \p{L}{3,}|\d{1,2}(?:st|nd|rd|th)|\d{1,2}[./]\d))\b`;
const WEEKENDS = new RegExp(
  String.raw`(?<!\bof (?:the |our |these )?)\b${COUNT} (?:consecutive |successive |different |full )?((?:mon|tues|wednes|thurs|fri|satur|sun)day|weekend)s\b(?! (?:ago|before|after|later|earlier|a month))[^.;!?\n]{0,40}${ON_FROM}`,
  'iu',
);
const EVERY_SO_OFTEN = new RegExp(
  String.raw`\b(?:once|twice|three times) (?:a|every|each) (?:week|month|fortnight)\b[^.;!?\n]{0,16}${ON_FROM}`,
  'iu',
);
/** "it's a long weekend, from Friday" */
const LONG_WEEKEND =
  /\b(?:it['’]s|it is|it['’]ll be|over|for|all) (?:a|the|that|one)? ?(?:long|whole|full|entire) weekend,? (?:from|starting|beginning|which starts|that starts)\b/i;

/** The days, or with those that are counted as a question. */
export function heldAgainstOtherCount({ text }: Scene, event: EventDays): EventDays {
  const [first] = event.dates;
  const [told] = event.where;
  if (first === undefined || !told || event.dropped) return event;
  const { start, end } = sentenceAround(text, told.start, told.end);
  const sentence = text.slice(start, end);
  const working = numberOf(WORKING.exec(sentence)?.[1] ?? '');
  if (working === event.dates.length && event.dates.some(isWeekend))
    return askedDays(event.where, [event.dates, workingDays(first, working)], 'open');
  const [, count = '', unit = ''] = WEEKENDS.exec(sentence) ?? [];
  const many = numberOf(count);
  const weekday = weekdayWord(unit.toLowerCase());
  const days = new Set(event.dates.map((day) => Temporal.PlainDate.from(day).weekOfYear));
  if (many > days.size && (weekday === undefined || Temporal.PlainDate.from(first).dayOfWeek === weekday))
    return askedDays(event.where, [weeksOn(event.dates, many), event.dates], 'open');
  return event.dates.length === 1 && (EVERY_SO_OFTEN.test(sentence) || LONG_WEEKEND.test(sentence))
    ? askedDays(event.where, [event.dates], 'open')
    : event;
}

/** So many days from the first on, without weekends. */
function workingDays(first: string, count: number): string[] {
  const days: string[] = [];
  for (let day = Temporal.PlainDate.from(first); days.length < count; day = day.add({ days: 1 }))
    if (!isWeekend(day.toString())) days.push(day.toString());
  return days;
}

/** The same days of so many weeks. */
const weeksOn = (dates: readonly string[], weeks: number): string[] =>
  Array.from({ length: weeks }, (_, week) =>
    dates.map((day) =>
      Temporal.PlainDate.from(day)
        .add({ days: week * A_WEEK })
        .toString(),
    ),
  )
    .flat()
    .toSorted();
