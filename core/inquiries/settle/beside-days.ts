/**
 * Where several towns are named, the one in the line or the sentence of the days that are meant; a town beside a day that does not hold is not it.
 */
import { lineStart, sentenceAround } from '../parts/sentences.ts';
import type { PlaceHit } from '../places/hits.ts';
import type { DateMention, EventDays, Where } from './scene.ts';

const BESIDE = 1.2;
const BESIDE_ANOTHER = 2;
const LONGEST_LINE = 120;
/** More days than this are a calendar. */
const MOST_DAYS = 60;

/** The stretch in which a town and a day belong together: the line if it is short, else the sentence. */
function stretch(text: string, { start, end }: Where): Where {
  const from = lineStart(text, start);
  const next = text.indexOf('\n', end);
  const to = next < 0 ? text.length : next;
  const sentence = sentenceAround(text, start, end);
  return to - from <= LONGEST_LINE ? { start: Math.min(from, sentence.start), end: to } : sentence;
}

/** Towns with their scores moved by the days beside them. */
export function besideDays(text: string, towns: readonly PlaceHit[], event: EventDays, dates: readonly DateMention[]): PlaceHit[] {
  if (event.dates.length === 0 || new Set(towns.map(({ name }) => name.toLowerCase())).size < 2) return [...towns];
  const meant = dates.filter(
    ({ readings, past }) => !past && readings.length === 1 && (readings[0] ?? []).some((date) => event.dates.includes(date)),
  );
  const others = dates.filter(
    ({ readings, past, said, explicit }) =>
      explicit &&
      (past || said === 'other' || said === undefined || said === 'event') &&
      readings.length > 0 &&
      !readings.some((reading) => reading.some((date) => event.dates.includes(date))),
  );
  const around = [meant, others].map((mentions) => mentions.slice(0, MOST_DAYS).map((mention) => stretch(text, mention)));
  const within = (town: PlaceHit, stretches: readonly Where[] | undefined): boolean =>
    stretches?.some(({ start, end }) => town.start >= start && town.end <= end) === true;
  // "B) Same dates, Sarnia": an option without a day of its own is no worse than the one that tells it.
  if (towns.every(({ option }) => option) && !towns.some((town) => within(town, around[1]))) return [...towns];
  return towns.map((town) => {
    const [here, there] = [within(town, around[0]), within(town, around[1])];
    return here === there || town.open ? town : { ...town, score: town.score + (here ? BESIDE : -BESIDE_ANOTHER) };
  });
}
