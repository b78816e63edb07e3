/**
 * The days of the event: the dates that no cue gives to anything else. Two that cannot both be meant are a question.
 */
import type { DateMention, Scene, Where } from './scene.ts';

export type EventDays = {
  dates: string[];
  where: Where[];
  /** Sets of days of which one is meant. */
  choices: string[][];
  doubt?: DateMention['doubt'] | 'several';
};

const isEvent = (mention: DateMention): boolean => mention.said === undefined || mention.said === 'event' || mention.said === 'show';
const MOVED = /\b(?:moved|postponed|rescheduled|changed|shifted|pushed(?: back)?|switched)(?: \w+){0,3} from\s*$/i;
const within = (inner: readonly string[], outer: readonly string[]): boolean => inner.every((date) => outer.includes(date));
const consecutive = (dates: readonly string[]): boolean =>
  dates.every(
    (date, at) =>
      at === 0 ||
      Temporal.PlainDate.from(dates[at - 1] as string)
        .add({ days: 1 })
        .toString() === date,
  );
const union = (...lists: readonly (readonly string[])[]): string[] => [...new Set(lists.flat())].sort();

/** Days that are named beside an explicit date only to say more about it. */
function repeats(mention: DateMention, days: readonly string[]): boolean {
  if (mention.weekdayOnly) {
    const weekdays = mention.sequence.items.map(({ atom }) => atom.weekday);
    return days.some((day) => weekdays.includes(Temporal.PlainDate.from(day).dayOfWeek));
  }
  return mention.readings.length === 1 && within(mention.readings[0] ?? [], days);
}

/** Decide on the days; nothing where only a month, a week or nothing is said. */
export function eventDays(scene: Scene): EventDays {
  const today = scene.received.toPlainDate().toString();
  const candidates = scene.dates
    .filter(
      (mention) => isEvent(mention) && !mention.past && (mention.readings.length > 0 || mention.doubt === 'impossible') && !mention.by,
    )
    .map((mention) =>
      MOVED.test(scene.text.slice(Math.max(0, mention.start - 50), mention.start)) && mention.sequence.items.length === 2
        ? { ...mention, readings: mention.readings.map((dates) => dates.slice(-1)) }
        : mention,
    );
  const explicit = candidates.filter((mention) => mention.explicit);
  const numbered = candidates.filter((mention) => !mention.explicit && mention.sequence.items.some(({ atom }) => atom.day !== undefined));
  const relative = candidates.filter((mention) => !mention.explicit && !numbered.includes(mention) && !mention.weekdayOnly);
  const weekdays = candidates.filter((mention) => mention.weekdayOnly);
  const tiers = [explicit, numbered, relative, weekdays].filter((tier) => tier.length > 0);
  const main = tiers[0];
  if (!main) return { dates: [], where: [], choices: [] };
  const settled = settleTier(scene, main, today);
  if (settled.dates.length === 0) return settled;
  // "on Saturday" beside "12 December": a weekday that fits no day is a slip of one of them.
  const more = tiers.slice(1).flat();
  for (const mention of more) {
    if (repeats(mention, settled.dates)) continue;
    if (
      mention.weekdayOnly &&
      mention.said === undefined &&
      settled.dates.length === 1 &&
      main.length === 1 &&
      mention.sequence.items.length > 1 &&
      /\b(?:both|two|three|all) days\b/i.test(scene.text)
    )
      continue;
  }
  return settled;
}

function settleTier(scene: Scene, tier: readonly DateMention[], today: string): EventDays {
  const where = tier.map(({ start, end }) => ({ start, end }));
  const doubtful = tier.find((mention) => mention.readings.length !== 1 || mention.doubt !== undefined);
  const sure = tier.filter(
    (mention) => mention.readings.length === 1 && mention.doubt === undefined && (mention.readings[0]?.at(-1) ?? '') >= today,
  );
  if (doubtful) {
    // A doubtful mention is settled by a sure one that it may repeat.
    const rest = tier.filter((mention) => !sure.includes(mention));
    const settledBySure =
      sure.length > 0 &&
      rest.every((mention) =>
        mention.readings.some((reading) =>
          sure.some((other) => within(reading, other.readings[0] ?? []) || within(other.readings[0] ?? [], reading)),
        ),
      );
    if (!settledBySure) {
      const choices = [
        ...new Map(
          [...doubtful.readings, ...sure.map((mention) => mention.readings[0] ?? [])].map((reading) => [reading.join(), reading]),
        ).values(),
      ];
      return {
        dates: [],
        where: [doubtful],
        choices: choices.filter((reading) => (reading.at(-1) ?? '') >= today),
        doubt: doubtful.doubt ?? 'choice',
      };
    }
  }
  const sets = [...new Map(sure.map((mention) => [(mention.readings[0] ?? []).join(), mention])).values()];
  if (sets.length === 0) return { dates: [], where: [], choices: [] };
  const all = union(...sets.map((mention) => mention.readings[0] ?? []));
  const largest = sets.map((mention) => mention.readings[0] ?? []).toSorted((a, b) => b.length - a.length)[0] ?? [];
  if (within(all, largest)) return { dates: largest, where: where.slice(0, 1), choices: [] };
  if (consecutive(all) && all.length <= 14) return { dates: all, where, choices: [] };
  if (joinedUp(scene.text, sets)) return { dates: all, where, choices: [] };
  return { dates: [], where, choices: sets.map((mention) => mention.readings[0] ?? []).slice(0, 4), doubt: 'several' };
}

/** Dates in one list, one below the other or with their own labels: all of them are meant. */
function joinedUp(text: string, sets: readonly DateMention[]): boolean {
  return sets.every((mention, at) => {
    const previous = sets[at - 1];
    if (!previous) return true;
    const between = text.slice(previous.end, mention.start);
    return (
      between.length <= 160 &&
      !/\b(?:or|alternatively|otherwise|instead|not|if|failing|backup|reserve|rain|originally|was)\b/i.test(between) &&
      (/^[^\n]{0,80}\n\s{0,4}(?:[-+]|\d[.)]|day \w+|and)?\s{0,3}(?:[\p{L} ]{0,24}:)?\s{0,3}$/iu.test(between) ||
        /\b(?:and|then|plus|also|again|as well as|second|followed by)\b[^.;!?]{0,40}$/i.test(between))
    );
  });
}
