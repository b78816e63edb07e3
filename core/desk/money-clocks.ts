/**
 * Clocks about money: hours to enter, bills to make, bills that fall due or are late, hands to pay, order numbers that are missing.
 */
import type { Clock } from '../contract/desk.ts';
import type { HandDue } from '../contract/hours.ts';
import type { InvoiceRow, ReminderTone } from '../contract/invoices.ts';
import type { Money } from '../contract/parts.ts';
import { formatMoney } from '../money/format.ts';
import { instantText } from '../time/read.ts';
import { countInWords } from '../words/amounts.ts';
import { datesInWords, withoutYear } from '../words/dates.ts';
import { whenWords } from './when.ts';

const DAY = 86_400_000;
/** How far ahead a bill that falls due is shown. */
const AHEAD = 14 * DAY;
/** Common practice: a week between reminders. */
const BETWEEN_REMINDERS = 7 * DAY;

type OfJob = { id: string; version: number; title: string };

/** A job in ink that has not had its last bill; instants in epoch milliseconds. */
export type UnbilledJob = {
  job: OfJob;
  inkedAt: number;
  lastWrapAt: number;
  /** Paid dates over without hours. */
  toEnter: readonly string[];
  /** When the first of those ended. */
  toEnterAt: number | null;
  /** Agreed deposit that has no bill yet. */
  deposit: Money | null;
  /** What was agreed on, with tax. */
  total: Money;
  /** The client wants an order number on the bill and there is none. */
  orderMissing: boolean;
};
/** An open bill; `dueAt` is the end of its due date, `jobVersion` of its job. */
export type OpenBill = Pick<InvoiceRow, 'id' | 'number' | 'kind' | 'billedTo' | 'open' | 'state'> & {
  job: OfJob;
  dueAt: number;
  reminded: { tone: ReminderTone; at: number }[];
};
/** What I owe a hand, due at the end of a date. */
export type HandToPay = Pick<HandDue, 'handId' | 'name' | 'open'> & { job: OfJob; dueAt: number };

export type MoneyFacts = { unbilled: readonly UnbilledJob[]; bills: readonly OpenBill[]; hands: readonly HandToPay[] };

/** In no order: the Desk sorts all clocks together. None of them goes away by itself: what is owed stays owed. */
export function moneyClocks({ unbilled, bills, hands }: MoneyFacts, now: number, homeZone: string): Clock[] {
  return [
    ...unbilled.flatMap((each) => ofUnbilled(each, now, homeZone)),
    ...bills.flatMap((bill) => ofBill(bill, now, homeZone) ?? []),
    ...hands.filter(({ dueAt }) => dueAt <= now + AHEAD).map((hand) => ofHand(hand, now, homeZone)),
  ];
}

type Said = Pick<Clock, 'kind' | 'sentence' | 'second' | 'action'>;

function clock(id: string, at: number, { id: jobId, version }: OfJob, now: number, said: Said & Pick<Clock, 'invoiceId'>): Clock {
  return { id: `${said.kind}:${id}`, at: instantText(at), late: at <= now, jobId, jobVersion: version, ...said };
}

function ofUnbilled(
  { job, inkedAt, lastWrapAt, toEnter, toEnterAt, deposit, total, orderMissing }: UnbilledJob,
  now: number,
  zone: string,
): Clock[] {
  const over = lastWrapAt <= now;
  const entered = toEnter.length === 0 || toEnterAt === null;
  return [
    ...(deposit && deposit.minor > 0 && !over
      ? [
          clock(job.id, inkedAt, job, now, {
            kind: 'deposit',
            sentence: `${job.title}: deposit of ${formatMoney(deposit, { code: true })} to bill`,
            second: `inked ${whenWords(inkedAt, zone, now)}`,
            action: 'bill-deposit',
          }),
        ]
      : []),
    ...(entered
      ? []
      : [
          clock(job.id, toEnterAt, job, now, {
            kind: 'hours',
            sentence: `${job.title}: hours of ${withoutYear(datesInWords(toEnter))} to enter`,
            second: over ? 'the bill waits for them' : 'while they are fresh',
            action: 'enter-hours',
          }),
        ]),
    ...(over && entered && total.minor > 0
      ? [
          clock(job.id, lastWrapAt, job, now, {
            kind: 'bill',
            sentence: `${job.title}: invoice to send`,
            second: `wrapped ${whenWords(lastWrapAt, zone, now)}; agreed ${formatMoney(total, { code: true })} with tax`,
            action: 'bill',
          }),
        ]
      : []),
    ...(orderMissing && lastWrapAt <= now + AHEAD
      ? [
          clock(job.id, lastWrapAt, job, now, {
            kind: 'order',
            sentence: `${job.title}: purchase order number missing`,
            second: 'the client wants it on the invoice; ask for it',
            action: 'open',
          }),
        ]
      : []),
  ];
}

/** A bill that falls due soon; once it is late, the next reminder: at once, then a week after each. What is disputed is not reminded. */
function ofBill(bill: OpenBill, now: number, zone: string): Clock | undefined {
  const { job, dueAt, open, number, billedTo, kind } = bill;
  const name = `${billedTo}, ${kind === 'final' ? 'invoice' : kind === 'deposit' ? 'deposit invoice' : `${kind} invoice`} ${number}: ${formatMoney(open, { code: true })}`;
  if (dueAt > now)
    return dueAt > now + AHEAD
      ? undefined
      : clock(bill.id, dueAt, job, now, {
          kind: 'due',
          sentence: name,
          second: `due by ${whenWords(dueAt, zone, now)}; ${job.title}`,
          action: 'open-invoice',
          invoiceId: bill.id,
        });
  const last = bill.reminded.toSorted((a, b) => a.at - b.at).at(-1);
  const due = `was due by ${whenWords(dueAt, zone, now)}`;
  if (bill.state === 'disputed')
    return clock(bill.id, dueAt, job, now, {
      kind: 'due',
      sentence: name,
      second: `${due}; disputed`,
      action: 'open-invoice',
      invoiceId: bill.id,
    });
  const nextAt = last ? Math.max(dueAt, last.at + BETWEEN_REMINDERS) : dueAt;
  const sent = last
    ? `${countInWords(bill.reminded.length, 'reminder')} sent, the last ${whenWords(last.at, zone, now)}`
    : 'no reminder sent yet';
  return clock(bill.id, nextAt, job, now, {
    kind: 'reminder',
    sentence: name,
    second: `${due}; ${sent}`,
    action: 'remind',
    invoiceId: bill.id,
  });
}

function ofHand({ handId, name, open, job, dueAt }: HandToPay, now: number, zone: string): Clock {
  return clock(`${job.id}:${handId}:${open.currency}`, dueAt, job, now, {
    kind: 'pay hand',
    sentence: `Pay ${name} ${formatMoney(open, { code: true })}`,
    second: `${dueAt <= now ? 'was due' : 'due'} by ${whenWords(dueAt, zone, now)}; ${job.title}`,
    action: 'pay-hand',
  });
}
