/**
 * The terms of a quote in sentences a client can read, from what the version has frozen.
 */
import type { Closed } from '../contract/people.ts';
import type { QuoteDraft } from '../contract/quotes.ts';
import type { Terms } from '../contract/rates.ts';
import { formatNumber } from '../money/format.ts';
import { closedInWords } from '../people/closed.ts';
import { countInWords, noticeInWords } from '../words/amounts.ts';
import { businessDaysOf } from './cancellation.ts';

/** One term under its heading. */
export type Term = { label: string; text: string };

/**
 * Every term that has something to say, in the order in which the job meets them. Validity and deposit stand elsewhere on the paper.
 * Terms on editing appear only where the quote has editing.
 */
export function termsInWords(draft: QuoteDraft): Term[] {
  const { terms } = draft;
  const edits = draft.lines.some((line) => line.section === 'editing');
  const said: Term[] = [
    { label: 'Payment', text: payment(terms) },
    { label: 'Cancellation', text: cancellation(terms, draft.clientClosed ?? []) },
    { label: 'Postponement', text: terms.postponement },
    { label: 'Overtime approved by', text: terms.overtimeApprover },
    { label: 'Rounds of notes', text: edits ? `${sentence(countInWords(terms.rounds, 'round'))} included in editing.` : '' },
    { label: 'Usage', text: terms.usage },
    { label: 'Originals', text: terms.originals },
    { label: 'Illness', text: terms.illness },
    { label: 'Weather', text: terms.weather },
  ];
  return said.map(({ label, text }) => ({ label, text: text.trim() })).filter(({ text }) => text !== '');
}

function payment({ payDays }: Terms): string {
  return payDays === 0 ? 'Invoices are due on receipt.' : `Invoices are due within ${countInWords(payDays, 'day')} of their date.`;
}

/** The scale from the longest notice to the shortest; rules.md section 4. */
function cancellation({ cancellation: steps, cancelBy }: Terms, closed: readonly Closed[]): string {
  if (steps.length === 0) return '';
  const inDays = cancelBy === 'business days';
  const scale = steps
    .toSorted((a, b) => b.underHours - a.underHours)
    .map(
      ({ underHours, percent }) =>
        `under ${inDays ? countInWords(businessDaysOf(underHours), 'business day') : noticeInWords(underHours)} ${formatNumber(percent)} %`,
    )
    .join(', ');
  const counted = inDays ? ' in business days at my home, the day of notice counted and that of the call not' : '';
  const own = inDays && closed.length > 0 ? ` Your own holidays are no business days: ${closedInWords(closed)}.` : '';
  return `By notice before first call${counted}: ${scale} of the net of days, kit and editing, and costs already bound in full; nothing earlier. A deposit paid is set against it.${own}`;
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
