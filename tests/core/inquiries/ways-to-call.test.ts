/**
 * Ways of saying one thing: whatever the words, the hour of the call is found, and hours of other people are not taken for it.
 */
import { describe, expect, test } from 'vitest';
import { said, saidBeside, waysOf } from '../../reader/ways.ts';
import { facts } from './reading.ts';

describe('first call at half past seven', () => {
  const ways = waysOf('calls');
  test.each(ways)('%s', (way) => expect(facts(said(way)).firstCall).toBe('2026-12-12T07:30'));
});

describe('an hour that is no call of mine', () => {
  const ways = waysOf('no-calls');
  test.each(ways)('%s', (way) => expect(facts(said(way)).firstCall).toBeUndefined());
});

const ON: Readonly<Record<string, string>> = { start: '2026-12-12', end: '2026-12-12' };
const pick = ({ start, end, firstCall, lastWrap, replyBy }: ReturnType<typeof facts>) => ({ start, end, firstCall, lastWrap, replyBy });

describe('an hour of what goes on beside the work', () => {
  const ways = waysOf('beside-hours');
  test.each(ways)('%s', (way) => {
    for (const { text, ...hours } of [{ text: said(way) }, ...saidBeside(way)]) {
      // Beside it a day or an hour of mine may be asked about; it never becomes another.
      for (const [name, wall] of Object.entries(pick(facts(text))))
        if (wall !== undefined) expect({ text, [name]: wall }).toEqual({ text, [name]: { ...ON, ...hours }[name] });
    }
  });
});
