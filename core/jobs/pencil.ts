/**
 * Until when a pencil holds when nobody says otherwise.
 */
import { wallInWords } from '../words/dates.ts';
import { wallAt } from '../time/read.ts';

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
/** Common practice: a hold is asked about after two days. */
const HOLD_HOURS = 48;
const BEFORE_DOOR_OUT_HOURS = 12;
const SHORTEST_HOURS = 2;

export type PencilInput = {
  /** All in epoch milliseconds; null where not known. */
  now: number;
  validUntil: number | null;
  doorOut: number | null;
  replyBy: number | null;
  /** Zone that the caution is written in: home. */
  zone: string;
};
export type PencilExpiry = { at: number; caution: string | null };

/**
 * The earliest of the quote's valid-until, 48 h from now and 12 h before door-out. Where that is past already: reply-by or 2 h from now,
 * whichever is later, with a caution. Whole minutes, rounded down, so that the wall time says the instant.
 */
export function defaultExpiry({ now, validUntil, doorOut, replyBy, zone }: PencilInput): PencilExpiry {
  const beforeDoorOut = doorOut === null ? Infinity : doorOut - BEFORE_DOOR_OUT_HOURS * HOUR;
  const usual = wholeMinutes(Math.min(validUntil ?? Infinity, now + HOLD_HOURS * HOUR, beforeDoorOut));
  if (usual > now) return { at: usual, caution: null };
  const short = Math.max(replyBy ?? -Infinity, now + SHORTEST_HOURS * HOUR);
  const at = wholeMinutes(short);
  const why = beforeDoorOut <= now ? 'Door-out is less than 12 h away' : 'The quote is no longer valid';
  return { at, caution: `${why}; the pencil runs out ${wallInWords(wallAt(at, zone))}.` };
}

const wholeMinutes = (at: number) => Math.floor(at / MINUTE) * MINUTE;
