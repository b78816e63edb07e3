/**
 * The queries that must stay quick with ten years of history, by the index they use.
 */
import { and, eq, gt, lt } from 'drizzle-orm';
import { expect, test } from 'vitest';
import { IMPORTED_NEAR } from '../../db/calendars.ts';
import { GONE_PENCILS } from '../../db/gone.ts';
import { BILLED_IN_YEAR, CLOSED, PARTS_OF, UNBILLED } from '../../db/ledger.ts';
import { OPEN_EDITS } from '../../db/open-edits.ts';
import { FINISHED } from '../../db/spent.ts';
import { FEW_AS_OF } from '../../db/invoices.ts';
import { LONGEST_STAY_MS, stays } from '../../db/schema/jobs.ts';
import { explain } from '../explain.ts';
import { NOW, temporaryStore } from '../store.ts';

test('overlapping stays are found by their index alone, in both bounds', async () => {
  const store = await temporaryStore();
  const plan = store.read((db) => {
    const query = db
      .select({ jobId: stays.jobId })
      .from(stays)
      .where(and(lt(stays.startAt, NOW), gt(stays.startAt, NOW - LONGEST_STAY_MS), gt(stays.endAt, NOW)))
      .toSQL();
    return explain(db, query.sql, ...query.params);
  });
  expect(plan).toEqual(['SEARCH stays USING COVERING INDEX stays_by_time (start_at>? AND start_at<?)']);
});

test('what other calendars take is found by its time, in both bounds', async () => {
  const store = await temporaryStore();
  const plan = store.read((db) => explain(db, IMPORTED_NEAR.replaceAll(/:(from|to)/g, String(NOW))));
  expect(plan.some((step) => step.includes('imported_events USING INDEX imported_events_by_time (start_at>? AND start_at<?)'))).toBe(true);
  expect(plan.join()).not.toContain('SCAN imported_events');
});

test('the bound that this relies on is kept by the table', async () => {
  const store = await temporaryStore();
  const insert = (length: number) =>
    store.write((db) => {
      db.$client.exec(
        `insert or ignore into jobs (id, title, stage, role, questions, spans, received_at, received_zone, deliverables, created_at, updated_at)
         values ('j', 'Curling', 'inquiry', 'shoot', '[]', '[]', 1, 'America/Chicago', '[]', 1, 1)`,
      );
      db.insert(stays)
        .values({ id: 's', jobId: 'j', startAt: NOW, endAt: NOW + length })
        .run();
      db.delete(stays).where(eq(stays.id, 's')).run();
    });
  expect(() => insert(LONGEST_STAY_MS)).not.toThrow();
  expect(() => insert(LONGEST_STAY_MS + 1)).toThrow(/stays_longest/);
  expect(() => insert(0)).toThrow(/stays_end_after_start/);
});

test.each([
  ['history of a thing', "select * from history where subject = 'job' and subject_id = 'a' order by at desc", 'history_by_subject'],
  ['deeds by age', 'delete from deeds where at < 1', 'deeds_by_age'],
  ['days of a job', "select * from job_days where job_id = 'a' order by call_at", 'job_days_by_job'],
  ['the held pencil of a job', "select * from pencils where job_id = 'a' and state = 'held'", 'pencils_one_held'],
  ['stays of a job', "delete from stays where job_id = 'a'", 'stays_by_job'],
  ['papers of a job', "select * from papers where job_id = 'a' order by made_at", 'papers_by_job'],
  ['versions of a job', "select * from quote_versions where job_id = 'a' order by number", 'quote_versions_number'],
])('%s: by index, without a sort', async (_, sql, index) => {
  const store = await temporaryStore();
  const plan = store.write((db) => explain(db, sql));
  expect(plan).toHaveLength(1);
  expect(plan[0]).toMatch(new RegExp(`^SEARCH \\w+ USING (COVERING )?INDEX ${index} `));
});

test('pencils that ended lately are found by their expiry, not among all that ever were', async () => {
  const store = await temporaryStore();
  const plan = store.write((db) => explain(db, GONE_PENCILS, { since: NOW - 1, now: NOW }));
  expect(plan[0]).toBe('SEARCH pencils USING INDEX pencils_by_expiry (expires_at>?)');
});

test('papers of a year are found in the index of numbers, parts of a span by its dates, jobs that wait for a bill by their stays', async () => {
  const store = await temporaryStore();
  const span = { from: '2026-01-01', to: '2026-12-31' };
  const [papers, parts, waiting, closed] = store.write((db) => [
    explain(db, BILLED_IN_YEAR, { year: 2026 }),
    explain(db, PARTS_OF, span),
    explain(db, UNBILLED, { since: NOW }),
    explain(db, CLOSED, { year: 2025 }),
  ]);
  expect(papers).toContain('SEARCH i USING INDEX invoices_sequence (series=? AND year=?)');
  expect(parts).toContain('SEARCH p USING INDEX payments_by_date (on_date>? AND on_date<?)');
  expect(waiting?.join('\n')).toMatch(/SEARCH s USING (COVERING )?INDEX stays_by_time/);
  expect(closed).toContain('SEARCH i USING INDEX invoices_sequence (series=? AND year>?)');
  // Nothing is gone through from end to end but what was found before, and the numbers for their few series.
  const gone = [papers, parts, waiting, closed].flatMap((steps) => steps?.filter((step) => step.startsWith('SCAN')) ?? []);
  expect(new Set(gone)).toEqual(
    new Set(['SCAN invoices USING COVERING INDEX invoices_sequence', 'SCAN touched', 'SCAN off VIRTUAL TABLE INDEX 3:']),
  );
});

test.each([
  ['one', 'and i.id = @id', 'sqlite_autoindex_invoices_1'],
  ['those of a job', 'and i.job_id = @id', 'invoices_by_job'],
  ['those of a client', 'and i.client_id = @id', 'invoices_by_client'],
])('issued papers as of a date, %s: by index, and so is what was paid and credited', async (_, where, index) => {
  const store = await temporaryStore();
  const plan = store.write((db) => explain(db, `${FEW_AS_OF} ${where}`, { asOf: '2026-12-01', id: 'a' }));
  expect(plan.join('\n')).toContain(index);
  expect(plan.filter((step) => step.startsWith('SCAN'))).toEqual([]);
});

test('what past edits took reads the time of each edit by its index', async () => {
  const store = await temporaryStore();
  const plan = store.write((db) => explain(db, FINISHED, { templateId: 'a' }));
  expect(plan.join('\n')).toMatch(/SEARCH time_spent USING INDEX time_spent_by_deliverable/);
  expect(plan.join('\n')).not.toMatch(/SCAN (?!d\b)/);
});

test('open edits are found among the open stages alone, however many were delivered', async () => {
  const store = await temporaryStore();
  const plan = store.read((db) => explain(db, OPEN_EDITS));
  expect(plan[0]).toMatch(/^SCAN s USING INDEX stages_open/);
  expect(plan.slice(1).filter((step) => step.startsWith('SCAN'))).toEqual([]);
});
