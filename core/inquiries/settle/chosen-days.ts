/**
 * Days that a message leaves open, and the same message once a person has said which of them are meant.
 */
import { MOST_CHOICES, OF_ELSE } from './days-among.ts';
import { eventDays } from './event.ts';
import type { DateMention, SaidTime, Scene } from './scene.ts';

/** The days that are named for nothing else, where nothing says that they are those of the job. */
export function daysNamed({ dates, received }: Scene): string[][] {
  const today = received.toPlainDate().toString();
  const named = dates
    .filter(({ said, by, past, readings }) => !OF_ELSE.has(said) && !by && !past && readings.length === 1)
    .flatMap(({ readings }) => readings)
    .filter((days) => (days.at(-1) ?? '') >= today);
  return [...new Map(named.map((days) => [days.join(), days])).values()].slice(0, MOST_CHOICES);
}

/** The scene with every date that could be several days read as those that were chosen, where they are among them; hours of the others are not mine. */
export function withChosenDays(scene: Scene, days: readonly string[]): Scene {
  const open = eventDays(scene).choices;
  const sets = open.length > 0 ? open : daysNamed(scene);
  const others = sets.flat().filter((date) => !days.includes(date));
  const settled = new Map(scene.dates.map((mention) => [mention, settledBy(mention, days)]));
  const dates = [...settled.values()];
  const times = scene.times.map((time) => (time.date ? { ...time, date: settled.get(time.date) } : time));
  const owner = ({ start, date }: SaidTime) => date ?? dates.findLast((mention) => mention.end <= start);
  // "the 12th (call at 9) or the 19th (call at 2)": where the chosen day has hours behind it, those behind another are of that.
  const own = times.some((time) => isOf(owner(time), days));
  return { ...scene, dates, times: times.filter((time) => !isOf(own ? owner(time) : time.date, others)) };
}

const isOf = (mention: DateMention | undefined, days: readonly string[]): boolean =>
  mention !== undefined && mention.readings.length > 0 && mention.readings.every((reading) => reading.every((date) => days.includes(date)));

function settledBy(mention: DateMention, days: readonly string[]): DateMention {
  const meant = mention.readings.filter((reading) => reading.every((date) => days.includes(date)));
  if (meant.length !== 1 || mention.readings.length === 1) return mention;
  const { doubt: _settled, ...sure } = mention;
  return { ...sure, readings: meant };
}
