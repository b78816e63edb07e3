/**
 * Documents on the Desk: what runs out, what a booked trip still asks for and by when it must be asked for, certificates not sent.
 */
import type { Clock } from '../contract/desk.ts';
import type { Document } from '../contract/documents.ts';
import type { Finding } from '../contract/fit.ts';
import type { Knows } from '../contract/knows.ts';
import { askBy } from '../documents/lead.ts';
import { titleOf } from '../documents/words.ts';
import { instantText, wallAt } from '../time/read.ts';
import { dateIn, dateLater } from '../time/wall.ts';
import { joined } from '../words/lists.ts';
import { SHOWN } from './clocks.ts';
import { dayWords, whenWords } from './when.ts';

/** A document is told of so many days before it runs out (common practice). */
const AHEAD_DAYS = 60;

/** So many are named on one line; more are counted. */
const NAMED = 2;

type OfJob = { id: string; version: number; title: string };

/** Those that run out within sixty days, or did in the last fourteen, unless another of their kind, holder and place lasts longer. */
export function documentClocks(documents: readonly Document[], nameOf: (handId: string) => string, now: number, zone: string): Clock[] {
  const to = dateLater(dateIn(zone, now), AHEAD_DAYS);
  return documents.flatMap((one) => {
    const { id, until, handId } = one;
    if (until === null || until > to || documents.some((other) => replaces(other, one))) return [];
    const at = endOf(until, zone);
    if (at <= now - SHOWN) return [];
    const whose = handId === null ? '' : `${nameOf(handId)}: `;
    return [
      {
        id: `document:${id}`,
        kind: 'document' as const,
        at: instantText(at),
        late: at <= now,
        jobId: null,
        jobVersion: 0,
        sentence: `${whose}${titleOf(one)} ${at <= now ? 'ran' : 'runs'} out at ${whenWords(at, zone, now)}`,
        second: one.leadDays === null ? 'renew it, and note the new last day' : `a new one takes about ${one.leadDays} business days`,
        action: 'document',
      },
    ];
  });
}

function replaces(other: Document, one: Document): boolean {
  const same = other.kind === one.kind && other.title === one.title && other.handId === one.handId;
  return (
    same &&
    other.until !== null &&
    other.until > (one.until ?? '') &&
    one.countries.every((country) => other.worldwide || other.countries.includes(country))
  );
}

/** What part 5 of the check still finds for a job on the books; `callAt` is its first call, epoch ms, `holidays` those at home between two dates. */
export type PapersOfTrip = {
  job: OfJob;
  callAt: number;
  findings: readonly Finding[];
  holidays: (from: string, to: string) => ReadonlySet<string>;
};

/**
 * One clock for a job whose papers are not settled: until the last date on which what takes longest can be asked for, else until first
 * call. Nothing once the call is past.
 */
export function papersClock({ job, callAt, findings, holidays }: PapersOfTrip, now: number, zone: string): Clock | null {
  const open = findings.filter(({ kind, hardness }) => hardness !== 'know' && kind !== 'lead time');
  if (open.length === 0 || callAt <= now) return null;
  const call = wallAt(callAt, zone).slice(0, 10);
  const leads = findings.flatMap(({ numbers: { lead } }) => (typeof lead === 'number' ? [lead] : []));
  const lastAsk = () => endOf(askBy(call, Math.max(...leads), holidays(dateIn(zone, now), call)), zone);
  const at = leads.length > 0 ? Math.min(callAt, lastAsk()) : callAt;
  const all = [...new Set(open.map(wordsOf))];
  const what = joined(all.length > NAMED + 1 ? [...all.slice(0, NAMED), `${all.length - NAMED} more`] : all);
  const late = at <= now;
  return {
    id: `papers:${job.id}`,
    kind: 'papers',
    at: instantText(at),
    late,
    jobId: job.id,
    jobVersion: job.version,
    sentence: `${job.title}: ${what} not settled`,
    second: [
      leads.length === 0
        ? ''
        : late
          ? 'asked for now it may come too late'
          : `ask by ${dayWords(at - 1, zone, now) || 'today'}, or it may come too late`,
      `first call ${whenWords(callAt, zone, now)}`,
    ]
      .filter((part) => part !== '')
      .join('; '),
    action: 'papers',
  };
}

function wordsOf({ kind, numbers }: Finding): string {
  if (kind === 'customs') return 'customs list or carnet';
  return typeof numbers['what'] === 'string' ? numbers['what'] : kind;
}

/** An insurance certificate that was asked for, until it is sent; due at first call where no date was given. Nothing once the job began. */
export function certificateClock(
  { job, insurance, callAt }: { job: OfJob; insurance: Knows['insurance']; callAt: number },
  now: number,
  zone: string,
): Clock | null {
  const { asked, due, sentOn, askedOn, named } = insurance;
  if (!asked || sentOn !== null || callAt <= now) return null;
  const at = due === null ? callAt : endOf(due, zone);
  const insurer =
    askedOn === null ? 'the insurer is not asked yet' : `the insurer was asked ${dayWords(endOf(askedOn, zone) - 1, zone, now) || 'today'}`;
  return {
    id: `certificate:${job.id}`,
    kind: 'certificate',
    at: instantText(at),
    late: at <= now,
    jobId: job.id,
    jobVersion: job.version,
    sentence: `${job.title}: insurance certificate ${due === null ? 'needed' : at <= now ? 'was due' : 'due'} by ${whenWords(at, zone, now)}`,
    second: [insurer, named === '' ? '' : `names ${named}`].filter((part) => part !== '').join('; '),
    action: 'certificate',
  };
}

/** The end of a date at home, epoch ms. */
function endOf(date: string, zone: string): number {
  return Temporal.PlainDate.from(date).add({ days: 1 }).toZonedDateTime(zone).epochMilliseconds;
}
