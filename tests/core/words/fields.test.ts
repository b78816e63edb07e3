import { expect, test } from 'vitest';
import { fieldInWords, troubleInWords } from '../../../core/words/fields.ts';

test.each([
  ['amount', 'Amount'],
  ['fields.dayRate', 'Day rate'],
  ['fields.closed[0].to', 'To (closed, first)'],
  ['legs.1', 'Legs, second'],
  ['tryOn.withJobs.0.legs[11].depart', 'Depart (try on, with jobs, first, legs, number 12)'],
  ['input', 'Input'],
  ['fields', 'Fields'],
  ['[2]', '2'],
])('%s is "%s"', (path, words) => expect(fieldInWords(path)).toBe(words));

test('a note on a screen names no path; a sentence that stands by itself is left as it is', () => {
  const kept = { kept: 'Nothing was changed.', todo: 'Correct it and try again.' };
  const fields = [{ field: 'fields.closed[0].to', sentence: 'is before its first day' }];
  expect(troubleInWords({ ...kept, what: 'fields.closed[0].to is before its first day.', fields })).toEqual({
    ...kept,
    what: 'To (closed, first) is before its first day.',
    fields,
  });
  const alone = { ...kept, what: 'The yes is dated after now.', fields: [{ field: 'at', sentence: 'The yes is dated after now.' }] };
  expect(troubleInWords(alone)).toBe(alone);
  expect(troubleInWords({ ...kept, what: 'The store is full.' }).what).toBe('The store is full.');
});
