/** A job of two days in Fargo in ink, with a highlight and talks promised; the template of the highlight is mine. */
import { call } from '@orpc/server';
import type { Deliverable } from '../../../core/contract/deliverables.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import type { Context } from '../../../electron/api/context.ts';
import { deliverables } from '../../../electron/api/deliverables.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { quotes } from '../../../electron/api/quotes.ts';
import { rates } from '../../../electron/api/rates.ts';
import { templates } from '../../../electron/api/templates.ts';
import { DULUTH, world, type World } from '../world.ts';
import { HIGHLIGHT } from './numbers.ts';

export type At = { context: Context };

export async function begun(): Promise<{ w: World; at: At; templateId: string }> {
  const w = await world('2026-11-26T15:00:00Z');
  const at = { context: w.context };
  const { fields } = await call(rates.defaults, { role: 'shoot', currency: 'USD', validFrom: '2026-01-01' }, at);
  await call(rates.save, { fields: { ...fields, dayRate: '1200.00', editHour: '90' } }, at);
  const { template } = await call(templates.save, { fields: HIGHLIGHT }, at);
  return { w, at, templateId: template.id };
}

/** Put a job on the books and note the yes. Days are 08:00 to 18:00. */
export async function inked(at: At, title: string, dates: readonly string[], facts: Partial<Job> & { place?: Place } = {}): Promise<Job> {
  const days = dates.map((date) => ({ date, kind: 'shoot' as const, call: `${date}T08:00`, wrap: `${date}T18:00` }));
  const { job } = await call(jobs.add, { facts: { title, place: DULUTH, days, ...facts } }, at);
  const made = await call(quotes.make, { jobId: job.id, jobVersion: job.version, draftVersion: 0, pencil: false }, at);
  return (await call(jobs.ink, { id: job.id, version: made.job.version, who: 'Ada Byrd', how: 'mail' }, at)).job;
}

export const PROMISED = {
  deliverables: ['Highlight', 'Talks'],
  edits: [{ what: 'Talks', due: '2026-12-18', hours: '20' }],
};

/** That job, the first two deliverables that the ink made of it, and the template. */
export async function promised() {
  const { w, at, templateId } = await begun();
  const job = await inked(at, 'Bakers congress', ['2026-12-07', '2026-12-08'], PROMISED);
  const { deliverables: made } = await call(deliverables.of, { jobId: job.id }, at);
  const [highlight, talks] = made as [Deliverable, Deliverable];
  return { w, at, job, templateId, highlight, talks };
}

/** A stage of a deliverable by its name, as the procedures ask for it. */
export const stageOf = ({ stages }: Deliverable, name: string) => {
  const found = stages.find((stage) => stage.name === name);
  if (!found) throw new Error(`no stage ${name}`);
  return { id: found.id, version: found.version };
};
