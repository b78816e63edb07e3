/**
 * Everything that is said in the units of a confirmation, with what the words beside it make of it.
 */
import type { Mode } from '../../contract/trips.ts';
import { cueAt, type Cue } from './cues.ts';
import { datesIn, type DateMark } from './dates.ts';
import { modesIn, numbersIn, type NumberMark } from './numbers.ts';
import type { PlaceFinder, PlaceMark } from './places.ts';
import { timesIn, type TimeMark } from './times.ts';
import type { Unit } from './units.ts';

/** `line` tells marks of one unit from those of others. */
type Cued = { cue: Cue | null; line: number };
/** Offsets of marks are those of the plain text. */
export type Marked = Unit & {
  times: (TimeMark & Cued)[];
  dates: (DateMark & Cued)[];
  places: (PlaceMark & Cued)[];
  numbers: NumberMark[];
  modes: Mode[];
  /** A bed is spoken of. */
  berth: boolean;
  /** How long the way takes, as it is said. */
  minutes: number | null;
};

const LENGTH =
  /(?<!\d)(?:(?<h>\d{1,2})\s?(?:h(?:rs?|ours?)?)(?:\s?(?:and\s)?(?<m>\d{1,2})\s?(?:m(?:ins?|inutes?)?)?)?|(?<only>\d{1,4})\s?min(?:ute)?s?)(?![\p{L}\d])/iu;
const BERTH = /(?<!\p{L})(?:berth|sleeper|couchette|cabin|liegewagen|schlafwagen)(?!\p{L})/iu;
const LENGTH_WORD = /(?:duration|travel time|journey time|flying time|crossing time|flight time|takes|fahrzeit|durée)/i;

/** Units with their marks; what belongs to booking, boarding or the like is left out. `today` YYYY-MM-DD. */
export function marked(units: readonly Unit[], placesIn: PlaceFinder, today: string): Marked[] {
  const flights = units.some(({ text }) => modesIn(text).includes('flight') || placesIn(text).some(({ isCode }) => isCode));
  const all: Marked[] = [];
  for (const unit of units) {
    const { text, start } = unit;
    const last = all.at(-1);
    const bare = last && last.times.length + last.dates.length + last.places.length === 0 ? last.text : null;
    const cued = <M extends { start: number; end: number }>(marks: readonly M[]): (M & Cued)[] =>
      marks.map((mark) => ({
        ...mark,
        cue: cueAt(text, mark.start, mark.end, bare),
        line: start,
        start: start + mark.start,
        end: start + mark.end,
      }));
    const dates = datesIn(text, today);
    const isFree = (mark: { start: number; end: number }): boolean => !dates.some((date) => date.start < mark.end && date.end > mark.start);
    const counts = ({ cue }: Cued): boolean => cue !== 'other';
    const places = cued(placesIn(text).filter(isFree));
    all.push({
      ...unit,
      times: cued(timesIn(text).filter(isFree)).filter(counts),
      dates: cued(dates).filter(counts),
      places: places.filter(counts),
      numbers: numbersIn(text, flights)
        .filter(isFree)
        .map((number) => ({ ...number, start: start + number.start, end: start + number.end })),
      modes: modesIn(text),
      berth: BERTH.test(text),
      minutes: lengthOf(text),
    });
  }
  return all;
}

function lengthOf(text: string): number | null {
  const word = LENGTH_WORD.exec(text);
  const length = word ? LENGTH.exec(text.slice(word.index)) : null;
  if (!length) return null;
  const { h, m, only } = length.groups ?? {};
  return only === undefined ? Number(h) * 60 + Number(m ?? 0) : Number(only);
}
