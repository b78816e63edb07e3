/**
 * How each deed of a job of the sample is done: through the same procedure that a screen calls.
 */
import { call } from '@orpc/server';
import type { SampleDeed, SampleDeeds, SampleJob, SampleKnows } from '../../assets/sample/shape.ts';
import { sample } from '../../assets/sample/index.ts';
import type { Job } from '../../core/contract/jobs.ts';
import type { Knows } from '../../core/contract/knows.ts';
import { instantText } from '../../core/time/read.ts';
import { dateLater } from '../../core/time/wall.ts';
import { callings } from '../api/callings.ts';
import { inquiries } from '../api/inquiries.ts';
import { jobs } from '../api/jobs.ts';
import { kit } from '../api/kit.ts';
import { pencils } from '../api/pencils.ts';
import { quotes } from '../api/quotes.ts';
import { trips } from '../api/trips.ts';
import type { Cast, Doing, Told } from './cast.ts';
import { dateOf, daysOf, filledIn, momentOf, wallOf } from './dates.ts';
import { moneyDoings } from './money-deeds.ts';

export const firstDateOf = (job: SampleJob, { today }: Cast): string => dateOf(job.first, today);

const doings: { [D in SampleDeed]: Doing<D> } = {
  async asked(cast, told, { message }) {
    const { job } = told;
    if (message === undefined) {
      told.id = (await call(jobs.add, { facts: await factsOf(cast, told) }, cast)).job.id;
    } else {
      const taken = await call(inquiries.take, { text: filledIn(message, cast.today), title: job.title }, cast);
      told.id = taken.jobId;
    }
    const clientId = cast.clients.get(job.client);
    if (clientId) await call(jobs.setClient, { ...(await now(cast, told)), clientId }, cast);
    const needs = [...(job.kit ?? [])];
    const presets = [...(job.presets ?? [])];
    if (needs.length + presets.length > 0) await call(kit.setForJob, { jobId: told.id, needs, presets }, cast);
  },
  async knows(cast, told, given) {
    const job = await stored(cast, told);
    const knows = known(job.knows, given, told.first);
    await call(jobs.saveKnows, { id: job.id, version: job.version, knows }, cast);
  },
  async legs(cast, { id: jobId, first }, legs) {
    for (const { from, to, depart, arrive, ...leg } of legs) {
      const fields = {
        ...leg,
        from: await cast.place(from),
        to: await cast.place(to),
        depart: wallOf(depart, first),
        arrive: wallOf(arrive, first),
      };
      await call(trips.setLeg, { jobId, fields }, cast);
    }
  },
  async quote(cast, told, { pencil = false, changes = [], until }) {
    const jobId = told.id;
    let { draft } = await call(quotes.draft, { jobId }, cast);
    if (changes.length > 0)
      ({ draft } = await call(quotes.change, { jobId, draftVersion: draft.draftVersion, changes: [...changes] }, cast));
    const { version: jobVersion } = await stored(cast, told);
    const { version } = await call(quotes.make, { jobId, jobVersion, draftVersion: draft.draftVersion, pencil }, cast);
    await call(quotes.sent, { id: version.id }, cast);
    if (until) await doings.pencil(cast, told, { until });
  },
  async pencil(cast, told, { until }) {
    const expires = until && instantText(momentOf(until, told.first, cast.today));
    await call(jobs.pencil, { ...(await now(cast, told)), ...(expires ? { expires } : {}) }, cast);
  },
  challenge: (cast, { id: jobId }, { hours }) => call(pencils.challenge, { jobId, hours }, cast),
  ink: async (cast, told, yes) => call(jobs.ink, { ...(await now(cast, told)), ...yes }, cast),
  letGo: async (cast, told) => call(jobs.letGo, await now(cast, told), cast),
  decline: async (cast, told) => call(jobs.decline, await now(cast, told), cast),
  cancel: async (cast, told, costs) => call(callings.off, { ...(await now(cast, told)), ...costs, postponeTo: null }, cast),
  postpone: async (cast, told, { days }) =>
    call(callings.off, { ...(await now(cast, told)), postponeTo: dateLater(told.first, days) }, cast),
  ...moneyDoings,
};

/** Do one deed of a job's story. @throws what the procedure refuses with */
export function doDeed<D extends SampleDeed>(cast: Cast, told: Told, deed: D, given: SampleDeeds[D]): Promise<unknown> {
  return doings[deed](cast, told, given);
}

async function stored(cast: Cast, { id }: Told): Promise<Job> {
  return (await call(jobs.get, { id }, cast)).job;
}

async function now(cast: Cast, told: Told): Promise<{ id: string; version: number }> {
  const { id, version } = await stored(cast, told);
  return { id, version };
}

async function factsOf(cast: Cast, { job, first }: Told) {
  const contact = sample.clients.find(({ name }) => name === job.client)?.contacts[0];
  const promised = job.deliverables ?? [];
  return {
    title: job.title,
    organisation: job.client,
    contact: { name: contact?.name ?? '', email: contact?.email ?? '', phone: contact?.phone ?? '' },
    role: job.role ?? ('shoot' as const),
    place: await cast.place(job.place),
    days: daysOf(job, cast.today),
    budget: job.budget ?? null,
    notes: job.notes ?? '',
    deliverables: promised.map((one) => (typeof one === 'string' ? one : one.what)),
    edits: promised.flatMap((one) =>
      typeof one === 'string' ? [] : [{ what: one.what, due: dateLater(first, one.due), hours: one.hours ?? null }],
    ),
  };
}

/** What the job knows, with what the sample adds; dates are counted from the first date. */
function known(before: Knows, { taxForm, insurance, confidentiality, ...rest }: SampleKnows, first: string): Knows {
  const paper = (was: Knows['taxForm'], given: SampleKnows['taxForm']): Knows['taxForm'] =>
    given
      ? {
          asked: true,
          due: given.due === undefined ? null : dateLater(first, -given.due),
          sentOn: given.sent === undefined ? null : dateLater(first, -given.sent),
          detail: given.detail ?? '',
        }
      : was;
  return {
    ...before,
    ...rest,
    taxForm: paper(before.taxForm, taxForm),
    insurance: { ...before.insurance, ...paper(before.insurance, insurance) },
    confidentiality: confidentiality
      ? {
          mayShow: confidentiality.mayShow,
          until: confidentiality.until === undefined ? null : dateLater(first, confidentiality.until),
          detail: confidentiality.detail ?? '',
        }
      : before.confidentiality,
  };
}
