import { describe, expect, test } from 'vitest';
import { assess } from '../../../core/fit/check.ts';
import type { FitResult } from '../../../core/contract/fit.ts';
import { shuffled } from '../../random.ts';
import { CASES, DAY, generatedYear, ITEMS, shifted, YEAR_START, yearWithHands } from './generated.ts';
import { twinAnswer, twinShortage, twinWithHands } from './twin.ts';

const LONG_BEFORE = YEAR_START - 400 * DAY;
const RANK = { free: 0, 'free if': 1, 'not possible': 2 };
const check = ({ book, candidate }: Pick<ReturnType<typeof generatedYear>, 'book' | 'candidate'>, now = LONG_BEFORE) =>
  assess({ book, candidate, now, replyBy: null });
/** Everything of an answer that does not name a date. */
const undated = (result: FitResult) => ({
  answer: result.answer,
  findings: result.findings.map(({ kind, hardness, concerns, numbers: { from: _from, to: _to, ...numbers } }) => ({
    kind,
    hardness,
    concerns,
    numbers,
  })),
});
const seeds = Array.from({ length: CASES }, (_, seed) => seed + 1);

describe('against the slow twin', () => {
  test(`the answer is the same in ${CASES} generated years`, () => {
    const counts = { free: 0, 'free if': 0, 'not possible': 0 };
    for (const seed of seeds) {
      const year = generatedYear(seed);
      const { answer } = check(year);
      expect(`${seed}: ${answer}`).toBe(`${seed}: ${twinAnswer(year.book, year.candidate)}`);
      counts[answer] += 1;
    }
    // The years are such that every answer is met often.
    for (const count of Object.values(counts)) expect(count).toBeGreaterThan(CASES / 20);
  });

  test(`with hands who do some of the days it is the same in ${CASES} generated years`, () => {
    const counts = { free: 0, 'free if': 0, 'not possible': 0 };
    for (const seed of seeds) {
      const { book, candidate } = yearWithHands(seed);
      const { answer } = check({ book, candidate });
      expect(`${seed}: ${answer}`).toBe(`${seed}: ${twinWithHands(book, candidate)}`);
      counts[answer] += 1;
    }
    for (const count of Object.values(counts)) expect(count).toBeGreaterThan(CASES / 20);
  });

  test(`kit is short by as many in ${CASES} generated years`, () => {
    let short = 0;
    for (const seed of seeds) {
      const year = generatedYear(seed, { kit: true });
      for (const item of ITEMS) {
        const told = check(year)
          .findings.filter((finding) => finding.kind === 'kit' && finding.numbers['item'] === item.name)
          .map((finding) => Number(finding.numbers['short']));
        const expected = twinShortage(year.book, year.candidate, item, false);
        expect(`${seed} ${item.id}: ${Math.max(0, ...told)}`).toBe(`${seed} ${item.id}: ${expected}`);
        if (expected > 0) short += 1;
      }
    }
    expect(short).toBeGreaterThan(CASES / 20);
  });
});

describe('laws', () => {
  test('in a fixed-offset zone moving everything by a week changes nothing', () => {
    for (const seed of seeds) {
      const { book, candidate } = generatedYear(seed, { kit: true });
      const later = { book: { ...book, jobs: book.jobs.map((job) => shifted(job, 7 * DAY)) }, candidate: shifted(candidate, 7 * DAY) };
      expect(undated(check(later))).toEqual(undated(check({ book, candidate })));
    }
  });

  test('nothing depends on the order of the book', () => {
    for (const seed of seeds) {
      const { book, candidate, random } = generatedYear(seed, { kit: true });
      const mixed = { ...book, jobs: shuffled(book.jobs, random), ways: shuffled(book.ways, random) };
      expect(check({ book: mixed, candidate: { ...candidate, days: shuffled(candidate.days, random) } })).toEqual(
        check({ book, candidate }),
      );
    }
  });

  test('a gap that is wider by whole days never makes a worse answer', () => {
    for (const seed of seeds) {
      const { book, candidate } = generatedYear(seed);
      const other = book.jobs[0];
      const first = candidate.days[0];
      if (!other || !first) continue;
      const earlier = Math.max(...other.days.map((day) => day.wrapAt)) <= first.callAt;
      const alone = (jobs: typeof book.jobs) => check({ book: { ...book, jobs }, candidate });
      for (const days of [1, 2, 7]) {
        const wider = alone([shifted(other, (earlier ? -days : days) * DAY)]);
        const before = alone([other]);
        const apart = earlier || Math.min(...other.days.map((day) => day.callAt)) >= Math.max(...candidate.days.map((day) => day.wrapAt));
        if (apart) expect(RANK[wider.answer], `${seed} by ${days}`).toBeLessThanOrEqual(RANK[before.answer]);
      }
    }
  });

  test('a job less on the books never makes a worse answer, where it does not stand between', () => {
    for (const seed of seeds) {
      const { book, candidate } = generatedYear(seed);
      const none = check({ book: { ...book, jobs: [] }, candidate });
      expect(RANK[none.answer]).toBeLessThanOrEqual(RANK[check({ book, candidate }).answer]);
    }
  });

  test('jobs a month away change nothing but the line of what is fine', () => {
    for (const seed of seeds) {
      const { book, candidate } = generatedYear(seed);
      const far = book.jobs.map((job) => ({ ...shifted(job, 120 * DAY), id: `far-${job.id}` }));
      expect(undated(check({ book: { ...book, jobs: [...book.jobs, ...far] }, candidate }))).toEqual(undated(check({ book, candidate })));
    }
  });
});
