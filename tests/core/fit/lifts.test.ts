import { describe, expect, test } from 'vitest';
import type { FitResult } from '../../../core/contract/fit.ts';
import type { TryOn } from '../../../core/contract/try-on.ts';
import type { Book, BookHand, BookJob } from '../../../core/fit/book.ts';
import { assess, checkFit } from '../../../core/fit/check.ts';
import { combined } from '../../../core/fit/combined.ts';
import { changedDays } from '../../../core/fit/day-changes.ts';
import { shuffled } from '../../random.ts';
import { CASES, DAY, generatedYear, YEAR_START } from './generated.ts';
import { twinAnswer } from './twin.ts';

const LONG_BEFORE = YEAR_START - 400 * DAY;
const RANK = { free: 0, 'free if': 1, 'not possible': 2 };
const seeds = Array.from({ length: Math.ceil(CASES / 2) }, (_, seed) => seed + 1);

/** A generated year with somebody to ask. */
function year(seed: number): { book: Book; candidate: BookJob; random: () => number } {
  const made = generatedYear(seed, { kit: true });
  const hands: BookHand[] = ['Bo', 'Cy'].map((name, index) => ({
    id: name,
    name,
    home: made.book.jobs[index]?.place ?? null,
    rates: [{ role: 'shoot', dayRate: '400.00', currency: 'USD', from: '2025-01-01' }],
    insuredUntil: null,
    backup: index === 0,
  }));
  return { ...made, book: { ...made.book, hands } };
}
const check = ({ book, candidate }: Pick<ReturnType<typeof year>, 'book' | 'candidate'>, tryOn: TryOn = {}): FitResult =>
  checkFit({ book, candidate, tryOn, now: LONG_BEFORE, replyBy: null });
/** Without the lifts, which cost a check each. */
const answered = ({ book, candidate }: Pick<ReturnType<typeof year>, 'book' | 'candidate'>, tryOn: TryOn = {}): FitResult =>
  assess({ book, candidate, tryOn, now: LONG_BEFORE, replyBy: null });
const hardOnes = ({ findings }: FitResult): number => findings.filter(({ hardness }) => hardness !== 'know').length;
const tryable = (result: FitResult): TryOn[] => result.findings.flatMap(({ lifts }) => lifts.flatMap(({ tryOn }) => tryOn ?? []));

describe('lifts', () => {
  test(`none that is offered makes a worse answer, alone or beside another, in ${seeds.length} generated years`, () => {
    const better = new Map<string, number>();
    for (const seed of seeds) {
      const given = year(seed);
      const before = check(given);
      for (const { kind, tryOn } of before.findings.flatMap(({ lifts }) => lifts)) {
        if (!tryOn) continue;
        const after = answered(given, tryOn);
        expect(RANK[after.answer], `${seed} ${kind}`).toBeLessThanOrEqual(RANK[before.answer]);
        if (after.answer === before.answer) expect(hardOnes(after), `${seed} ${kind}`).toBeLessThanOrEqual(hardOnes(before));
        if (RANK[after.answer] < RANK[before.answer]) better.set(kind, (better.get(kind) ?? 0) + 1);
      }
      const first = tryable(before)[0];
      if (!first || seed % 5 > 0) continue;
      const beside = check(given, first);
      for (const second of tryable(beside))
        expect(RANK[answered(given, combined([first, second])).answer], `${seed} and one more`).toBeLessThanOrEqual(RANK[beside.answer]);
    }
    // Each of these lifts an answer by itself somewhere in the years.
    for (const kind of ['later call', 'earlier wrap', 'shorter rest', 'hand', 'second pencil', 'challenge', 'sub-hire', 'flight'])
      expect(better.get(kind) ?? 0, kind).toBeGreaterThan(0);
  });

  test('the order in which they are tried on does not matter', () => {
    for (const seed of seeds) {
      const given = year(seed);
      const all = tryable(check(given)).slice(0, 6);
      const mixed = shuffled(all, given.random);
      const findings = (changes: TryOn[]) =>
        check(given, combined(changes))
          .findings.map(({ sentence }) => sentence)
          .sort();
      expect(findings(mixed)).toEqual(findings(all));
    }
  });

  test('trying on and taking back leaves the book, the candidate and the answer as they were', () => {
    for (const seed of seeds.slice(0, 25)) {
      const given = year(seed);
      const kept = structuredClone({ book: given.book, candidate: given.candidate });
      const before = check(given);
      for (const tryOn of tryable(before)) answered(given, tryOn);
      expect({ book: given.book, candidate: given.candidate }).toEqual(kept);
      expect(check(given)).toEqual(before);
      expect(check(given, combined([{}, {}]))).toEqual(before);
    }
  });

  test('a later call that is tried on answers as the slow twin does for days that were written so', () => {
    for (const seed of seeds) {
      const { book, candidate } = generatedYear(seed);
      for (const minutes of [30, 240]) {
        const days = changedDays(candidate.days, candidate.place.zone, { firstCallLaterMinutes: minutes });
        const { answer } = answered({ book, candidate }, { firstCallLaterMinutes: minutes });
        expect(`${seed} ${answer}`).toBe(`${seed} ${twinAnswer(book, { ...candidate, days })}`);
      }
    }
  });
});

describe('changes together', () => {
  test('of figures the one that asks for most counts, moves add up, lists are joined once, kit is counted', () => {
    const one: TryOn = { restMinutes: 400, firstCallLaterMinutes: 30, shiftDays: 2, kitExtra: [{ item: 'a', count: 1 }], couriers: ['a'] };
    const other: TryOn = {
      restMinutes: 300,
      firstCallLaterMinutes: 90,
      shiftDays: -1,
      kitExtra: [{ item: 'a', count: 1 }],
      couriers: ['a', 'b'],
    };
    const whole = { restMinutes: 300, firstCallLaterMinutes: 90, shiftDays: 1, couriers: ['a', 'b'] };
    expect(combined([one, other])).toMatchObject(whole);
    expect(combined([other, one])).toMatchObject(whole);
    expect(combined([one, other]).kitExtra).toEqual([
      { item: 'a', count: 1 },
      { item: 'a', count: 1 },
    ]);
    expect(combined([])).toEqual({});
  });

  test('the only day of a candidate is never taken away', () => {
    const day = { date: '2026-06-04', kind: 'half' as const, call: '2026-06-04T08:00', wrap: '2026-06-04T12:00', callAt: 0, wrapAt: 1 };
    expect(changedDays([day], 'UTC', { daysMoved: [{ jobId: null, date: day.date, kind: 'half', to: null }] })).toEqual([day]);
  });
});
