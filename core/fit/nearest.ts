/**
 * The nearest dates that work: the same days with their wall times, moved by whole days. Typed ways move along, tickets do not.
 */
import type { FitResult } from '../contract/fit.ts';
import type { BookDay } from './book.ts';
import { assess, type FitInput } from './check.ts';
import { movedBy } from './moved.ts';

export type NearDates = { shiftDays: number; days: BookDay[]; answer: 'free' | 'free if'; reason: string };

/** Those that are free by nearness, then those free if; earlier before later where both are as near. Dates before now are left out. */
export function nearestDates(input: FitInput, withinDays: number, limit: number): NearDates[] {
  const free: NearDates[] = [];
  const freeIf: NearDates[] = [];
  for (let distance = 1; distance <= withinDays && free.length < limit; distance += 1) {
    for (const shiftDays of [-distance, distance]) {
      const candidate = movedBy(input.candidate, shiftDays);
      if (!candidate || candidate.days.some((day) => day.callAt <= input.now)) continue;
      // The reply-by belongs to the asking, not to the dates.
      const result = assess({ ...input, candidate, replyBy: null });
      if (result.answer === 'not possible') continue;
      (result.answer === 'free' ? free : freeIf).push({ shiftDays, days: candidate.days, answer: result.answer, reason: reasonOf(result) });
    }
  }
  return [...free, ...freeIf].slice(0, limit);
}

function reasonOf({ answer, findings, fine }: FitResult): string {
  return answer === 'free' ? fine : (findings.find((finding) => finding.hardness === 'settle')?.sentence ?? fine);
}
