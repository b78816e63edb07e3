/**
 * The sample year is told for whatever day it is loaded on, with nothing in it that the rules would refuse.
 */
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sample } from '../../../assets/sample/index.ts';
import type { Client, Hand } from '../../../core/contract/people.ts';
import type { Clock, DeskLine } from '../../../core/contract/desk.ts';
import type { FitResult } from '../../../core/contract/fit.ts';
import type { Job, JobRow } from '../../../core/contract/jobs.ts';
import type { KitItem, Preset } from '../../../core/contract/kit.ts';
import type { QuoteVersion } from '../../../core/contract/quotes.ts';
import type { Stringline } from '../../../core/contract/road.ts';
import { told, type Told } from './told.ts';

const LONG = Boolean(process.env['KITBOUND_LONG']);
/** A leap day, the night in which the clocks go back, a Sunday at a year's end. */
const SOME = ['2028-02-29T15:00:00Z', '2026-11-01T01:30:00-05:00', '2028-12-31T23:30:00-06:00'];
/** The first minutes of a year, the night in which the clocks go forward, the other weekdays. */
const MORE = [
  '2027-01-01T00:10:00-06:00',
  '2026-03-08T03:30:00-05:00',
  '2026-11-30T06:05:00Z',
  '2027-06-02T18:00:00Z',
  '2027-07-15T11:00:00Z',
  '2027-08-21T16:00:00Z',
];
const TODAYS = LONG ? [...SOME, ...MORE] : SOME;

