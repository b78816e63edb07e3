/**
 * Money that came and went. A payment never changes: a mistake is turned by a reversal.
 */
import { z } from 'zod';
import { reads, writes } from './base.ts';
import { DateText, DeedKey, Id, InstantText, Line, Money, Name, Positive } from './parts.ts';

const PaymentPart = z.strictObject({
  invoiceId: Id.nullable().describe("null: the client's credit"),
  number: z.string().describe('of the invoice; empty for credit'),
  amount: Money.describe('in the currency of the invoice; below zero where it goes back'),
  gain: Money.nullable().describe('home currency: what the exchange rate gained, below zero what it lost'),
});

export const Payment = z.strictObject({
  id: Id,
  kind: z.enum(['payment', 'refund', 'credit used', 'reversal']),
  clientId: Id.nullable(),
  on: DateText,
  amount: Money.describe('as it came; below zero where it was paid back'),
  rate: z.strictObject({ rate: Positive, date: DateText }).nullable().describe('home currency for one unit'),
  how: z.string(),
  note: z.string(),
  parts: z.array(PaymentPart),
  credit: Money.describe('what was over and is kept as credit'),
  gain: Money.nullable().describe('home currency, over all parts'),
  reverses: Id.nullable(),
  reversed: z.boolean(),
  madeAt: InstantText,
});
export type Payment = z.infer<typeof Payment>;

const Rate = z.strictObject({ rate: Positive, date: DateText }).nullable().optional();
const PaymentAnswer = z.strictObject({ payment: Payment });
const about = { on: DateText, how: Line, note: Line };

export const payments = {
  propose: reads(
    'Which open invoices a payment would be for: oldest due first; what is over would become credit, if you say so.',
    z.strictObject({
      clientId: Id.nullable().optional(),
      jobId: Id.optional(),
      amount: Money,
      rate: Rate.describe('home currency for one unit of the payment, where they differ'),
      on: DateText,
    }),
    z.strictObject({
      parts: z.array(z.strictObject({ invoiceId: Id, number: z.string(), dueDate: DateText, open: Money, amount: Money })),
      over: Money.describe('in the currency of the invoices'),
      credit: z.array(Money).describe('what the client has as credit already'),
    }),
  ),
  record: writes(
    'Record a payment: for one invoice or several of one currency; what is over becomes credit of the client, if that is said.',
    z.strictObject({
      clientId: Id.nullable().optional().describe('the client of the invoices, if not given'),
      ...about,
      amount: Money,
      rate: Rate.describe('home currency for one unit, on the date of payment; where it is not the home currency'),
      parts: z.array(z.strictObject({ invoiceId: Id, amount: Money })).max(200),
      toCredit: z.boolean().describe('what is over is kept as credit'),
      key: DeedKey,
    }),
    PaymentAnswer,
  ),
  applyCredit: writes(
    "Use a client's credit for an invoice.",
    z.strictObject({ clientId: Id, invoiceId: Id, amount: Money, on: DateText.optional(), key: DeedKey }),
    PaymentAnswer,
  ),
  refund: writes(
    'Pay credit back: that of a client, or what is over on one invoice.',
    z.strictObject({
      clientId: Id.nullable(),
      invoiceId: Id.optional().describe('whose overpayment goes back; oldest credit first, if not given'),
      ...about,
      amount: Money,
      rate: Rate,
      key: DeedKey,
    }),
    PaymentAnswer,
  ),
  reverse: writes(
    'Turn a payment that was recorded by mistake, or that bounced: it stays, and a reversal stands beside it.',
    z.strictObject({ id: Id, reason: Name, key: DeedKey }),
    PaymentAnswer,
  ),
  list: reads(
    'Payments, refunds and reversals, newest first.',
    z.strictObject({ from: DateText.optional(), to: DateText.optional(), clientId: Id.optional(), jobId: Id.optional() }),
    z.strictObject({ payments: z.array(Payment) }),
  ),
  credit: reads('What a client has as credit, by currency.', z.strictObject({ clientId: Id }), z.strictObject({ credit: z.array(Money) })),
};
