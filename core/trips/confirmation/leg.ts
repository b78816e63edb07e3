/**
 * One leg from the marks of its run: which place, date and time is which end, and what must be asked.
 */
import type { Place } from '../../contract/parts.ts';
import type { LegAsk, Mode, ReadLeg, TicketSpan } from '../../contract/trips.ts';
import { dateLater } from '../../time/wall.ts';
import { dateInWords } from '../../words/dates.ts';
import { joined } from '../../words/lists.ts';
import { reachable, settledArrival } from './arrival.ts';
import type { Ask } from './ask.ts';
import { datesOf, type LegDates } from './leg-dates.ts';
import type { Marked } from './marks.ts';
import { endsOf } from './runs.ts';

/** Words that make of a leg one that goes no more. */
const CALLED_OFF =
  /(?<!\p{L})(?:cancel(?:l?ed|lation of)|no longer|does not (?:run|operate|go)|re-?booked from|old (?:times?|flight)|previous(?:ly)? (?:times?|flight|booked)|storniert|entfällt|annulé|supprimé)(?!\p{L})/iu;

/** Whether the text counts its hours to 24, and whether it writes "am" and "pm" at all. */
type Style = { to24: boolean; halves: boolean };
type PlaceEnd = Marked['places'][number] | undefined;
type Times = { depart: Marked['times'][number] | undefined; arrive: Marked['times'][number] | undefined };

/** The leg of which a run of units speaks. */
export function legOf(all: readonly Marked[], span: { from: number; to: number }, style: Style): ReadLeg {
  const run = all.slice(span.from, span.to);
  const asks: LegAsk[] = [];
  const ask: Ask = (field, question) => {
    if (!asks.some((each) => each.field === field)) asks.push({ field, question });
  };
  const number = run.flatMap((unit) => unit.numbers)[0];
  const ends = placesOf(run);
  const mode = modeOf(all, run, Boolean(ends.from?.isCode && ends.to?.isCode), ask);
  const times = timesOf(run, style, ask);
  const dates = datesOf(all, span, ask);
  const walls = wallsOf(dates, times, ask);
  const candidates = { from: ends.from?.candidates ?? [], to: ends.to?.candidates ?? [] };
  const can = walls.depart && walls.arrive ? reachable(candidates, { depart: walls.depart, arrive: walls.arrive, mode }) : candidates;
  const from = onlyOf('from', can.from, ends.from?.text, ask);
  const to = onlyOf('to', can.to, ends.to?.text, ask);
  const arrive = arrivalOf(run, { ...walls, from, to }, ask);
  // By day a cabin is no bed.
  const byDay = walls.depart !== null && arrive !== null && walls.depart.slice(0, 10) === arrive.slice(0, 10);
  const berth = mode !== 'flight' && !byDay && run.some((unit) => unit.berth);
  if (run.some(({ text }) => CALLED_OFF.test(text)))
    ask('depart', 'The words beside it say that it is cancelled or was moved. Does it go like this?');
  const said: [{ start: number; end: number } | undefined, string][] = [
    [number, 'number'],
    [ends.from, 'from'],
    [ends.to, 'to'],
    [times.depart, 'departure'],
    [times.arrive, 'arrival'],
    ...dates.marks.map((mark) => [mark, 'date'] as [typeof mark, string]),
  ];
  const spans: TicketSpan[] = said.flatMap(([mark, meaning]) => (mark ? [{ start: mark.start, end: mark.end, meaning }] : []));
  return { mode, number: number?.text ?? null, from, to, depart: walls.depart, arrive, berth, asks, spans };
}

/** Which place is left and which is reached: by the words before them, else in the order of the text. */
function placesOf(run: readonly Marked[]): { from: PlaceEnd; to: PlaceEnd } {
  const [first, second] = endsOf(run.flatMap((unit) => unit.places));
  if (!second) return first?.cue === 'arrive' ? { from: undefined, to: first } : { from: first, to: undefined };
  const turned = first?.cue === 'arrive' ? second.cue !== 'arrive' : second.cue === 'depart' && first?.cue !== 'depart';
  return turned ? { from: second, to: first } : { from: first, to: second };
}

