import { describe, expect, test } from 'vitest';
import { array, assert, integer, option, property, record } from 'fast-check';
import { customsList } from '../../../core/documents/customs.ts';
import { customsTable } from '../../../core/documents/customs-paper.ts';
import { customsBorder, moveFreely, whomToAsk } from '../../../core/documents/rules.ts';
import { blankItem, blankUnit } from '../../../core/kit/blank.ts';
import type { KitItem } from '../../../core/contract/kit.ts';

const thing = (id: string, fields: Partial<KitItem>): KitItem => ({ ...blankItem(id), id, version: 1, ...fields });
const list = (items: KitItem[], counts: number[], rates: { currency: string; rate: string; date: string }[] = []) =>
  customsList({ needs: items.map(({ id }, at) => ({ item: id, count: counts[at] ?? 1 })), items, packed: [], rates, currency: 'USD' });
const usd = (minor: number) => ({ minor, currency: 'USD' });
const eur = (minor: number) => ({ minor, currency: 'EUR' });

describe('totals', () => {
  test('one currency that is not that of home stands as it is', () =>
    expect(list([thing('Lens', { value: eur(120_000) })], [2]).total).toEqual(eur(240_000)));

  test('two currencies stand apart without a dated rate', () => {
    const two = list([thing('Lens', { value: eur(100) }), thing('Light', { value: usd(100) })], [1, 1]);
    expect(two.total).toBeNull();
    expect(two.values).toEqual([eur(100), usd(100)]);
  });

  test('a rate that nothing on the list needs is not kept', () =>
    expect(list([thing('Light', { value: usd(100) })], [1], [{ currency: 'EUR', rate: '1.1', date: '2026-11-24' }]).rates).toEqual([]));

  test('nothing has no total', () => expect(list([], []).total).toBeNull());

  test('pieces, weight and value are those of the lines, whatever the units', () =>
    assert(
      property(
        array(
          record({
            serials: integer({ min: 0, max: 4 }),
            count: integer({ min: 1, max: 6 }),
            grams: option(integer({ min: 1, max: 9000 })),
            minor: option(integer({ min: 1, max: 10_000_00 })),
          }),
          { maxLength: 6 },
        ),
        (things) => {
          const items = things.map(({ serials, grams, minor }, at) =>
            thing(`t${at}`, {
              owned: 10,
              units: Array.from({ length: serials }, (_, n) => blankUnit(`S${n}`)),
              grams,
              value: minor === null ? null : usd(minor),
            }),
          );
          const made = list(
            items,
            things.map(({ count }) => count),
          );
          expect(made.pieces).toBe(things.reduce((sum, { count }) => sum + count, 0));
          expect(made.grams).toBe(things.reduce((sum, { count, grams }) => sum + count * (grams ?? 0), 0));
          const worth = things.reduce((sum, { count, minor }) => sum + count * (minor ?? 0), 0);
          expect(made.total).toEqual(things.some(({ minor }) => minor !== null) ? usd(worth) : null);
          // The table says the same as the list.
          expect(customsTable(made).rows).toHaveLength(made.rows.length + made.values.length + 1);
        },
      ),
      { numRuns: 100, seed: 9 },
    ));
});

test('what is not known is said once for each thing, and nothing where all is known', () => {
  const whole = thing('Camera', { units: [blankUnit('A1')], grams: 900, origin: 'JP', value: usd(100) });
  expect(list([whole], [1]).missing).toEqual([]);
  expect(list([whole, thing('Stand', { grams: 900, origin: 'DE' })], [1, 2]).missing).toEqual([
    'Stand has no serial or value on the kit list.',
  ]);
});

describe('borders of goods and of people', () => {
  test.each([
    ['US', 'CA', true, false],
    ['US', 'US', false, false],
    ['DE', 'FR', false, true],
    ['DE', 'CH', true, true],
    ['CH', 'LI', false, true],
    ['NO', 'SE', true, true],
    ['FR', 'MC', false, false],
    ['IE', 'GB', true, false],
  ])('%s to %s', (from, to, customs, free) => {
    expect([customsBorder(from, to), customsBorder(to, from)]).toEqual([customs, customs]);
    expect(moveFreely(from, to)).toBe(free);
  });

  test('whom to ask where nothing is on file', () => {
    expect(whomToAsk('KE', 'Kenya', 'entry')).toBe('the embassy of Kenya and the carrier');
    expect(whomToAsk('KE', 'Kenya', 'customs')).toBe('the customs authority of Kenya');
  });
});
