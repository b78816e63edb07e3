/**
 * Whether a document holds on given days and in given countries. All dates are `YYYY-MM-DD`, and the last day counts.
 */
import type { DocumentFields } from '../contract/documents.ts';

/**
 * The date some calendar months later, clamped at the end of a month: six months after 10 December 2026 are 10 June 2027,
 * after 31 August 2026 they are 28 February 2027.
 */
export function monthsLater(date: string, months: number): string {
  return Temporal.PlainDate.from(date).add({ months }).toString();
}

/** Valid so many calendar months beyond a day: on the day itself where they are none. */
export function lastsBeyond(until: string, leaving: string, months: number): boolean {
  return until >= monthsLater(leaving, months);
}

/** A document says that it holds in a country; one that says nothing holds at home only. @param home its country */
export function holdsIn({ worldwide, countries }: Pick<DocumentFields, 'worldwide' | 'countries'>, country: string, home: string): boolean {
  return worldwide || countries.includes(country) || (countries.length === 0 && country === home);
}
