/**
 * The edit plan over all jobs: what is said of each, and what takes the time of what is late.
 */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EditPlan } from '../../../core/contract/deliverables.ts';
import { EDIT_SETTINGS } from '../../../core/deliverables/ground.ts';
import { editPlan } from '../../../core/deliverables/plan.ts';
import { epochOf, wallAt } from '../../../core/time/read.ts';
import { notesDue, roundRelease } from '../../../core/deliverables/rounds.ts';
import { laid } from '../../../core/deliverables/lay.ts';
import { tried } from '../laws.ts';
import { at, away, edit, ground, MONDAY, stage, ZONE } from './ground.ts';

const wall = (instant: string | null) => instant && wallAt(epochOf(instant), ZONE).slice(5);
const blocks = (plan: EditPlan) => plan.blocks.map(({ stageId, start, end }) => `${stageId} ${wall(start)} ${wall(end)?.slice(6)}`);
const said = (plan: EditPlan, id = 'A') => plan.edits.find(({ deliverableId }) => deliverableId === id);

describe('one edit', () => {
  test('is laid from now on, with by when it must be begun and how much room there is', () => {
    const plan = editPlan(ground([edit('A', '2026-12-10', 8)]));
    expect(blocks(plan)).toEqual(['A cut 12-07T09:00 15:00', 'A cut 12-08T09:00 11:00']);
    expect(said(plan)).toMatchObject({
      lateDays: 0,
      slackHours: 16,
      sentence: 'Planned to be done Tue 8 December, due Thu 10 December 2026. Begin by Wed 9 December 2026, 13:00.',
    });
    expect(plan.sentence).toBe('1 edit is open; none is late.');
  });
  test('waits for its camera files', () => {
    const plan = editPlan(ground([edit('A', '2026-12-18', 2, { filesAt: at('2026-12-09T22:30') })]));
    expect(blocks(plan)).toEqual(['A cut 12-10T09:00 11:00']);
    expect(said(plan)?.waits).toBe('the camera files, which are there from Wed 9 December 2026, 22:30');
  });
  test('is late by business days, over its own length where nothing else takes the time', () => {
    const plan = editPlan(ground([edit('A', '2026-12-08', 30)]));
    expect(said(plan)).toMatchObject({ lateDays: 3, latestStart: null, takers: [] });
    expect(said(plan)?.sentence).toBe(
      'Planned to be done Fri 11 December, 3 business days late: due Tue 8 December 2026. Its own 30 h take longer than there is from its files to its date.',
    );
  });
  test('is not late over a weekend that lies between, but by the Monday on which it is done', () => {
    expect(said(editPlan(ground([edit('A', '2026-12-11', 36)])))?.lateDays).toBe(1);
  });
  test('that is done but not delivered is late from the day after its date', () => {
    const done = (due: string) => said(editPlan(ground([edit('A', due, 0)])));
    expect(done('2026-12-07')).toMatchObject({ lateDays: 0, start: null, finish: null, hoursLeft: 0 });
    expect(done('2026-12-03')?.sentence).toBe('Its work is done; it waits to be delivered, due Thu 3 December 2026, 2 business days late.');
  });
  test('whose hours are not said is not done: no time is planned for it, and that is said', () => {
    const plan = editPlan(ground([edit('A', '2026-12-10', 0, { hoursSaid: false })]));
    expect(said(plan)?.sentence).toBe('Its hours are not said yet, so no time is planned for it; due Thu 10 December 2026.');
    expect(plan.troubles).toEqual(['One edit has no hours yet: no time is planned for it.']);
  });
  test('without a date comes behind what is promised, and is said', () => {
    const plan = editPlan(ground([edit('A', null, 6), edit('B', '2026-12-30', 6)]));
    expect(blocks(plan)).toEqual(['B cut 12-07T09:00 15:00', 'A cut 12-08T09:00 15:00']);
    expect(said(plan)).toMatchObject({
      lateDays: 0,
      latestStart: null,
      sentence: 'Planned to be done Tue 8 December, it has no date yet.',
    });
    expect(plan.troubles).toEqual(['One edit has no date yet: what is promised comes before it.']);
  });
  test('that a hand edits takes no time of mine', () => {
    const plan = editPlan(ground([edit('A', '2026-12-08', 60, { editor: 'Cy Ek' })]));
    expect(plan.blocks).toEqual([]);
    expect(said(plan)).toMatchObject({ lateDays: 0, sentence: 'Cy Ek edits it, so it takes no time of mine; due Tue 8 December 2026.' });
  });
});

