import { expect, test } from 'vitest';
import { temporaryStore } from '../store.ts';

const hash = 'a'.repeat(64);
const jobsAndPapers = `
  insert into jobs (id, title, stage, role, questions, spans, received_at, received_zone, deliverables, created_at, updated_at)
    values ('j', 'Curling', 'quoted', 'shoot', '[]', '[]', 1, 'America/Chicago', '[]', 1, 1);
  insert into papers (id, job_id, kind, name, type, hash, bytes, made_at) values ('p', 'j', 'invoice', 'Invoice', 'application/pdf', '${hash}', 9, 1);
`;
const invoice = (given: Record<string, string | number | null> = {}) => {
  const row = {
    id: 'i',
    kind: 'final',
    series: '',
    year: 2026,
    sequence: 1,
    number: '2026-001',
    job_id: 'j',
    issued_at: 1,
    issue_date: '2026-03-01',
    due_date: '2026-03-31',
    currency: 'USD',
    net_minor: 100,
    tax_minor: 20,
    gross_minor: 120,
    to_pay_minor: 120,
    content: '{}',
    paper_id: 'p',
    ...given,
  };
  const shown = Object.values(row).map((value) => (typeof value === 'string' ? `'${value}'` : String(value)));
  return `insert into invoices (${Object.keys(row).join(', ')}) values (${shown.join(', ')});`;
};
const worked = (callAt: number, wrapAt: number | null, breaks = 0, id = 'w') =>
  `insert into worked_days (id, job_id, date, kind, zone, call, wrap, call_at, wrap_at, unpaid_break_minutes, created_at, updated_at)
    values ('${id}', 'j', '2026-03-01', 'shoot', 'America/Chicago', '2026-03-01T08:00', ${wrapAt === null ? 'null' : "'2026-03-01T18:00'"}, ${callAt}, ${wrapAt}, ${breaks}, 1, 1);`;
const more = `
  insert into invoice_notes (id, invoice_id, kind, on_date, at) values ('n', 'i', 'reminded', '2026-04-02', 2);
  insert into payments (id, kind, on_date, amount_minor, currency, made_at) values ('y', 'payment', '2026-04-03', 120, 'USD', 3);
  insert into payment_parts (id, payment_id, invoice_id, amount_minor, currency) values ('r', 'y', 'i', 120, 'USD');
  insert into amendments (id, job_id, what, who, at, how, made_at) values ('a', 'j', 'One day more', 'Ana', 1, 'mail', 1);
`;

test.each([
  ['invoices', 'update invoices set gross_minor = 1', 'An issued invoice never changes; credit it and issue another.'],
  ['invoices', 'delete from invoices', 'An issued invoice is never taken away.'],
  ['invoice_notes', "update invoice_notes set words = 'x'", 'What happened to an invoice never changes.'],
  ['invoice_notes', 'delete from invoice_notes', 'What happened to an invoice is never taken away.'],
  ['payments', 'update payments set amount_minor = 1', 'A payment never changes; reverse it and record another.'],
  ['payments', 'delete from payments', 'A payment is never taken away.'],
  ['payment_parts', 'update payment_parts set amount_minor = 1', 'What a payment was for never changes; reverse the payment.'],
  ['payment_parts', 'delete from payment_parts', 'What a payment was for is never taken away.'],
  ['amendments', "update amendments set what = 'x'", 'An amendment never changes; make another.'],
  ['amendments', 'delete from amendments', 'An amendment is never taken away.'],
])('%s: "%s" is refused', async (_, sql, sentence) => {
  const store = await temporaryStore();
  store.write((db) => db.$client.exec(jobsAndPapers + invoice() + more));
  expect(() => store.write((db) => db.$client.exec(sql))).toThrow(sentence);
});

test.each([
  ['the same place in a series and year twice', invoice() + invoice({ id: 'i2', number: '2026-001b' }), 'UNIQUE'],
  ['the same number twice', invoice() + invoice({ id: 'i2', sequence: 2 }), 'UNIQUE'],
  ['a sum that is none', invoice({ gross_minor: 121 }), 'invoices_sum'],
  ['due before it was issued', invoice({ due_date: '2026-02-28' }), 'invoices_due'],
  ['a credit note of nothing', invoice({ kind: 'credit note' }), 'invoices_credit'],
  ['a sequence from zero', invoice({ sequence: 0 }), 'invoices_from_one'],
  ['a wrap before the call', worked(1000, 999), 'worked_days_end_after_start'],
  ['a day of more than 24 hours', worked(0, 86_400_001), 'worked_days_length'],
  ['breaks below zero', worked(0, 1000, -1), 'worked_days_breaks'],
  ['the same call of the same person twice', worked(0, 1000) + worked(0, 2000, 0, 'w2'), 'UNIQUE'],
  [
    'an expense of nothing',
    "insert into expenses (id, on_date, category, what, amount_minor, currency, billed, created_at, updated_at) values ('e', '2026-03-01', 'meals', 'x', 0, 'USD', 0, 1, 1)",
    'expenses_amount',
  ],
  [
    'an expense that is charged on without a job',
    "insert into expenses (id, on_date, category, what, amount_minor, currency, billed, created_at, updated_at) values ('e', '2026-03-01', 'meals', 'x', 5, 'USD', 1, 1, 1)",
    'expenses_billed_for_a_job',
  ],
])('the schema refuses %s', async (_, sql, sentence) => {
  const store = await temporaryStore();
  store.write((db) => db.$client.exec(jobsAndPapers));
  expect(() => store.write((db) => db.$client.exec(sql))).toThrow(sentence);
});

test('a day that runs has no wrap yet; the next number of another series begins at one', async () => {
  const store = await temporaryStore();
  store.write((db) =>
    db.$client.exec(jobsAndPapers + worked(0, null) + invoice() + invoice({ id: 'i2', series: 'K', number: 'K-2026-001' })),
  );
  expect(store.read((db) => db.$client.prepare('select count(*) as n from invoices').get())).toEqual({ n: 2 });
});
