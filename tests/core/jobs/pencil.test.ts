import { describe, expect, test } from 'vitest';
import { defaultExpiry } from '../../../core/jobs/pencil.ts';
import { stateOf } from '../../../core/jobs/state.ts';

const at = (instant: string) => Temporal.Instant.from(instant).epochMilliseconds;
const NOW = at('2026-12-01T15:00:30Z');
const instant = (text: string | undefined) => (text === undefined ? null : at(text));
const ask = (given: { validUntil?: string; doorOut?: string; replyBy?: string }) => {
  const expiry = defaultExpiry({
    now: NOW,
    validUntil: instant(given.validUntil),
    doorOut: instant(given.doorOut),
    replyBy: instant(given.replyBy),
    zone: 'America/Chicago',
  });
  return { until: Temporal.Instant.fromEpochMilliseconds(expiry.at).toString(), caution: expiry.caution };
};

describe('a pencil holds until the earliest of', () => {
  test.each([
    ['48 h', {}, '2026-12-03T15:00:00Z'],
    ['valid until', { validUntil: '2026-12-02T06:00:00Z', doorOut: '2026-12-20T00:00:00Z' }, '2026-12-02T06:00:00Z'],
    ['12 h before door-out', { validUntil: '2026-12-10T00:00:00Z', doorOut: '2026-12-02T12:00:00Z' }, '2026-12-02T00:00:00Z'],
  ])('%s', (_name, given, until) => expect(ask(given)).toEqual({ until, caution: null }));
});

describe('where that is past, a caution and the later of', () => {
  test.each([
    [
      '2 h from now',
      { doorOut: '2026-12-02T03:00:00Z', replyBy: '2026-12-01T16:00:00Z' },
      '2026-12-01T17:00:00Z',
      'Door-out is less than 12 h away; the pencil runs out Tue 1 December 2026, 11:00.',
    ],
    [
      'reply-by',
      { doorOut: '2026-12-02T03:00:00Z', replyBy: '2026-12-01T18:00:00Z' },
      '2026-12-01T18:00:00Z',
      'Door-out is less than 12 h away; the pencil runs out Tue 1 December 2026, 12:00.',
    ],
    [
      '2 h, the quote having ended',
      { validUntil: '2026-12-01T15:00:00Z' },
      '2026-12-01T17:00:00Z',
      'The quote is no longer valid; the pencil runs out Tue 1 December 2026, 11:00.',
    ],
  ])('%s', (_name, given, until, caution) => expect(ask(given)).toEqual({ until, caution }));
});

test('a pencil holds until its expiry, not at it', () => {
  expect(stateOf('pencilled', NOW + 1, NOW)).toBe('pencilled');
  expect(stateOf('pencilled', NOW, NOW)).toBe('ran out');
  expect(stateOf('inked', NOW, NOW)).toBe('inked');
});
