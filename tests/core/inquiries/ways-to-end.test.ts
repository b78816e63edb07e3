/**
 * Ways of saying one thing: whatever the words, the hour of the wrap and the time to answer by are found, and no other time is taken for them.
 */
import { describe, expect, test } from 'vitest';
import { said, waysOf } from '../../reader/ways.ts';
import { facts } from './reading.ts';

describe('wrap at five', () => {
  const ways = waysOf('wraps');
  test.each(ways)('%s', (way) => expect(facts(said(`Call 9am. ${way}`)).lastWrap).toBe('2026-12-12T17:00'));
});

describe('an answer by 1 December', () => {
  const ways = waysOf('replies');
  test.each(ways)('%s', (way) => expect(facts(said(way)).replyBy).toBe('2026-12-01T23:59'));
});

describe('a time that is no time to answer by', () => {
  const ways = waysOf('no-replies');
  test.each(ways)('%s', (way) => expect(facts(said(way)).replyBy).toBeUndefined());
});
