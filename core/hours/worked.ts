/**
 * Hours as they were worked: what a person types, placed on the clock of where it was. Past hours: the instant is the truth.
 */
import type { FieldTrouble as Trouble } from '../contract/base.ts';
import type { WorkedFields } from '../contract/hours.ts';
import type { DayKind } from '../contract/parts.ts';
import { instantOf, WallTimeError } from '../time/read.ts';
import { lengthInWords } from '../words/amounts.ts';
import { wallInWords, zoneInWords } from '../words/dates.ts';
import type { z } from 'zod';

const MINUTE = 60_000;
const LONGEST_DAY = 24 * 60 * MINUTE;

/** One call of one person; instants in epoch milliseconds, `handId` null for me, `wrapAt` null while it runs. */
export type WorkedHours = {
  handId: string | null;
  date: string;
  kind: DayKind;
  zone: string;
  call: string;
  wrap: string | null;
  callAt: number;
  wrapAt: number | null;
  unpaidBreakMinutes: number;
};
export type FinishedHours = WorkedHours & { wrap: string; wrapAt: number };

type FieldTrouble = z.infer<typeof Trouble>;

/** Those that have a wrap. */
export function finished<W extends WorkedHours>(worked: readonly W[]): (W & FinishedHours)[] {
  return worked.flatMap((each) => (each.wrap === null || each.wrapAt === null ? [] : [{ ...each, wrap: each.wrap, wrapAt: each.wrapAt }]));
}

/**
 * Typed hours with their instants; the date is that of the call.
 * @param now epoch milliseconds: hours are entered once they were worked
 * @returns the sentence that says what cannot be: a wrap not after its call, more than 24 h, breaks as long as the day, times to come,
 * a wall time that the clock there skipped, or showed twice without it being said which is meant
 */
export function placedHours(fields: WorkedFields, now: number): WorkedHours | FieldTrouble {
  const { handId, kind, zone, call, wrap, unpaidBreakMinutes } = fields;
  const callAt = instantOn('call', call, zone, fields.callIs);
  if (typeof callAt !== 'number') return callAt;
  const hours = { handId, kind, zone, call, wrap, unpaidBreakMinutes, date: call.slice(0, 10), callAt };
  if (callAt > now) return trouble('call', `The call ${wallInWords(call)} is still to come; hours are entered once they were worked.`);
  if (wrap === null) return { ...hours, wrapAt: null };
  const wrapAt = instantOn('wrap', wrap, zone, fields.wrapIs);
  if (typeof wrapAt !== 'number') return wrapAt;
  const long = wrapAt - callAt;
  if (long <= 0)
    return trouble(
      'wrap',
      `The wrap ${wallInWords(wrap)} is not after the call ${wallInWords(call)}. A wrap past midnight is on the next date.`,
    );
  if (long > LONGEST_DAY)
    return trouble(
      'wrap',
      `From call to wrap are ${lengthInWords(long / MINUTE)}. One call lasts at most 24 h; give the next date its own.`,
    );
  if (wrapAt > now) return trouble('wrap', `The wrap ${wallInWords(wrap)} is still to come; leave it open until then.`);
  if (unpaidBreakMinutes * MINUTE >= long)
    return trouble(
      'unpaidBreakMinutes',
      `Unpaid breaks of ${lengthInWords(unpaidBreakMinutes)} leave nothing of the ${lengthInWords(long / MINUTE)} from call to wrap.`,
    );
  return { ...hours, wrapAt };
}

/** The instant of a wall time of the past; where the clock showed it twice, the one that was said. */
function instantOn(field: 'call' | 'wrap', wall: string, zone: string, which: 'first' | 'second' | undefined): number | FieldTrouble {
  try {
    return instantOf(wall, zone).epochMilliseconds;
  } catch (error) {
    if (!(error instanceof WallTimeError)) throw error;
    if (error.trouble === 'missing') return trouble(field, error.message);
    if (which === undefined)
      return trouble(
        `${field}Is`,
        `The clock in ${zoneInWords(zone)} showed ${wallInWords(wall)} twice, an hour apart. Say whether the first or the second is meant.`,
      );
    const disambiguation = which === 'first' ? 'earlier' : 'later';
    return Temporal.PlainDateTime.from(wall).toZonedDateTime(zone, { disambiguation }).epochMilliseconds;
  }
}

/** Which of two is meant where a clock showed an instant's wall time twice; undefined where it did so once. */
export function whichOfTwo(wall: string, zone: string, at: number): 'first' | 'second' | undefined {
  const plain = Temporal.PlainDateTime.from(wall);
  const [first, second] = (['earlier', 'later'] as const).map(
    (disambiguation) => plain.toZonedDateTime(zone, { disambiguation }).epochMilliseconds,
  );
  if (first === second) return undefined;
  return at - (at % MINUTE) === second ? 'second' : 'first';
}

/** The other hours of the same person that these lie on, if there are any; a call that still runs lasts until `now`. */
export function liesOn<W extends WorkedHours>(hours: WorkedHours, others: readonly W[], now: number): W | undefined {
  const end = ({ wrapAt, callAt }: WorkedHours): number => wrapAt ?? Math.max(now, callAt + MINUTE);
  return others.find((other) => other.handId === hours.handId && other.callAt < end(hours) && hours.callAt < end(other));
}

const trouble = (field: string, sentence: string): FieldTrouble => ({ field: `fields.${field}`, sentence });
