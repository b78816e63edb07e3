/**
 * What is tried on and holds: saved through the deed that it stands for, each with its history and a way back. A lift that has no lasting deed,
 * such as a shorter rest, is only tried on.
 */
import type { Lift } from '../../../core/contract/fit.ts';
import type { Job } from '../../../core/contract/jobs.ts';
import type { TryOn } from '../../../core/contract/try-on.ts';
import { agreedDays } from '../../../core/fit/agreed-days.ts';
import { askHolder } from '../../actions/challenge.ts';
import { pencilDates, renew } from '../../actions/renew.ts';
import { deed, say } from '../../deeds.ts';
import { client } from '../../door.ts';
import { sceneNow } from '../../scene.ts';
import { type ChangeJob, newestJob } from './change-job.ts';
import { copyAskHand, copyStillOpen } from './copy-asks.ts';
import { keepOfEdits } from './keep-edits.ts';
import { keepOtherUnit, keepSubHire } from './keep-kit.ts';

/** `perform` answers whether it is done, so that it need not be tried on any longer. */
export type Keep = { label: string; perform: () => Promise<boolean> };

export function keepOf(lift: Lift, job: Job, save: ChangeJob): Keep | null {
  const { tryOn = {}, jobId } = lift;
  const { legs, withoutTickets, hands, kitInstead, kitExtra, withoutPersonal, ways } = tryOn;
  if (agreedDays(job.days, job.place?.zone ?? 'UTC', tryOn))
    return { label: 'Agreed: write it into the days', perform: () => keepDays(job, tryOn, save) };
  if (tryOn.edits) return keepOfEdits(tryOn.edits, jobId);
  if (legs) return { label: 'Keep it on the trip', perform: () => keepLegs(job, legs, lift.kind === 'ticket') };
  if (withoutTickets) return jobId ? { label: 'Take the ticket off', perform: () => dropTickets(jobId, withoutTickets) } : null;
  if (hands) return { label: 'Copy a message, note the ask', perform: () => copyAskHand(job, hands) };
  if (kitInstead) return { label: 'Write it into the kit', perform: () => keepOtherUnit(job.id, kitInstead) };
  if (kitExtra) return { label: 'Keep it, as a cost', perform: () => keepSubHire(job, kitExtra) };
  if (lift.kind === 'challenge') return jobId ? { label: 'Ask them now', perform: () => tillAnswered(askHolder(jobId)) } : null;
  if (lift.kind === 'second pencil')
    return renew.when(sceneNow()) ? { label: 'Pencil it', perform: () => tillAnswered(pencilDates(job.id, newestJob(job).version)) } : null;
  if (withoutPersonal) return { label: 'It is moved: take it off', perform: () => dropPersonal(withoutPersonal) };
  if (ways && lift.way) return { label: 'Remember it', perform: () => rememberWay(lift.way, ways) };
  const [noted] = tryOn.documents ?? [];
  if (noted && !noted.asked)
    return { label: 'Note it in Setup', perform: () => tillAnswered(goTo(`/setup/document/new/${encodeURIComponent(noted.kind)}`)) };
  if (tryOn.customsList) return { label: 'Go to the customs list', perform: () => tillAnswered(toPapers()) };
  return tryOn.stillOpen ? { label: 'Copy a message to ask', perform: () => copyStillOpen(job) } : null;
}

const goTo = async (path: string): Promise<void> => sceneNow().go(path);
const toPapers = async (): Promise<void> => document.getElementById('papers')?.scrollIntoView({ block: 'center' });

/** Whether the other pencil goes is not known yet, so what was tried on stays until it is taken back. */
const tillAnswered = (work: Promise<unknown>): Promise<boolean> => work.then(() => false);

async function keepDays(job: Job, tryOn: TryOn, save: ChangeJob): Promise<boolean> {
  const now = newestJob(job);
  const days = agreedDays(now.days, now.place?.zone ?? 'UTC', tryOn);
  if (!days) return false;
  const settled = ['start', 'end', 'firstCall', 'lastWrap', 'days'];
  const saved = await save({ days }, { settled });
  if (saved) say('The days are changed.', { label: 'Take it back', perform: () => save({ days: now.days }) });
  return saved;
}

/** A flight of unknown times says how long its way takes; a drive that was planned stands, and so does a ticket that was read. */
async function keepLegs(job: Job, legs: NonNullable<TryOn['legs']>, ticket: boolean): Promise<boolean> {
  const kept = await deed(async () => {
    const all = [];
    for (const leg of legs) {
      const source = leg.mode === 'flight' && !ticket ? 'typed' : 'ticketed';
      all.push((await client.trips.setLeg({ jobId: job.id, fields: { ...leg, source } })).leg);
    }
    return all;
  });
  if (!kept) return false;
  const [first] = kept;
  const flight = first?.mode === 'flight' && !ticket;
  const what = flight ? 'The flight is on the trip as typed; put in its real times.' : `The ${first?.mode ?? 'leg'} is on the trip.`;
  say(what, {
    label: 'Take it back',
    perform: () => deed(() => Promise.all(kept.map(({ id, version }) => client.trips.dropLeg({ id, version })))),
  });
  return true;
}

async function dropTickets(jobId: string, keys: NonNullable<TryOn['withoutTickets']>): Promise<boolean> {
  const dropped = await deed(async () => {
    const { legs } = await client.trips.legs({ jobId });
    const found = legs.filter((leg) =>
      keys.some(
        ({ fromKey, toKey, departAt }) =>
          leg.from.key === fromKey &&
          leg.to.key === toKey &&
          Temporal.PlainDateTime.from(leg.depart).toZonedDateTime(leg.from.zone).toInstant().equals(departAt),
      ),
    );
    for (const { id, version } of found) await client.trips.dropLeg({ id, version });
    return found;
  });
  if (!dropped) return false;
  say('The ticket is off the books; give it up where it was bought.', {
    label: 'Put it back',
    perform: () =>
      deed(() =>
        Promise.all(dropped.map(({ id: _id, version: _version, jobId: of, ...fields }) => client.trips.setLeg({ jobId: of, fields }))),
      ),
  });
  return true;
}

async function dropPersonal(ids: readonly string[]): Promise<boolean> {
  const dropped = await deed(async () => {
    const mine = (await client.personal.list({})).personal.filter(({ id }) => ids.includes(id));
    for (const { id, version } of mine) await client.personal.drop({ id, version });
    return mine;
  });
  if (!dropped) return false;
  say('It is off your own time; put it in where it is now.', {
    label: 'Put it back',
    perform: () => deed(() => Promise.all(dropped.map(({ id: _id, version: _version, ...fields }) => client.personal.save({ fields })))),
  });
  return true;
}

async function rememberWay(way: Lift['way'], ways: NonNullable<TryOn['ways']>): Promise<boolean> {
  const [typed] = ways;
  if (!way || !typed) return false;
  const { mode, minutes } = typed;
  const kept = await deed(() => client.trips.setWay({ fields: { ...way, mode, minutes, distance: null, note: '' } }));
  if (kept) say('The drive is remembered and used from now on, in both directions.');
  return kept !== undefined;
}
