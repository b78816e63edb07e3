import { call } from '@orpc/server';
import { describe, expect, test } from 'vitest';
import type { JobDay } from '../../../core/contract/jobs.ts';
import type { Place } from '../../../core/contract/parts.ts';
import { fit } from '../../../electron/api/fit.ts';
import { jobs } from '../../../electron/api/jobs.ts';
import { kit } from '../../../electron/api/kit.ts';
import { personal } from '../../../electron/api/personal.ts';
import { setLeg } from '../../../electron/api/legs.ts';
import { trips } from '../../../electron/api/trips.ts';
import { makeQuote } from '../jobs/made-quote.ts';
import { DULUTH, FARGO, placeByKey, refusal, THUNDER_BAY, type World, world, withPapers } from '../world.ts';

const MILWAUKEE = placeByKey('geonames:5263045');
const NOW = '2026-12-04T02:52:00Z';
const day = (date: string, call: string, wrap: string, kind: JobDay['kind'] = 'shoot'): JobDay => ({
  date,
  kind,
  call: `${date}T${call}`,
  wrap: `${date}T${wrap}`,
});
const BAKERS = [
  day('2026-12-01', '08:00', '18:00'),
  day('2026-12-02', '08:00', '18:00'),
  day('2026-12-03', '08:00', '18:00'),
  day('2026-12-04', '09:00', '22:30'),
];
const CURLING = { title: 'Curling championship', place: THUNDER_BAY, days: [day('2026-12-05', '14:00', '19:00', 'half')] };

async function booked({ context }: World, title: string, place: Place, days: JobDay[], how: 'ink' | 'pencil') {
  const { job } = await call(jobs.add, { facts: { title, place, days } }, { context });
  const held = (
    await call(jobs.pencil, { id: job.id, version: job.version, expires: '2026-12-11T12:00:00Z' }, { context }).catch(() => ({ job }))
  ).job;
  if (how === 'pencil') return held;
  makeQuote(context, job.id);
  const { version } = (await call(jobs.get, { id: job.id }, { context })).job;
  return (await call(jobs.ink, { id: job.id, version, who: 'Ada Byrd', how: 'mail' }, { context })).job;
}

async function typedWay({ context }: World, from: Place, to: Place, minutes: number) {
  return (await call(trips.setWay, { fields: { from, to, mode: 'drive', minutes, distance: null, note: '' } }, { context })).way;
}

async function withBakers() {
  const w = await world(NOW);
  await booked(w, 'Bakers’ congress', MILWAUKEE, BAKERS, 'ink');
  await typedWay(w, MILWAUKEE, DULUTH, 415);
  await typedWay(w, DULUTH, THUNDER_BAY, 225);
  return w;
}

