import { call } from '@orpc/server';
import { beforeEach, describe, expect, test } from 'vitest';
import type { HandState } from '../../../core/contract/hands.ts';
import type { JobDay } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import type { HandFields } from '../../../core/contract/people.ts';
import { desk } from '../../../electron/api/desk.ts';
import { fit } from '../../../electron/api/fit.ts';
import { hands } from '../../../electron/api/hands.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { people } from '../../../electron/api/people.ts';
import { makeQuote } from '../jobs/made-quote.ts';
import { DULUTH, FARGO, refusal, type World, world } from '../world.ts';

const NOW = '2026-11-20T15:00:00Z';
const day = (date: string, call: string, wrap: string): JobDay => ({
  date,
  kind: 'shoot',
  call: `${date}T${call}`,
  wrap: `${date}T${wrap}`,
});
const CLINIC = [day('2026-12-11', '08:00', '18:00'), day('2026-12-12', '08:00', '18:00')];
const bo: HandFields = {
  name: 'Bo Lind',
  email: 'bo@lind.example',
  phone: '',
  rates: [{ role: 'shoot', dayRate: '400.00', currency: 'USD', from: '2026-01-01' }],
  home: DULUTH,
  ownKit: '',
  taxForm: false,
  insuredUntil: null,
  payDays: 30,
  backup: true,
  notes: '',
};

let w: World;
let boId: string;
beforeEach(async () => {
  w = await world(NOW);
  boId = await kept(bo);
});
const kept = async (fields: HandFields) => (await call(people.saveHand, { fields }, { context: w.context })).hand.id;
const added = async (title: string, place: Place, days: JobDay[]) =>
  (await call(jobs.add, { facts: { title, place, days } }, { context: w.context })).job;
async function inked(title: string, place: Place, days: JobDay[]) {
  const job = await added(title, place, days);
  makeQuote(w.context, job.id);
  const { version } = (await call(jobs.get, { id: job.id }, { context: w.context })).job;
  return (await call(jobs.ink, { id: job.id, version, who: 'Ada Byrd', how: 'mail' }, { context: w.context })).job;
}
const settled = (jobId: string, dates: string[], state: HandState, handId = boId) =>
  call(hands.settle, { jobId, handId, dates, state, how: 'by phone' }, { context: w.context });
const answerFor = async (jobId: string) => (await call(fit.check, { jobId }, { context: w.context })).result;

describe('hands on a job', () => {
  test('asked, pencilled, yes: only the yes takes the date off my lane', async () => {
    await inked('Robotics final', FARGO, [day('2026-12-12', '09:00', '18:00')]);
    const clinic = await added('Clinic opening', DULUTH, [day('2026-12-12', '08:00', '18:00')]);
    expect((await answerFor(clinic.id)).answer).toBe('not possible');
    const { hands: asked } = await call(hands.ask, { jobId: clinic.id, handId: boId, dates: ['2026-12-12'] }, { context: w.context });
    expect(asked).toMatchObject([{ name: 'Bo Lind', backup: true, answer: 'free', dates: [{ date: '2026-12-12', state: 'asked' }] }]);
    expect((await answerFor(clinic.id)).answer).toBe('not possible');
    await settled(clinic.id, ['2026-12-12'], 'pencilled');
    expect((await answerFor(clinic.id)).answer).toBe('not possible');
    await settled(clinic.id, ['2026-12-12'], 'said yes');
    const covered = await answerFor(clinic.id);
    expect(covered.answer).toBe('free');
    expect(covered.findings.find(({ kind }) => kind === 'hand cost')?.sentence).toBe(
      'Bo Lind said yes for Sat 12 December 2026: 1 day, USD 400.00.',
    );
    await settled(clinic.id, ['2026-12-12'], 'let go');
    expect((await answerFor(clinic.id)).answer).toBe('not possible');
  });

  test('a job whose date a hand does can be inked over my own ink', async () => {
    await inked('Robotics final', FARGO, [day('2026-12-12', '09:00', '18:00')]);
    const clinic = await added('Clinic opening', DULUTH, [day('2026-12-12', '08:00', '18:00')]);
    makeQuote(w.context, clinic.id);
    const yes = async () => call(jobs.ink, { ...(await current(clinic.id)), who: 'Ada Byrd', how: 'mail' }, { context: w.context });
    expect((await refusal(yes())).code).toBe('REFUSED');
    await settled(clinic.id, ['2026-12-12'], 'said yes');
    expect((await yes()).job.state).toBe('inked');
  });
  const current = async (id: string) => {
    const { version } = (await call(jobs.get, { id }, { context: w.context })).job;
    return { id, version };
  };

  test('a hand who said yes elsewhere is told apart from one who is free', async () => {
    const robotics = await added('Robotics final', FARGO, [day('2026-12-12', '09:00', '18:00')]);
    await settled(robotics.id, ['2026-12-12'], 'said yes');
    const clinic = await added('Clinic opening', DULUTH, CLINIC);
    const { hands: asked } = await call(hands.ask, { jobId: clinic.id, handId: boId, dates: ['2026-12-12'] }, { context: w.context });
    expect(asked[0]?.answer).toBe('not possible');
    expect(asked[0]?.sentences[0]).toContain('For Bo Lind: Robotics final in ink: Fargo, Saturday 12 December');
  });

  test('what cannot be is refused and changes nothing', async () => {
    const clinic = await added('Clinic opening', DULUTH, CLINIC);
    expect(await refusal(call(hands.ask, { jobId: clinic.id, handId: boId, dates: ['2026-12-24'] }, { context: w.context }))).toMatchObject(
      {
        code: 'BAD_INPUT',
        fields: [{ field: 'dates' }],
      },
    );
    expect(await refusal(settled(clinic.id, ['2026-12-11'], 'said no'))).toMatchObject({ code: 'REFUSED' });
    expect(await refusal(settled(clinic.id, ['2026-12-11'], 'said yes', clinic.id))).toMatchObject({ code: 'NOT_FOUND' });
    await call(jobs.decline, await current(clinic.id), { context: w.context });
    expect(await refusal(settled(clinic.id, ['2026-12-11'], 'said yes'))).toMatchObject({ code: 'REFUSED' });
    expect((await call(hands.of, { jobId: clinic.id }, { context: w.context })).hands).toEqual([]);
  });

  test('a date that the job has no longer is said so and can still be given up', async () => {
    const clinic = await added('Clinic opening', DULUTH, CLINIC);
    await settled(clinic.id, ['2026-12-11', '2026-12-12'], 'said yes');
    await call(jobs.change, { ...(await current(clinic.id)), changes: { days: CLINIC.slice(0, 1) } }, { context: w.context });
    const [found] = (await call(hands.of, { jobId: clinic.id }, { context: w.context })).hands;
    expect(found?.dates.map(({ date, wanted }) => [date, wanted])).toEqual([
      ['2026-12-11', true],
      ['2026-12-12', false],
    ]);
    expect((await settled(clinic.id, ['2026-12-12'], 'let go')).hands[0]?.dates[1]?.state).toBe('let go');
  });
});

