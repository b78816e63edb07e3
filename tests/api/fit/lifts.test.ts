import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { FitResult } from '../../../core/contract/fit.ts';
import { builtProgram } from '../../built.ts';
import { temporaryFolder } from '../../store.ts';
import { DULUTH, FARGO, placeByKey } from '../world.ts';

const MILWAUKEE = placeByKey('geonames:5263045');

type Call = (name: string, input: object) => Promise<{ status: number | null; out: unknown }>;

/** The command-line door on one data folder. */
const doorTo =
  (data: string): Call =>
  (name, input) =>
    new Promise((resolve) => {
      const child = spawn(process.execPath, [builtProgram('command-line.mjs'), name, '-', '--data', data], {
        stdio: ['pipe', 'pipe', 'ignore'],
      });
      const out: string[] = [];
      child.stdout.on('data', (chunk: Buffer) => out.push(chunk.toString()));
      child.on('close', (status) => resolve({ status, out: JSON.parse(out.join('')) as unknown }));
      child.stdin.end(JSON.stringify(input));
    });

const day = (date: string, call: string, wrap: string) => ({ date, kind: 'shoot', call: `${date}T${call}`, wrap: `${date}T${wrap}` });
const setup = {
  name: 'Slate & Tally Pictures',
  address: '',
  email: '',
  phone: '',
  home: DULUTH,
  currency: 'USD',
  paper: 'Letter',
  distance: 'mi',
  registered: false,
  taxId: '',
  tax: null,
  restHours: '8',
  year: null,
};
const hand = {
  name: 'Bo Lind',
  email: '',
  phone: '',
  rates: [{ role: 'vision mixing', dayRate: '450', currency: 'USD', from: '2026-01-01' }],
  home: FARGO,
  ownKit: '',
  taxForm: true,
  insuredUntil: null,
  payDays: 14,
  backup: false,
  notes: '',
};

test('over the command line: lifts are offered with what to try on, tried on together, and nothing is saved', async () => {
  const call = doorTo(join(temporaryFolder(), 'data'));
  expect((await call('setup.save', { fields: setup })).status).toBe(0);
  const saved = (await call('people.saveHand', { fields: hand })).out as { hand: { id: string } };
  const candidate = { title: 'Curling', place: FARGO, role: 'vision mixing', days: [day('2026-12-05', '09:00', '18:00')] };
  const withJobs = [{ title: 'Bakers', place: MILWAUKEE, days: [day('2026-12-04', '09:00', '22:30')] }];
  const check = async (tryOn: object) => {
    const { status, out } = await call('fit.check', { candidate, tryOn: { withJobs, ...tryOn }, now: '2026-12-01T12:00:00Z' });
    expect([status, out]).toEqual([0, expect.anything()]);
    return (out as { result: FitResult }).result;
  };
  const before = await check({});
  expect(before.answer).toBe('free if');
  const hands = before.findings[0]?.lifts.find(({ kind }) => kind === 'hand')?.tryOn?.hands;
  expect(hands).toEqual([{ handId: saved.hand.id, dates: ['2026-12-05'] }]);
  const flight = before.findings[0]?.lifts.find(({ kind }) => kind === 'flight');
  expect(flight?.label).toBe('If a flight lands in Fargo by 08:00');
  expect((await check({ ...flight?.tryOn, restMinutes: 300 })).answer).toBe('free');
  const covered = await check({ hands });
  expect(covered.answer).toBe('free');
  expect(covered.findings.find(({ kind }) => kind === 'hand cost')?.sentence).toBe(
    'As if Bo Lind had said yes for Sat 5 December 2026: 1 day, USD 450.00.',
  );
  expect(await check({})).toEqual(before);
  expect((await call('jobs.list', {})).out).toEqual({ jobs: [] });

  const leg = { mode: 'drive', from: MILWAUKEE, to: FARGO, depart: '2026-12-05T09:00', arrive: '2026-12-05T08:00' };
  expect(await call('fit.check', { candidate, tryOn: { legs: [leg] } })).toMatchObject({
    status: 2,
    out: { code: 'BAD_INPUT', what: expect.stringContaining('arrives before it leaves') },
  });
  const moved = { ...candidate, days: [{ ...day('2026-03-01', '02:30', '12:00') }] };
  expect(await call('fit.check', { candidate: moved, tryOn: { shiftDays: 7 } })).toMatchObject({
    status: 2,
    out: { code: 'BAD_INPUT', what: expect.stringContaining('does not exist in America/Chicago') },
  });
}, 60_000);
