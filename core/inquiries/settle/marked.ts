/**
 * Which days of several are mine by what is said beside each of them: rows with "(video)" and "(no video)", "YOU", "filmed by a dad",
 * "we only need you on", "£450 for the Sunday". Where the marks do not agree the days are asked about.
 */
import { lineAround } from '../parts/sentences.ts';
import { askedDays, consecutive, MOST_MENTIONS, namedAmong } from './days-among.ts';
import { dayNumbers } from './day-numbers.ts';
import { ofLastTime } from './days.ts';
import { byPlace, byTown, marksOf, numberOf } from './marks.ts';
import type { DateMention, EventDays, Scene } from './scene.ts';

const BOTH = /\bboth (?:days|dates|nights|evenings|together|of (?:them|those))\b/i;
const ALL_OF = /\b(?:both|all (?:two|three|four|five|of them)|the pair|the (?:two|three|four))\b/i;
const COUNTED =
  /\b(two|three|four|five|six|[2-6])\s(?:(?:[\p{L}]+ )?days|mornings|afternoons|evenings|nights|dates|shows?|sessions|hearings|events|things|of them|of these)\b/giu;
const LAST_OF = /\bthe (first|last) (two|three|one) (?:are|is) (?:yours|for you|open|what)\b/i;
const STARRED = /\b(?:starred|asterisk(?:ed)?|with an? star)\b/i;

/** The days narrowed to those that are marked as mine; asked where the marks do not agree; nothing where there are none. */
export function markedOf(scene: Scene, settled: EventDays, candidates: readonly DateMention[]): EventDays | undefined {
  const several = settled.doubt === 'several';
  if (settled.dates.length < 2 && !several) return undefined;
  const { text } = scene;
  const ofRows = scene.dates.filter(
    ({ explicit, said, past, start }) =>
      explicit &&
      !past &&
      (said === 'call' || said === 'wrap') &&
      /^[\s*+-]*(?:\p{L}{2,9},? )?$/u.test(text.slice(lineAround(text, { start, end: start }).start, start)),
  );
  const all = [...candidates, ...ofRows].filter(({ readings, doubt, explicit }) => explicit && readings.length === 1 && !doubt);
  const known = [...new Set([...settled.dates, ...all.flatMap(({ readings }) => readings[0] ?? [])])].sort();
  const mentions = scene.dates
    .slice(0, MOST_MENTIONS)
    .filter(
      ({ said, by, past, explicit, start }) =>
        said !== 'reply' && (!by || said === 'wrap') && !(past && explicit && said === 'past') && !ofLastTime(text, start),
    );
  const dated = mentions.map((mention) => ({ start: mention.start, end: mention.end, days: namedAmong(mention, known) }));
  const run = settled.dates.length > 1 ? settled.dates : settled.choices.find(({ length }) => length > 1);
  const placed = byPlace(text, mentions, run ?? (consecutive(known) ? known : []));
  const { only, told, no, except, yes, strong, quiet, rows } = marksOf(
    scene,
    [...dated, ...placed, ...byTown(text, dated)].toSorted((a, b) => a.start - b.start),
    known,
  );
  const decide = (days: Iterable<string>): EventDays | undefined => {
    const dates = [...days].sort();
    const dropped = known.filter((day) => !dates.includes(day));
    return dates.length === 0 || dropped.length === 0 ? undefined : { dates, where: settled.where, choices: [], dropped };
  };
  const open = (): EventDays => ({
    ...askedDays(
      settled.where,
      known.map((day) => [day]),
    ),
    dropped: [],
  });
  const wanted = new Set([...strong, ...told, ...yes]);
  const refused = [...no].filter((day) => !wanted.has(day) && !only.has(day) && !quiet.has(day));
  if (except.size > 0 && !several && consecutive(settled.dates)) return decide(known.filter((day) => !except.has(day)));
  const counts = dayNumbers(text).flatMap((number) => settled.dates[number - 1] ?? []);
  if (counts.length > 0) return decide(counts);
  if (only.size > 0 && told.size > 0) return decide(new Set([...only, ...told]));
  if (only.size > 0) return [...strong].every((day) => only.has(day)) ? decide(only) : open();
  if (told.size > 0) return [...strong, ...yes].every((day) => told.has(day)) ? decide(told) : open();
  if (strong.size > 0 && rows.size > strong.size && [...yes].every((day) => strong.has(day))) return decide(strong);
  if (STARRED.test(text) && rows.size > 1 && strong.size === 0 && !/^\s*\*/m.test(text)) return open();
  const last = LAST_OF.exec(text);
  if (last && rows.size > 1) {
    const count = numberOf(last[2] ?? '');
    const mine = mentions.filter((mention) => namedAmong(mention, [...rows]).length === 1);
    const some = last[1]?.toLowerCase() === 'last' ? mine.slice(-count) : mine.slice(0, count);
    return decide(new Set(some.flatMap((mention) => namedAmong(mention, [...rows]))));
  }
  const counted = [...text.matchAll(COUNTED)].some(([, count]) => numberOf(count ?? '') === rows.size);
  if (rows.size > 1 && rows.size < known.length && counted && refused.length === 0) return decide(rows);
  if (refused.length > 0) {
    const rest = known.filter(
      (day) => !refused.includes(day) && (rows.size < 2 || rows.has(day)) && (several || settled.dates.includes(day) || wanted.has(day)),
    );
    const silent = rest.filter((day) => !wanted.has(day));
    // "Friday evening and Sunday afternoon, nothing on Saturday": the others are named one by one.
    const apart = rest.every((day) => dated.some(({ days }) => days.length === 1 && days[0] === day));
    if (apart && rest.length > 0 && rest.length + refused.length === known.length && rows.size < 2) return decide(rest);
    return rest.length > 0 && (silent.length === 0 || (!several && silent.length === rest.length && rest.every((day) => rows.has(day))))
      ? decide(rest)
      : open();
  }
  if (strong.size > 0 && rows.size > strong.size) return decide(strong);
  if (several && rows.size > 1 && [...rows].every((day) => wanted.has(day)) && ALL_OF.test(text))
    return { dates: [...rows].sort(), where: settled.where, choices: [], dropped: [] };
  if ((several || !consecutive(settled.dates)) && rows.size > 2 && wanted.size > 1 && wanted.size < known.length)
    return wanted.size === 2 && BOTH.test(text) ? decide(wanted) : open();
  return undefined;
}
