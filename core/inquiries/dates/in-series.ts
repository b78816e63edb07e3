/**
 * Days of a series: "six Tuesdays, 3 October to 7 November", "every other Tuesday from 11 January, three sessions", "every Saturday in October except the last".
 * A run whose sentence names a weekday for each week is not every day of it.
 */
import { sentenceAround } from '../parts/sentences.ts';
import { monthWord, numberWord, weekdayWord } from '../words.ts';
import { DAYS_IN_WEEK } from './pieces.ts';
import type { Resolved } from './from-today.ts';
import type { Sequence } from './sequences.ts';

type Found = { sequence: Sequence; resolved: Resolved; start: number; end: number };
type Series = { weekday: number | undefined; step: number; count: number | undefined };

const NUMBER = String.raw`\d{1,2}|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve`;
const PART = String.raw`(?:mornings?|afternoons?|evenings?|nights?|lunchtimes?)`;
/** "every other Tuesday", "each Sunday", "every 2nd Wednesday", "alle zwei Wochen dienstags" is left alone. */
const EVERY =
  /(?<!\p{L})(every|each|alternate|alternating|jeden|chaque|tous les|cada|todos los|ogni|elke|iedere)\s(?:single\s)?(?:(other|second|2nd)\s)?(\p{L}{3,10})(?!\p{L})/giu;
/** "six Tuesdays", "Thursdays", "on the four Sunday evenings", "five Sunday services" */
const PLURAL = new RegExp(
  String.raw`(?<![\p{L}\d])(?:(${NUMBER})\s(?:\p{L}{3,12}\s)?)?(\p{L}{3,6}day)(?:s(?:\s${PART})?|\s\p{L}{3,12}s)(?!\p{L})`,
  'giu',
);
const WEEKLY =
  /(?<!\p{L})(?:(weekly|once a week|every week|each week)|(fortnightly|biweekly|bi-weekly|every (?:two|2) weeks|every (?:other|second) week))(?!\p{L})/iu;
