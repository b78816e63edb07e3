/**
 * What the ledger sums: papers, parts of payments and costs of some dates, and the jobs that wait for their bill. Reads only.
 */
import { money, type Money } from '../core/money/money.ts';
import type { PartPaid } from '../core/ledger/income.ts';
import type { Billed, Received } from '../core/ledger/year.ts';
import type { Rated } from '../core/ledger/sums.ts';
import { perStore } from './prepared.ts';
import type { ReadableDb } from './store.ts';

/** The year of a number is that of its issue date, so a year is found in the index of numbers, series by series. */
export const BILLED_IN_YEAR = `
  select i.issue_date as "on", i.to_pay_minor as asked, i.currency, i.rate, i.client_id as clientId, i.job_id as jobId,
    i.content ->> '$.billTo.name' as clientName, coalesce(j.title, '') as jobTitle
  from invoices i left join jobs j on j.id = i.job_id
  where i.series in (select distinct series from invoices) and i.year = @year`;

/** Every part for invoices that something was paid for in the span, also earlier ones: tax is shared over all parts; and credit of the span. */
export const PARTS_OF = `
  with touched as (
    select distinct part.invoice_id as id from payments p join payment_parts part on part.payment_id = p.id
    where p.on_date between @from and @to and part.invoice_id is not null)
  select part.id, p.on_date as "on", p.made_at as madeAt, part.amount_minor as minor, part.currency, part.gain_minor as gain,
    part.gain_currency as gainCurrency, p.currency as paidIn, p.rate as paidRate, i.id as invoiceId, i.to_pay_minor as asked,
    i.tax_minor + coalesce((select sum(off.value ->> '$.tax.minor') from json_each(i.content, '$.credited') off), 0) as tax, i.rate,
    i.client_id as clientId, i.content ->> '$.billTo.name' as clientName, i.job_id as jobId, coalesce(j.title, '') as jobTitle
  from touched join invoices i on i.id = touched.id join payment_parts part on part.invoice_id = i.id
    join payments p on p.id = part.payment_id left join jobs j on j.id = i.job_id
  where p.on_date <= @to
  union all
  select part.id, p.on_date, p.made_at, part.amount_minor, part.currency, part.gain_minor, part.gain_currency, p.currency, p.rate,
    null, null, null, null, p.client_id, coalesce(c.name, ''), null, ''
  from payments p join payment_parts part on part.payment_id = p.id left join clients c on c.id = p.client_id
  where p.on_date between @from and @to and part.invoice_id is null`;

/** Each expense with its rate only where that is one to the home currency: the job that it is for is priced in that. */
const SPENT = `
  select e.amount_minor as minor, e.currency, e.rate,
    (select v.currency from quote_versions v where v.job_id = e.job_id order by v.number desc limit 1) as jobCurrency
  from expenses e where e.on_date between @from and @to`;

const HANDS_PAID = 'select amount_minor as minor, currency from hand_payments where on_date between @from and @to';

const YEARS = `
  select year from (select distinct year from invoices where series in (select distinct series from invoices))
  union select distinct cast(substr(on_date, 1, 4) as integer) from payments order by 1 desc`;

/**
 * Jobs in ink whose stay began in the span and that have no last bill, or one that was credited: whether all of it, its papers say.
 * The sign before the stage keeps its index out of it: stays are bounded in time, ink is not.
 */
export const UNBILLED = `
  select j.id from jobs j where j.id in (select s.job_id from stays s indexed by stays_by_time where s.start_at > @since) and +j.stage = 'inked' and not exists (
    select 1 from invoices i where i.job_id = j.id and i.kind = 'final'
      and not exists (select 1 from invoices c where c.credits_id = i.id))`;

/** Jobs with a bill that closes them, the newest bill first; whether it still stands is seen from its papers. */
export const CLOSED = `
  select i.job_id as id, max(i.issued_at) as at from invoices i
  where i.series in (select distinct series from invoices) and i.year >= @year and i.kind in ('final', 'cancellation') and i.job_id is not null
  group by +i.job_id order by at desc`;

/** Jobs of the span that hands worked on. */
const WITH_HANDS = 'select distinct job_id as id from worked_days where hand_id is not null and call_at > @since';

