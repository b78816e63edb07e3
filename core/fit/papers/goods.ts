/**
 * What goes over a border with the kit: a customs list, or a carnet.
 */
import type { Finding, Lift } from '../../contract/fit.ts';
import { carnetBetween, customsBorder, whomToAsk } from '../../documents/rules.ts';
import { countInWords } from '../../words/amounts.ts';
import { countryInWords } from '../../words/countries.ts';
import { dateInWords } from '../../words/dates.ts';
import { leadSentence, longest, said, triedFindings, type Holder } from './holder.ts';

/** @param asIfMade the customs list is tried on as if it were made */
export function customsFindings(holder: Holder, asIfMade: boolean): Finding[] {
  const { home, trip, documents, job } = holder;
  const { country } = job.place;
  const pieces = (job.kit ?? []).reduce((sum, { count }) => sum + count, 0);
  if (pieces === 0 || !customsBorder(home.country, country)) return [];
  const named = countryInWords(country);
  const need = { kind: 'carnet', country } as const;
  const held = longest(
    documents.filter(({ kind, worldwide, countries }) => kind === 'carnet' && (worldwide || countries.includes(country))),
  );
  const tried = triedFindings(holder, need, held);
  if (tried) return tried;
  const until = held?.until ?? null;
  if (until !== null && until >= trip.homeOn) return [];
  const whom = whomToAsk(country, named, 'customs');
  const goes = `${countInWords(pieces, 'piece')} of kit would go to ${named}`;
  if (job.papers?.customsList || asIfMade) {
    const made = asIfMade && !job.papers?.customsList ? 'as if the customs list were made' : 'the customs list is made';
    return [said(holder, 'customs', 'know', `${goes}; ${made}. Whether it is enough: ask ${whom}.`, { country, pieces })];
  }
  const possible = carnetBetween(home.country, country);
  const lead = possible ? leadSentence(holder, need) : { text: '', numbers: {} };
  const carnet = !possible
    ? 'Whether a carnet is taken there is not on file.'
    : held
      ? until === null
        ? 'The last day of the carnet on file is not noted.'
        : `The carnet on file runs out on ${dateInWords(until)}, before you are home on ${dateInWords(trip.homeOn)}.`
      : `No carnet is on file. ${lead.text.replace(/^That/, 'One')}`;
  const lifts: Lift[] = [
    { kind: 'customs list', label: 'Make the customs list', tryOn: { customsList: true } },
    ...(possible ? [{ kind: 'ask for document', label: 'Ask for a carnet now', tryOn: { documents: [{ ...need, asked: true }] } }] : []),
  ];
  const sentence = `${goes}, and no customs list of this job is made. ${carnet} What is asked for: ask ${whom}.`;
  return [said(holder, 'customs', 'settle', sentence, { country, pieces, ...lead.numbers }, lifts)];
}