describe('I cannot come', () => {
  test('what is held, who could take over, and what to write', async () => {
    await inked('Clinic opening', DULUTH, CLINIC);
    await added('Not held by anything', DULUTH, [day('2026-12-12', '19:00', '22:00')]);
    const cy = await kept({ ...bo, name: 'Cy Moss', backup: false });
    const robotics = await added('Robotics final', FARGO, [day('2026-12-11', '09:00', '18:00')]);
    await settled(robotics.id, ['2026-12-11'], 'said yes');
    const { jobs: held } = await call(hands.cannotCome, { from: '2026-12-10', to: '2026-12-12' }, { context: w.context });
    expect(held.map(({ title, state, days }) => [title, state, days.length])).toEqual([['Clinic opening', 'inked', 2]]);
    // Bo is the backup but does another job of mine on the first day.
    expect(held[0]?.standIns.map(({ handId, answer, cost }) => [handId, answer, cost])).toEqual([
      [cy, 'free', [{ minor: 80_000, currency: 'USD' }]],
      [boId, 'not possible', [{ minor: 80_000, currency: 'USD' }]],
    ]);
    expect(held[0]?.standIns[0]?.message).toContain('could you cover the shoot in Duluth for me?');
    expect(held[0]?.message).toContain('I cannot come to Clinic opening on Fri 11 December 2026 and Sat 12 December 2026.');
  });

  test('dates that a hand does stand and are not mine to give up', async () => {
    const clinic = await inked('Clinic opening', DULUTH, CLINIC);
    await settled(clinic.id, ['2026-12-11'], 'said yes');
    const { jobs: held } = await call(hands.cannotCome, { from: '2026-12-11', to: '2026-12-12' }, { context: w.context });
    expect(held[0]?.days.map(({ date }) => date)).toEqual(['2026-12-12']);
    expect(held[0]?.byHands).toEqual([{ date: '2026-12-11', name: 'Bo Lind' }]);
    expect(held[0]?.message).toContain('Fri 11 December 2026 is not touched by this.');
    await settled(clinic.id, ['2026-12-12'], 'said yes');
    expect((await call(hands.cannotCome, { from: '2026-12-11', to: '2026-12-12' }, { context: w.context })).jobs).toEqual([]);
  });

  test.each([
    ['2026-12-12', '2026-12-11'],
    ['2026-12-12', '2027-12-11'],
  ])('from %s to %s is bad input', async (from, to) => {
    expect((await refusal(call(hands.cannotCome, { from, to }, { context: w.context }))).code).toBe('BAD_INPUT');
  });
});

test('a hand who has not answered is a clock on the Desk until an answer is noted', async () => {
  const clinic = await added('Clinic opening', DULUTH, CLINIC);
  const clocks = async () => (await call(desk.see, {}, { context: w.context })).clocks.filter(({ kind }) => kind === 'hand');
  await call(hands.ask, { jobId: clinic.id, handId: boId, dates: ['2026-12-12'] }, { context: w.context });
  expect(await clocks()).toMatchObject([{ at: '2026-11-21T15:00:00Z', sentence: 'Clinic opening: Bo Lind has not answered' }]);
  await settled(clinic.id, ['2026-12-12'], 'said no');
  expect(await clocks()).toEqual([]);
});