type BilledRow = {
  on: string;
  asked: number;
  currency: string;
  rate: string | null;
  clientId: string | null;
  jobId: string | null;
  clientName: string;
  jobTitle: string;
};
type PartRow = {
  id: string;
  on: string;
  madeAt: number;
  minor: number;
  currency: string;
  gain: number | null;
  gainCurrency: string | null;
  paidIn: string;
  paidRate: string | null;
  invoiceId: string | null;
  asked: number | null;
  tax: number | null;
  rate: string | null;
  clientId: string | null;
  clientName: string;
  jobId: string | null;
  jobTitle: string;
};
type Span = { from: string; to: string };
type SpentRow = { minor: number; currency: string; rate: string | null; jobCurrency: string | null };
type IdRow = { id: string };

const reading = perStore((db) => {
  const { $client } = db;
  return {
    billed: $client.prepare<[{ year: number }], BilledRow>(BILLED_IN_YEAR),
    parts: $client.prepare<[Span], PartRow>(PARTS_OF),
    spent: $client.prepare<[Span], SpentRow>(SPENT),
    handsPaid: $client.prepare<[Span], { minor: number; currency: string }>(HANDS_PAID),
    years: $client.prepare<[], { year: number }>(YEARS),
    unbilled: $client.prepare<[{ since: number }], IdRow>(UNBILLED),
    closed: $client.prepare<[{ year: number }], IdRow>(CLOSED),
    withHands: $client.prepare<[{ since: number }], IdRow>(WITH_HANDS),
  };
});

/** Papers whose number is of a year. */
export function billedIn(db: ReadableDb, year: number): Billed[] {
  return reading(db)
    .billed.all({ year })
    .map(({ asked, currency, ...row }) => ({ ...row, asked: money(asked, currency) }));
}

/** Parts of payments up to the end of a span, both dates counted: those of the span, and those before them for the same invoices. */
export function partsPaid(db: ReadableDb, span: Span): (PartPaid & Pick<Received, 'clientId' | 'clientName' | 'jobId' | 'jobTitle'>)[] {
  return reading(db)
    .parts.all(span)
    .map(({ minor, currency, gain, gainCurrency, paidIn, paidRate, invoiceId, asked, tax, rate, ...row }) => ({
      ...row,
      amount: money(minor, currency),
      gain: gain === null || gainCurrency === null ? null : money(gain, gainCurrency),
      payment: { currency: paidIn, rate: paidRate },
      invoice: invoiceId === null ? null : { id: invoiceId, asked: money(asked ?? 0, currency), tax: money(tax ?? 0, currency), rate },
    }));
}

/** What was spent between two dates, both counted, with its rate to the home currency where there is one. */
export function spentBetween(db: ReadableDb, span: Span, home: string): Rated[] {
  return reading(db)
    .spent.all(span)
    .map(({ minor, currency, rate, jobCurrency }) => ({
      amount: money(minor, currency),
      rate: (jobCurrency ?? home) === home ? rate : null,
    }));
}

/** What was paid to hands between two dates, both counted. */
export function paidToHands(db: ReadableDb, span: Span): Money[] {
  return reading(db)
    .handsPaid.all(span)
    .map(({ minor, currency }) => money(minor, currency));
}

/** Calendar years that hold papers or payments, newest first. */
export function ledgerYears(db: ReadableDb): number[] {
  return reading(db)
    .years.all()
    .map(({ year }) => year);
}

const ids = (rows: IdRow[]): string[] => rows.map(({ id }) => id);

/** Jobs in ink that have not had their last bill. @param since epoch milliseconds: first calls before that are left out */
export function unbilledJobIds(db: ReadableDb, since: number): string[] {
  return ids(reading(db).unbilled.all({ since }));
}

/** Jobs with a last bill or a bill of their cancellation, the newest bill first. @param year the earliest of their numbers */
export function closedJobIds(db: ReadableDb, year = 0): string[] {
  return ids(reading(db).closed.all({ year }));
}

/** Jobs that hands have worked on. @param since epoch milliseconds */
export function jobIdsWithHands(db: ReadableDb, since: number): string[] {
  return ids(reading(db).withHands.all({ since }));
}
