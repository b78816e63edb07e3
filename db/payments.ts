/**
 * Payments, refunds, credit used and reversals. Rows are only added.
 */
import type { Payment } from '../core/contract/payments.ts';
import { money, sum, zero, type Money } from '../core/money/money.ts';
import { instantText } from '../core/time/read.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { paymentParts, payments } from './schema/invoices.ts';
import type { ReadableDb, WritableDb } from './store.ts';

type PaymentRow = typeof payments.$inferSelect;
type PartRow = Omit<typeof paymentParts.$inferSelect, 'id'> & { number: string | null };
type JoinedRow = PaymentRow & { reversedBy: string | null };

const COLUMNS = `
  p.id, p.kind, p.client_id as clientId, p.on_date as "on", p.amount_minor as amountMinor, p.currency, p.rate, p.rate_date as rateDate,
  p.how, p.note, p.reverses_id as reversesId, p.made_at as madeAt, turned.id as reversedBy
  from payments p left join payments turned on turned.reverses_id = p.id`;
const NEWEST = 'order by p.on_date desc, p.made_at desc, p.id desc';

const reading = perStore((db) => ({
  one: db.$client.prepare<[string], JoinedRow>(`select ${COLUMNS} where p.id = ?`),
  between: db.$client.prepare<[string, string], JoinedRow>(`select ${COLUMNS} where p.on_date between ? and ? ${NEWEST}`),
  byClient: db.$client.prepare<[string, string, string], JoinedRow>(
    `select ${COLUMNS} where p.client_id = ? and p.on_date between ? and ? ${NEWEST}`,
  ),
  byJob: db.$client.prepare<[string, string, string], JoinedRow>(
    `select ${COLUMNS} where p.id in (select part.payment_id from invoices i join payment_parts part on part.invoice_id = i.id where i.job_id = ?)
      and p.on_date between ? and ? ${NEWEST}`,
  ),
  parts: db.$client.prepare<[string], PartRow>(
    `select part.payment_id as paymentId, part.invoice_id as invoiceId, part.amount_minor as amountMinor, part.currency,
      part.gain_minor as gainMinor, part.gain_currency as gainCurrency, i.number
    from payment_parts part left join invoices i on i.id = part.invoice_id where part.payment_id = ? order by part.id`,
  ),
  credit: db.$client.prepare<[string], { currency: string; minor: number }>(
    `select part.currency, sum(part.amount_minor) as minor from payments p join payment_parts part on part.payment_id = p.id
    where p.client_id = ? and part.invoice_id is null group by part.currency having sum(part.amount_minor) <> 0`,
  ),
}));

/** One payment with its parts. */
export function paymentById(db: ReadableDb, id: string): Payment | undefined {
  const row = reading(db).one.get(id);
  return row && asMet(db, row);
}

/** Payments of some dates, newest first: all of them, those of a client, or those for invoices of a job. */
export function paymentsBetween(
  db: ReadableDb,
  from: string,
  to: string,
  of: { clientId: string } | { jobId: string } | null = null,
): Payment[] {
  const { between, byClient, byJob } = reading(db);
  const rows = of === null ? between.all(from, to) : 'jobId' in of ? byJob.all(of.jobId, from, to) : byClient.all(of.clientId, from, to);
  return rows.map((row) => asMet(db, row));
}

/** What a client paid for no invoice and has not used or been paid back, by currency. */
export function creditParts(db: ReadableDb, clientId: string): Money[] {
  return reading(db)
    .credit.all(clientId)
    .map(({ minor, currency }) => money(minor, currency));
}

function asMet(db: ReadableDb, row: JoinedRow): Payment {
  const rows = reading(db).parts.all(row.id);
  const parts = rows.map(({ invoiceId, number, amountMinor, currency, gainMinor, gainCurrency }) => ({
    invoiceId,
    number: number ?? '',
    amount: money(amountMinor, currency),
    gain: gainMinor === null || gainCurrency === null ? null : money(gainMinor, gainCurrency),
  }));
  const gains = parts.flatMap(({ gain }) => gain ?? []);
  const kept = parts.filter(({ invoiceId }) => invoiceId === null).map(({ amount }) => amount);
  const keptIn = kept[0]?.currency ?? row.currency;
  return {
    id: row.id,
    kind: row.kind,
    clientId: row.clientId,
    on: row.on,
    amount: money(row.amountMinor, row.currency),
    rate: row.rate === null || row.rateDate === null ? null : { rate: row.rate, date: row.rateDate },
    how: row.how,
    note: row.note,
    parts,
    credit: kept.length === 0 ? zero(keptIn) : sum(keptIn, kept),
    gain: gains[0] ? sum(gains[0].currency, gains) : null,
    reverses: row.reversesId,
    reversed: row.reversedBy !== null,
    madeAt: instantText(row.madeAt),
  };
}

export type NewPayment = Pick<Payment, 'kind' | 'clientId' | 'on' | 'amount' | 'rate' | 'how' | 'note' | 'reverses'> & {
  parts: readonly { invoiceId: string | null; amount: Money; gain: Money | null }[];
};

/** Put a payment on the books with what it is for. Answers with its id. `now` in epoch milliseconds. */
export function insertPayment(db: WritableDb, { parts, amount, rate, reverses, ...rest }: NewPayment, now: number): string {
  const id = newId();
  db.insert(payments)
    .values({
      ...rest,
      id,
      amountMinor: amount.minor,
      currency: amount.currency,
      rate: rate?.rate ?? null,
      rateDate: rate?.date ?? null,
      reversesId: reverses,
      madeAt: now,
    })
    .run();
  for (const part of parts)
    db.insert(paymentParts)
      .values({
        id: newId(),
        paymentId: id,
        invoiceId: part.invoiceId,
        amountMinor: part.amount.minor,
        currency: part.amount.currency,
        gainMinor: part.gain?.minor ?? null,
        gainCurrency: part.gain?.currency ?? null,
      })
      .run();
  return id;
}
