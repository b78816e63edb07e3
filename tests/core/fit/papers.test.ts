import { describe, expect, test } from 'vitest';
import { assess } from '../../../core/fit/check.ts';
import { combined } from '../../../core/fit/combined.ts';
import type { BookDocument, BookJob } from '../../../core/fit/book.ts';
import { askBy, daysLeft } from '../../../core/documents/lead.ts';
import { dateLater } from '../../../core/time/wall.ts';
import { instantOf } from '../../../core/time/read.ts';
import { duluth, thunderBay } from '../trips/places.ts';
import { randomFrom } from '../../random.ts';
import { CASES } from './generated.ts';
import { twinLeft, twinPassport, twinWork } from './papers-twin.ts';

const blank = { handId: null, country: null, from: null, until: null, worldwide: false, countries: [], limit: null, leadDays: null };
const at = (wall: string, zone: string) => instantOf(wall, zone).epochMilliseconds;
const RANK = ['fine', 'know', 'settle', 'blocks'] as const;

function generated(seed: number) {
  const random = randomFrom(seed);
  const upTo = (most: number) => Math.floor(random() * (most + 1));
  const now = dateLater('2026-01-01', upTo(700));
  const first = dateLater(now, 1 + upTo(40));
  const dates = Array.from({ length: 1 + upTo(2) }, (_, index) => dateLater(first, index));
  // Calls at noon and wraps at three, four hours from home: one leaves and is home again on the date of the last wrap.
  const days = dates.map((date) => ({
    date,
    kind: 'half' as const,
    call: `${date}T12:00`,
    wrap: `${date}T15:00`,
    callAt: at(`${date}T12:00`, thunderBay.zone),
    wrapAt: at(`${date}T15:00`, thunderBay.zone),
  }));
  const job: BookJob = {
    id: null,
    title: 'This job',
    firmness: 'candidate',
    pencilledAt: null,
    expiresAt: null,
    place: thunderBay,
    days,
  };
  const last = dates.at(-1) ?? first;
  // Often at the border where the answer turns: the last day, the day before and after, six months on.
  const until = (): string | null =>
    [null, dateLater(last, upTo(2) - 1), dateLater(last, 170 + upTo(30)), dateLater(last, upTo(900) - 100)][upTo(3)] ?? null;
  const documents: BookDocument[] = [
    ...Array.from({ length: upTo(2) }, () => ({
      ...blank,
      kind: 'passport' as const,
      country: ['US', 'KE', 'CA'][upTo(2)] ?? null,
      until: until(),
    })),
    ...Array.from({ length: upTo(2) }, () => ({
      ...blank,
      kind: 'right to work' as const,
      countries: [upTo(3) > 0 ? 'CA' : 'MX'],
      until: [null, dateLater(last, -1), last, dateLater(first, -1)][upTo(3)] ?? null,
    })),
  ];
  const holidays = Array.from({ length: upTo(4) }, () => dateLater(now, upTo(30)));
  return { now, job, last, documents, holidays };
}

describe(`against the slow twin in ${CASES} generated trips`, () => {
  test('the passport, the right to work and the days that are left are the same', () => {
    const met = new Map<string, number>();
    for (let seed = 1; seed <= CASES; seed += 1) {
      const { now, job, last, documents, holidays } = generated(seed);
      const trip = { job, home: duluth, leaves: last, homeOn: last, now, holidays };
      const { findings } = assess({
        book: {
          home: duluth,
          jobs: [],
          ways: [{ fromKey: duluth.key, toKey: thunderBay.key, mode: 'drive', minutes: 240 }],
          restMinutes: 480,
          documents,
          holidays: () => new Set(holidays),
        },
        candidate: job,
        now: at(`${now}T09:00`, duluth.zone),
        replyBy: null,
      });
      const of = (...kinds: string[]) =>
        RANK.findLast((rank) => findings.some(({ kind, hardness }) => kinds.includes(kind) && hardness === rank)) ?? 'fine';
      // The passport that lasts longest is the one that is shown; a citizen is asked for no months beyond.
      const shown = documents.filter(({ kind }) => kind === 'passport').toSorted((a, b) => ((a.until ?? '') > (b.until ?? '') ? -1 : 1))[0];
      const months = shown?.country === 'CA' || shown?.country === 'US' ? 0 : 6;
      const passport = of('passport', 'passport validity');
      expect(`${seed}: ${passport}`).toBe(`${seed}: ${twinPassport(trip, documents, months)}`);
      const work = of('right to work');
      expect(`${seed}: ${work}`).toBe(`${seed}: ${twinWork(trip, documents)}`);
      const left = findings.find(({ kind }) => kind === 'passport' || kind === 'lead time')?.numbers['left'];
      if (left !== undefined) expect(`${seed}: ${left}`).toBe(`${seed}: ${twinLeft(trip)}`);
      for (const met1 of [`passport ${passport}`, `work ${work}`]) met.set(met1, (met.get(met1) ?? 0) + 1);
    }
    for (const verdict of [
      'passport fine',
      'passport know',
      'passport settle',
      'passport blocks',
      'work fine',
      'work settle',
      'work blocks',
    ])
      expect(met.get(verdict) ?? 0, verdict).toBeGreaterThan(CASES / 40);
  });
});

describe('lead times', () => {
  const left = (now: string, call: string, holidays: string[] = []) =>
    daysLeft(at(now, duluth.zone), at(call, duluth.zone), duluth.zone, () => new Set(holidays));
  test.each([
    ['Friday for Monday has no business day between', '2026-12-04T09:00', '2026-12-07T09:00', [], 0],
    ['Friday for Tuesday has Monday', '2026-12-04T09:00', '2026-12-08T09:00', [], 1],
    ['the same day has none', '2026-12-04T09:00', '2026-12-04T18:00', [], 0],
    ['a call that is past has none', '2026-12-04T09:00', '2026-12-01T18:00', [], 0],
    ['a holiday counts as a weekend does', '2026-12-23T09:00', '2026-12-29T09:00', ['2026-12-25'], 2],
    ['a minute before midnight it is still today', '2026-12-07T23:59', '2026-12-09T00:00', [], 1],
    ['a minute later tomorrow has begun', '2026-12-08T00:00', '2026-12-09T00:00', [], 0],
  ] as const)('%s', (_, now, call, holidays, days) => expect(left(now, call, [...holidays])).toBe(days));
});

test('what is asked for on the last date for it comes in time, and a day later it does not', () => {
  const holidays = new Set(['2026-12-25', '2027-01-01']);
  for (let day = 0; day < 40; day += 1)
    for (let lead = 0; lead <= 12; lead += 1) {
      const call = dateLater('2026-12-10', day);
      const last = askBy(call, lead, holidays);
      const left = (now: string) =>
        daysLeft(at(`${now}T09:00`, duluth.zone), at(`${call}T09:00`, duluth.zone), duluth.zone, () => holidays);
      expect(left(last)).toBe(lead);
      expect(left(dateLater(last, 1))).toBeLessThan(Math.max(1, lead));
    }
});

test('what is tried on twice is tried on once, in any order', () => {
  const passport = { documents: [{ kind: 'passport' as const, country: null, asked: true }] };
  const list = { customsList: true };
  expect(combined([passport, list, passport])).toEqual(combined([list, passport]));
});
