/**
 * Edits on the Desk: what bites next of each, and in which words.
 */
import { expect, test } from 'vitest';
import { editClocks, type EditOnDesk } from '../../../core/desk/edit-clocks.ts';
import { instantText, wallAt, epochOf } from '../../../core/time/read.ts';
import { at, MONDAY, ZONE } from '../deliverables/ground.ts';

const onDesk = (given: Partial<EditOnDesk>): EditOnDesk => ({
  deliverableId: 'd',
  jobId: 'j',
  jobTitle: 'Congress',
  jobVersion: 3,
  name: 'Highlight',
  due: '2026-12-16',
  internalDate: null,
  sameDay: false,
  hoursLeft: 8,
  unplaced: 0,
  start: instantText(at('2026-12-07T09:00')),
  finish: instantText(at('2026-12-08T11:00')),
  latestStart: instantText(at('2026-12-15T13:00')),
  slackHours: 30,
  lateDays: 0,
  pastInternal: false,
  waits: '',
  takers: [],
  sentence: '',
  begun: false,
  ...given,
});
const shown = (given: Partial<EditOnDesk>, now = MONDAY) =>
  editClocks([onDesk(given)], now, ZONE).map((clock) => [
    wallAt(epochOf(clock.at), ZONE).slice(5),
    clock.late,
    clock.sentence,
    clock.second,
  ]);

const late = { lateDays: 2, latestStart: null, finish: instantText(at('2026-12-18T11:00')) };
test.each<[string, Partial<EditOnDesk>, unknown[]]>([
  [
    'until it is begun, by when that must be',
    {},
    ['12-15T13:00', false, 'Highlight: begin by Tue 15 Dec 13:00, due by the end of Wed 16 Dec', 'Congress'],
  ],
  [
    'a latest start that is past',
    { latestStart: instantText(at('2026-12-07T07:30')) },
    ['12-07T07:30', true, 'Highlight: should have been begun, due by the end of Wed 16 Dec', 'Congress'],
  ],
  [
    'what it waits for',
    { waits: 'notes, due Wed 9 December' },
    [
      '12-15T13:00',
      false,
      'Highlight: begin by Tue 15 Dec 13:00, due by the end of Wed 16 Dec',
      'waits for notes, due Wed 9 December; Congress',
    ],
  ],
  [
    'begun, its internal date comes first',
    { begun: true, internalDate: '2026-12-10' },
    [
      '12-11T00:00',
      false,
      'Highlight: due by the end of Wed 16 Dec',
      'for yourself by the end of Thu; planned to be done Tue 11:00; Congress',
    ],
  ],
  [
    'then the promised one',
    { begun: true, internalDate: '2026-12-04' },
    ['12-17T00:00', false, 'Highlight: due by the end of Wed 16 Dec', 'planned to be done Tue 11:00; Congress'],
  ],
  [
    'what will be late bites today, and names the first that takes its time',
    { ...late, takers: [{ jobId: 'x', title: 'Curling', hours: 0, days: 5 }] },
    [
      '12-08T00:00',
      false,
      'Highlight: due by the end of Wed 16 Dec, will be 2 business days late',
      'planned to be done Fri 18 Dec 11:00; Curling takes 5 days; Congress',
    ],
  ],
  [
    'by hours where that is editing',
    { ...late, takers: [{ jobId: 'x', title: 'Curling', hours: 6.5, days: 0 }] },
    [
      '12-08T00:00',
      false,
      'Highlight: due by the end of Wed 16 Dec, will be 2 business days late',
      'planned to be done Fri 18 Dec 11:00; Curling takes 6.5 h; Congress',
    ],
  ],
  [
    'overdue',
    { due: '2026-12-03', lateDays: 3, latestStart: null },
    ['12-04T00:00', true, 'Highlight: overdue since the end of Thu', 'planned to be done Tue 11:00; Congress'],
  ],
  [
    'overdue though its work is done',
    { due: '2026-12-03', lateDays: 2, hoursLeft: 0, finish: null },
    ['12-04T00:00', true, 'Highlight: overdue since the end of Thu', 'its work is done; Congress'],
  ],
  [
    'no place in the calendar',
    { unplaced: 4, finish: null, latestStart: null },
    ['12-08T00:00', false, 'Highlight: due by the end of Wed 16 Dec, finds no place in the edit calendar', 'Congress'],
  ],
])('%s', (_, given, expected) => {
  expect(shown(given)).toEqual([expected]);
});

test('none without a date, and none that bites in more than two weeks', () => {
  expect(shown({ due: null })).toEqual([]);
  expect(shown({ due: '2027-02-01', latestStart: instantText(at('2027-01-29T09:00')) })).toEqual([]);
});
