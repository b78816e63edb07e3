import { expect, test } from 'vitest';
import { blankTemplate, hoursTogether } from '../../../core/deliverables/blank.ts';
import { frameSizeText, parseFrameSize } from '../../../core/deliverables/frame-size.ts';
import { dueInWords, roundsInWords, workInWords } from '../../../core/deliverables/template-words.ts';

test('hours together are ingest, the cuts and the rounds', () => {
  // 1 + 3 x 4 + 2 x 2.
  expect(hoursTogether(blankTemplate())).toBe('17');
  expect(hoursTogether({ ...blankTemplate(), rounds: 0, ingestHours: '0.5' })).toBe('12.5');
  expect(hoursTogether({ ...blankTemplate(), sameDay: true, rounds: 0 })).toBe('13');
});

test('a template in words', () => {
  const template = blankTemplate();
  expect(workInWords(template)).toBe('3 min, 17 h in all');
  expect(roundsInWords(template)).toBe('2, with 5 business days for notes');
  expect(roundsInWords({ ...template, rounds: 0 })).toBe('none');
  expect(roundsInWords({ ...template, sameDay: true, rounds: 0 })).toBe('none: cut on site');
  expect(dueInWords(template.due)).toBe('15 business days after the last wrap');
  expect(dueInWords({ ...template.due, days: 1, count: 'calendar' })).toBe('1 day after the last wrap');
  expect(dueInWords({ ...template.due, days: 0 })).toBe('on the day of the last wrap');
});

test.each([
  ['1920 x 1080', { width: 1920, height: 1080 }],
  ['1080×1920', { width: 1080, height: 1920 }],
  ['3840 by 2160', { width: 3840, height: 2160 }],
  ['', { width: null, height: null }],
])('the frame size %j', (typed, value) => {
  expect(parseFrameSize(typed)).toEqual({ ok: true, value });
});

test.each(['1920', '0 x 1080', 'full', '1920 x 1080 x 3', '999999 x 1'])('%j is no frame size', (typed) => {
  expect(parseFrameSize(typed)).toMatchObject({ ok: false });
});

test('a frame size is written as it is typed', () => {
  expect(frameSizeText({ width: 1920, height: 1080 })).toBe('1920 x 1080');
  expect(frameSizeText({ width: null, height: null })).toBe('');
});
