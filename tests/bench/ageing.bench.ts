/**
 * Ageing over 20,000 invoices, from the store to its buckets, against one sum over the same rows in SQL, which knows no states, names or days.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ageings } from '../../core/ledger/owed.ts';
import { openAsOf } from '../../db/invoices.ts';
import { openStore } from '../../db/open.ts';
import { randomFrom } from '../random.ts';
import { pair, report } from './harness.ts';

const INVOICES = 20_000;
/** Of so many one is open still. */
const OPEN_OF = 20;
const AS_OF = '2026-12-01';
const NOW = Temporal.Instant.from('2026-12-01T15:00:00Z').epochMilliseconds;

const folder = mkdtempSync(join(tmpdir(), 'kitbound-bench-'));
const store = await openStore({ folder, now: () => NOW });
const random = randomFrom(7);
store.write((db) => {
  db.$client.exec(
    `insert into papers (id, kind, name, type, hash, bytes, made_at) values ('p', 'invoice', 'Invoice', 'application/pdf', '${'a'.repeat(64)}', 9, 1)`,
  );
  const invoice = db.$client.prepare(
    `insert into invoices (id, kind, series, year, sequence, number, issued_at, issue_date, due_date, currency, net_minor, tax_minor,
      gross_minor, to_pay_minor, content, paper_id) values (?, 'final', '', ?, ?, ?, ?, ?, ?, 'USD', ?, 0, ?, ?, ?, 'p')`,
  );
  const payment = db.$client.prepare(
    "insert into payments (id, kind, on_date, amount_minor, currency, made_at) values (?, 'payment', ?, ?, 'USD', 1)",
  );
  const part = db.$client.prepare(
    "insert into payment_parts (id, payment_id, invoice_id, amount_minor, currency) values (?, ?, ?, ?, 'USD')",
  );
  for (let index = 0; index < INVOICES; index += 1) {
    const issued = Temporal.PlainDate.from(AS_OF).subtract({ days: Math.floor(((INVOICES - index) * 3650) / INVOICES) });
    const amount = 10_000 + Math.floor(random() * 400_000);
    const content = JSON.stringify({ billTo: { name: `Client ${index % 300}` }, words: 'x'.repeat(2_000) });
    const number = `${issued.year}-${String(index).padStart(5, '0')}`;
    const due = issued.add({ days: 30 }).toString();
    const row = [`i${index}`, issued.year, index + 1, number, index, issued.toString(), due, amount, amount, amount, content];
    invoice.run(...row);
    if (index % OPEN_OF === 0) continue;
    payment.run(`y${index}`, issued.toString(), amount);
    part.run(`r${index}`, `y${index}`, `i${index}`, amount);
  }
});

const bare = store.read((db) =>
  db.$client.prepare<[], { open: number }>(
    `select (select sum(to_pay_minor) from invoices) - (select sum(amount_minor) from payment_parts where invoice_id is not null) as open`,
  ),
);
const aged = () => store.read((db) => ageings(openAsOf(db, AS_OF), AS_OF, 'USD'));

report(
  await pair({
    name: `ageing over ${INVOICES.toLocaleString('en-US')} invoices`,
    against: 'one sum of what is open in SQL, without dates, names, credit notes and states',
    aim: 5,
    rounds: 15,
    ours: aged,
    theirs: () => bare.get(),
    prove: () => {
      if (aged()[0]?.total.minor !== bare.get()?.open) throw new Error('the ageing does not come to what is open');
    },
  }),
);
store.close();
rmSync(folder, { recursive: true, force: true });
