/**
 * Payments: for which invoices, what is over, credit and refunds, and reversals of what was recorded by mistake.
 */
import type { InvoiceRow } from '../../core/contract/invoices.ts';
import type { Payment } from '../../core/contract/payments.ts';
import { proposeParts } from '../../core/invoices/allocate.ts';
import { paymentIn, settledParts, settleTroubles, takenFrom, type Credit, type Settled } from '../../core/invoices/settle.ts';
import { formatMoney } from '../../core/money/format.ts';
import { add, negate, sum, zero, type Money } from '../../core/money/money.ts';
import { invoiceAsOf, invoiceRecord, invoicesAsOf } from '../../db/invoices.ts';
import { writeHistory } from '../../db/keeping.ts';
import { creditParts, insertPayment, paymentById, paymentsBetween, type NewPayment } from '../../db/payments.ts';
import { clientById } from '../../db/people.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { todayAtHome } from './invoice-of.ts';
import { os } from './os.ts';
import { badInput, notFound, refused } from './trouble.ts';

const FIRST = '0000-00-00';
const LAST = '9999-99-99';

const propose = os.payments.propose.handler(({ input, context }) =>
  context.store.read((db) => {
    const { amount, clientId, jobId } = input;
    const today = todayAtHome(db, context);
    const of = jobId ? { jobId } : clientId ? { clientId } : null;
    const open = invoicesAsOf(db, today, of).filter(isPayable);
    // Those of its own currency first; money of another pays what it comes to by its rate.
    const currency = open.some((row) => row.currency === amount.currency) ? amount.currency : (open[0]?.currency ?? amount.currency);
    const same = open.filter((row) => row.currency === currency);
    const comes = paymentIn(currency, { amount, rate: input.rate ?? null, home: homeOf(db) }) ?? zero(currency);
    const { parts, over } = proposeParts(comes, same);
    return {
      parts: parts.flatMap(({ id, number, amount: part }) => {
        const row = same.find((each) => each.id === id);
        return row ? [{ invoiceId: id, number, dueDate: row.dueDate, open: row.open, amount: part }] : [];
      }),
      over,
      credit: clientId ? creditOf(db, clientId, today) : [],
    };
  }),
);

const isPayable = ({ kind, open }: InvoiceRow): boolean => kind !== 'credit note' && open.minor > 0;

const record = os.payments.record.handler(({ input, context }) =>
  deed(context, 'payments.record', input, (db) => {
    const { amount, on, how, note, toCredit } = input;
    refuseFuture(db, context, on);
    if (amount.minor <= 0) throw badInput([{ field: 'amount', sentence: 'is not above zero; money that goes back is a refund' }]);
    const rate = input.rate ?? null;
    const paid = { amount, rate: amount.currency === homeOf(db) ? null : rate, home: homeOf(db) };
    const rows = input.parts.map(({ invoiceId, amount: part }) => ({ row: invoiceRow(db, context, invoiceId), amount: part }));
    if (new Set(rows.map(({ row }) => row.id)).size < rows.length)
      throw badInput([{ field: 'parts', sentence: 'name an invoice twice; give it one amount' }]);
    const parts = rows.map(({ row, amount: part }) => ({ invoice: asSettled(row), amount: part }));
    const troubles = settleTroubles(paid, parts, toCredit);
    if (troubles.length > 0) throw refused('The payment cannot be recorded like that.', 'Correct its parts.', troubles);
    const settled = settledParts(paid, parts);
    const clientId = input.clientId ?? rows[0]?.row.clientId ?? null;
    if (clientId && !clientById(db, clientId)) throw notFound('This client');
    if (clientId === null && settled.some(({ invoiceId }) => invoiceId === null))
      throw refused("What is over would be nobody's credit.", 'Name the client that it came from.');
    return put(context, db, { kind: 'payment', clientId, on, amount, rate: paid.rate, how, note, reverses: null, parts: settled });
  }),
);

