/**
 * Insurance and licences against the days and the place of a job.
 */
import type { DocumentKind } from '../../contract/document-kind.ts';
import type { Finding } from '../../contract/fit.ts';
import { holdsIn } from '../../documents/validity.ts';
import { documentInWords } from '../../documents/words.ts';
import { compare } from '../../money/money.ts';
import { formatMoney } from '../../money/format.ts';
import { countryInWords } from '../../words/countries.ts';
import { dateInWords } from '../../words/dates.ts';
import type { BookDocument } from '../book.ts';
import { leadFindings, leadSentence, longest, noteOrAsk, renewal, said, triedFindings, type Holder } from './holder.ts';

/** What the client asks for is needed; what is merely on file is told where it does not reach. */
export function insuranceFindings(holder: Holder): Finding[] {
  const { job } = holder;
  const asked = job.papers?.insurance ?? null;
  const liability = asked ? neededFindings(holder, 'liability insurance') : onFileFindings(holder, 'liability insurance');
  const kit =
    (job.kit ?? []).length > 0 && !job.papers?.needs.includes('equipment insurance') ? onFileFindings(holder, 'equipment insurance') : [];
  return [...liability, ...(asked?.limit ? limitFindings(holder, asked.limit) : []), ...kit];
}

/** What the job was said to need beside what borders and insurers ask for. */
export function licenceFindings(holder: Holder): Finding[] {
  const { job, trip, documents } = holder;
  const needs = job.papers?.needs ?? [];
  const spokenFor: readonly DocumentKind[] = ['right to work', 'carnet', ...(trip.visits.length > 0 ? (['passport'] as const) : [])];
  const own = needs.filter((kind) => !spokenFor.includes(kind) && !(kind === 'liability insurance' && job.papers?.insurance));
  const driven = trip.drives
    ? (['driving licence', 'vehicle'] as const)
        .filter((kind) => !own.includes(kind))
        .flatMap((kind) => drivingFindings(holder, kind, documents))
    : [];
  return [...own.flatMap((kind) => neededFindings(holder, kind)), ...driven];
}

function neededFindings(holder: Holder, kind: DocumentKind): Finding[] {
  const { trip, documents, home, job } = holder;
  const need = { kind, country: null };
  const all = documents.filter((one) => one.kind === kind);
  const held = longest(all.filter((one) => holdsIn(one, job.place.country, home.country))) ?? longest(all);
  const tried = triedFindings(holder, need, held);
  if (tried) return tried;
  const what = documentInWords(kind, null);
  const about = kind === 'liability insurance' || kind === 'equipment insurance' ? 'insurance' : 'licence';
  if (!held) {
    const lead = leadSentence(holder, need);
    return [
      said(
        holder,
        about,
        'settle',
        `This job asks for the ${what}, and none is on file. ${lead.text}`,
        { what, ...lead.numbers },
        noteOrAsk(need),
      ),
    ];
  }
  const { until, from } = held;
  if (until !== null && until < trip.last) {
    const sentence = `The ${what} on file runs out on ${dateInWords(until)}, before the last day of this job, ${dateInWords(trip.last)}.`;
    return [said(holder, about, 'blocks', sentence, { what, until, last: trip.last }, renewal(need)), ...leadFindings(holder, need, held)];
  }
  const open = [
    until === null ? 'the last day of the one on file is not noted' : '',
    from !== null && from > trip.first
      ? `the one on file begins on ${dateInWords(from)}, after the first day, ${dateInWords(trip.first)}`
      : '',
    holdsIn(held, job.place.country, home.country)
      ? ''
      : `the one on file does not say that it holds in ${countryInWords(job.place.country)}`,
  ].filter((part) => part !== '');
  return open.map((part) =>
    said(
      holder,
      about,
      'settle',
      `This job asks for the ${what}, and ${part}. Ask whoever issued it.`,
      { what, country: job.place.country },
      noteOrAsk(need),
    ),
  );
}

/** A document that nobody asked for is good to know where it does not cover the days or the place. */
function onFileFindings(holder: Holder, kind: DocumentKind): Finding[] {
  const { trip, documents, home, job } = holder;
  const all = documents.filter((one) => one.kind === kind);
  const covers = all.some(
    (one) =>
      holdsIn(one, job.place.country, home.country) &&
      (one.until === null || one.until >= trip.last) &&
      (one.from === null || one.from <= trip.first),
  );
  if (all.length === 0 || covers || holder.tried.some((one) => one.kind === kind)) return [];
  const held = longest(all.filter((one) => holdsIn(one, job.place.country, home.country))) ?? longest(all);
  const until = held?.until ?? null;
  const named = countryInWords(job.place.country);
  const why =
    !held || !holdsIn(held, job.place.country, home.country)
      ? `does not say that it holds in ${named}`
      : until !== null && until < trip.last
        ? `runs out on ${dateInWords(until)}, before the last day, ${dateInWords(trip.last)}`
        : `begins on ${dateInWords(held.from ?? '')}, after the first day, ${dateInWords(trip.first)}`;
  return [
    said(
      holder,
      'insurance',
      'know',
      `The ${kind} on file ${why}. Ask your insurer.`,
      { what: kind, country: job.place.country },
      renewal({ kind, country: null }),
    ),
  ];
}

/** Who drives on a licence or in a car whose paper has run out must settle it: somebody else drives, or it is renewed. */
function drivingFindings(holder: Holder, kind: 'driving licence' | 'vehicle', documents: readonly BookDocument[]): Finding[] {
  const { trip } = holder;
  const held = longest(documents.filter((one) => one.kind === kind));
  const until = held?.until ?? null;
  if (!held || until === null || until >= trip.homeOn) return [];
  const need = { kind, country: null };
  const tried = triedFindings(holder, need, held);
  if (tried) return tried;
  const what = documentInWords(kind, null);
  const sentence = `The ${what} on file runs out on ${dateInWords(until)}, before you are home on ${dateInWords(trip.homeOn)}, and part of the way is driven.`;
  return [said(holder, 'licence', 'settle', sentence, { what, until, homeOn: trip.homeOn }, renewal(need))];
}

/** What is insured against what was asked for; two currencies are for the insurer to compare. */
function limitFindings(holder: Holder, limit: NonNullable<BookDocument['limit']>): Finding[] {
  const held = holder.documents.filter((one) => one.kind === 'liability insurance');
  if (held.length === 0 || holder.tried.some(({ kind }) => kind === 'liability insurance')) return [];
  const limits = held.flatMap((one) => one.limit ?? []);
  const enough = limits.some((one) => one.currency === limit.currency && compare(one, limit) >= 0);
  if (enough) return [];
  const asks = `They ask for a liability limit of ${formatMoney(limit, { code: true })}`;
  const most = limits.filter(({ currency }) => currency === limit.currency).toSorted((a, b) => b.minor - a.minor)[0];
  const has = most
    ? `${formatMoney(most, { code: true })} is on file`
    : limits.length > 0
      ? `what is on file is in ${limits[0]?.currency ?? ''}`
      : 'the limit on file is not noted';
  return [
    said(
      holder,
      'insurance',
      'settle',
      `${asks}; ${has}. Ask your insurer.`,
      { what: 'liability insurance', limit: formatMoney(limit, { code: true }) },
      [
        {
          kind: 'ask for document',
          label: 'Ask the insurer for that limit',
          tryOn: { documents: [{ kind: 'liability insurance', country: null, asked: true }] },
        },
      ],
    ),
  ];
}
