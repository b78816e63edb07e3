/**
 * Reminders in three tones, as plain text to copy or to send: what is open, since when, and how to pay. Never a threat.
 */
import type { ReminderTone } from '../contract/invoices.ts';
import type { SetupFields } from '../contract/setup.ts';
import { formatMoney, formatNumber } from '../money/format.ts';
import { compare, type Money } from '../money/money.ts';
import type { Tone } from '../quotes/tone.ts';
import { countInWords } from '../words/amounts.ts';
import { paperDate } from '../words/dates.ts';
import { groupedIban } from './iban.ts';
import { lateInterest } from './interest.ts';

export type ReminderInput = {
  /** How firmly. */
  tone: ReminderTone;
  /** How the client writes. */
  voice: Tone;
  setup: Pick<SetupFields, 'name' | 'phone' | 'email' | 'payTo' | 'lateInterestPercent'>;
  invoice: { number: string; issueDate: string; dueDate: string; toPay: Money; open: Money; daysLate: number };
  /** What the invoice is for; empty where it is for no job. */
  title: string;
  /** Date, YYYY-MM-DD. */
  today: string;
};

/** Subject and text of a reminder. */
export function reminderFor(input: ReminderInput): { subject: string; text: string } {
  const { voice, setup, invoice, title } = input;
  const paragraphs = [
    voice.greeting,
    opening(input),
    [standing(input), interest(input)].filter((sentence) => sentence !== '').join(' '),
    howToPay(input),
    ending(input),
    [voice.closing, setup.name, setup.phone, setup.email].filter((line) => line !== '').join('\n'),
  ];
  const late = invoice.daysLate > 0 ? (input.tone === 'firm' ? 'Overdue: invoice' : 'Reminder: invoice') : 'Invoice';
  return {
    subject: `${late} ${invoice.number}${title === '' ? '' : `, ${title}`}`,
    text: paragraphs.filter((part) => part !== '').join('\n\n'),
  };
}

function opening({ tone, voice, invoice, title }: ReminderInput): string {
  const what = `invoice ${invoice.number} of ${paperDate(invoice.issueDate)}${title === '' ? '' : ` for ${title}`}`;
  if (invoice.daysLate === 0) return `A short note about ${what}, which falls due on ${paperDate(invoice.dueDate)}.`;
  if (tone === 'kind') return `${voice.formal ? 'May I remind you of' : 'Just a nudge about'} ${what}? It may have slipped through.`;
  if (tone === 'plain') return `I have not yet received payment for ${what}.`;
  return `Payment for ${what} is still missing, ${countInWords(invoice.daysLate, 'day')} after it was due.`;
}

function standing({ invoice: { open, toPay, dueDate, daysLate } }: ReminderInput): string {
  const paid = compare(open, toPay) < 0 ? ` of ${formatMoney(toPay)}` : '';
  const since = daysLate > 0 ? `was due on ${paperDate(dueDate)}, ${countInWords(daysLate, 'day')} ago` : `is due on ${paperDate(dueDate)}`;
  return `${formatMoney(open, { code: true })}${paid} is open and ${since}.`;
}

/** Only where my details say that late payment bears interest, and only when it is said firmly. */
function interest({ tone, setup: { lateInterestPercent: percent }, invoice, today }: ReminderInput): string {
  if (tone !== 'firm' || invoice.daysLate === 0 || !percent || Number(percent) === 0) return '';
  const { amount } = lateInterest(invoice.open, percent, invoice.dueDate, today);
  return `By the terms, what is paid late bears simple interest of ${formatNumber(percent)} % a year: ${formatMoney(amount)} to date.`;
}

function howToPay({ setup: { payTo }, invoice }: ReminderInput): string {
  if (!payTo) return '';
  const lines = [
    payTo.iban === '' ? '' : `IBAN ${groupedIban(payTo.iban)}${payTo.bic === '' ? '' : `, BIC ${payTo.bic}`}, ${payTo.name}`,
    payTo.words.trim(),
  ].filter((line) => line !== '');
  return lines.length === 0 ? '' : `To pay, please give ${invoice.number} as the reference:\n${lines.join('\n')}`;
}

function ending({ tone, invoice }: ReminderInput): string {
  if (invoice.daysLate === 0) return 'Thank you. If it is on its way already, there is nothing to do.';
  if (tone === 'kind')
    return 'If it is on its way already, thank you, and please forget this note. If something is not right with it, tell me.';
  if (tone === 'plain')
    return 'Please let me know when I can expect it, or what stands in the way. If it crossed with this note, thank you.';
  return 'Please pay it now, or tell me today what stands in the way so that we can settle it. If it has been paid meanwhile, thank you.';
}
