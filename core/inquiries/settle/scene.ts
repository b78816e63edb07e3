/**
 * What all the deciders look at: the text, its words, the dates, times and amounts in it, and what each date and time is said of.
 */
import type { Amount } from '../money/units.ts';
import type { Cue } from '../said/cues.ts';
import type { Resolved } from '../dates/from-today.ts';
import type { Sequence } from '../dates/sequences.ts';
import type { Token } from '../parts/tokens.ts';
import type { TimeMention } from '../times/find.ts';

export type DateMention = Resolved & {
  start: number;
  end: number;
  sequence: Sequence;
  said: Cue | undefined;
  /** Beside a word for a delivery that does not say that it is due then: it counts only where no other date does. */
  weak: boolean;
  /** "by Friday" */
  by: boolean;
  /** What stands before it in its sentence. */
  before: string;
};
export type SaidTime = TimeMention & {
  said: Cue | undefined;
  date: DateMention | undefined;
  dayBefore: boolean;
  nthDay: number | undefined;
  /** "until 20:30" */
  until: boolean;
  evening: boolean;
};
export type Where = { start: number; end: number };

export type Scene = {
  text: string;
  tokens: readonly Token[];
  received: Temporal.ZonedDateTime;
  dates: readonly DateMention[];
  times: readonly SaidTime[];
  /** Numbers that might be hours and that no rule makes one. */
  numbers: readonly SaidTime[];
  amounts: readonly Amount[];
};

/** How many details of a job are said beside its dates. */
export function detailsOf({ dates, times, amounts }: Scene): number {
  const hours = times.some(({ said }) => said === 'call' || said === 'wrap');
  const offer = amounts.some(({ mark, per }) => mark !== undefined && per !== undefined && per !== 'other');
  const answer = [...dates, ...times].some(({ said }) => said === 'reply');
  return [hours, offer, answer].filter(Boolean).length;
}

/** The days of the job as they are settled so far. */
export type EventDays = {
  dates: string[];
  where: Where[];
  /** Sets of days of which one is meant. */
  choices: string[][];
  /** `several`: rules cannot tell; `open`: the sender leaves it open. */
  doubt?: DateMention['doubt'] | 'several' | 'open';
  /** Days of the occasion on which the camera is not wanted. */
  dropped?: string[];
  /** The sender counts them: nothing learned is held against them. */
  counted?: true;
  /** How many days it will be, where it is open which. */
  count?: number;
};

/** By when an answer is wanted, or what it may be. */
export type ReplyBy = { wall?: string; where: Where[]; choices: string[] };
