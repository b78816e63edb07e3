/**
 * Edits on the Desk: one clock each, at what bites next. Until it is begun that is its latest start, then its internal date, then the promised
 * one; what will be late by the plan wants to be settled today.
 */
import type { Clock } from '../contract/desk.ts';
import type { PlannedEdit } from '../contract/deliverables.ts';
import { businessDays } from '../deliverables/edit-words.ts';
import { windowEnds } from '../deliverables/rounds.ts';
import { epochOf, instantText, wallAt } from '../time/read.ts';
import { whenWords } from './when.ts';

const DAY = 86_400_000;
const AHEAD = 14 * DAY;

/** `begun`: some stage is done, time was spent on it, or a round waits; its latest start is past then and says nothing. */
export type EditOnDesk = PlannedEdit & { jobVersion: number; begun: boolean };

/** @param now epoch milliseconds */
export function editClocks(edits: readonly EditOnDesk[], now: number, zone: string): Clock[] {
  return edits.flatMap((edit) => {
    if (edit.due === null) return [];
    const dueAt = windowEnds(edit.due, zone);
    const at = bites(edit, dueAt, now, zone);
    if (at > now + AHEAD) return [];
    return [
      {
        id: `edit:${edit.deliverableId}`,
        kind: 'edit',
        at: instantText(at),
        late: at <= now,
        jobId: edit.jobId,
        jobVersion: edit.jobVersion,
        ...said(edit, dueAt, now, zone),
        action: 'edit',
      },
    ];
  });
}

function bites(edit: EditOnDesk, dueAt: number, now: number, zone: string): number {
  const today = windowEnds(wallAt(now, zone).slice(0, 10), zone);
  if (edit.lateDays > 0 || edit.unplaced > 0) return Math.min(dueAt, today);
  const begin = edit.begun || edit.latestStart === null ? Infinity : epochOf(edit.latestStart);
  const internal = edit.internalDate === null ? Infinity : windowEnds(edit.internalDate, zone);
  return Math.min(begin, internal <= now ? Infinity : internal, dueAt);
}

function said(edit: EditOnDesk, dueAt: number, now: number, zone: string): Pick<Clock, 'sentence' | 'second'> {
  const { name, jobTitle, lateDays, unplaced, latestStart, begun, waits, takers } = edit;
  const due = `due by ${whenWords(dueAt, zone, now)}`;
  if (dueAt <= now)
    return { sentence: `${name}: overdue since ${whenWords(dueAt, zone, now)}`, second: `${finishWords(edit, now, zone)}${jobTitle}` };
  if (unplaced > 0) return { sentence: `${name}: ${due}, finds no place in the edit calendar`, second: jobTitle };
  if (lateDays > 0) {
    const first = takers[0];
    const taken = first
      ? `${first.title} takes ${first.hours > 0 ? `${first.hours} h` : `${first.days} ${first.days === 1 ? 'day' : 'days'}`}; `
      : '';
    return {
      sentence: `${name}: ${due}, will be ${businessDays(lateDays)} late`,
      second: `${finishWords(edit, now, zone)}${taken}${jobTitle}`,
    };
  }
  if (latestStart !== null && !begun) {
    const begin = epochOf(latestStart);
    const words = begin <= now ? 'should have been begun' : `begin by ${whenWords(begin, zone, now)}`;
    return { sentence: `${name}: ${words}, ${due}`, second: `${waits === '' ? '' : `waits for ${waits}; `}${jobTitle}` };
  }
  const internal =
    edit.internalDate !== null && windowEnds(edit.internalDate, zone) > now
      ? `for yourself by ${whenWords(windowEnds(edit.internalDate, zone), zone, now)}; `
      : '';
  return { sentence: `${name}: ${due}`, second: `${internal}${finishWords(edit, now, zone)}${jobTitle}` };
}

function finishWords({ finish, hoursLeft }: EditOnDesk, now: number, zone: string): string {
  if (hoursLeft === 0) return 'its work is done; ';
  return finish === null ? '' : `planned to be done ${whenWords(epochOf(finish), zone, now) || 'today'}; `;
}
