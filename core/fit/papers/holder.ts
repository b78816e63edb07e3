/**
 * Whose documents are looked at, what is tried on of them, and how findings on them are said.
 */
import type { DocumentKind } from '../../contract/document-kind.ts';
import type { Finding, Hardness, Lift } from '../../contract/fit.ts';
import type { Place } from '../../contract/parts.ts';
import type { TryOn } from '../../contract/try-on.ts';
import { publishedLead, sourceInWords, type Lead } from '../../documents/rules.ts';
import { documentInWords } from '../../documents/words.ts';
import { countInWords } from '../../words/amounts.ts';
import { paperDate } from '../../words/dates.ts';
import type { BookDocument, BookJob } from '../book.ts';
import { concerning } from '../findings.ts';
import type { Abroad } from './trip.ts';

export type Holder = {
  job: BookJob;
  home: Place;
  trip: Abroad;
  /** Their own only. */
  documents: readonly BookDocument[];
  tried: NonNullable<TryOn['documents']>;
  /** Business days between now and the first call. */
  left: () => number;
};

/** What a document is needed for: its kind, and the country where that matters. */
export type Need = { kind: DocumentKind; country: string | null };

export function said(
  { job }: Pick<Holder, 'job'>,
  kind: string,
  hardness: Hardness,
  sentence: string,
  numbers: Finding['numbers'],
  lifts: Lift[] = [],
): Finding {
  return { kind, hardness, concerns: concerning(job), numbers, sentence, lifts };
}

/** The document of a kind that lasts longest, by what it says; one whose last day is not noted comes last. */
export function longest(documents: readonly BookDocument[]): BookDocument | undefined {
  return documents.toSorted((a, b) => ((a.until ?? '') > (b.until ?? '') ? -1 : 1))[0];
}

/** How long a new one takes: as noted on the document, else as published. */
function leadOf({ kind }: Need, held: BookDocument | undefined, home: Place): { days: number; by: string } | null {
  if (held && held.leadDays !== null) return { days: held.leadDays, by: 'as you noted' };
  const published: Lead | null = publishedLead(kind, kind === 'passport' ? (held?.country ?? home.country) : home.country);
  return published && { days: published.days, by: sourceInWords(published.source, paperDate(published.source.on)) };
}

/** "A new one takes 30 business days (source); 12 are left before the first call." */
export function leadSentence(holder: Holder, need: Need, held?: BookDocument): { text: string; numbers: Finding['numbers'] } {
  const lead = leadOf(need, held, holder.home);
  const left = holder.left();
  if (!lead) return { text: 'How long that takes is not on file.', numbers: { left } };
  return {
    text: `That takes about ${countInWords(lead.days, 'business day')} (${lead.by}); ${left} ${left === 1 ? 'is' : 'are'} left before the first call.`,
    numbers: { lead: lead.days, left },
  };
}

/** A lead time that is longer than what is left must be settled. */
export function leadFindings(holder: Holder, need: Need, held?: BookDocument): Finding[] {
  const lead = leadOf(need, held, holder.home);
  const left = lead ? holder.left() : 0;
  if (!lead || lead.days <= left) return [];
  const what = documentInWords(need.kind, need.country);
  return [
    said(
      holder,
      'lead time',
      'settle',
      `A new ${what} takes about ${countInWords(lead.days, 'business day')} (${lead.by}), and ${left} ${left === 1 ? 'is' : 'are'} left before the first call.`,
      { what, lead: lead.days, left },
      inTime(need),
    ),
  ];
}

const inTime = (need: Need): Lift[] => [
  { kind: 'in time', label: `Ask whether the ${documentInWords(need.kind, need.country)} can come in time`, tryOn: asIf(need, false) },
];

const asIf = ({ kind, country }: Need, asked: boolean): TryOn => ({ documents: [{ kind, country, asked }] });

/** What lifts a document that is not on file: to note the one that there is, or to ask for one. */
export function noteOrAsk(need: Need): Lift[] {
  const what = documentInWords(need.kind, need.country);
  return [
    { kind: 'note document', label: `Note the ${what}`, tryOn: asIf(need, false) },
    { kind: 'ask for document', label: `Ask for the ${what} now`, tryOn: asIf(need, true) },
  ];
}

/** What lifts a document that does not last: a new one. */
export function renewal(need: Need): Lift[] {
  return [{ kind: 'ask for document', label: `Renew the ${documentInWords(need.kind, need.country)}`, tryOn: asIf(need, true) }];
}

/** Whether what is asked for today comes in time; where nothing is on file of how long it takes, that must be settled too. */
function inTimeFindings(holder: Holder, need: Need, held?: BookDocument): Finding[] {
  if (leadOf(need, held, holder.home)) return leadFindings(holder, need, held);
  const what = documentInWords(need.kind, need.country);
  const left = holder.left();
  const sentence = `How long a new ${what} takes is not on file; ${countInWords(left, 'business day')} ${left === 1 ? 'is' : 'are'} left before the first call.`;
  return [said(holder, 'lead time', 'settle', sentence, { what, left }, inTime(need))];
}

/** What is told of a document that is tried on, with its lead time where it is still to be asked for; nothing where it is not. */
export function triedFindings(holder: Holder, need: Need, held?: BookDocument): Finding[] | null {
  const entries = holder.tried.filter(({ kind, country }) => kind === need.kind && (country === null || country === need.country));
  if (entries.length === 0) return null;
  const asked = entries.every((entry) => entry.asked);
  const what = documentInWords(need.kind, need.country);
  const as = asked ? `As if the ${what} were asked for today.` : `As if the ${what} were at hand, and good for these days.`;
  return [said(holder, 'document tried on', 'know', as, { what }), ...(asked ? inTimeFindings(holder, need, held) : [])];
}
