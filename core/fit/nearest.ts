/**
 * The nearest dates that work: the same days with their wall times, moved by whole days. Typed ways move along, tickets do not.
 */
import type { FitResult } from '../contract/fit.ts';
import type { Place } from '../contract/parts.ts';
import { momentAt } from '../words/moments.ts';
import type { BookDay, BookLeg } from './book.ts';
import { assess, type FitInput } from './check.ts';
import { movedBy } from './moved.ts';
import { takenByInk } from './taken.ts';
import { triedOn } from './try-on.ts';

export type NearDates = { shiftDays: number; days: BookDay[]; answer: 'free' | 'free if'; reason: string };

/** Those that are free by nearness, then those free if; earlier before later where both are as near. Dates before now are left out. */
export function nearestDates(input: FitInput, withinDays: number, limit: number): NearDates[] {
  const tickets = triedOn(input.book, input.candidate, input.tryOn).candidate.legs ?? [];
  const isTaken = takenByInk(input);
  const free: NearDates[] = [];
  const freeIf: NearDates[] = [];
  for (let distance = 1; distance <= withinDays && free.length < limit; distance += 1) {
    for (const shiftDays of [-distance, distance]) {
      if (isTaken(shiftDays)) continue;
      const moved = movedBy(input.candidate, shiftDays);
      const candidate = moved && { ...moved, legs: [] };
      if (!candidate || candidate.days.some((day) => day.callAt <= input.now)) continue;
      // The reply-by belongs to the asking, not to the dates.
      const result = assess({ ...input, candidate, replyBy: null }, false);
      if (result.answer === 'not possible') continue;
      const answer = tickets.length === 0 ? result.answer : 'free if';
      const reason = [...reasonOf(result), ...stayBehind(tickets, input.book.home)].join(' ');
      (answer === 'free' ? free : freeIf).push({ shiftDays, days: candidate.days, answer, reason });
    }
  }
  return [...free, ...freeIf].slice(0, limit);
}

/** What must be settled, or what is fine where there is nothing. */
function reasonOf({ answer, findings, fine }: FitResult): string[] {
  const settle = findings.find((finding) => finding.hardness === 'settle');
  return answer === 'free' || !settle ? [fine] : [settle.sentence];
}

/** Tickets are for the dates as they are: on others they must be changed or given up. */
function stayBehind(tickets: readonly BookLeg[], home: Place): string[] {
  return tickets.map(({ mode, from, to, departAt, cost }) => {
    const price = cost === '' ? '' : `, which costs ${cost}`;
    return `The ${mode} from ${from.name} to ${to.name} on ${momentAt(departAt, from, home)} does not move along: change it or give it up${price}.`;
  });
}
