/**
 * My terms as a paper says them: plain text whose gaps are filled with what a version of the quote has frozen.
 */
import type { Job } from '../contract/jobs.ts';
import type { Place } from '../contract/parts.ts';
import type { QuoteDraft } from '../contract/quotes.ts';
import type { RateCardFields } from '../contract/rates.ts';
import { formatMoney, formatNumber } from '../money/format.ts';
import { exact } from '../money/exact.ts';
import { placeInWords } from '../quotes/facts.ts';
import { termsInWords } from '../quotes/terms.ts';
import { datesInWords } from '../words/dates.ts';
import { joined } from '../words/lists.ts';
import { STARTING_TERMS } from './terms-default.ts';

/** `draft` is the version's, of the offer that counts; `card` what its hours are priced by, null where that is not known any more. */
export type TermsFacts = {
  me: string;
  home: Place;
  client: string;
  job: Pick<Job, 'title' | 'place'>;
  /** Dates that the version was priced for, YYYY-MM-DD. */
  dates: readonly string[];
  version: number;
  draft: QuoteDraft;
  card: Pick<RateCardFields, 'dayHours' | 'overtime'> | null;
  /** Per cent a year on what is paid late; null for none. */
  lateInterestPercent: string | null;
};

type Gap = { name: string; about: string; fill: (facts: TermsFacts) => string };

const said = (label: string) => (facts: TermsFacts) => termsInWords(facts.draft).find((term) => term.label === label)?.text ?? '';
const withoutStop = (text: string): string => text.replace(/\.+$/, '');

const gaps: readonly Gap[] = [
  { name: 'me', about: 'the name on my papers', fill: ({ me }) => me },
  { name: 'client', about: 'whom the work is for', fill: ({ client }) => client || 'the client' },
  { name: 'job', about: 'title of the job', fill: ({ job }) => job.title },
  { name: 'dates', about: 'its dates', fill: ({ dates }) => datesInWords(dates) },
  { name: 'place', about: 'its place', fill: ({ job, home }) => (job.place ? placeInWords(job.place, home) : 'at the place agreed') },
  { name: 'version', about: 'number of the quote', fill: ({ version }) => String(version) },
  { name: 'total', about: 'what it comes to with tax', fill: ({ draft }) => formatMoney(draft.totals.gross, { code: true }) },
  { name: 'deposit', about: 'how much and when it is due', fill: depositInWords },
  { name: 'payment', about: 'when invoices are due', fill: said('Payment') },
  { name: 'late interest', about: 'set in Setup', fill: interestInWords },
  { name: 'overtime', about: 'length of a day and what is past it', fill: overtimeInWords },
  {
    name: 'approver',
    about: 'who may approve overtime',
    fill: (facts) => withoutStop(said('Overtime approved by')(facts)) || 'whoever gave the job',
  },
  { name: 'cancellation', about: 'the scale', fill: said('Cancellation') },
  { name: 'postponement', about: 'from the rate card', fill: said('Postponement') },
  { name: 'rounds', about: 'rounds of notes, where the quote has editing', fill: said('Rounds of notes') },
  { name: 'usage', about: 'from the rate card', fill: said('Usage') },
  { name: 'originals', about: 'from the rate card', fill: said('Originals') },
  { name: 'illness', about: 'from the rate card', fill: said('Illness') },
  { name: 'weather', about: 'from the rate card', fill: said('Weather') },
];

/** What a text may leave open, with what it is filled with. */
export const termsGaps: readonly { name: string; about: string }[] = gaps.map(({ name, about }) => ({ name, about }));

const GAP = /\{([^{}\n]*)\}/g;

/** Names in braces that nothing fills, each once. */
export function unknownGaps(text: string): string[] {
  const names = [...text.matchAll(GAP)].map(([, name = '']) => name.trim());
  return [...new Set(names.filter((name) => !gaps.some((gap) => gap.name === name)))];
}

/** Why a terms text cannot be filled, as what a form says of its field; null where it can. */
export function termsTrouble(text: string): string | null {
  const [unknown, ...more] = unknownGaps(text);
  if (unknown === undefined) return null;
  const named = joined([unknown, ...more].map((name) => `{${name}}`));
  return `has ${named}, which nothing fills; use ${joined(gaps.slice(0, 4).map(({ name }) => `{${name}}`))} or another of the gaps listed`;
}

/**
 * The text with its gaps filled. A paragraph with a gap that has nothing to say is left out, with its heading.
 * @param own my text; empty for the starting text. Gaps that nothing fills stay as they are.
 */
export function filledTerms(own: string, facts: TermsFacts): string {
  const text = own.trim() === '' ? STARTING_TERMS : own;
  return text
    .replace(/\r\n?/g, '\n')
    .split(/\n[ \t]*\n+/)
    .flatMap((paragraph) => {
      let silent = false;
      const filled = paragraph.replace(GAP, (whole, name: string) => {
        const gap = gaps.find((each) => each.name === name.trim());
        if (!gap) return whole;
        const words = gap.fill(facts).trim();
        if (words === '') silent = true;
        return words;
      });
      return silent || filled.trim() === '' ? [] : [filled.trim()];
    })
    .join('\n\n');
}

function depositInWords({ draft: { deposit } }: TermsFacts): string {
  return deposit ? `${formatMoney(deposit.amount, { code: true })} (${deposit.note}), due ${deposit.due},` : '';
}

function interestInWords({ lateInterestPercent }: TermsFacts): string {
  if (lateInterestPercent === null || exact(lateInterestPercent).equals(0)) return '';
  return `What is paid late bears interest of ${formatNumber(lateInterestPercent)} % a year, from the day after it was due.`;
}

/** "A day has 10 h. Past it the hourly base is charged 1.5 times for 4 h, then 2 times." */
function overtimeInWords({ card }: TermsFacts): string {
  if (!card) return 'Hours past the day are overtime at the rates of the quote.';
  const day = `A day has ${formatNumber(card.dayHours)} h.`;
  const tiers = card.overtime.map(({ fromHours, toHours, times }) => {
    const from = exact(fromHours).equals(0) ? '' : `from ${formatNumber(fromHours)} h past it `;
    const to = toHours === null ? '' : ` up to ${formatNumber(toHours)} h past it`;
    return `${from}${formatNumber(times)} times${to}`;
  });
  return tiers.length === 0 ? day : `${day} Past it, each started half hour is charged at the hourly base: ${tiers.join(', ')}.`;
}