const applyCredit = os.payments.applyCredit.handler(({ input, context }) =>
  deed(context, 'payments.applyCredit', input, (db) => {
    const { clientId, amount } = input;
    const on = input.on ?? todayAtHome(db, context);
    refuseFuture(db, context, on);
    const row = invoiceRow(db, context, input.invoiceId);
    if (row.clientId !== clientId)
      throw refused(`${row.number} is not an invoice of this client.`, 'Use the credit of whom it was billed to.');
    // Credit is in the currency of the invoice; no rate is between them.
    const troubles = settleTroubles({ amount, rate: null, home: amount.currency }, [{ invoice: asSettled(row), amount }], false);
    if (troubles.length > 0) throw refused('Credit cannot be used like that.', 'Correct the amount.', troubles);
    const taken = takenFrom(creditsOf(db, clientId, amount.currency, todayAtHome(db, context), row.id), amount);
    if (!taken) throw noSuchCredit(db, context, clientId, amount);
    const parts = [...taken, { invoiceId: row.id, amount, gain: null }];
    const nothing = zero(amount.currency);
    return put(context, db, { kind: 'credit used', clientId, on, amount: nothing, rate: null, how: '', note: '', reverses: null, parts });
  }),
);

const refund = os.payments.refund.handler(({ input, context }) =>
  deed(context, 'payments.refund', input, (db) => {
    const { clientId, invoiceId, amount, on, how, note } = input;
    refuseFuture(db, context, on);
    if (amount.minor <= 0) throw badInput([{ field: 'amount', sentence: 'is not above zero; give what goes back' }]);
    const home = homeOf(db);
    const rate = amount.currency === home ? null : (input.rate ?? null);
    if (amount.currency !== home && !rate)
      throw refused(`${amount.currency} needs its rate.`, `Say how much ${home} one ${amount.currency} is on that date.`);
    const credits = invoiceId
      ? overOf(invoiceRow(db, context, invoiceId), clientId)
      : clientCredits(db, context, clientId, amount.currency);
    const parts = takenFrom(
      credits.filter((credit) => credit.amount.currency === amount.currency),
      amount,
    );
    if (!parts) throw noSuchCredit(db, context, clientId, amount);
    return put(context, db, { kind: 'refund', clientId, on, amount: negate(amount), rate, how, note, reverses: null, parts });
  }),
);

const reverse = os.payments.reverse.handler(({ input, context }) =>
  deed(context, 'payments.reverse', input, (db) => {
    const before = paymentById(db, input.id);
    if (!before) throw notFound('This payment');
    if (before.kind === 'reversal') throw refused('This is a reversal itself.', 'Record the payment anew.');
    if (before.reversed) throw refused('This payment was reversed already.', 'Nothing more needs doing.');
    const { clientId, amount, rate, how } = before;
    const parts = before.parts.map((part) => ({ ...part, amount: negate(part.amount), gain: part.gain && negate(part.gain) }));
    const on = todayAtHome(db, context);
    if (clientId) refuseUsedCredit(db, clientId, parts);
    const reversal = {
      kind: 'reversal' as const,
      clientId,
      on,
      amount: negate(amount),
      rate,
      how,
      note: input.reason,
      reverses: before.id,
      parts,
    };
    return put(context, db, reversal);
  }),
);

const list = os.payments.list.handler(({ input, context }) =>
  context.store.read((db) => {
    const { from = FIRST, to = LAST, clientId, jobId } = input;
    return { payments: paymentsBetween(db, from, to, jobId ? { jobId } : clientId ? { clientId } : null) };
  }),
);

const credit = os.payments.credit.handler(({ input, context }) =>
  context.store.read((db) => {
    if (!clientById(db, input.clientId)) throw notFound('This client');
    return { credit: creditOf(db, input.clientId, todayAtHome(db, context)) };
  }),
);

function homeOf(db: ReadableDb): string {
  const currency = setupRow(db)?.fields.currency;
  if (!currency) throw refused('My details are not set up.', 'Fill in Setup first: payments are counted in a home currency.');
  return currency;
}

function refuseFuture(db: ReadableDb, context: Context, on: string): void {
  if (on > todayAtHome(db, context)) throw badInput([{ field: 'on', sentence: 'is still to come; record it when it has happened' }]);
}

function invoiceRow(db: ReadableDb, context: Context, id: string): InvoiceRow {
  const row = invoiceAsOf(db, id, todayAtHome(db, context));
  if (!row) throw notFound('This invoice');
  if (row.kind === 'credit note') throw refused(`${row.number} is a credit note.`, 'Pay the invoice, or pay credit back.');
  return row;
}

function asSettled({ id, number, state, open, writtenOff, rate }: InvoiceRow): Settled {
  return { id, number, payable: add(open, writtenOff), void: state === 'credited', rate };
}

