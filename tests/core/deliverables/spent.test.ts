import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hoursTogether } from '../../../core/deliverables/blank.ts';
import { asPastTook, pastInWords, pastOf } from '../../../core/deliverables/past.ts';
import { halfHoursLeft, minutesOf, spentByStage, spentInWords } from '../../../core/deliverables/spent.ts';
import { tried } from '../laws.ts';

const H = 3_600_000;
const stages = [
  { id: 'ingest', halfHours: 2 },
  { id: 'rough', halfHours: 16 },
];

test('time is summed by stage in their order; a clock that runs counts to now', () =>
  expect(
    spentByStage(
      stages,
      [
        { stageId: 'rough', startAt: 0, endAt: 2 * H },
        { stageId: 'ingest', startAt: 0, endAt: H / 2 },
        { stageId: null, startAt: 0, endAt: H },
        { stageId: 'gone', startAt: 0, endAt: H },
        { stageId: 'rough', startAt: 3 * H, endAt: null },
      ],
      4 * H,
    ),
  ).toEqual([
    { stageId: 'ingest', minutes: 30, estimate: 60 },
    { stageId: 'rough', minutes: 180, estimate: 480 },
    { stageId: null, minutes: 120, estimate: 0 },
  ]));

test('a clock that was set back counts nothing', () => expect(minutesOf({ startAt: H, endAt: null }, 0)).toBe(0));

test.each([
  [16, 0, 16],
  [16, 90, 13],
  [16, 100, 13],
  [16, 480, 1],
  [16, 600, 1],
  [0, 60, 0],
])('of %d half hours with %d min spent, %d are left', (estimate, minutes, left) => expect(halfHoursLeft(estimate, minutes)).toBe(left));

test.each([
  [390, 480, '6 h 30 min of 8 h'],
  [540, 480, '9 h of 8 h, 1 h over'],
  [120, 0, '2 h'],
  [0, 60, '0 min of 1 h'],
])('%d min of %d', (minutes, estimate, said) => expect(spentInWords(minutes, estimate)).toBe(said));

test('law: nothing that was spent is lost, whatever stage it names', () =>
  fc.assert(
    fc.property(
      fc.array(fc.record({ stageId: fc.constantFrom('ingest', 'rough', 'gone', null), minutes: fc.integer({ min: 1, max: 900 }) }), {
        maxLength: 20,
      }),
      (given) => {
        const stretches = given.map(({ stageId, minutes }) => ({ stageId, startAt: 0, endAt: minutes * 60_000 }));
        const total = spentByStage(stages, stretches, 0).reduce((sum, { minutes }) => sum + minutes, 0);
        expect(total).toBe(given.reduce((sum, { minutes }) => sum + minutes, 0));
      },
    ),
    tried,
  ));

describe('what past edits took', () => {
  const edit = { finishedMinutes: 4, ingest: 60, editing: 480, notes: 0, rounds: 0 };
  test('median and range over those with time on record', () => {
    const past = pastOf([
      edit,
      { ...edit, editing: 240, ingest: 0 },
      { ...edit, editing: 720, notes: 180, rounds: 2 },
      { ...edit, editing: 0, ingest: 0 },
      { ...edit, finishedMinutes: 0 },
    ]);
    expect(past).toEqual({
      edits: 4,
      perMinute: { count: 3, median: 2, least: 1, most: 3 },
      ingest: { count: 3, median: 1, least: 1, most: 1 },
      perRound: { count: 1, median: 1.5, least: 1.5, most: 1.5 },
    });
  });
  test('none: no figure', () => expect(pastOf([])).toEqual({ edits: 0, perMinute: null, ingest: null, perRound: null }));
  test('an even count has the mean of the middle two', () =>
    expect(pastOf([edit, { ...edit, editing: 241 }]).perMinute).toEqual({ count: 2, median: 1.5, least: 1, most: 2 }));
  test('in words', () => {
    const three = [240, 480, 720].map((editing) => ({ ...edit, ingest: 0, editing }));
    expect(pastInWords(pastOf(three))).toEqual(['Editing took 2 h (1 to 3 over 3 edits) for a finished minute.']);
    expect(pastInWords(pastOf([edit, edit]))[1]).toBe('Ingest took 1 h (each of 2 edits).');
    expect(pastInWords(pastOf([{ ...edit, notes: 90, rounds: 1 }]))).toEqual([
      'Editing took 2 h (one edit) for a finished minute.',
      'Ingest took 1 h (one edit).',
      'A round of notes took 1.5 h (one edit).',
    ]);
  });
  test('stands in the place of what was estimated, where it says something', () => {
    const numbers = { finishedMinutes: '4', editHoursPerMinute: '3.25', ingestHours: '1', rounds: 2, hoursPerRound: '2', sameDay: false };
    expect(hoursTogether(numbers)).toBe('18');
    const past = pastOf([{ ...edit, ingest: 0, editing: 640, notes: 180, rounds: 2 }]);
    expect(asPastTook(numbers, past)).toEqual({ ...numbers, editHoursPerMinute: '2.67', hoursPerRound: '1.5' });
    // 10.68 h of cutting are 11 h in started half hours; with 1 h of ingest and two rounds of 1.5 h that is 15 h.
    expect(hoursTogether(asPastTook(numbers, past))).toBe('15');
    expect(asPastTook(numbers, pastOf([]))).toEqual(numbers);
  });
  test('law: the median lies in the range and does not hang on the order', () =>
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 1, maxLength: 30 }), (minutes) => {
        const of = (given: readonly number[]) => pastOf(given.map((editing) => ({ ...edit, finishedMinutes: 5, editing }))).perMinute;
        const figure = of(minutes);
        expect(figure && figure.least <= figure.median && figure.median <= figure.most).toBe(true);
        expect(of(minutes.toReversed())).toEqual(figure);
      }),
      tried,
    ));
});
