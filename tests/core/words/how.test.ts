import { expect, test } from 'vitest';
import { byHow } from '../../../core/words/how.ts';

test.each([
  ['mail', 'by mail'],
  ['by mail', 'by mail'],
  [' By phone, then mail', 'by phone, then mail'],
  ['bystander', 'by bystander'],
  ['', ''],
])('%j', (how, words) => {
  expect(byHow(how)).toBe(words);
});
