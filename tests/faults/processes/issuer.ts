/**
 * A process that issues the deposits of all jobs that have none yet, all at once, until it is stopped: `issuer.ts FOLDER`.
 * It prints "open", then "ok NUMBER" for each that was acknowledged, and ends with "closed".
 */
import { writeSync } from 'node:fs';
import { call } from '@orpc/server';
import { invoicesAsOf } from '../../../db/invoices.ts';
import { openStore } from '../../../db/open.ts';
import type { Context } from '../../../electron/api/context.ts';
import { invoices } from '../../../electron/api/invoices.ts';
import { FAULTS_NOW } from '../moment.ts';

const [folder = ''] = process.argv.slice(2);
const say = (line: string) => writeSync(1, `${line}\n`);

const store = await openStore({ folder, now: () => FAULTS_NOW });
const context: Context = {
  store,
  now: () => FAULTS_NOW,
  systemZone: 'America/Chicago',
  gazetteer: () => {
    throw new Error('no place is looked up here');
  },
  readMessage: () => {
    throw new Error('no message is read here');
  },
  programVersion: '0.0.0',
};
const billed = new Set(store.read((db) => invoicesAsOf(db, '9000-01-01')).map(({ jobId }) => jobId));
const jobs = store.read((db) => db.$client.prepare<[], string>("select id from jobs where stage = 'inked' order by id").pluck().all());
say('open');
await Promise.all(
  jobs
    .filter((jobId) => !billed.has(jobId))
    .map(async (jobId) => {
      const { invoice } = await call(invoices.issue, { jobId, kind: 'deposit', draftVersion: 0 }, { context });
      say(`ok ${invoice.number}`);
    }),
);
store.close();
say('closed');
