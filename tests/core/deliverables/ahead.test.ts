import { expect, test } from 'vitest';
import type { EditPlan } from '../../../core/contract/deliverables.ts';
import { editingAhead } from '../../../core/deliverables/ahead.ts';

const block = (deliverableId: string, start: string, end: string): EditPlan['blocks'][number] => ({
  stageId: `${deliverableId}/cut`,
  deliverableId,
  jobId: 'job',
  start,
  end,
  pinned: false,
});
const edit = (deliverableId: string, name: string) => ({ deliverableId, name }) as EditPlan['edits'][number];
const plan = {
  at: '2026-11-26T15:00:00Z',
  zone: 'America/Chicago',
  edits: [edit('a', 'Highlights'), edit('b', 'Regional film')],
  blocks: [
    block('a', '2026-11-26T14:00:00Z', '2026-11-26T15:00:00Z'),
    block('a', '2026-11-26T15:00:00Z', '2026-11-26T18:30:00Z'),
    block('a', '2026-11-27T15:00:00Z', '2026-11-27T17:00:00Z'),
    block('b', '2026-11-27T17:00:00Z', '2026-11-27T21:00:00Z'),
    block('b', '2026-11-30T15:00:00Z', '2026-11-30T16:00:00Z'),
  ],
};

test('the next dates with their hours and what they are for; what is past is left out', () => {
  expect(editingAhead(plan)).toBe('today 3.5 h: Highlights; Fri 27 November 6 h: Highlights and Regional film');
  expect(editingAhead(plan, 3)).toContain('; Mon 30 November 1 h: Regional film');
});

test('of several edits two are named', () => {
  const edits = [...plan.edits, edit('c', 'Teaser'), edit('d', 'Interviews')];
  const blocks = ['a', 'b', 'c', 'd'].map((id, at) => block(id, `2026-11-27T1${at}:00:00Z`, `2026-11-27T1${at + 1}:00:00Z`));
  expect(editingAhead({ ...plan, edits, blocks })).toBe('Fri 27 November 4 h: Highlights, Regional film and 2 more');
});

test('a block of the evening belongs to the date at home', () => {
  const late = { ...plan, blocks: [block('a', '2026-11-28T02:00:00Z', '2026-11-28T03:00:00Z')] };
  expect(editingAhead(late)).toBe('Fri 27 November 1 h: Highlights');
});

test('nothing planned is nothing said', () => {
  expect(editingAhead({ ...plan, blocks: [] })).toBe('');
});