describe('what takes the time', () => {
  test('is named by hours of editing and by days away', () => {
    const plan = editPlan(
      ground([edit('A', '2026-12-09', 8), edit('B', '2026-12-09', 7), edit('C', '2026-12-09', 3)], {
        dates: [...away(['2026-12-08', '2026-12-09', '2026-12-12']), ...away(['2026-12-09'], 'Opening', 'travel')],
      }),
    );
    const late = plan.edits.filter(({ lateDays }) => lateDays > 0);
    expect(late.map(({ name, lateDays, sentence }) => [name, lateDays, sentence.split('What takes its time: ')[1]])).toEqual([
      ['Film A', 1, '2 days away for Congress and 1 day for Opening.'],
      ['Film B', 2, '8 h of editing for Job A, 2 days away for Congress and 1 day for Opening.'],
      ['Film C', 2, '8 h of editing for Job A, 7 h for Job B, 2 days away for Congress and 1 day for Opening.'],
    ]);
    expect(late[1]?.sentence).toMatch(/^Planned to be done Fri 11 December, 2 business days late: due Wed 9 December 2026\. What/);
    expect(late[1]?.takers).toEqual([
      { jobId: 'job of A', title: 'Job A', hours: 8, days: 0 },
      { jobId: 'congress', title: 'Congress', hours: 0, days: 2 },
      { jobId: 'opening', title: 'Opening', hours: 0, days: 1 },
    ]);
    expect(plan.sentence).toBe('3 edits are open; all of them are late.');
  });
  test('travel and shoot days are open where that is allowed', () => {
    const taken = { dates: [...away(['2026-12-07']), ...away(['2026-12-08'], 'Congress', 'travel')] };
    const begins = (given: object) =>
      wall(said(editPlan(ground([edit('A', '2026-12-30', 1)], { ...taken, settings: { ...EDIT_SETTINGS, ...given } })))?.start ?? null);
    expect([begins({}), begins({ onTravelDays: true }), begins({ onShootDays: true })]).toEqual([
      '12-09T09:00',
      '12-08T09:00',
      '12-07T09:00',
    ]);
  });
});

