/**
 * Weekdays right behind the name of a day are those around it: "himmelfahrt, thu-sun", "Labor Day, the Saturday", "Easter Sunday (Fri to Mon)".
 */
import { monthWord, weekdayWord } from '../words.ts';
import type { Tokens } from './pieces.ts';
import type { Resolved } from './from-today.ts';
import type { Sequence } from './sequences.ts';

type Found = { sequence: Sequence; resolved: Resolved; start: number; end: number };

/** Weekdays are sought from so many days before the named one. */
const DAYS_BEFORE = 4;
/** So many marks and articles may stand between. */
const MOST_BETWEEN = 2;

/** The same dates, where weekdays stand behind a named day: they take its place. */
export function aroundFeasts(
  tokens: Tokens,
  found: readonly Found[],
  resolveFrom: (sequence: Sequence, today: Temporal.PlainDate) => Resolved,
): Found[] {
  const around = found.map(({ sequence, resolved }, at): Resolved | undefined => {
    const feast = found[at - 1];
    const day = feast && namedDayOf(tokens, feast);
    const plain = resolved.weekdayOnly && sequence.items.every(({ atom }) => atom.relative === undefined);
    const behind = tokens[sequence.next];
    // "Labor Day, the Saturday before is the rehearsal"
    const ends = sequence.items.length > 1 || behind === undefined || behind.breaks > 0 || /^[,.;:!?)]$/.test(behind.text);
    if (!feast || day === undefined || !plain || !ends || !beside(tokens, feast.sequence.next, sequence.first)) return undefined;
    return resolveFrom(sequence, Temporal.PlainDate.from(day).subtract({ days: DAYS_BEFORE }));
  });
  return found.flatMap((one, at) => {
    const own = around[at];
    // The named day is part of the same telling.
    if (own) return [{ ...one, start: found[at - 1]?.start ?? one.start, resolved: { ...own, explicit: true, weekdayOnly: false } }];
    return around[at + 1] ? [] : [one];
  });
}

/** The one date of a day that is told by its name alone. */
function namedDayOf(tokens: Tokens, { sequence: { first, next, items }, resolved }: Found): string | undefined {
  const [item, ...more] = items;
  const words = tokens.slice(first, next);
  const named =
    item?.atom.relative?.kind === 'easter' ||
    words.every(({ num, lower }) => num === undefined && weekdayWord(lower) === undefined && monthWord(lower) === undefined);
  const [days = [], ...others] = resolved.readings;
  return named && resolved.explicit && more.length === 0 && others.length === 0 && days.length === 1 ? days[0] : undefined;
}

const beside = (tokens: Tokens, from: number, to: number): boolean =>
  to - from <= MOST_BETWEEN &&
  tokens.slice(from, to).every(({ lower, breaks }) => breaks === 0 && /^(?:,|\(|:|-|the|weekend|wknd|am|on)$/.test(lower));
