/**
 * Issuing an invoice (number, paper, row, history) against the least that a store must do for the same rows: one durable insert of them,
 * without a paper, a rule or an answer.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { newId } from '../../db/ids.ts';
import { insertInvoice, invoiceRecord } from '../../db/invoices.ts';
import { openStore } from '../../db/open.ts';
import { insertPaper, paperById } from '../../db/papers.ts';
import { saveSetup } from '../../db/setup.ts';
import { contextOn } from '../context.ts';
import { callProcedure } from '../../electron/api/serve.ts';
import { SETUP, inkedJobs } from './inked-jobs.ts';
import { pair, report } from './harness.ts';

const ROUNDS = 40;
/** One round before the first and two calls of ours in each. */
const BILLS = (ROUNDS + 1) * 2 + 1;

const folder = mkdtempSync(join(tmpdir(), 'kitbound-bench-'));
const now = (): number => Temporal.Instant.from('2026-11-01T15:00:00Z').epochMilliseconds;
const store = await openStore({ folder, now });
store.write((db) => saveSetup(db, SETUP, now()));
const context = contextOn(store, now);
const jobs = await inkedJobs(context, BILLS);

let at = 0;
type Issued = { invoice: { id: string; number: string } };
const issue = () => callProcedure(context, 'invoices.issue', { jobId: jobs[at++], kind: 'deposit', draftVersion: 0 }) as Promise<Issued>;

const first = (await issue()).invoice;
const row = store.read((db) => invoiceRecord(db, first.id));
const paper = row && store.read((db) => paperById(db, row.paperId));
if (!row || !paper) throw new Error('the first invoice is not there');
let sequence = 100_000;

const issuing = await pair({
  name: 'issue an invoice',
  against: 'a bare durable insert of the same two rows in one transaction: no number taken, no PDF written and synced, no rule asked',
  aim: 10,
  rounds: ROUNDS,
  ours: issue,
  theirs() {
    sequence += 1;
    store.write((db) => {
      const { id: _id, ...rest } = row;
      const { hash, bytes, kind, name } = paper.paper;
      const made = insertPaper(db, { jobId: row.jobId, kind, name, type: paper.type, hash, bytes, madeAt: now() });
      insertInvoice(db, { ...rest, sequence, number: newId(), series: 'bare', paperId: made.id });
    });
  },
});
store.close();
rmSync(folder, { recursive: true, force: true });

report(issuing);
