/**
 * The whole check, from the command's input to its answer, with one, ten and thirty years on the books, against the one query without
 * which no answer is possible: which stays lie in the span.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { openStore } from '../../db/open.ts';
import { LONGEST_STAY_MS } from '../../db/schema/jobs.ts';
import { saveSetup } from '../../db/setup.ts';
import { contextOn } from '../context.ts';
import { callProcedure } from '../../electron/api/serve.ts';
import { SETUP, THUNDER_BAY } from '../api/world.ts';
import { strewn } from '../db/years.ts';
import { pair, report } from './harness.ts';

const DAY = 86_400_000;
const NOW = Temporal.Instant.from('2026-12-01T15:00:00Z').epochMilliseconds;
const ROUNDS = 60;
const AT_ONCE = 5;
const day = (date: string) => ({ date, kind: 'shoot', call: `${date}T09:00`, wrap: `${date}T19:00` });
const QUESTION = { candidate: { title: 'Curling', place: THUNDER_BAY, days: [day('2026-12-10'), day('2026-12-11')] } };

async function books(years: number) {
  const folder = mkdtempSync(join(tmpdir(), 'kitbound-bench-'));
  const store = await openStore({ folder, now: () => NOW });
  store.write((db) => {
    saveSetup(db, SETUP, NOW);
    strewn(db, { years, until: NOW + 60 * DAY });
  });
  const context = contextOn(store, NOW, 'UTC');
  const probe = store.read((db) =>
    db.$client.prepare<unknown[], { job_id: string }>('select job_id from stays where start_at < ? and start_at > ? and end_at > ?'),
  );
  const from = NOW + 9 * DAY;
  return {
    check: async () => {
      let answer: unknown;
      for (let turn = 0; turn < AT_ONCE; turn += 1) answer = await callProcedure(context, 'fit.check', QUESTION);
      return answer;
    },
    range: () => {
      for (let turn = 0; turn < AT_ONCE; turn += 1) probe.all(from + 2 * DAY, from - LONGEST_STAY_MS, from);
    },
    close() {
      store.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

const [one, ten, thirty] = await Promise.all([books(1), books(10), books(30)]);

const same = (a: typeof one, b: typeof one) => async () => {
  if (JSON.stringify(await a.check()) !== JSON.stringify(await b.check())) throw new Error('the years of history changed the answer');
};
const growth = (years: number, longer: typeof one) =>
  pair({
    name: `whole check, ${years} years against 1`,
    against: 'the same check with one year on the books',
    aim: 1.2,
    rounds: ROUNDS,
    ours: longer.check,
    theirs: one.check,
    prove: same(longer, one),
  });
const rows = [
  await growth(10, ten),
  await growth(30, thirty),
  await pair({
    name: 'whole check, 10 years',
    against: 'a bare range query over stays, which loads no job, judges nothing, says nothing and draws nothing',
    aim: 1000,
    rounds: ROUNDS,
    ours: ten.check,
    theirs: ten.range,
  }),
];
for (const each of [one, ten, thirty]) each.close();
report(...rows);
