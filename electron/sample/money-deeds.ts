/**
 * Hours, expenses, bills and payments of the sample, done through the same procedures that a screen calls.
 */
import { call } from '@orpc/server';
import { sample } from '../../assets/sample/index.ts';
import type { DraftKind, InvoiceRow } from '../../core/contract/invoices.ts';
import type { Money } from '../../core/contract/parts.ts';
import { add, amountOf } from '../../core/money/money.ts';
import { dateIn, dateLater, wrapAfter } from '../../core/time/wall.ts';
import { expenses } from '../api/expenses.ts';
import { hours } from '../api/hours.ts';
import { invoices } from '../api/invoices.ts';
import { jobs } from '../api/jobs.ts';
import { payments } from '../api/payments.ts';
import type { Cast, Doing, Told } from './cast.ts';

type MoneyDeed = 'worked' | 'overtime' | 'spent' | 'bill' | 'paid' | 'remind' | 'dispute' | 'credit' | 'writeOff' | 'giveBack';

/** Why a bill goes without the number that a client asks for. */
const NO_ORDER = 'They send the number with the payment';

export const moneyDoings: { [D in MoneyDeed]: Doing<D> } = {
  async worked(cast, { id, first }, { days: only, instead = {} }) {
    const { job } = await call(jobs.get, { id }, cast);
    const { zone } = await call(hours.of, { jobId: id }, cast);
    for (const [offset, day] of job.days.map((each) => [daysBetween(first, each.date), each] as const)) {
      if (only && !only.includes(offset)) continue;
      const [from, to] = instead[offset]?.split('-') ?? [];
      const begun = from === undefined ? day.call : `${day.date}T${from}`;
      const wrap = to === undefined ? day.wrap : wrapAfter(begun, to);
      const fields = { handId: null, kind: day.kind, zone, call: begun, wrap, unpaidBreakMinutes: 0, note: '' };
      await call(hours.save, { jobId: id, fields }, cast);
    }
  },
  async overtime(cast, { id, first }, { day, minutes, who, said }) {
    const { ask } = await call(hours.ask, { jobId: id, date: dateLater(first, day), minutes }, cast);
    await call(hours.settleAsk, { id: ask.id, approved: said, who, how: 'by word of mouth' }, cast);
  },
  async spent(cast, { id, first }, list) {
    for (const { day, category, what, amount, billed = false } of list) {
      const fields = {
        jobId: id,
        on: dateLater(first, day),
        category,
        what,
        amount: amountOf(amount, sample.setup.currency),
        rate: null,
        markUpPercent: '0',
        billed,
        untaxed: null,
      };
      await call(expenses.save, { fields }, cast);
    }
  },
  async bill(cast, { id: jobId }, { kind = 'final', rate }) {
    const { job } = await call(jobs.get, { id: jobId }, cast);
    let { draft } = await call(invoices.draft, { jobId, kind }, cast);
    if (rate) {
      const changes = [{ op: 'rate' as const, rate, date: draft.supply?.to ?? todayOf(cast) }];
      ({ draft } = await call(invoices.change, { jobId, kind, draftVersion: draft.draftVersion, changes }, cast));
    }
    const { required, number } = job.knows.purchaseOrder;
    const override = required && number.trim() === '' ? { override: NO_ORDER } : {};
    await call(invoices.issue, { jobId, kind, draftVersion: draft.draftVersion, ...override }, cast);
  },
  async paid(cast, told, { kind = 'final', amount, over, rate, how = 'transfer' }) {
    const { id, clientId, open } = await newest(cast, told, kind);
    const asked: Money = amount === undefined ? open : amountOf(amount, open.currency);
    const on = todayOf(cast);
    const paid = {
      clientId,
      on,
      how,
      note: '',
      amount: over === undefined ? asked : add(asked, amountOf(over, open.currency)),
      parts: [{ invoiceId: id, amount: asked }],
      toCredit: over !== undefined,
      ...(rate ? { rate: { rate, date: on } } : {}),
    };
    await call(payments.record, paid, cast);
  },
  remind: async (cast, told, { tone }) => call(invoices.reminded, { id: (await newest(cast, told, 'final')).id, tone }, cast),
  dispute: async (cast, told, { why }) => call(invoices.dispute, { id: (await newest(cast, told, 'final')).id, why }, cast),
  async credit(cast, told, { amount, reason }) {
    const { id, currency } = await newest(cast, told, 'final');
    const [line] = (await call(invoices.get, { id }, cast)).invoice.left;
    if (!line) throw new RangeError(`Nothing is left to credit on ${told.job.title}.`);
    await call(invoices.credit, { id, lines: [{ id: line.id, amount: amountOf(amount, currency) }], reason }, cast);
  },
  writeOff: async (cast, told, { reason }) => call(invoices.writeOff, { id: (await newest(cast, told, 'final')).id, reason }, cast),
  async giveBack(cast, told, { reason }) {
    const { id } = await newest(cast, told, 'deposit');
    const { invoice } = await call(invoices.credit, { id, lines: 'all', reason }, cast);
    const { over, clientId } = await newest(cast, told, 'deposit');
    const back = { clientId, invoiceId: id, on: todayOf(cast), how: 'transfer', note: invoice.number, amount: over };
    if (over.minor > 0) await call(payments.refund, back, cast);
  },
};

/** The newest bill of a kind. */
async function newest(cast: Cast, { id: jobId, job }: Told, kind: DraftKind): Promise<InvoiceRow> {
  const bill = (await call(invoices.list, { jobId }, cast)).invoices.find((row) => row.kind === kind);
  if (!bill) throw new RangeError(`${job.title} of the sample has no ${kind} bill.`);
  return bill;
}

/** The date at home at this step. */
const todayOf = ({ context, today: { zone } }: Cast): string => dateIn(zone, context.now());

function daysBetween(from: string, to: string): number {
  return Temporal.PlainDate.from(from).until(Temporal.PlainDate.from(to)).days;
}
