/**
 * What stands on the paper of a client's statement, as data.
 */
import type { PayTo } from '../invoices/payment-code.ts';
import { entryInWords, type StatementRow } from '../invoices/statement.ts';
import { negate, type Money } from '../money/money.ts';
import { paperDate } from '../words/dates.ts';
import { paperLines, paperText, type TypedText } from '../words/letters.ts';
import {
  factOf,
  frameOf,
  isKnown,
  onPaper,
  typedBySender,
  type PaperFacts,
  type PaperFrame,
  type PaperPay,
  type PaperSection,
  type PaperSum,
  type PaperTable,
  type Sender,
} from './content.ts';
import { payOf, typedOfAccount } from './pay.ts';

/** Rows of one currency with the balance after each; `madeAt` is an instant, UTC with Z. */
export type StatementPaperInput = {
  sender: Sender;
  payTo: PayTo;
  client: { name: string; address: string };
  /** The last date that counts, `YYYY-MM-DD`. */
  asOf: string;
  madeAt: string;
  rows: readonly StatementRow[];
  /** What is left after the last row. */
  balance: Money;
};

type StatementPaper = PaperFrame & PaperTable & { facts: PaperFacts; sums: PaperSum[]; pay: PaperPay | null; notes: string[] };

/** The whole content of the paper. */
export function statementPaperContent({ sender, payTo, client, asOf, rows, balance }: StatementPaperInput): StatementPaper {
  const date = paperDate(asOf);
  const { currency } = balance;
  return {
    ...frameOf(sender, 'Statement', `Statement of ${date}`, [`as of ${date}`], client.name),
    facts: {
      left: [factOf('For', [client.name, ...paperLines(client.address)])].filter(isKnown),
      right: [factOf('Currency', [currency])],
    },
    columns: { what: 'What', quantity: '', price: `Amount, ${currency}`, amount: `Balance, ${currency}` },
    sections: sectionsByDate(rows),
    sums: [{ label: `Open on ${date}`, amount: onPaper(balance), note: backInWords(balance), weight: 'total' }],
    pay:
      balance.minor > 0
        ? payOf(payTo, {
            what: onPaper(balance, { code: true }),
            amount: balance,
            reference: `Statement of ${date}`,
            coded: `Statement ${asOf}`,
          })
        : null,
    notes: ['What was issued or paid after that date does not stand on it.'],
  };
}

/** A date stands once over the rows that share it. */
function sectionsByDate(rows: readonly StatementRow[]): PaperSection[] {
  return [...Map.groupBy(rows, ({ on }) => on)].map(([on, own]) => ({
    head: paperDate(on),
    rows: own.map((row) => ({
      what: paperText(entryInWords(row)),
      quantity: '',
      unit: '',
      price: onPaper(row.amount),
      amount: onPaper(row.balance),
    })),
  }));
}

function backInWords(balance: Money): string {
  return balance.minor < 0 ? `More was paid than was billed: ${onPaper(negate(balance), { code: true })} is your credit.` : '';
}

/** Every text on it that somebody typed. */
export function typedOnStatement({ sender, payTo, client, rows }: StatementPaperInput): TypedText[] {
  return [
    ...typedBySender(sender),
    { field: "the client's name", text: client.name },
    { field: "the client's billing address", text: client.address },
    ...rows.map(({ name, on }) => ({ field: `the entry of ${paperDate(on)}`, text: name })),
    ...typedOfAccount(payTo),
  ];
}
