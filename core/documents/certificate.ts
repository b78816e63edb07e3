/**
 * The insurance certificate that a client asks for: what on file does not fit it, and a text to the insurer.
 */
import type { Document } from '../contract/documents.ts';
import type { Job } from '../contract/jobs.ts';
import type { Place } from '../contract/parts.ts';
import { formatMoney } from '../money/format.ts';
import { compare } from '../money/money.ts';
import { countryInWords } from '../words/countries.ts';
import { dateInWords, datesInWords } from '../words/dates.ts';
import { holdsIn } from './validity.ts';

/** What does not fit, in sentences; nothing where no certificate is asked for or nothing is known against it. */
export function certificateTroubles(job: Job, insurances: readonly Document[], home: Place): string[] {
  const { asked, limit, named } = job.knows.insurance;
  if (!asked) return [];
  const [held] = insurances.toSorted((a, b) => ((a.until ?? '') > (b.until ?? '') ? -1 : 1));
  if (!held) return ['No liability insurance is on file: note it in Setup, under Documents.'];
  const last = job.days
    .map(({ date }) => date)
    .sort()
    .at(-1);
  const country = job.place?.country;
  return [
    held.until !== null && last !== undefined && held.until < last
      ? `The insurance on file runs out on ${dateInWords(held.until)}, before the last day of the job, ${dateInWords(last)}.`
      : '',
    country !== undefined && !holdsIn(held, country, home.country)
      ? `The insurance on file does not say that it holds in ${countryInWords(country)}.`
      : '',
    limit === null || !held.limit
      ? ''
      : held.limit.currency !== limit.currency
        ? `They ask for ${formatMoney(limit, { code: true })}; the limit on file is in ${held.limit.currency}.`
        : compare(held.limit, limit) < 0
          ? `They ask for ${formatMoney(limit, { code: true })}; ${formatMoney(held.limit, { code: true })} is on file.`
          : '',
    named.trim() === '' ? 'Who is to be named on it is not noted.' : '',
  ].filter((sentence) => sentence !== '');
}

/** A text to the insurer, to be copied; lines without anything known are left out. @param me my name */
export function certificateText(job: Job, insurance: Document | undefined, me: string): { subject: string; text: string } {
  const { named, limit, due, detail } = job.knows.insurance;
  const place = job.place
    ? [job.place.name, job.place.region, countryInWords(job.place.country)].filter((part) => part !== '').join(', ')
    : '';
  const lines = [
    ['Policy', insurance?.number ?? ''],
    ['Event', job.title],
    ['Place', place],
    ['Dates', job.days.length > 0 ? datesInWords(job.days.map(({ date }) => date)) : ''],
    ['To be named', named.trim()],
    ['Limit at least', limit ? formatMoney(limit, { code: true }) : ''],
    ['It must also say', detail.trim()],
    ['Needed by', due ? dateInWords(due) : ''],
  ].filter(([, text]) => text !== '');
  const text = [
    'Hello,',
    '',
    'please send me a certificate of my liability insurance for this job:',
    '',
    ...lines.map(([label, said]) => `${label}: ${said}`),
    '',
    'Please tell me if the cover does not reach to this place, these dates or this limit.',
    '',
    'Regards,',
    me,
  ].join('\n');
  return { subject: `Certificate of insurance for ${job.title}`, text };
}