/** So many towns of one name are told, the largest first. */
const MOST_NAMED = 5;
const countries = new Intl.DisplayNames('en', { type: 'region' });

function onlyOf(field: 'from' | 'to', candidates: readonly Place[], name: string | undefined, ask: Ask): Place | null {
  const [only, ...others] = candidates;
  if (!only) ask(field, field === 'from' ? 'Where does it leave from?' : 'Where does it arrive?');
  if (others.length === 0) return only ?? null;
  const where = candidates.map(({ region, country }) => (/\p{L}/u.test(region) ? region : (countries.of(country) ?? country)));
  ask(field, `Which ${name ?? ''} is it: ${joined([...new Set(where)].slice(0, MOST_NAMED), 'or')}?`);
  return null;
}

function modeOf(all: readonly Marked[], run: readonly Marked[], byCodes: boolean, ask: Ask): Mode | null {
  const spoken = (units: readonly Marked[]): Mode[] => [...new Set(units.flatMap(({ modes }) => modes))];
  for (const found of [spoken(run), byCodes ? ['flight' as const] : [], spoken(all)]) {
    if (found.length === 1) return found[0] ?? null;
    if (byCodes && found.includes('flight')) return 'flight';
  }
  ask('mode', 'Is it a flight, a train, a ferry or a ride?');
  return null;
}

function timesOf(run: readonly Marked[], { to24, halves }: Style, ask: Ask): Times {
  const [one, other] = run.flatMap((unit) => unit.times);
  const turned = one?.cue === 'arrive' && other?.cue !== 'arrive';
  const found: Times = turned ? { depart: other, arrive: one } : { depart: one, arrive: other };
  for (const end of ['depart', 'arrive'] as const) {
    const time = found[end];
    const verb = end === 'depart' ? 'leave' : 'arrive';
    if (!time) ask(end, `At what time does it ${verb}?`);
    // "06:15" among times with "am" and "pm" counts to 24, or was left without.
    else if (time.open ? !to24 : time.full && halves && time.minutes < 720) {
      ask(end, `Does it ${verb} at ${clock(time.minutes)} in the morning or in the evening?`);
      found[end] = undefined;
    }
  }
  return found;
}

const clock = (minutes: number): string => `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;

type Walls = { depart: string | null; arrive: string | null; /** The day of arrival is written. */ fixed: boolean };

function wallsOf(dates: LegDates, { depart, arrive }: Times, ask: Ask): Walls {
  const wall = (date: string | null, time: { minutes: number } | undefined) => (date && time ? `${date}T${clock(time.minutes)}` : null);
  const later = arrive?.daysLater ?? null;
  const byMark = dates.depart === null ? null : dateLater(dates.depart, later ?? 0);
  const fixed = dates.arrive !== null || later !== null;
  const walls = { depart: wall(dates.depart, depart), arrive: wall(dates.arrive ?? byMark, arrive), fixed };
  if (dates.arrive === null || later === null || dates.arrive === byMark) return walls;
  ask('arrive', `Does it arrive on ${dateInWords(dates.arrive)}? Beside the time stands +${later}.`);
  return { ...walls, arrive: null };
}

/** The arrival where both ends and both times are known and agree. */
function arrivalOf(
  run: readonly Marked[],
  { depart, arrive, fixed, from, to }: Walls & { from: Place | null; to: Place | null },
  ask: Ask,
): string | null {
  if (!depart || !arrive || !from || !to) return arrive;
  const said = run.map(({ minutes }) => minutes).find((minutes) => minutes !== null) ?? null;
  const settled = settledArrival({ depart, arrive, from, to, said, fixed });
  if ('arrive' in settled) return settled.arrive;
  ask(settled.field, settled.question);
  return settled.field === 'arrive' ? null : arrive;
}