describe('fit.check', () => {
  test('a candidate that is not stored, against ink, with ways that were typed', async () => {
    const { context } = await withBakers();
    const { result, stringline } = await call(fit.check, { candidate: CURLING }, { context });
    expect(result.answer).toBe('free if');
    expect(result.findings[0]).toMatchObject({ kind: 'rest', numbers: { have: 870, way: 640, slack: -250, by: 'home' } });
    expect(result.findings[0]?.sentence).toContain(
      'you reach Thunder Bay on Saturday 18:10 (17:10 at home), 4 h 10 min after your first call at 14:00',
    );
    expect(stringline?.clashes[0]).toMatchObject({ placeKey: THUNDER_BAY.key, short: 'there 4 h 10 min late' });
    expect(stringline?.places.map(({ place }) => place.name)).toEqual(['Duluth', 'Thunder Bay', 'Milwaukee']);
  });

  test('every lift that can be tried on lifts what it says', async () => {
    const { context } = await withBakers();
    const { result } = await call(fit.check, { candidate: CURLING }, { context });
    const lifts = result.findings[0]?.lifts.filter((lift) => lift.tryOn) ?? [];
    expect(lifts.length).toBeGreaterThan(1);
    for (const lift of lifts) {
      const tried = await call(fit.check, { candidate: CURLING, tryOn: lift.tryOn }, { context });
      expect(tried.result.findings.filter(({ kind }) => kind === 'rest')).toEqual([]);
    }
  });

  test('a stored job is left out of its own check', async () => {
    const w = await world(NOW);
    const job = await booked(w, 'Robotics final', FARGO, [day('2026-12-12', '09:00', '18:00')], 'pencil');
    const { result } = await call(fit.check, { jobId: job.id }, w);
    expect(result.findings.filter(({ hardness }) => hardness !== 'know')).toEqual([]);
  });

  test('a pencil that ran out and a job that was let go hold nothing', async () => {
    const w = await world(NOW);
    const candidate = { ...CURLING, days: [day('2026-12-12', '14:00', '19:00', 'half')] };
    await booked(w, 'Ran out', FARGO, [day('2026-12-12', '09:00', '18:00')], 'pencil');
    const gone = await booked(w, 'Let go', FARGO, [day('2026-12-12', '09:00', '18:00')], 'pencil');
    expect((await call(fit.check, { candidate }, w)).result.answer).toBe('free if');
    await call(jobs.letGo, { id: gone.id, version: gone.version }, w);
    w.at('2026-12-11T12:00:00Z');
    expect((await call(fit.check, { candidate }, w)).result.findings.map(({ kind }) => kind)).not.toContain('overlap');
  });

  test('without place or days it says what is missing', async () => {
    const w = await world(NOW);
    const { job } = await call(jobs.add, { facts: { title: 'Something in March' } }, w);
    const { result, stringline } = await call(fit.check, { jobId: job.id }, w);
    expect(result).toMatchObject({
      answer: 'free if',
      findings: [],
      missing: ['place', 'days'],
      fine: 'Give the place and the days, and the answer stands here.',
    });
    expect(stringline).toBeNull();
  });

  test('jobs as if on the books, kit by name and own time', async () => {
    const w = await world(NOW);
    await call(kit.save, { fields: { name: 'Camera', owned: 2, resetMinutes: 0, resetOnRoad: true } }, w);
    await call(
      personal.save,
      { fields: { title: 'Choir', from: '2026-12-05T10:00', to: '2026-12-05T11:00', zone: 'America/Chicago', hardness: 'never' } },
      w,
    );
    const withJobs = [
      { title: 'Clinic', place: DULUTH, days: [day('2026-12-05', '08:00', '10:00', 'half')], kit: [{ item: 'camera', count: 1 }] },
    ];
    const candidate = {
      title: 'Fair',
      place: DULUTH,
      days: [day('2026-12-05', '09:30', '10:30', 'half')],
      kit: [{ item: 'Camera', count: 2 }],
    };
    const { result } = await call(fit.check, { candidate, tryOn: { withJobs } }, w);
    expect(result.answer).toBe('not possible');
    expect(result.findings.map(({ kind, hardness }) => `${kind}: ${hardness}`)).toEqual([
      'overlap: blocks',
      'personal time: blocks',
      'kit: settle',
    ]);
    expect(result.findings[2]?.numbers).toMatchObject({ short: 1, lasts: 30, item: 'Camera' });
  });

  test('typed and ticketed legs of a candidate', async () => {
    const { context } = withPapers(await withBakers());
    const leg = { mode: 'flight' as const, from: MILWAUKEE, to: THUNDER_BAY, depart: '2026-12-05T08:00', arrive: '2026-12-05T11:00' };
    const ticketed = await call(fit.check, { candidate: { ...CURLING, legs: [leg] } }, { context });
    // Wrap 22:30, at the flight by 05:00, out of it at 12:00: 6 h 30 min of rest.
    expect(ticketed.result.findings[0]).toMatchObject({ kind: 'rest', numbers: { restLeft: 390, source: 'typed' } });
    const typed = await call(fit.check, { candidate: { ...CURLING, legs: [{ ...leg, mode: 'ride', source: 'typed' }] } }, { context });
    expect(typed.result.findings.filter(({ hardness }) => hardness !== 'know')).toEqual([]);
  });

  test.each([
    [
      'a call that the clock skips',
      { days: [{ date: '2026-03-08', kind: 'shoot' as const, call: '2026-03-08T02:30', wrap: '2026-03-08T12:00' }] },
      'does not exist in America/Chicago',
    ],
    [
      'a call that the clock shows twice',
      { days: [{ date: '2026-11-01', kind: 'shoot' as const, call: '2026-11-01T01:30', wrap: '2026-11-01T12:00' }] },
      'occurs twice in America/Chicago',
    ],
    [
      'legs that run backwards',
      {
        legs: [
          { mode: 'drive' as const, from: DULUTH, to: FARGO, depart: '2026-12-11T12:00', arrive: '2026-12-11T16:00' },
          { mode: 'rail' as const, from: FARGO, to: DULUTH, depart: '2026-12-11T15:00', arrive: '2026-12-11T20:00' },
        ],
      },
      'The rail Fargo to Duluth leaves on Friday 11 December 15:00, before the drive Duluth to Fargo arrives',
    ],
    [
      'legs that jump',
      {
        legs: [
          { mode: 'drive' as const, from: DULUTH, to: FARGO, depart: '2026-12-10T12:00', arrive: '2026-12-10T16:00' },
          { mode: 'rail' as const, from: THUNDER_BAY, to: DULUTH, depart: '2026-12-11T15:00', arrive: '2026-12-11T20:00' },
        ],
      },
      'ends in Fargo, but the rail Thunder Bay to Duluth begins in Thunder Bay',
    ],
    [
      'a leg that arrives before it leaves',
      { legs: [{ mode: 'drive' as const, from: DULUTH, to: FARGO, depart: '2026-12-11T12:00', arrive: '2026-12-11T11:00' }] },
      'arrives before it leaves',
    ],
    [
      'a leg at an hour that the clock skips, which is named',
      { legs: [{ mode: 'drive' as const, from: DULUTH, to: FARGO, depart: '2027-03-14T02:30', arrive: '2027-03-14T08:00' }] },
      'The drive from Duluth to Fargo: 2027-03-14 02:30 does not exist in America/Chicago',
    ],
  ])('%s is bad input', async (_, change, says) => {
    const { context } = await world(NOW);
    const candidate = { title: 'Fair', place: DULUTH, days: [day('2026-12-12', '08:00', '18:00')], ...change };
    expect(await refusal(call(fit.check, { candidate }, { context }))).toMatchObject({
      code: 'BAD_INPUT',
      what: expect.stringContaining(says),
    });
  });

  test('neither or both of a job and a candidate is bad input; without set-up it is refused', async () => {
    const { context } = await world(NOW);
    expect((await refusal(call(fit.check, {}, { context }))).code).toBe('BAD_INPUT');
    const bare = await world(NOW, null);
    expect(await refusal(call(fit.check, { candidate: CURLING }, bare))).toMatchObject({
      code: 'REFUSED',
      what: 'Your home is not known yet.',
    });
  });
});