describe('rounds', () => {
  const film = (given: object = {}) =>
    edit('A', '2026-12-31', 0, {
      stages: [stage('cut', 6), stage('round', 3, { kind: 'round', name: 'Round', ...given }), stage('lock', 1, { kind: 'picture lock' })],
    });
  test('one that is not sent waits for the window after the planned sending', () => {
    expect(blocks(editPlan(ground([film()])))).toEqual(['cut 12-07T09:00 15:00', 'round 12-10T09:00 12:00', 'lock 12-10T12:00 13:00']);
  });
  test('the window leaves out days on which either of us does not work', () => {
    const plan = editPlan(ground([{ ...film(), theirs: new Set(['2026-12-08']) }], { holidays: new Set(['2026-12-09']) }));
    expect(blocks(plan).at(1)).toBe('round 12-14T09:00 12:00');
  });
  test('one whose cut is put off by another edit is put off with it', () => {
    const plan = editPlan(ground([film(), edit('B', '2026-12-08', 12)]));
    expect(blocks(plan)).toEqual([
      'B cut 12-07T09:00 15:00',
      'B cut 12-08T09:00 15:00',
      'cut 12-09T09:00 15:00',
      'round 12-14T09:00 12:00',
      'lock 12-14T12:00 13:00',
    ]);
  });
  test('one that is sent waits for its notes, and begins once they are in', () => {
    const begins = (sent: { dueBack: string; notesAt: number | null }) => {
      const one = { ...film({ sent }) };
      return editPlan(ground([{ ...one, stages: one.stages.slice(1) }]));
    };
    const awaited = begins({ dueBack: '2026-12-09', notesAt: null });
    expect(blocks(awaited)[0]).toBe('round 12-10T09:00 12:00');
    expect(said(awaited)?.waits).toBe('notes, due Wed 9 December');
    expect(blocks(begins({ dueBack: '2026-12-09', notesAt: MONDAY - 60_000 }))[0]).toBe('round 12-07T09:00 12:00');
  });
  test('notes that are awaited past their window move the date by the days that went by, and it says so', () => {
    const sent = { dueBack: '2026-12-03', notesAt: null };
    const one = { ...film({ sent }), due: '2026-12-08' };
    const plan = editPlan(ground([{ ...one, stages: one.stages.slice(1) }]));
    expect(said(plan)).toMatchObject({ due: '2026-12-10', lateDays: 0 });
    expect(said(plan)?.sentence).toContain('moved by notes that are late, due Thu 10 December 2026.');
  });
  test('a cut that is to be sent goes before work that is due earlier but waits for nobody', () => {
    // Promised for the 16th: with a window of two days and a day of work on the notes the cut must be out by the 11th.
    const plan = editPlan(ground([{ ...film(), due: '2026-12-16' }, edit('B', '2026-12-14', 12)]));
    expect(blocks(plan)[0]).toBe('cut 12-07T09:00 15:00');
  });
});

describe('pins', () => {
  const pins = [{ stageId: 'A cut', start: at('2026-12-09T18:00'), end: at('2026-12-09T20:00') }];
  test('stay where they are, count in their day, and the rest is laid around them', () => {
    const plan = editPlan(ground([edit('A', '2026-12-30', 4), edit('B', '2026-12-10', 18)], { pins }));
    expect(plan.blocks.map(({ stageId, start, end, pinned }) => [stageId, wall(start), wall(end)?.slice(6), pinned])).toEqual([
      ['B cut', '12-07T09:00', '15:00', false],
      ['B cut', '12-08T09:00', '15:00', false],
      ['B cut', '12-09T09:00', '13:00', false],
      ['A cut', '12-09T18:00', '20:00', true],
      ['B cut', '12-10T09:00', '11:00', false],
      ['A cut', '12-10T11:00', '13:00', false],
    ]);
  });
  test('a stage that is pinned whole is done when its last pin ends, and what follows begins then', () => {
    const one = edit('A', '2026-12-30', 0, { stages: [stage('A cut', 2), stage('lock', 1, { kind: 'picture lock' })] });
    const plan = editPlan(ground([one], { pins }));
    expect(blocks(plan)).toEqual(['A cut 12-09T18:00 20:00', 'lock 12-10T09:00 10:00']);
  });
});

test('what is cut on site follows the wrap, takes no half hour of the desk, and is an ordinary edit once that time is past', () => {
  const one = edit('A', '2026-12-08', 2, { sameDay: true, filesAt: at('2026-12-08T17:30') });
  expect(blocks(editPlan(ground([one])))).toEqual(['A cut 12-08T17:30 19:30']);
  const after = editPlan(ground([one], { now: at('2026-12-09T10:00') }));
  expect(blocks(after)).toEqual(['A cut 12-09T10:00 12:00']);
  expect(said(after)?.lateDays).toBe(1);
});

test.each([
  ['no hour a day', { hoursADay: 0 }],
  ['no day of the week', { closedWeekdays: [1, 2, 3, 4, 5, 6, 7] }],
])('no capacity at all, %s: nothing is planned, everything is said', (_, given) => {
  const plan = editPlan(ground([edit('A', '2026-12-10', 8)], { settings: { ...EDIT_SETTINGS, ...given } }));
  expect(plan.blocks).toEqual([]);
  expect(plan.troubles).toEqual(['The edit calendar has no open hour, so nothing can be planned. Give it hours and days in Setup.']);
  expect(said(plan)).toMatchObject({ unplaced: 8, start: null, finish: null, latestStart: null });
  expect(said(plan)?.sentence).toContain('8 h of its 8 h find no place in the calendar');
});

