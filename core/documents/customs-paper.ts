/**
 * The customs list as a paper and as a table.
 */
import type { CustomsList } from '../contract/documents.ts';
import type { Table } from '../ledger/csv.ts';
import { decimalText, exact, fixedText } from '../money/exact.ts';
import { exponentOf } from '../money/currencies.ts';
import { majorOf } from '../money/money.ts';
import {
  factOf,
  frameOf,
  isKnown,
  onPaper,
  typedBySender,
  type PaperFacts,
  type PaperFrame,
  type PaperSign,
  type PaperSum,
  type PaperTable,
  type Sender,
} from '../papers/content.ts';
import { countInWords } from '../words/amounts.ts';
import { countryInWords } from '../words/countries.ts';
import { paperDate, paperSpan } from '../words/dates.ts';
import { paperLines, paperText, type TypedText } from '../words/letters.ts';

/** `madeAt` is an instant, UTC with Z; dates are those of leaving home and of being home again. */
export type CustomsPaperInput = {
  sender: Sender;
  job: string;
  goesTo: string;
  homeCountry: string;
  leaves: string;
  homeOn: string;
  date: string;
  madeAt: string;
  list: CustomsList;
};

type CustomsPaper = PaperFrame & PaperTable & { facts: PaperFacts; sums: PaperSum[]; sign: PaperSign; notes: string[] };

/** To the gram, so that the figures of a column stand under one another. */
const kilograms = (grams: number): string => fixedText(exact(grams).div(1000), 3);

/** The whole content of the paper. */
export function customsPaperContent({ sender, job, goesTo, homeCountry, leaves, homeOn, date, list }: CustomsPaperInput): CustomsPaper {
  return {
    ...frameOf(sender, 'Customs list', `Customs list of ${paperDate(date)}`, [`made ${paperDate(date)}`], job),
    facts: {
      left: [factOf('Holder', [sender.name, ...paperLines(sender.address)]), factOf('For', [job])].filter(isKnown),
      right: [
        factOf('Goes to', [goesTo]),
        factOf('From', [countryInWords(homeCountry)]),
        factOf('Out and back', [paperSpan(leaves, homeOn)]),
        factOf('Used for', ['Filming by the holder. All of it is to leave again.']),
      ],
    },
    columns: { what: 'Thing and serial', quantity: 'Pieces', price: 'Weight, kg', tax: 'Origin', amount: 'Value' },
    sections: [
      {
        head: 'Kit',
        rows: list.rows.map(({ number, name, serial, count, grams, origin, value }) => ({
          what: paperText(`${number}. ${name}`),
          ...(serial === '' ? {} : { note: paperText(`Serial ${serial}`) }),
          quantity: String(count),
          unit: 'pc',
          price: grams === null ? 'not known' : kilograms(grams),
          tax: origin ?? '?',
          amount: value ? onPaper(value, { code: true }) : 'not known',
        })),
      },
    ],
    sums: [
      { label: 'Pieces', amount: String(list.pieces), note: '', weight: 'plain' },
      {
        label: 'Weight',
        amount: `${kilograms(list.grams)} kg`,
        note: list.rows.some(({ grams }) => grams === null) ? 'of the things whose weight is known' : '',
        weight: 'plain',
      },
      ...(list.values.length > 1
        ? list.values.map((value): PaperSum => ({ label: `Value in ${value.currency}`, amount: onPaper(value), note: '', weight: 'plain' }))
        : []),
      ...(list.total
        ? [{ label: 'Value in all', amount: onPaper(list.total, { code: true }), note: ratesInWords(list), weight: 'total' as const }]
        : list.values.length > 1
          ? [
              {
                label: 'Value in all',
                amount: 'apart',
                note: 'No dated rate was given, so the currencies stand apart.',
                weight: 'total' as const,
              },
            ]
          : []),
    ],
    sign: {
      head: 'Signed',
      sentence: 'The things on this list leave with the holder and come back unchanged.',
      fields: ['Place and date', 'Signature of the holder', 'Customs, going out', 'Customs, coming back'],
    },
    notes: [...list.missing, 'A list of the holder, not a carnet. What is asked for is for customs to say.'],
  };
}

function ratesInWords({ rates, total }: CustomsList): string {
  return rates
    .map(({ currency, rate, date }) => `1 ${currency} = ${decimalText(rate, 6)} ${total?.currency ?? ''} on ${paperDate(date)}`)
    .join('; ');
}

/** Every text on it that somebody typed. */
export function typedOnCustoms({ sender, job, list }: CustomsPaperInput): TypedText[] {
  return [
    ...typedBySender(sender),
    { field: 'the name of the job', text: job },
    ...list.rows.map(({ name, serial }) => ({ field: `the thing ${name}`, text: `${name} ${serial}` })),
  ];
}

/** The same as a table: a line for each row, then one for each total. Weights in kilograms, values in major units. */
export function customsTable({ rows, pieces, grams, values, total }: CustomsList): Table {
  const amount = (minor: { minor: number; currency: string }) => fixedText(majorOf(minor), exponentOf(minor.currency));
  return {
    heads: ['Number', 'Thing', 'Serial', 'Pieces', 'Weight kg', 'Country of origin', 'Value', 'Currency'],
    rows: [
      ...rows.map((row) => [
        row.number,
        row.name,
        row.serial,
        row.count,
        row.grams === null ? null : decimalText(exact(row.grams).div(1000), 3),
        row.origin,
        row.value && amount(row.value),
        row.value?.currency ?? null,
      ]),
      ...values.map((value) => [null, `Total in ${value.currency}`, null, null, null, null, amount(value), value.currency]),
      [
        null,
        'In all',
        countInWords(rows.length, 'line'),
        pieces,
        decimalText(exact(grams).div(1000), 3),
        null,
        total && amount(total),
        total?.currency ?? null,
      ],
    ],
  };
}
