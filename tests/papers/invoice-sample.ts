/**
 * Invented bills to make papers from.
 */
import type { InvoiceContent, InvoiceKind } from '../../core/contract/invoices.ts';
import { setOff, toPayOf } from '../../core/invoices/deposit.ts';
import { sumsOf, type InvoiceLine } from '../../core/invoices/lines.ts';
import { lineAmount } from '../../core/money/money.ts';
import type { Tax } from '../../core/money/taxes.ts';

export const vat = (percent: string): Tax => ({ name: 'VAT', percent, state: 'rated', reason: '' });
export const reversed: Tax = {
  name: 'VAT',
  percent: '20',
  state: 'reverse charge',
  reason: 'Reverse charge: the customer accounts for the tax.',
};
export const exempt: Tax = { name: 'VAT', percent: '20', state: 'exempt', reason: 'Exempt: lessons of a school.' };
export const unregistered: Tax = { name: 'VAT', percent: '0', state: 'not registered', reason: 'Not registered for VAT.' };

/** One line of a bill; its amount follows from quantity and unit price. */
export function billed(
  section: string,
  what: string,
  quantity: string,
  unit: string,
  unitPrice: string,
  taxes: readonly Tax[] = [vat('20')],
  currency = 'EUR',
): InvoiceLine {
  return { id: `${section}/${what}`, section, what, quantity, unit, unitPrice, amount: lineAmount(quantity, unitPrice, currency), taxes };
}

type Changes = Partial<Omit<InvoiceContent, 'lines' | 'totals' | 'toPay' | 'credited'>> & {
  lines?: readonly InvoiceLine[];
  deposits?: Parameters<typeof setOff>[0];
};

/** The bill of two days at a bread fair, with whatever is asked for instead. Sums follow from the lines. */
export function bill({ lines = fair, deposits = [], ...changes }: Changes = {}): InvoiceContent {
  const { currency = 'EUR', included = false } = changes;
  const totals = sumsOf(currency, lines, included);
  const credited = setOff(deposits);
  return {
    kind: 'final' satisfies InvoiceKind,
    number: '2026-031',
    issueDate: '2026-12-03',
    dueDate: '2027-01-02',
    issuedAt: '2026-12-03T09:30:00Z',
    sender: {
      name: 'Northlight Pictures',
      address: '3 Quay Lane\n1010 Vienna\nAustria',
      email: 'hello@northlight.example',
      phone: '+43 1 555 0142',
      registered: true,
      taxId: 'ATU00000000',
      paper: 'A4',
    },
    payTo: { name: 'Northlight Pictures', iban: 'AT611904300234573201', bic: '', words: '' },
    billTo: {
      name: 'Bread & Butter Fair GmbH',
      address: '12 Mill Street\n80331 Munich',
      taxId: 'DE000000000',
      country: 'DE',
      order: 'PO 4711',
    },
    job: { title: 'Autumn bread fair' },
    supply: { from: '2026-11-27', to: '2026-11-28' },
    currency,
    included,
    lines: lines.map((line) => ({ ...line, taxes: line.taxes.map((tax) => ({ ...tax })) })),
    totals,
    credited,
    toPay: toPayOf(totals, credited),
    rate: null,
    terms: ['Invoices are due within 30 days of their date.'],
    credits: null,
    ...changes,
  };
}

/** Two days, a camera kit, an hour of overtime, a train, a licence. */
const fair = [
  billed('days', 'Filming, 10 hours', '2', 'days', '800.00'),
  billed('days', 'Overtime at time and a half, approved by Ilse Ahorn on site, 28 November at 19:40', '1.5', 'hours', '120.00'),
  billed('kit', 'Camera kit', '2', 'days', '150.00'),
  billed('travel', 'Train, second class, there and back', '1', '', '117.80'),
  billed('expenses', 'Parking at the fair, 27 November', '1', '', '24.00'),
  billed('editing', 'Recap of two minutes', '6', 'hours', '65.00'),
];

/** The deposit of a half of 1,700.00: 1,000.00 at 20 % and 500.00 at 0 %. */
export const halfOfTwoGroups = {
  invoiceId: '01890000-0000-7000-8000-000000000009',
  number: '2026-004',
  date: '2026-06-03',
  totals: sumsOf(
    'EUR',
    [billed('deposit', 'a', '1', '', '600.00', [vat('20')]), billed('deposit', 'b', '1', '', '250.00', [vat('0')])],
    true,
  ),
};

/** As many lines as asked for, spread over the sections. */
export function longBill(count: number): InvoiceContent {
  const where = ['days', 'kit', 'travel', 'expenses', 'editing', 'extras'];
  return bill({
    lines: Array.from({ length: count }, (_, index) =>
      billed(
        where[Math.floor((index * where.length) / count)] ?? 'extras',
        `Position ${index + 1}`,
        String((index % 4) + 1),
        'days',
        `${100 + index}.25`,
      ),
    ),
  });
}
