/**
 * The ledger as tables for an accountant: dates as YYYY-MM-DD, amounts as plain decimals with their currency in a column of its own.
 */
import type { InvoiceRow } from '../contract/invoices.ts';
import type { Expense, MileageRow, PerDiemRow } from '../contract/expenses.ts';
import type { Payment } from '../contract/payments.ts';
import { decimalText, fixedText } from '../money/exact.ts';
import { majorOf, type Money } from '../money/money.ts';
import { exponentOf } from '../money/currencies.ts';
import type { Table } from './csv.ts';
import type { YearSums } from './year.ts';
import type { Sum } from './sums.ts';

/** A plain decimal with the places of its currency. */
const plainAmount = (amount: Money): string => fixedText(majorOf(amount), exponentOf(amount.currency));

/** Issued papers as they stand today, oldest first. */
export function invoiceTable(invoices: readonly InvoiceRow[]): Table {
  return {
    heads: [
      'Number',
      'Kind',
      'Issued',
      'Due',
      'Client',
      'Job',
      'Currency',
      'Net',
      'Tax',
      'Gross',
      'To pay',
      'Paid',
      'Credited',
      'Written off',
      'Open',
      'State',
      'Home currency for one',
      'Rate of',
    ],
    rows: invoices.map((row) => [
      row.number,
      row.kind,
      row.issueDate,
      row.kind === 'credit note' ? '' : row.dueDate,
      row.billedTo,
      row.jobTitle,
      row.currency,
      ...[row.net, row.tax, row.gross, row.toPay, row.paid, row.credited, row.writtenOff, row.open].map(plainAmount),
      row.state,
      row.rate ? decimalText(row.rate.rate) : '',
      row.rate?.date ?? '',
    ]),
  };
}

/** Payments, one row for each part of one. */
export function paymentTable(payments: readonly Payment[], clientName: (id: string | null) => string): Table {
  return {
    heads: [
      'Date',
      'Kind',
      'Client',
      'How',
      'Currency',
      'Amount',
      'For invoice',
      'Invoice currency',
      'Part',
      'Home currency for one',
      'Gain or loss',
      'In',
      'Note',
    ],
    rows: payments.flatMap((payment) =>
      payment.parts.map((part) => [
        payment.on,
        payment.kind,
        clientName(payment.clientId),
        payment.how,
        payment.amount.currency,
        plainAmount(payment.amount),
        part.invoiceId === null ? 'credit' : part.number,
        part.amount.currency,
        plainAmount(part.amount),
        payment.rate ? decimalText(payment.rate.rate) : '',
        part.gain ? plainAmount(part.gain) : '',
        part.gain?.currency ?? '',
        payment.note,
      ]),
    ),
  };
}

/** Income by client and by month, in each currency and at home; what has no rate leaves the last cell empty. */
export function incomeTable(years: readonly YearSums[], home: string): Table {
  const lines = (by: string, name: string, billed: Sum, received: Sum) => {
    const currencies = [...new Set([...billed.by, ...received.by].map(({ currency }) => currency))];
    const of = (sum: Sum, currency: string) => sum.by.find((each) => each.currency === currency) ?? { minor: 0, currency };
    return currencies.map((currency) => [
      by,
      name,
      currency,
      plainAmount(of(billed, currency)),
      plainAmount(of(received, currency)),
      received.home ? plainAmount(received.home) : '',
    ]);
  };
  return {
    heads: ['By', 'Name', 'Currency', 'Billed', 'Received', `All received, in ${home}`],
    rows: years.flatMap(({ months, clients, jobs }) => [
      ...months.flatMap(({ month, billed, received }) => lines('month', month, billed, received)),
      ...clients.flatMap(({ name, billed, received }) => lines('client', name, billed, received)),
      ...jobs.flatMap(({ title, billed, received }) => lines('job', title, billed, received)),
    ]),
  };
}

/** What was spent; the rate is the job's currency for one unit of the expense's. */
export function expenseTable(expenses: readonly (Expense & { title: string | null })[]): Table {
  return {
    heads: ['Date', 'Category', 'What', 'Currency', 'Amount', 'Job', 'Charged on', 'Mark-up per cent', 'Rate', 'Rate of', 'Receipt'],
    rows: expenses.map((row) => [
      row.on,
      row.category,
      row.what,
      row.amount.currency,
      plainAmount(row.amount),
      row.title,
      row.billed ? 'yes' : 'no',
      decimalText(row.markUpPercent),
      row.rate ? decimalText(row.rate.rate) : '',
      row.rate?.date ?? '',
      row.receipt?.name ?? '',
    ]),
  };
}

/** Drives; what is estimated says so. */
export function mileageTable(rows: readonly MileageRow[]): Table {
  return {
    heads: ['Date', 'Job', 'From', 'To', 'Distance', 'Unit', 'Rate', 'Currency', 'Amount', 'Source', 'Reason'],
    rows: rows.map((row) => [
      row.date,
      row.title,
      row.from,
      row.to,
      decimalText(row.distance),
      row.unit,
      row.rate === null ? '' : decimalText(row.rate),
      row.amount?.currency ?? '',
      row.amount ? plainAmount(row.amount) : '',
      row.source,
      row.reason,
    ]),
  };
}

/** Dates away; a date without a rate has no amount, and its reason says so. */
export function perDiemTable(rows: readonly PerDiemRow[]): Table {
  return {
    heads: ['Date', 'Job', 'Place', 'Currency', 'Amount', 'Reason'],
    rows: rows.map((row) => [
      row.date,
      row.title,
      row.place,
      row.amount?.currency ?? '',
      row.amount ? plainAmount(row.amount) : '',
      row.reason,
    ]),
  };
}
