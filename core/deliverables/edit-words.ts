/**
 * How an edit stands in the plan, in a sentence with its numbers. Dates are on the clock of home.
 */
import { formatNumber } from '../money/format.ts';
import { exact } from '../money/exact.ts';
import { wallAt } from '../time/read.ts';
import { countInWords } from '../words/amounts.ts';
import { dateInWords, wallInWords, withoutYear } from '../words/dates.ts';
import { joined } from '../words/lists.ts';
import { dateOfEnd } from './chain.ts';
import type { OpenEdit } from './ground.ts';
import type { LaidEdit } from './lay.ts';
import { takersInWords, type Taker } from './takers.ts';

type Facts = { laid: LaidEdit; latestStart: number | null; takers: readonly Taker[]; zone: string };

/** "2 business days" and so on, as it is said everywhere. */
export function businessDays(count: number): string {
  return countInWords(count, 'business day');
}

/** "12 h", "0.5 h". */
export function hoursOf(halfHours: number): string {
  return `${formatNumber(exact(halfHours).div(2n))} h`;
}

export function standingOf(facts: Facts): string {
  const { edit, due, finish, unplaced, lateDays, halfHoursLeft } = facts.laid;
  const promised = due === null ? 'it has no date yet' : `${moved(edit, due)}due ${dateInWords(due)}`;
  if (edit.editor !== null) return `${edit.editor} edits it, so it takes no time of mine; ${promised}.`;
  const late = lateDays > 0 ? `, ${businessDays(lateDays)} late` : '';
  if (!edit.hoursSaid) return `Its hours are not said yet, so no time is planned for it; ${promised}${late}.`;
  if (halfHoursLeft === 0) return `Its work is done; it waits to be delivered, ${promised}${late}.`;
  if (unplaced > 0 || finish === null)
    return `${hoursOf(unplaced)} of its ${hoursOf(halfHoursLeft)} find no place in the calendar; ${promised}.${blamed(facts)}`;
  const done = `Planned to be done ${shortDate(dateOfEnd(finish, facts.zone))}`;
  if (lateDays > 0) return `${done}${late}: ${promised}.${blamed(facts)}`;
  return `${done}, ${promised}.${begin(facts)}`;
}

function moved({ due: before }: OpenEdit, due: string): string {
  return before === due ? '' : 'moved by notes that are late, ';
}

function begin({ latestStart, zone }: Facts): string {
  return latestStart === null ? '' : ` Begin by ${wallInWords(wallAt(latestStart, zone))}.`;
}

function blamed({ laid, takers }: Facts): string {
  const words = takersInWords(takers);
  if (words !== '') return ` What takes its time: ${words}.`;
  return laid.lateDays > 0 ? ` Its own ${hoursOf(laid.halfHoursLeft)} take longer than there is from its files to its date.` : '';
}

const shortDate = (date: string): string => withoutYear(dateInWords(date));

/** What it waits for; empty where it can be worked on now. `now` in epoch ms. */
export function waitsOf({ filesAt, stages }: OpenEdit, now: number, zone: string): string {
  const waits: string[] = [];
  if (filesAt > now) waits.push(`the camera files, which are there from ${wallInWords(wallAt(filesAt, zone))}`);
  const first = stages.find(({ halfHours }) => halfHours > 0) ?? stages[0];
  if (first?.sent && first.sent.notesAt === null) waits.push(`notes, due ${shortDate(first.sent.dueBack)}`);
  if (first?.releaseDate && first.releaseDate > wallAt(now, zone).slice(0, 10)) waits.push(shortDate(first.releaseDate));
  return joined(waits);
}

/** "12 edits are open; 2 of them are late." */
export function planSentence(edits: readonly LaidEdit[]): string {
  const open = edits.length;
  const late = edits.filter(({ lateDays, unplaced }) => lateDays > 0 || unplaced > 0).length;
  if (open === 0) return 'No edit is open.';
  const said = `${countInWords(open, 'edit')} ${open === 1 ? 'is' : 'are'} open; `;
  if (late === 0) return `${said}none is late.`;
  return open === 1 ? `${said}it is late.` : `${said}${late === open ? 'all' : late} of them ${late === 1 ? 'is' : 'are'} late.`;
}
