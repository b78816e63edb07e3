/**
 * Customs lists as papers: how they look, and what is read back from them.
 */
import { describe, expect, test } from 'vitest';
import { customsList } from '../../core/documents/customs.ts';
import type { CustomsPaperInput } from '../../core/documents/customs-paper.ts';
import type { KitItem } from '../../core/contract/kit.ts';
import { blankItem, blankUnit } from '../../core/kit/blank.ts';
import { customsPaper } from '../../electron/papers/customs.ts';
import { bill } from './invoice-sample.ts';
import { expectSamePixels, expectWellSet } from './looks.ts';
import { pagesOfText } from './read-text.ts';

const thing = (name: string, fields: Partial<KitItem>): KitItem => ({ ...blankItem(name), id: name, version: 1, ...fields });
const items = [
  thing('Camera body, 6K', {
    units: [blankUnit('6K-00417'), blankUnit('6K-00418')],
    grams: 1240,
    origin: 'JP',
    value: { minor: 389_500, currency: 'USD' },
  }),
  thing('Zoom lens 24-105', { units: [blankUnit('ZL-9921')], grams: 885, origin: 'JP', value: { minor: 129_900, currency: 'USD' } }),
  thing('Battery 98 Wh', { grams: 640, origin: 'CN', value: { minor: 21_000, currency: 'USD' } }),
  thing('Radio microphone set', { units: [blankUnit('RM-3')], grams: 430, origin: 'DE', value: { minor: 64_900, currency: 'EUR' } }),
  thing('Light stand', {}),
];
const counts = [2, 1, 6, 1, 3];
const rates = [{ currency: 'EUR', rate: '1.0840', date: '2026-11-24' }];

function customs(of: readonly KitItem[], withRates = rates): CustomsPaperInput {
  const { sender } = bill();
  const needs = of.map(({ id }, at) => ({ item: id, count: counts[at] ?? 1 }));
  return {
    sender,
    job: 'Curling championship',
    goesTo: 'Thunder Bay, Ontario, Canada',
    homeCountry: 'US',
    leaves: '2026-12-05',
    homeOn: '2026-12-11',
    date: '2026-12-03',
    madeAt: '2026-12-03T15:00:00Z',
    list: customsList({ needs, items: of, packed: [], rates: withRates, currency: 'USD' }),
  };
}
/** More than a page holds. */
const many = Array.from({ length: 70 }, (_, at) =>
  thing(`Thing ${at + 1}`, {
    units: [blankUnit(`SN-${1000 + at}`)],
    grams: 100 + at,
    origin: 'JP',
    value: { minor: 10_000 + at, currency: 'USD' },
  }),
);

describe.each([
  ['five things in two currencies', customs(items)],
  ['the same without a rate', customs(items, [])],
  ['70 things', customs(many)],
])('%s', (_, input) => {
  test.each(['A4', 'Letter'] as const)('is well set on %s', async (paper) =>
    expectWellSet(await customsPaper({ ...input, sender: { ...input.sender, paper } }), paper),
  );
  test('the subset draws what the whole typeface draws, to the pixel', async () =>
    expectSamePixels(await customsPaper(input), await customsPaper(input, { subset: false })));
  test('the same bytes for the same content', async () =>
    expect(Buffer.compare(await customsPaper(input), await customsPaper(structuredClone(input)))).toBe(0));
});

test('serials, weights, origins, values, the total with its dated rate and what is missing are read back', async () => {
  const text = (await pagesOfText(await customsPaper(customs(items)))).join('\n');
  for (const said of [
    'Serial 6K-00417',
    'Serial RM-3',
    'USD 3,895.00',
    'EUR 649.00',
    '7.635 kg',
    // 7,790.00 + 1,299.00 + 1,260.00 + 649.00 x 1.084 = 703.52
    'USD 11,052.52',
    '1 EUR = 1.084 USD on 24 November 2026',
    'Light stand has no serial, weight, country of origin or value on the kit list.',
    'What is asked for is for customs to say.',
    'Thunder Bay, Ontario, Canada',
    '5 to 11 December 2026',
  ])
    expect(text).toContain(said);
});

test('without a rate the currencies stand apart, and it says so', async () => {
  const text = (await pagesOfText(await customsPaper(customs(items, [])))).join('\n');
  expect(text).toContain('apart');
  expect(text).toContain('No dated rate was given');
});