describe('fit.nearest', () => {
  test('free dates by nearness, then those free if', async () => {
    const w = withPapers(await withBakers());
    await booked(w, 'Robotics final', FARGO, [day('2026-12-07', '09:00', '18:00')], 'ink');
    const { nearest } = await call(fit.nearest, { candidate: CURLING, limit: 4, withinDays: 10 }, w);
    // On the 6th and 7th the way from or to Fargo is too long.
    expect(nearest.map(({ shiftDays, answer }) => [shiftDays, answer])).toEqual([3, 4, 5, 6].map((shift) => [shift, 'free']));
    expect(nearest[0]?.days[0]).toEqual(day('2026-12-08', '14:00', '19:00', 'half'));
  });
});

describe('legs', () => {
  test('are kept, checked and dropped', async () => {
    const w = await world(NOW);
    const job = await booked(w, 'Robotics final', FARGO, [day('2026-12-12', '09:00', '18:00')], 'pencil');
    const out = { mode: 'rail' as const, from: DULUTH, to: FARGO, depart: '2026-12-11T12:00', arrive: '2026-12-11T16:00' };
    const { leg } = await call(setLeg, { jobId: job.id, fields: out }, w);
    await call(
      trips.setLeg,
      { jobId: job.id, fields: { ...out, from: THUNDER_BAY, to: DULUTH, depart: '2026-12-12T08:00', arrive: '2026-12-12T10:00' } },
      w,
    );
    const { legs, breaks } = await call(trips.legs, { jobId: job.id }, w);
    expect(legs).toHaveLength(2);
    expect(breaks).toEqual([
      {
        first: leg.id,
        second: legs[1]?.id,
        sentence:
          'The rail Duluth to Fargo ends in Fargo, but the rail Thunder Bay to Duluth begins in Thunder Bay. Add the leg between them.',
      },
    ]);
    expect((await refusal(call(trips.dropLeg, { id: leg.id, version: 7 }, w))).code).toBe('STALE');
    await call(trips.dropLeg, { id: leg.id, version: 1 }, w);
    expect((await call(trips.legs, { jobId: job.id }, w)).breaks).toEqual([]);
  });
});
