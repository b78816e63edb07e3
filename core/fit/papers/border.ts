/**
 * What is asked for at a border of a person: a passport, and the right to work.
 */
import type { Finding } from '../../contract/fit.ts';
import { lastsBeyond, monthsLater } from '../../documents/validity.ts';
import { moveFreely, passportRule, sourceInWords, whomToAsk } from '../../documents/rules.ts';
import { countInWords } from '../../words/amounts.ts';
import { countryInWords } from '../../words/countries.ts';
import { dateInWords, paperDate } from '../../words/dates.ts';
import { joined } from '../../words/lists.ts';
import type { BookDocument } from '../book.ts';
import { leadFindings, leadSentence, longest, noteOrAsk, renewal, said, triedFindings, type Holder } from './holder.ts';
import type { Visit } from './trip.ts';

const PASSPORT = { kind: 'passport', country: null } as const;
/** What many countries ask, where what one asks is not on file. */
const SIX = 6;

export function passportFindings(holder: Holder): Finding[] {
  const { home, trip, documents } = holder;
  if (trip.visits.length === 0) return [];
  const cardWillDo = trip.visits.every(({ country }) => moveFreely(home.country, country));
  const held = longest(documents.filter(({ kind }) => kind === 'passport' || (cardWillDo && kind === 'identity card')));
  const tried = triedFindings(holder, PASSPORT, held);
  if (tried) return tried;
  const where = joined(trip.visits.map(({ country }) => countryInWords(country)));
  const whom = joined([...new Set(trip.visits.map(({ country }) => whomToAsk(country, countryInWords(country), 'entry')))]);
  if (!held) {
    const lead = leadSentence(holder, PASSPORT);
    const what = cardWillDo ? 'passport and no identity card' : 'passport';
    const sentence = `The trip leaves ${countryInWords(home.country)} for ${where}, and no ${what} is on file. ${lead.text} What is asked for at the border: ask ${whom}.`;
    return [said(holder, 'passport', 'settle', sentence, { country: where, ...lead.numbers }, noteOrAsk(PASSPORT))];
  }
  const { until, kind } = held;
  if (until === null)
    return [
      said(
        holder,
        'passport',
        'settle',
        `The last day of the ${kind} on file is not noted; the trip goes to ${where}.`,
        { country: where },
        noteOrAsk(PASSPORT),
      ),
    ];
  if (until < trip.homeOn) {
    const sentence = `The ${kind} on file runs out on ${dateInWords(until)}, before you are home on ${dateInWords(trip.homeOn)}.`;
    return [
      said(holder, 'passport', 'blocks', sentence, { until, homeOn: trip.homeOn }, renewal(PASSPORT)),
      ...leadFindings(holder, PASSPORT, held),
    ];
  }
  return trip.visits.flatMap((visit) => validityFindings(holder, held, until, visit));
}

/** What a country asks of a passport that is valid until one is home again: good to know, since it is for the country to say. */
function validityFindings(holder: Holder, held: BookDocument, until: string, { country, enters, leaves }: Visit): Finding[] {
  if (held.country === country) return [];
  const named = countryInWords(country);
  const rule = passportRule(country, held.country);
  const months = rule?.months ?? SIX;
  const needed = monthsLater(leaves, months);
  const whom = whomToAsk(country, named, 'entry');
  const by = rule ? sourceInWords(rule.source, paperDate(rule.source.on)) : '';
  const short = lastsBeyond(until, leaves, months)
    ? []
    : [
        said(
          holder,
          'passport validity',
          'know',
          rule
            ? `${named} asks for a passport valid ${countInWords(months, 'month')} beyond the day of leaving, ${dateInWords(leaves)}: to ${dateInWords(needed)}. Yours runs out on ${dateInWords(until)} (${by}). Ask ${whom}.`
            : `The passport runs out on ${dateInWords(until)}, within six months of leaving ${named} on ${dateInWords(leaves)}. What ${named} asks is not on file: ask ${whom}.`,
          { country, leaving: leaves, until, needed, months },
          renewal(PASSPORT),
        ),
      ];
  const years = rule?.notOlderThanYears;
  const issued = held.from;
  if (years === undefined || issued === null || monthsLater(issued, 12 * years) >= enters) return short;
  const old = `${named} asks for a passport issued within ${years} years of coming in; yours is of ${dateInWords(issued)} (${by}). Ask ${whom}.`;
  return [...short, said(holder, 'passport age', 'know', old, { country, issued, enters, years }, renewal(PASSPORT))];
}

/** Paid work abroad. The program never says that one may. */
export function rightToWorkFindings(holder: Holder): Finding[] {
  const { home, trip, documents, job } = holder;
  const { country } = job.place;
  if (country === home.country) return [];
  const named = countryInWords(country);
  const need = { kind: 'right to work', country } as const;
  const held = longest(
    documents.filter(({ kind, worldwide, countries }) => kind === 'right to work' && (worldwide || countries.includes(country))),
  );
  const tried = triedFindings(holder, need, held);
  if (tried) return tried;
  const ownPassport = documents.some((one) => (one.kind === 'passport' || one.kind === 'identity card') && one.country === country);
  if (ownPassport) return [];
  const whom = whomToAsk(country, named, 'work');
  const until = held?.until ?? null;
  if (held && until !== null && until < trip.last) {
    const sentence = `The right to work in ${named} that is on file runs out on ${dateInWords(until)}, before the last day there, ${dateInWords(trip.last)}.`;
    return [
      said(holder, 'right to work', 'blocks', sentence, { country, until, last: trip.last }, renewal(need)),
      ...leadFindings(holder, need, held),
    ];
  }
  if (held?.from && held.from > trip.first) {
    const sentence = `The right to work in ${named} that is on file begins on ${dateInWords(held.from)}, after the first day there, ${dateInWords(trip.first)}.`;
    return [said(holder, 'right to work', 'settle', sentence, { country, from: held.from, first: trip.first }, noteOrAsk(need))];
  }
  if (held) return [];
  if (moveFreely(home.country, country)) {
    const sentence = `${named} and ${countryInWords(home.country)} are of one area of free movement for its citizens. What must be reported before working there: ask ${whom}.`;
    return [said(holder, 'right to work', 'know', sentence, { country })];
  }
  const lead = leadSentence(holder, need);
  const sentence = `This is paid work in ${named}, and no right to work there is on file. A visit often does not cover paid filming. ${lead.text} Ask ${whom}.`;
  return [said(holder, 'right to work', 'settle', sentence, { country, ...lead.numbers }, noteOrAsk(need))];
}
