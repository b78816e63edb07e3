/**
 * Ways of saying one thing: whatever the words, the hour of the call is found, and hours of other people are not taken for it.
 */
import { describe, expect, test } from 'vitest';
import { said, waysOf } from '../../reader/ways.ts';
import { facts } from './reading.ts';

describe('first call at half past seven', () => {
  const ways = waysOf('calls');
  test.each(ways)('%s', (way) => expect(facts(said(way)).firstCall).toBe('2026-12-12T07:30'));
});

describe('an hour that is no call of mine', () => {
  const ways = waysOf('no-calls');
  test.each(ways)('%s', (way) => expect(facts(said(way)).firstCall).toBeUndefined());
});
