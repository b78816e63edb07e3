import { expect, test } from 'vitest';
import { handClocks } from '../../../core/desk/hand-clocks.ts';

const at = (instant: string) => Temporal.Instant.from(instant).epochMilliseconds;
const ask = {
  handId: 'h',
  name: 'Bo Lind',
  job: { id: 'j', version: 3, title: 'Clinic opening' },
  dates: ['2026-12-12', '2026-12-11'],
  askedAt: at('2026-12-08T15:00:00Z'),
  firstCallAt: at('2026-12-11T14:00:00Z'),
};
const seen = (now: string, more: Partial<typeof ask> = {}) => handClocks([{ ...ask, ...more }], at(now), 'America/Chicago');

test('it runs out a day after the ask', () => {
  expect(seen('2026-12-08T16:00:00Z')).toEqual([
    expect.objectContaining({
      id: 'hand:j:h',
      at: '2026-12-09T15:00:00Z',
      late: false,
      sentence: 'Clinic opening: Bo Lind has not answered',
      second: 'asked 09:00 for Fri 11 and Sat 12 December',
    }),
  ]);
  expect(seen('2026-12-09T15:00:00Z')[0]?.late).toBe(true);
});

test('never later than the call, and gone with it', () => {
  expect(seen('2026-12-08T16:00:00Z', { firstCallAt: at('2026-12-08T20:00:00Z') })[0]?.at).toBe('2026-12-08T20:00:00Z');
  expect(seen('2026-12-11T14:00:00Z')).toEqual([]);
});

test('nothing where no date is left', () => {
  expect(seen('2026-12-08T16:00:00Z', { dates: [] })).toEqual([]);
});