test('home moves to another clock: pins keep their instant, dates end on the new clock, and all is laid anew', () => {
  const pins = [{ stageId: 'A cut', start: at('2026-12-08T10:00'), end: at('2026-12-08T12:00') }];
  const before = editPlan(ground([edit('A', '2026-12-08', 10)], { pins }));
  const after = editPlan(ground([edit('A', '2026-12-08', 10)], { pins, zone: 'Pacific/Auckland' }));
  expect(before.blocks.filter(({ pinned }) => pinned)).toEqual(after.blocks.filter(({ pinned }) => pinned));
  expect(wallAt(epochOf(after.blocks[0]?.start ?? ''), 'Pacific/Auckland')).toBe('2026-12-08T09:00');
  expect([said(before)?.lateDays, said(after)?.lateDays]).toEqual([0, 1]);
});

test('equal dates keep the order of the plan before', () => {
  const two = [edit('A', '2026-12-10', 3), edit('B', '2026-12-10', 3)];
  const turned = editPlan(ground(two, { previous: [{ stageId: 'B cut', start: MONDAY, end: MONDAY + 1 }] }));
  expect(blocks(turned)).toEqual(['B cut 12-07T09:00 12:00', 'A cut 12-07T12:00 15:00']);
});

describe('laws over many edits', () => {
  const films = fc
    .array(
      fc.record({
        hours: fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 1, maxLength: 4 }),
        due: fc.option(fc.integer({ min: 8, max: 31 })),
        windowDays: fc.integer({ min: 0, max: 3 }),
        files: fc.integer({ min: 1, max: 20 }),
      }),
      { minLength: 1, maxLength: 8 },
    )
    .map((all) =>
      all.map(({ hours, due, windowDays, files }, index) =>
        edit(`e${index}`, due === null ? null : `2026-12-${String(due).padStart(2, '0')}`, 0, {
          windowDays,
          filesAt: at(`2026-12-${String(files).padStart(2, '0')}T18:00`),
          stages: hours.map((half, order) => stage(`e${index}/${order}`, half / 2, order === 0 ? {} : { kind: 'round' })),
        }),
      ),
    );

  test('no window is cut short, whatever else is planned', () => {
    fc.assert(
      fc.property(films, (edits) => {
        const { plan } = laid(ground(edits));
        const of = new Map(plan.stages.map((planned) => [planned.id, planned]));
        for (const { stages, windowDays } of edits)
          stages.forEach(({ id, kind, halfHours }, order) => {
            const cut = of.get(stages[order - 1]?.id ?? '')?.finish;
            if (kind !== 'round' || halfHours === 0 || cut === undefined || cut === null) return;
            const dueBack = notesDue(cut, windowDays, { zone: ZONE, mine: new Set(), theirs: new Set() });
            expect(of.get(id)?.start).toBeGreaterThanOrEqual(roundRelease({ dueBack, notesAt: null }, ZONE, MONDAY));
          });
      }),
      tried,
    );
  });
  test('the latest start is not before the planned one where an edit is in time, and all the work has a place', () => {
    fc.assert(
      fc.property(films, (edits) => {
        for (const { lateDays, due, start, latestStart, unplaced } of editPlan(ground(edits)).edits) {
          expect(unplaced).toBe(0);
          if (lateDays > 0 || due === null || start === null || latestStart === null) continue;
          expect(epochOf(latestStart)).toBeGreaterThanOrEqual(epochOf(start));
        }
      }),
      tried,
    );
  });
  test('a plan that is laid again over itself is the same plan', () => {
    fc.assert(
      fc.property(films, (edits) => {
        const { plan } = laid(ground(edits));
        expect(laid(ground(edits, { previous: plan.blocks })).plan).toEqual(plan);
      }),
      tried,
    );
  });
});
