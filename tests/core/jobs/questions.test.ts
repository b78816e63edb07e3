import { expect, test } from 'vitest';
import { newFacts } from '../../../core/jobs/facts.ts';
import { changedFacts, stillOpen } from '../../../core/jobs/questions.ts';

const before = newFacts({ title: 'Final', contact: { name: 'Ada', email: '', phone: '' } });
const question = (field: 'firstCall' | 'lastWrap' | 'place' | 'budget') => ({ field, ask: '?', choices: [] });

test('only what differs is changed, whatever the order of its parts', () => {
  expect(changedFacts(before, { title: 'Final', contact: { phone: '', email: '', name: 'Ada' }, notes: 'dock', place: undefined })).toEqual(
    ['notes'],
  );
});

test('a change settles the questions about it, an answer those that it names', () => {
  const open = [question('firstCall'), question('place'), question('budget')];
  expect(stillOpen(open, ['days'], ['budget']).map(({ field }) => field)).toEqual(['place']);
  expect(stillOpen(open, ['notes'])).toEqual(open);
  // A call that was chosen answers nothing else about the days.
  const days = [question('firstCall'), question('lastWrap')];
  expect(stillOpen(days, ['days'], ['firstCall'])).toEqual([question('lastWrap')]);
});
