/**
 * Numbers of issued papers: gapless in each series and year. Invoices and credit notes of a series share one run.
 */
import { wallAt } from '../time/read.ts';

/** At least so many figures, so that the papers of a year sort by name. */
const FIGURES = 3;

/** The year of a number: that of the issue date on the business's home clock. @param issuedAt epoch milliseconds */
export function yearOfNumber(issuedAt: number, homeZone: string): number {
  return Number(wallAt(issuedAt, homeZone).slice(0, 4));
}

/** "2026-031", with the series before it where there is one: "A-2026-031". @param sequence from 1 */
export function invoiceNumber(series: string, year: number, sequence: number): string {
  const run = `${year}-${String(sequence).padStart(FIGURES, '0')}`;
  return series === '' ? run : `${series}-${run}`;
}
