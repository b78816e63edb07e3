/**
 * Of several days that a message names, whether all are mine or only some: what the model of parts sees of each mention that names only some of them.
 */
import { consecutive, namedAmong, OF_ELSE } from '../settle/days-among.ts';
import type { DateMention, EventDays, Scene } from '../settle/scene.ts';
import { around, type Page } from './features.ts';
import { likeliest, type Learned } from './models.ts';

/** From this chance on a mention speaks for a part of the days, or for all of them. */
const HEARD = 0.4;
/** One that speaks for a part of them has to speak so plainly. */
const PLAIN = 0.6;
/** Where rules know which of the days are not mine, the weights are heard from here on. */
const SURE = 0.82;
/** More days than this are a season. */
const MOST_DAYS = 14;

/** "8 a 10 de julho (quinta a sábado)": the weekdays of a run, said again in brackets. */
const WEEKDAYS_OF = /\p{L} \(\p{L}{2,10} (?:a|à|al|to|till|until|bis|au|tot|og|till|-|–) $/iu;
const JUST_BEFORE = 24;

/** Days that are named, and the mentions that name only some of them. */
export type Parts = { known: string[]; named: { mention: DateMention; days: string[]; run: boolean }[] };

/** The days that a message names for the work, in order; undefined where it is one or too many. */
export function partsIn({ text, dates, received }: Scene): Parts | undefined {
  const today = received.toPlainDate().toString();
  const ahead = dates.filter(
    ({ past, said, weekdayOnly, readings }) =>
      !past && !OF_ELSE.has(said) && !weekdayOnly && readings.length === 1 && (readings[0]?.at(-1) ?? '') >= today,
  );
  const known = [...new Set(ahead.flatMap(({ readings }) => readings[0] ?? []))].toSorted();
  if (known.length < 2 || known.length > MOST_DAYS) return undefined;
  const run = ahead.some(({ readings }) => (readings[0]?.length ?? 0) > 1);
  const named = dates
    // "the 18th and 19th ... Let me know by Sunday": till when I am to answer is no part of the days.
    .filter(
      ({ by, said, start }) =>
        !by && said !== 'reply' && said !== 'delivery' && !WEEKDAYS_OF.test(text.slice(Math.max(0, start - JUST_BEFORE), start)),
    )
    // "the weekend of the 13th" is both days.
    .filter(({ readings }) => readings.length !== 1 || known.some((date) => readings[0]?.includes(date) === false))
    .map((mention) => ({ mention, days: namedAmong(mention, known), run }))
    .filter(({ days }) => days.length > 0 && days.length < known.length);
  return { known, named };
}

/** Of one mention of some of the days. */
export function partFeatures(page: Page, { known }: Parts, { mention, days, run }: Parts['named'][number]): Set<string> {
  return new Set([
    ...around(page, mention),
    `s:${mention.said}`,
    `n:${Math.min(days.length, 3)}/${Math.min(known.length, 5)}`,
    ...(days[0] === known[0] ? ['first'] : []),
    ...(days.at(-1) === known.at(-1) ? ['last'] : []),
    mention.weekdayOnly ? 'weekday' : 'numbered',
    `k:${Math.min(page.scene.dates.length, 6)}`,
    run ? 'run' : 'single',
  ]);
}

/** What the weights say against the days that rules found: days that may be meant instead; none where they agree. */
export function otherParts(event: EventDays, page: Page, learned: Learned): string[][] {
  const parts = partsIn(page.scene);
  if (!parts || event.dates.length === 0 || parts.named.length === 0) return [];
  const { known, named } = parts;
  const weighed = named.map((one) => ({ days: one.days, ...likeliest(learned.part, partFeatures(page, parts, one)) }));
  const said = (is: string): Set<string> => new Set(weighed.filter((one) => one.is === is).flatMap(({ days }) => days));
  const least = event.dropped ? SURE : HEARD;
  const heard = weighed.filter(({ chance }) => chance >= least);
  const whole = event.dates[0] === known[0] && event.dates.at(-1) === known.at(-1);
  // "Arrive Thursday by 11, the last set ends on the Sunday": both ends of the run.
  const ends = (cue: string, day: string | undefined): boolean =>
    named.some(({ mention, days }) => mention.said === cue && days[0] === day);
  if (whole && ends('call', known[0]) && ends('wrap', known.at(-1)) && !heard.some(({ is }) => is === 'not')) return [];
  // A number that rules have put into another month is in none of the days that are named.
  if (!whole && event.dates.some((date) => !known.includes(date))) return [];
  if (!whole) return heard.length === weighed.length && heard.every(({ is }) => is === 'all') ? [known] : [];
  if (!heard.some(({ is, chance }) => is !== 'all' && chance >= PLAIN)) return [];
  const [mine, all, not] = [said('mine'), said('all'), said('not')];
  // Who is called for the first day is there on it.
  const opens = ends('call', known[0]);
  const begins = (date: string): boolean => opens && date === known[0];
  // A mention that speaks for all of the days speaks for its own.
  const theirs = known.filter((date) => begins(date) || ((mine.size === 0 || mine.has(date) || all.has(date)) && !not.has(date)));
  // "30 December to 2 January ... arrive by midday on the Thursday. The buses leave at noon on the Sunday": when I come and when I go.
  const comesAndGoes = opens && theirs.length === 2 && theirs[1] === known.at(-1) && consecutive(known);
  return comesAndGoes || theirs.length === known.length || theirs.length === 0 ? [] : [theirs];
}
