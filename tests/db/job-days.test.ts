import { asc } from 'drizzle-orm';
import { expect, test } from 'vitest';
import { newFacts } from '../../core/jobs/facts.ts';
import { readDays } from '../../core/jobs/days.ts';
import { inkedOver } from '../../db/double-ink.ts';
import { insertJob, jobById, setInk } from '../../db/jobs.ts';
import { LONGEST_STAY_MS, stays } from '../../db/schema/jobs.ts';
import { NOW, temporaryStore } from '../store.ts';

const ZONE = 'America/Chicago';
const run = (first: string, count: number) =>
  Array.from({ length: count }, (_, index) => Temporal.PlainDate.from(first).add({ days: index }).toString()).map((date) => ({
    date,
    kind: 'shoot' as const,
    call: `${date}T09:00`,
    wrap: `${date}T19:00`,
  }));

async function inked(first: string, count: number) {
  const store = await temporaryStore();
  const days = run(first, count);
  const placed = { days: readDays(days, ZONE).days, zone: ZONE };
  const id = store.write((db) => {
    const facts = newFacts({ title: 'Long run', days });
    const made = insertJob(db, { facts, placed, message: null, questions: [], spans: [], receivedAt: NOW, receivedZone: ZONE, now: NOW });
    setInk(db, made, { who: 'A', how: 'mail', at: NOW, quote: 1, offer: null }, NOW);
    return made;
  });
  return { store, id, placed };
}

test('a run of 250 days is kept as touching pieces, none longer than the bound, and covers the same time', async () => {
  const { store, id, placed } = await inked('2027-01-01', 250);
  const pieces = store.read((db) => db.select().from(stays).orderBy(asc(stays.startAt)).all());
  expect(pieces).toHaveLength(3);
  expect(pieces[0]?.startAt).toBe(placed.days[0]?.callAt);
  expect(pieces.at(-1)?.endAt).toBe(placed.days.at(-1)?.wrapAt);
  for (const [index, piece] of pieces.entries()) {
    expect(piece.endAt - piece.startAt).toBeLessThanOrEqual(LONGEST_STAY_MS);
    expect(pieces[index + 1]?.startAt ?? piece.endAt).toBe(piece.endAt);
  }
  expect(store.read((db) => jobById(db, id, NOW))?.days).toHaveLength(250);
});

test('ink is found under the last day of a long run, each day once', async () => {
  const { store, placed } = await inked('2027-01-01', 250);
  const last = placed.days.at(-1);
  if (!last) throw new Error('no day');
  const over = store.read((db) => inkedOver(db, 'another', [{ callAt: last.wrapAt - 1, wrapAt: last.wrapAt + 1 }]));
  expect(over.map(({ date, title }) => [date, title])).toEqual([[last.date, 'Long run']]);
  expect(store.read((db) => inkedOver(db, 'another', [{ callAt: last.wrapAt, wrapAt: last.wrapAt + 1 }]))).toEqual([]);
});