/** Nothing happens on these. */
const NOT_ON =
  /\b(?:not|never|no|closed|off|away|busy|except|excluding|but|bar|without|skip\w*|can't|cannot|work|teach|meet|we meet|rehearse)\b[^,;:]{0,12}$/i;
/** "4 to 15 October, with a weekly review on Fridays": what happens beside it is not the whole. */
const BESIDES = /\b(?:with|plus|including|incl\.?|besides|as well as)\b[^,;:]{0,40}$/i;
/** How many there are: "three sessions", "for six weeks", "all four of them". */
const COUNT = new RegExp(
  String.raw`(?<![\p{L}\d.:/-])(${NUMBER})\s(?:of them|in (?:all|total)|weeks(?!['’])|(?:\p{L}{3,12}\s)?(?:sessions|concerts|matches|games|services|classes|lessons|talks|lectures|evenings|nights|mornings|afternoons|shows|performances|dates|meetings|rehearsals|workshops|episodes|races|rounds|days|times|recitals|screenings|suppers|dinners|lunches|seminars|masses))(?!\p{L})`,
  'iu',
);
const BEGINS =
  /(?:^|[\s(,:])(?:from|since|start(?:ing|s)?|begin(?:ning|s)?|commenc(?:ing|es)|kick(?:ing|s) off|as of|the first (?:one )?(?:is|being|on)|first one(?: is)?|first)[:,]?\s(?:on\s|with\s|from\s)?(?:the\s)?$/i;
/** A shorter run is days in a row, whatever weekday is told beside it. */
const SHORTEST = 8;
/** More of them are a course, not a job. */
const MOST = 15;
const LONGEST_RUN = DAYS_IN_WEEK * MOST;

const dayOf = (date: string): Temporal.PlainDate => Temporal.PlainDate.from(date);
const counted = (word: string | undefined): number | undefined =>
  word === undefined ? undefined : (numberWord(word.toLowerCase()) ?? (Number(word) || undefined));
const named = (word: string): number | undefined => weekdayWord(word.toLowerCase()) ?? weekdayWord(word.toLowerCase().replace(/s$/, ''));

/** What a sentence says of a series, the weekday of it first. */
function seriesIn(said: string): Series | undefined {
  const count = counted(COUNT.exec(said)?.[1]);
  for (const { index, 1: each = '', 2: other, 3: word = '' } of said.matchAll(EVERY)) {
    const weekday = named(word);
    if (weekday === undefined || NOT_ON.test(said.slice(0, index))) continue;
    return { weekday, step: other || /^alternat/i.test(each) ? 2 * DAYS_IN_WEEK : DAYS_IN_WEEK, count };
  }
  const weekly = WEEKLY.exec(said);
  const step = weekly?.[2] === undefined ? DAYS_IN_WEEK : 2 * DAYS_IN_WEEK;
  for (const { index, 0: words, 1: number, 2: word = '' } of said.matchAll(PLURAL)) {
    const weekday = named(word);
    const bare = number === undefined && !/days(?:\s|$)/i.test(`${words} `);
    if (weekday === undefined || bare || NOT_ON.test(said.slice(0, index)) || BESIDES.test(said.slice(0, index))) continue;
    return { weekday, step, count: counted(number) ?? count };
  }
  return weekly && !BESIDES.test(said.slice(0, weekly.index)) ? { weekday: undefined, step, count } : undefined;
}

/** The dates as they are where a series is told; `resolveLong` resolves a run that is longer than any other may be. */
export function inSeries(text: string, found: readonly Found[], resolveLong: (sequence: Sequence, most: number) => Resolved): Found[] {
  return withoutExcepted(
    text,
    found.map((one) => ({ ...one, resolved: monthly(text, one) ?? seriesOf(text, one, resolveLong) ?? one.resolved })),
  );
}

/** "the first Sunday of each month", "the last Saturday of January, February and March": which days they are is open. */
function monthly(text: string, { sequence: { items }, resolved, start, end }: Found): Resolved | undefined {
  const [item, ...more] = items;
  if (!item || more.length > 0) return undefined;
  const [lead, rest] = [text.slice(Math.max(0, start - REACH), start), text.slice(end, end + REACH)];
  const { weekday, relative, day } = item.atom;
  const each = weekday !== undefined && day === undefined && relative === undefined && NTH_LEAD.test(lead) && EACH_MONTH.test(rest);
  const months = relative?.kind === 'nth' && monthWord(MORE_MONTHS.exec(rest)?.[1]?.toLowerCase() ?? '') !== undefined;
  return each || months ? { ...resolved, readings: [], vague: true } : undefined;
}
const NTH_LEAD = /\b(?:first|second|third|fourth|last|1st|2nd|3rd|4th) $/i;
const EACH_MONTH = /^s? (?:of|in) (?:each|every|the) (?:single )?month\b/i;
const MORE_MONTHS = /^(?:, \p{L}{3,9}){0,4},? (?:and|&|\+) (?:of )?(\p{L}{3,9})\b(?! (?:\d|i\b|we\b|you\b))/iu;

function seriesOf(text: string, one: Found, resolveLong: (sequence: Sequence, most: number) => Resolved): Resolved | undefined {
  const { sequence, start, end, resolved } = one;
  if (!resolved.explicit || resolved.past || sequence.month || sequence.around || sequence.items.length > 2) return undefined;
  const [first, second] = sequence.items;
  const sentence = sentenceAround(text, start, end);
  const said = `${text.slice(sentence.start, start)} , ${text.slice(end, sentence.end)}`;
  const isRun = second?.join === 'range';
  const isFirst =
    !second && resolved.readings.length === 1 && resolved.doubt === undefined && BEGINS.test(text.slice(sentence.start, start));
  if (first?.atom.relative !== undefined || (!isRun && !isFirst)) return undefined;
  const series = seriesIn(said);
  if (!series) return undefined;
  return isRun ? ofRun(resolved.readings.length > 0 ? resolved : resolveLong(sequence, LONGEST_RUN), series) : fromFirst(resolved, series);
}

/** "Tuesdays from 5 October to 9 November" */
function ofRun(resolved: Resolved, { weekday, step, count }: Series): Resolved | undefined {
  const [days = [], ...more] = resolved.readings;
  const [first, last] = [days[0], days.at(-1)];
  if (more.length > 0 || resolved.doubt !== undefined || first === undefined || last === undefined || days.length < SHORTEST)
    return undefined;
  const on = weekday ?? dayOf(first).dayOfWeek;
  if (weekday === undefined && dayOf(last).dayOfWeek !== on) return undefined;
  const weekly = days.filter((day) => dayOf(day).dayOfWeek === on);
  const series = weekly.filter((_, at) => (at * DAYS_IN_WEEK) % step === 0);
  if (series.length < 2 || series.length > MOST) return undefined;
  // "four Tuesdays, 5 October to 9 November" of which there are six
  if (count !== undefined && count !== series.length && weekday !== undefined) return { ...resolved, readings: [], vague: true };
  return { ...resolved, readings: [series], range: false };
}

/** "fortnightly from Saturday 9 October, three in all" */
function fromFirst(resolved: Resolved, { weekday, step, count }: Series): Resolved | undefined {
  const first = resolved.readings[0]?.[0];
  if (first === undefined || (weekday !== undefined && dayOf(first).dayOfWeek !== weekday)) return undefined;
  // How long it goes on is open.
  if (count === undefined || count < 2 || count > MOST) return { ...resolved, readings: [], vague: true };
  const series = Array.from({ length: count }, (_, at) =>
    dayOf(first)
      .add({ days: at * step })
      .toString(),
  );
  return { ...resolved, readings: [series], range: false };
}

const EXCEPT = String.raw`(?:except(?:ing)?|excluding|bar(?:ring)?|apart from|but(?: not)?|minus|not|save|other than|without|leaving out|skip(?:ping)?)(?: for| on)*(?: the)?`;
/** "except the last one", "bar the first" */
const EXCEPT_PLACE = new RegExp(
  String.raw`^,?\s?\(?(?:please\s)?(?:all\s)?${EXCEPT}\s(first|second|third|last|final)(?: one| of them| week| \p{L}{3,6}day)?(?!\p{L})`,
  'iu',
);
/** "but not the", right before another date */
const EXCEPT_DATE = new RegExp(String.raw`^,?\s?\(?${EXCEPT}\s$`, 'iu');
const PLACES = ['first', 'second', 'third'];

/** A series without the one that is left out: by its place, or by a date that is told for nothing else. */
function withoutExcepted(text: string, found: readonly Found[]): Found[] {
  const out: Found[] = [];
  for (const one of found) {
    const before = out.at(-1);
    const series = before && seriesDays(before);
    if (before && series && EXCEPT_DATE.test(text.slice(before.end, one.start))) {
      const left = series.filter((day) => !isNamed(one, day));
      if (left.length === series.length - 1) {
        out[out.length - 1] = { ...before, end: one.end, resolved: { ...before.resolved, readings: [left] } };
        continue;
      }
    }
    const days = seriesDays(one);
    const place = days && EXCEPT_PLACE.exec(text.slice(one.end, one.end + REACH))?.[1]?.toLowerCase();
    const at = place === undefined ? undefined : /last|final/.test(place) ? (days?.length ?? 0) - 1 : PLACES.indexOf(place);
    out.push(
      at === undefined ? one : { ...one, resolved: { ...one.resolved, readings: [(days ?? []).filter((_, index) => index !== at)] } },
    );
  }
  return out;
}
const REACH = 60;

const seriesDays = ({ resolved: { readings, doubt } }: Found): string[] | undefined => {
  const [days = [], ...more] = readings;
  const apart = days.every((day, at) => at === 0 || dayOf(days[at - 1] ?? day).until(day).days >= DAYS_IN_WEEK);
  return more.length === 0 && doubt === undefined && days.length > 2 && apart ? days : undefined;
};

/** "the 16th", "16 October" */
function isNamed({ sequence: { items } }: Found, day: string): boolean {
  const [item, ...more] = items;
  const { day: number, month } = dayOf(day);
  return more.length === 0 && item?.atom.day === number && (item.atom.month === undefined || item.atom.month === month);
}