/** Where a client has credit in a currency: what was paid for no invoice, then what is over on invoices, oldest first. */
function creditsOf(db: ReadableDb, clientId: string, currency: string, today: string, but: string | null = null): Credit[] {
  const own = creditParts(db, clientId).filter((amount) => amount.currency === currency && amount.minor > 0);
  const over = invoicesAsOf(db, today, { clientId }).filter((row) => row.currency === currency && row.over.minor > 0 && row.id !== but);
  return [
    ...own.map((amount) => ({ invoiceId: null, amount })),
    ...over.toReversed().map(({ id, over: amount }) => ({ invoiceId: id, amount })),
  ];
}

function creditOf(db: ReadableDb, clientId: string, today: string): Money[] {
  const all = [
    ...creditParts(db, clientId),
    ...invoicesAsOf(db, today, { clientId }).flatMap(({ over }) => (over.minor > 0 ? [over] : [])),
  ];
  return [...Map.groupBy(all, ({ currency }) => currency)]
    .map(([currency, amounts]) => sum(currency, amounts))
    .filter(({ minor }) => minor !== 0);
}

function clientCredits(db: ReadableDb, context: Context, clientId: string | null, currency: string): Credit[] {
  if (clientId === null) throw refused('Nobody is named whose credit goes back.', 'Name the client, or the invoice that was overpaid.');
  return creditsOf(db, clientId, currency, todayAtHome(db, context));
}

function overOf({ id, number, clientId, over }: InvoiceRow, of: string | null): Credit[] {
  if (clientId !== of) throw refused(`${number} is not an invoice of this client.`, 'Pay back to whom it was billed.');
  return [{ invoiceId: id, amount: over }];
}

function noSuchCredit(db: ReadableDb, context: Context, clientId: string | null, amount: Money) {
  const has = clientId === null ? [] : creditOf(db, clientId, todayAtHome(db, context));
  const said =
    has.length === 0
      ? 'There is no credit'
      : `${has.map((each) => formatMoney(each, { code: true })).join(' and ')} is all the credit there is`;
  return refused(`${said}, not ${formatMoney(amount, { code: true })}.`, 'Give no more than that.');
}

/** Credit that a payment brought may be used or paid back by now. */
function refuseUsedCredit(db: ReadableDb, clientId: string, parts: NewPayment['parts']): void {
  for (const { invoiceId, amount } of parts) {
    if (invoiceId !== null || amount.minor > 0) continue;
    const has = creditParts(db, clientId).find(({ currency }) => currency === amount.currency);
    if ((has?.minor ?? 0) + amount.minor < 0)
      throw refused('The credit that this payment brought was used since.', 'Reverse what used it first.');
  }
}

function put(context: Context, db: WritableDb, payment: NewPayment): { payment: Payment } {
  const now = context.now();
  const made = paymentById(db, insertPayment(db, payment, now));
  if (!made) throw notFound('The payment that was just recorded');
  const jobs = new Set(made.parts.flatMap(({ invoiceId }) => (invoiceId ? (invoiceRecord(db, invoiceId)?.jobId ?? []) : [])));
  for (const jobId of jobs)
    writeHistory(db, { at: now, subject: 'job', subjectId: jobId, deed: `payments.${payment.kind}`, sentence: sentenceOf(made) });
  return { payment: made };
}

const VERBS: Record<Payment['kind'], string> = {
  payment: 'was paid',
  refund: 'was paid back',
  'credit used': 'of credit was used',
  reversal: 'was reversed',
};

function sentenceOf({ kind, amount, parts, how, note }: Payment): string {
  const on = parts.filter(({ invoiceId, amount: part }) => invoiceId !== null && (kind !== 'credit used' || part.minor > 0));
  const sum = kind === 'credit used' ? (on[0]?.amount ?? amount) : amount.minor < 0 ? negate(amount) : amount;
  const numbers = on.map(({ number, amount: part }) => `${number} ${formatMoney(part)}`);
  const said = [how, numbers.join(', '), note].filter((part) => part !== '').join('; ');
  return `${formatMoney(sum, { code: true })} ${VERBS[kind]}${said === '' ? '' : `: ${said}`}.`;
}

export const payments = { propose, record, applyCredit, refund, reverse, list, credit };