describe.each(TODAYS)('told at %s', (instant) => {
  const folder = mkdtempSync(join(tmpdir(), 'kitbound-'));
  const now = Temporal.Instant.from(instant).epochMilliseconds;
  const today = Temporal.Instant.from(instant).toZonedDateTimeISO('America/Chicago').toPlainDate();
  let its: Told;
  let rows: JobRow[];
  const jobs = new Map<string, Job>();
  const the = (title: string): Job => {
    const job = jobs.get(title);
    if (!job) throw new Error(`no job ${title}`);
    return job;
  };
  beforeAll(async () => {
    its = await told(instant, folder);
    ({ jobs: rows } = await its.call<{ jobs: JobRow[] }>('jobs.list'));
    for (const { id } of rows) {
      const { job } = await its.call<{ job: Job }>('jobs.get', { id });
      jobs.set(job.title, job);
    }
  }, 120_000);
  afterAll(() => {
    its.store.close();
    rmSync(folder, { recursive: true, force: true });
  });

  test('every job of the sample is there, and each stands where its story leads', () => {
    expect([...jobs.keys()].toSorted()).toEqual(sample.jobs.map(({ title }) => title).toSorted());
    const count = (state: Job['state']): number => rows.filter((row) => row.state === state).length;
    expect({
      inked: count('inked'),
      cancelled: count('cancelled'),
      declined: count('declined'),
      'let go': count('let go'),
      pencilled: count('pencilled'),
      'ran out': count('ran out'),
      quoted: count('quoted'),
      inquiry: count('inquiry'),
    }).toEqual({ inked: 46, cancelled: 2, declined: 2, 'let go': 4, pencilled: 5, 'ran out': 1, quoted: 1, inquiry: 2 });
  });

  test('what was quoted has its versions with a paper each, sent, and ink says to which', async () => {
    for (const job of jobs.values()) {
      const { versions } = await its.call<{ versions: QuoteVersion[] }>('quotes.versions', { jobId: job.id });
      const wanted = sample.jobs.find(({ title }) => title === job.title)?.steps.filter(([, deed]) => deed === 'quote').length;
      expect([job.title, versions.length]).toEqual([job.title, wanted]);
      for (const version of versions) {
        expect(version.sentAt).not.toBeNull();
        expect(version.draft.totals.gross.minor).toBeGreaterThan(0);
      }
      if (job.state === 'inked') expect(job.ink?.quoteVersion).toBe(versions[0]?.number);
    }
    expect(await its.call('papers.check')).toMatchObject({ lost: [], orphans: [] });
  });

  test('nothing was done after now, and every history runs in order of time', async () => {
    for (const { id, title } of rows) {
      const { entries } = await its.call<{ entries: { at: string }[] }>('jobs.history', { id });
      const instants = entries.map(({ at }) => Temporal.Instant.from(at).epochMilliseconds);
      expect([title, instants.length > 0, instants.every((at) => at <= now)]).toEqual([title, true, true]);
      expect([title, instants]).toEqual([title, instants.toSorted((a, b) => b - a)]);
    }
  });

  test('no ink clashes with ink on the road, from the first month to the last', async () => {
    const from = today.subtract({ days: 430 }).toString();
    const { stringline } = await its.call<{ stringline: Stringline }>('road.see', { from, days: 560 });
    const inked = new Set(rows.filter(({ state }) => state === 'inked').map(({ id }) => id));
    const clashes = stringline.clashes.filter(({ jobIds }) => jobIds.length > 0 && jobIds.every((id) => inked.has(id)));
    expect(clashes.map(({ sentence }) => sentence)).toEqual([]);
  });

  test('the inquiry from Thunder Bay came today within 48 h or so, was read from its words, and collides with Milwaukee', async () => {
    const curling = the('Curling championship');
    expect(curling).toMatchObject({ state: 'inquiry', role: 'vision mixing', place: { name: 'Thunder Bay', zone: 'America/Toronto' } });
    expect(curling.days.map(({ date }) => date)).toEqual([2, 3, 4, 5, 6].map((days) => today.add({ days }).toString()));
    // Loaded just after midnight it came late the evening before, and its "tomorrow" is today.
    const came = Temporal.PlainDate.from(curling.received.wall.slice(0, 10));
    expect(curling.replyBy?.wall).toBe(`${came.add({ days: 1 }).toString()}T12:00`);
    expect(curling.budget).toEqual({ amount: 1500, currency: 'CAD', per: 'day' });
    const { result } = await its.call<{ result: FitResult }>('fit.check', { jobId: curling.id });
    expect(result.answer).not.toBe('free');
    const hard = result.findings.filter(({ hardness }) => hardness !== 'know').map(({ sentence }) => sentence);
    expect(hard.some((sentence) => sentence.includes('Milwaukee'))).toBe(true);
    expect(hard.some((sentence) => sentence.includes('The edit day of Bakers’ trade congress'))).toBe(true);
  });

  test('the clocks changed in the night of lights, and its hours are those that passed', () => {
    const [night] = the('Night of lights').days;
    const at = (wall = ''): number => Temporal.PlainDateTime.from(wall).toZonedDateTime('America/Chicago').epochMilliseconds;
    const hours = (at(night?.wrap) - at(night?.call)) / 3_600_000;
    expect([10.5, 12.5]).toContain(hours);
  });

  test('the Desk has its clocks: late, today and in the coming days, a challenge, and who moved up', async () => {
    const { clocks, lines } = await its.call<{ clocks: Clock[]; lines: DeskLine[] }>('desk.see');
    const kinds = new Set(clocks.map(({ kind }) => kind));
    for (const kind of ['reply-by', 'pencil', 'challenge', 'ran out', 'call', 'question', 'quote'] as const)
      expect([kind, kinds.has(kind)]).toEqual([kind, true]);
    expect(lines.map(({ sentence }) => sentence).join()).toContain('Drivers’ day');
    expect(lines.map(({ jobId }) => jobId)).toContain(the('Drivers’ day').id);
  });

  test('people and kit are whole', async () => {
    const { clients } = await its.call<{ clients: (Client & { jobs: number })[] }>('people.clients');
    const { hands } = await its.call<{ hands: Hand[] }>('people.hands');
    const { items, presets } = await its.call<{ items: KitItem[]; presets: Preset[] }>('kit.list');
    expect([clients.length, hands.length, items.length, presets.length]).toEqual([14, 3, 32, 4]);
    for (const client of clients) expect([client.name, client.jobs > 0]).toEqual([client.name, true]);
    const served = items.filter(({ services }) => services.some(({ from, to }) => from <= today.toString() && today.toString() <= to));
    expect(served.map(({ name }) => name)).toEqual(['Gimbal']);
    expect(new Set(rows.map(({ total }) => total?.currency))).toEqual(new Set(['USD', 'CAD', 'EUR', undefined]));
  });
});
