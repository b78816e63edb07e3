/**
 * A job in ink that is worked on: two days in Fargo at 1,200.00 for 10 h, with a hand at 400.00 a day.
 */
import { call } from '@orpc/server';
import type { Hand } from '../../../core/contract/people.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import type { SetupFields } from '../../../core/contract/setup.ts';
import type { Context } from '../../../electron/api/context.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { people } from '../../../electron/api/people.ts';
import { quotes } from '../../../electron/api/quotes.ts';
import { rates } from '../../../electron/api/rates.ts';
import { FARGO, SETUP, world, type World } from '../world.ts';

export type Site = { w: World; at: { context: Context }; job: Job; hand: Hand };

const DATES = ['2026-12-12', '2026-12-13'];

type Asked = { place?: Place; dates?: readonly string[]; currency?: string; setup?: Partial<SetupFields> };

/** @param asked.currency of the card that the job is priced by */
export async function onSite(asked: Asked = {}): Promise<Site> {
  const { place = FARGO, dates = DATES, currency = 'USD', setup = {} } = asked;
  const w = await world('2026-12-01T15:00:00Z', { ...SETUP, ...setup });
  const at = { context: w.context };
  const { fields } = await call(rates.defaults, { role: 'shoot', currency, validFrom: '2026-01-01' }, at);
  await call(rates.save, { fields: { ...fields, dayRate: '1200.00', dayHours: '10' } }, at);
  const { hand } = await call(people.saveHand, { fields: { ...HAND, rates: [{ ...RATE, currency }] } }, at);
  const days = dates.map((date) => ({ date, kind: 'shoot' as const, call: `${date}T07:00`, wrap: `${date}T17:00` }));
  return { w, at, hand, job: await inked(at, { title: 'League final', place, days }) };
}

/** Put a job on the books, quote it and note the yes. */
export async function inked(at: { context: Context }, facts: { title: string; place: Place; days: Job['days'] }): Promise<Job> {
  const { job } = await call(jobs.add, { facts }, at);
  const made = await call(quotes.make, { jobId: job.id, jobVersion: job.version, draftVersion: 0, pencil: false }, at);
  return (await call(jobs.ink, { id: job.id, version: made.job.version, who: 'Ada Byrd', how: 'mail' }, at)).job;
}

const RATE = { role: 'shoot' as const, dayRate: '400.00', currency: 'USD', from: '2026-01-01' };
const HAND = {
  name: 'Mara Quill',
  email: '',
  phone: '',
  rates: [RATE],
  home: null,
  ownKit: '',
  taxForm: true,
  insuredUntil: null,
  payDays: 14,
  backup: false,
  notes: '',
};
