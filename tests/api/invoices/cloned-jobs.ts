/**
 * Many jobs like one, put into the store in one step: what issues bills at once needs a job for each.
 */
import type { Store } from '../../../db/store.ts';
import { newId } from '../../../db/ids.ts';

/** Copies of a job in ink with its days and its quote; they stand on the same dates, which no rule looks at again. Answers with their ids. */
export function clonedJobs(store: Store, jobId: string, count: number): string[] {
  return store.write((db) => {
    const columns = (table: string): string[] =>
      db.$client.prepare<[], string>(`select name from pragma_table_info('${table}')`).pluck().all();
    const copy = (table: string, key: string, values: Record<string, string>): void => {
      const names = columns(table);
      const shown = names.map((name) => (name in values ? `@${name}` : `"${name}"`));
      const quoted = names.map((name) => `"${name}"`);
      db.$client.prepare(`insert into ${table} (${quoted.join(', ')}) select ${shown.join(', ')} from ${table} where ${key} = @from`).run({
        ...values,
        from: jobId,
      });
    };
    return Array.from({ length: count }, () => {
      const id = newId();
      copy('jobs', 'id', { id });
      const days = db.$client.prepare<[string], string>('select id from job_days where job_id = ?').pluck().all(jobId);
      for (const day of days) {
        const names = columns('job_days').filter((name) => name !== 'id' && name !== 'job_id');
        db.$client
          .prepare(`insert into job_days (id, job_id, ${names.join(', ')}) select ?, ?, ${names.join(', ')} from job_days where id = ?`)
          .run(newId(), id, day);
      }
      copy('quote_versions', 'job_id', { id: newId(), job_id: id });
      return id;
    });
  });
}
