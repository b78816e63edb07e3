import { describe, expect, test } from 'vitest';
import type { Stringline } from '../../../core/contract/road.ts';
import type { BookJob } from '../../../core/fit/book.ts';
import { stringlineOf } from '../../../core/road/stringline.ts';
import { epochOf } from '../../../core/time/read.ts';
import { everySituation } from '../../situations/every.ts';
import { inputOf } from '../../situations/shape.ts';
import { CASES, DAY, generatedYear, YEAR_START } from '../fit/generated.ts';

const drawn = (situation: (typeof everySituation)[number]): Stringline => {
  const { book, candidate, now } = inputOf(situation);
  const calls = candidate.days.map((day) => day.callAt);
  return stringlineOf({ book, candidate, from: Math.min(...calls) - 30 * DAY, to: Math.max(...calls) + 30 * DAY, now });
};
const named = (name: string) => {
  const found = everySituation.find((situation) => situation.name.startsWith(name));
  if (!found) throw new Error(`no situation ${name}`);
  return found;
};
const path = (line: Stringline, title: string) =>
  line.jobs
    .find((job) => job.title === title)
    ?.moves.map((move) => `${move.start.slice(5, 16)} ${move.fromKey.slice(5)} > ${move.toKey.slice(5)} ${move.end.slice(5, 16)}`);

describe('moves', () => {
  test('by home: the leg home is of the job that it leaves, the leg out of the job that it reaches, and they meet', () => {
    const line = drawn(named('by home where that was typed'));
    expect(path(line, 'Bakers’ congress')?.at(-1)).toBe('12-05T12:30 Milwaukee > Duluth 12-05T19:25');
    expect(path(line, 'This job')?.[0]).toBe('12-05T19:25 Duluth > Thunder Bay 12-05T23:10');
    expect(line.clashes).toMatchObject([{ short: 'there 4 h 10 min late', start: '2026-12-05T19:00:00Z', end: '2026-12-05T23:10:00Z' }]);
    const bakers = line.jobs.find((job) => job.title === 'Bakers’ congress');
    expect(bakers?.rests).toEqual([{ placeKey: 'test:Milwaukee', start: '2026-12-05T04:30:00Z', end: '2026-12-05T12:30:00Z' }]);
  });

  test('direct: drawn once, by the softer job', () => {
    const line = drawn(named('a direct way that was typed'));
    expect(path(line, 'Bakers’ congress')).toHaveLength(1);
    expect(path(line, 'This job')?.[0]).toBe('12-05T12:30 Milwaukee > Thunder Bay 12-05T19:00');
  });

  test('tickets stand where they are printed, the rest is laid around them', () => {
    const line = drawn(named('open-jaw'));
    expect(line.jobs.flatMap((job) => job.moves.filter((move) => move.source === 'ticketed').map((move) => move.mode))).toEqual([
      'flight',
      'rail',
    ]);
    expect(path(line, 'This job')?.[0]).toMatch(/Denver > Fargo/);
  });
});

describe('laws in generated years', () => {
  const seeds = Array.from({ length: Math.min(CASES, 200) }, (_, seed) => seed + 1);
  const year = (seed: number) => {
    const { book, candidate } = generatedYear(seed, { kit: true });
    return {
      book,
      candidate,
      line: stringlineOf({ book, candidate, from: YEAR_START - 60 * DAY, to: YEAR_START + 200 * DAY, now: YEAR_START }),
    };
  };

  test('every paid day is a block on the line of its place, and no move has no length', () => {
    for (const seed of seeds) {
      const { book, candidate, line } = year(seed);
      const paid = (jobs: readonly BookJob[]) => jobs.reduce((sum, job) => sum + job.days.length, 0);
      expect(line.jobs.reduce((sum, job) => sum + job.blocks.length, 0)).toBe(paid([...book.jobs, candidate]));
      for (const move of line.jobs.flatMap((job) => job.moves)) {
        expect(epochOf(move.end)).toBeGreaterThan(epochOf(move.start));
        expect(move.fromKey).not.toBe(move.toKey);
      }
    }
  });

  test('places are ordered by distance from home, home first, and every key that is drawn is among them', () => {
    for (const seed of seeds) {
      const { line } = year(seed);
      const keys = line.places.map(({ place }) => place.key);
      expect(line.places[0]?.home).toBe(true);
      expect(line.places.map(({ km }) => km)).toEqual(line.places.map(({ km }) => km).sort((a, b) => a - b));
      for (const job of line.jobs) for (const move of job.moves) expect(keys).toEqual(expect.arrayContaining([move.fromKey, move.toKey]));
    }
  });

  test('each clash has its sentence, its words and a length', () => {
    for (const seed of seeds) {
      for (const clash of year(seed).line.clashes) {
        expect(clash.sentence).toMatch(/\.$/);
        expect(clash.short.length).toBeLessThan(40);
        expect(epochOf(clash.end)).toBeGreaterThan(epochOf(clash.start));
      }
    }
  });
});
