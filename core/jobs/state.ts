/**
 * Where a job stands, and which deeds are open to it from there.
 */
import type { JobState } from '../contract/jobs.ts';

/** What was done last; "ran out" is not done but happens. */
export type Stage = Exclude<JobState, 'ran out'>;
export type JobDeed = 'pencil' | 'let go' | 'ink' | 'decline' | 'reopen' | 'change' | 'know' | 'call off' | 'take back' | 'amend';

/** A pencil holds until its expiry, not at it. Both in epoch milliseconds. */
export function ranOut(expiresAt: number, now: number): boolean {
  return expiresAt <= now;
}

/** @param heldUntil expiry of the held pencil, epoch milliseconds; null when none is held */
export function stateOf(stage: Stage, heldUntil: number | null, now: number): JobState {
  return stage === 'pencilled' && heldUntil !== null && ranOut(heldUntil, now) ? 'ran out' : stage;
}

/** The stage that a job falls back to when nothing is held any more. */
export function openStage(quoteMade: boolean): 'quoted' | 'inquiry' {
  return quoteMade ? 'quoted' : 'inquiry';
}

/** Does a job of this state hold its dates, so that they cannot just be taken out? A pencil that ran out does: it may be renewed. */
export const holdsDates = (state: JobState): boolean => state !== 'inquiry' && state !== 'quoted';

const openFrom: Record<JobDeed, readonly JobState[]> = {
  pencil: ['inquiry', 'quoted', 'pencilled', 'ran out'],
  'let go': ['pencilled', 'ran out'],
  ink: ['inquiry', 'quoted', 'pencilled', 'ran out'],
  decline: ['inquiry', 'quoted', 'pencilled', 'ran out'],
  reopen: ['let go', 'declined'],
  change: ['inquiry', 'quoted', 'pencilled', 'ran out', 'inked'],
  'call off': ['inked'],
  'take back': ['inked', 'cancelled'],
  amend: ['inked', 'cancelled'],
  // Papers, contacts and notes are put right at any time, also long after.
  know: ['inquiry', 'quoted', 'pencilled', 'ran out', 'inked', 'let go', 'declined', 'cancelled'],
};

const standing: Record<JobState, string> = {
  inquiry: 'is an inquiry and holds no dates',
  quoted: 'is quoted and holds no dates',
  pencilled: 'is in pencil',
  'ran out': 'was in pencil, which ran out',
  inked: 'is in ink',
  'let go': 'was let go',
  declined: 'was declined',
  cancelled: 'was cancelled',
};

export type Refusal = { what: string; todo: string };

/** Why a deed is not open to a job in this state, with what to do instead; undefined when it is. */
export function refusalOf(deed: JobDeed, state: JobState, title: string): Refusal | undefined {
  if (openFrom[deed].includes(state)) return undefined;
  return { what: `${title} ${standing[state]}.`, todo: wayOut(deed, state) };
}

function wayOut(deed: JobDeed, state: JobState): string {
  if (deed === 'amend') return 'Until the written yes nothing is agreed: change the quote and make its next version.';
  if (state === 'let go' || state === 'declined')
    return deed === 'let go' || deed === 'decline' ? 'Nothing more needs doing.' : 'Reopen it first.';
  if (state === 'cancelled') return 'Take the cancellation back, or make a new job for new dates.';
  if (deed === 'call off' || deed === 'take back') return 'Only ink is called off: let the pencil go, or decline it.';
  if (deed === 'reopen') return 'It is open; nothing needs reopening.';
  if (deed === 'let go' && state !== 'inked') return 'There is no pencil to let go. Decline it to close it.';
  return state === 'inked' && (deed === 'ink' || deed === 'pencil')
    ? 'Nothing more needs doing: its dates are held.'
    : 'A job in ink is ended by its cancellation terms, not here.';
}
