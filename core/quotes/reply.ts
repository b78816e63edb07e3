/**
 * The text that goes with a quote, and the polite no: plain text in the client's own tone, ready to copy or to put in a mail.
 */
import type { Question } from '../contract/inquiries.ts';
import type { Job } from '../contract/jobs.ts';
import type { Moment } from '../contract/parts.ts';
import type { QuoteDraft } from '../contract/quotes.ts';
import type { SetupFields } from '../contract/setup.ts';
import { formatMoney } from '../money/format.ts';
import { datesInWords, deadlineInWords, zoneInWords } from '../words/dates.ts';
import { ended } from '../words/ended.ts';
import { questionsForClient } from './ask.ts';
import type { Billed } from './billed.ts';
import { workDates } from './facts.ts';
import type { Tone } from './tone.ts';

type ReplyText = { subject: string; text: string };
type Sender = Pick<SetupFields, 'name' | 'phone' | 'email'>;
type AskedJob = Pick<Job, 'title' | 'role' | 'place' | 'days'>;

export type ReplyInput = {
  setup: Sender;
  job: AskedJob;
  draft: Pick<QuoteDraft, 'totals' | 'deposit' | 'validUntil' | 'offers'>;
  /** Version of the quote, from 1. */
  number: number;
  /** Until when the dates are pencilled; null where they are not. */
  pencil: Moment | null;
  questions: readonly Question[];
  /** From `otherPayer(job, client)`: who pays, where that is somebody else. */
  payer: Pick<Billed, 'name' | 'address'> | null;
  /** From `toneOf(message, contactName)`. */
  tone: Tone;
};

/** The letter to a quote: dates in words, total, valid until, pencilled until, deposit, and what is still open. */
export function replyFor({ setup, job, draft, number, pencil, questions, payer, tone }: ReplyInput): ReplyText {
  const open = [...questionsForClient(questions), ...(payer?.address === '' ? [`To which address shall I bill ${payer.name}?`] : [])];
  const paragraphs = [
    tone.greeting,
    `${tone.formal ? 'Thank you for your inquiry.' : 'Thanks for asking.'} ${offer(job, number)}`,
    [price(draft), payer ? ended(`The invoices go to ${payer.name}${payer.address === '' ? '' : `, ${inOneLine(payer.address)}`}`) : '']
      .filter((sentence) => sentence !== '')
      .join(draft.offers.length > 0 ? '\n\n' : ' '),
    pencilled(pencil, draft),
    open.length === 0
      ? ''
      : `${open.length === 1 ? 'One thing is' : 'Some things are'} still open:\n${open.map((question) => `- ${question}`).join('\n')}`,
    tone.formal ? 'Please let me know if you have any questions.' : 'Questions? Just ask.',
    signature(tone, setup),
  ];
  return { subject: `Quote: ${job.title}${whenOf(job, ', ')}`, text: paragraphs.filter((part) => part !== '').join('\n\n') };
}

/** A no without a reason: none is owed, and a reason invites bargaining. */
export function declineFor({ setup, job, tone }: Pick<ReplyInput, 'setup' | 'job' | 'tone'>): ReplyText {
  const paragraphs = [
    tone.greeting,
    `${tone.formal ? 'Thank you for your inquiry about' : 'Thanks for thinking of me for'} ${job.title}${whenOf(job, ', ')}${whereOf(job)}. I cannot take it on, and would rather tell you now than keep you waiting.`,
    `I hope that it goes well. If the dates move, or for the next one, ${tone.formal ? 'please do ask again' : 'ask me again'}.`,
    signature(tone, setup),
  ];
  return { subject: `Re: ${job.title}${whenOf(job, ', ')}`, text: paragraphs.join('\n\n') };
}

function offer(job: AskedJob, number: number): string {
  const again = number > 1 ? `version ${number} of my quote` : 'my quote';
  return `Attached is ${again} for ${job.title}${whenOf(job, ': ')}${whereOf(job)}.`;
}

function whenOf({ days }: AskedJob, before: string): string {
  return days.length === 0 ? '' : before + datesInWords(workDates({ days }));
}

function whereOf({ place }: AskedJob): string {
  return place ? ` in ${place.name}` : '';
}

function price({ totals, deposit, offers }: ReplyInput['draft']): string {
  if (offers.length > 0) {
    const each = offers.map((offer) => `- ${offer.number}. ${offer.name}: ${formatMoney(offer.totals.gross, { code: true })}`);
    return `There are ${offers.length} offers to choose from:\n${each.join('\n')}`;
  }
  const tax = totals.tax.minor === 0 ? '' : `, ${formatMoney(totals.tax)} of it tax`;
  const first = deposit ? ` A deposit of ${formatMoney(deposit.amount, { code: true })} is due ${deposit.due || 'on your yes'}.` : '';
  return `It comes to ${formatMoney(totals.gross, { code: true })}${tax}.${first}`;
}

/** Validity and pencil, in one sentence where they end together. */
function pencilled(pencil: Moment | null, { validUntil }: ReplyInput['draft']): string {
  const valid = `The quote is valid until ${momentInWords(validUntil)}`;
  if (!pencil) return `${valid}. The dates are not held yet; a written yes settles them if they are still free then.`;
  const held =
    pencil.at === validUntil.at
      ? `${valid}, and I have pencilled the dates for you until then`
      : `${valid}. I have pencilled the dates for you until ${momentInWords(pencil)}`;
  return `${held}; a written yes confirms them.`;
}

/** An address as it was typed, its lines behind each other. */
function inOneLine(address: string): string {
  return address
    .split('\n')
    .map((line) => line.trim().replace(/,$/, ''))
    .filter((line) => line !== '')
    .join(', ');
}

function momentInWords(moment: Moment): string {
  return `${deadlineInWords(moment)}, ${zoneInWords(moment.zone)} time`;
}

function signature(tone: Tone, { name, phone, email }: Sender): string {
  return [tone.closing, name, phone, email].filter((line) => line !== '').join('\n');
}
