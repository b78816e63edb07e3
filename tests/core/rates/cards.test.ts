import { describe, expect, test } from 'vitest';
import { RateCardFields } from '../../../core/contract/rates.ts';
import { Role } from '../../../core/contract/parts.ts';
import { currencyCodes } from '../../../core/money/currencies.ts';
import { money } from '../../../core/money/money.ts';
import { checkCard } from '../../../core/rates/check.ts';
import { chooseCard } from '../../../core/rates/choose.ts';
import { defaultCard } from '../../../core/rates/defaults.ts';
import { termsPresets } from '../../../core/rates/presets.ts';
import { previewRow, previewSentence, whyApart } from '../../../core/rates/preview.ts';

const card = (changes: Partial<RateCardFields> = {}) => ({ ...defaultCard('shoot', 'USD', '2026-01-01'), dayRate: '1000', ...changes });
const troubled = (changes: Partial<RateCardFields>) => checkCard(card(changes)).map((trouble) => trouble.field);

describe('defaults', () => {
  test.each(Role.options)('for %s are a legal card without contradictions', (role) => {
    for (const currency of ['USD', 'CAD', 'JPY']) {
      const fields = defaultCard(role, currency, '2026-01-01');
      expect(RateCardFields.safeParse(fields).error).toBeUndefined();
      expect(checkCard(fields)).toEqual([]);
    }
  });
  test('know the mileage rate of the United States and of nobody else', () => {
    expect(card().mileage).toEqual([{ from: '2026-01-01', rate: '0.725' }]);
    expect(currencyCodes.filter((currency) => defaultCard('shoot', currency, '2026-01-01').mileage.length > 0)).toEqual(['USD']);
  });
  test('name no price', () => expect(defaultCard('shoot', 'USD', '2026-01-01')).toMatchObject({ dayRate: '0', editHour: '0', kit: [] }));
  test('presets of terms are legal and have names of their own', () => {
    for (const { terms } of termsPresets) expect(RateCardFields.safeParse(card({ terms })).error).toBeUndefined();
    expect(new Set(termsPresets.map((preset) => preset.name)).size).toBe(termsPresets.length);
  });
});

describe('a card that contradicts itself', () => {
  test.each<[Partial<RateCardFields>, string[]]>([
    [{ validTo: '2025-12-31' }, ['validTo']],
    [{ dayHours: '0' }, ['dayHours', 'halfUpToHours']],
    [{ halfUpToHours: '10.5' }, ['halfUpToHours']],
    [{ halfPercent: '120' }, ['halfPercent']],
    [{ overtime: [{ fromHours: '4', toHours: '4', times: '2' }] }, ['overtime.0']],
    [
      {
        overtime: [
          { fromHours: '0', toHours: null, times: '1.5' },
          { fromHours: '4', toHours: null, times: '2' },
        ],
      },
      ['overtime.0'],
    ],
    [
      {
        overtime: [
          { fromHours: '0', toHours: '4', times: '1.5' },
          { fromHours: '3', toHours: null, times: '2' },
        ],
      },
      ['overtime.1'],
    ],
    [
      {
        overtime: [
          { fromHours: '0', toHours: '4', times: '2' },
          { fromHours: '4', toHours: null, times: '1.5' },
        ],
      },
      ['overtime.1'],
    ],
    [
      {
        mileage: [
          { from: '2026-01-01', rate: '1' },
          { from: '2026-01-01', rate: '2' },
        ],
      },
      ['mileage'],
    ],
    [
      {
        kit: [
          { name: 'Mixer', perDay: '1' },
          { name: 'Mixer', perDay: '2' },
        ],
      },
      ['kit'],
    ],
  ])('%j is refused', (changes, fields) => expect(troubled(changes)).toEqual(fields));
  test('a free gap between tiers is none', () => {
    expect(
      troubled({
        overtime: [
          { fromHours: '1', toHours: '2', times: '1.5' },
          { fromHours: '3', toHours: null, times: '2' },
        ],
      }),
    ).toEqual([]);
  });
});

test.each<[Partial<RateCardFields>, string]>([
  [
    {
      rush: [
        { underHours: 72, percent: '25' },
        { underHours: 72, percent: '10' },
      ],
    },
    'rush',
  ],
  [
    {
      rush: [
        { underHours: 72, percent: '10' },
        { underHours: 168, percent: '25' },
      ],
    },
    'rush',
  ],
  [
    {
      terms: {
        ...card().terms,
        cancellation: [
          { underHours: 48, percent: '50' },
          { underHours: 96, percent: '100' },
        ],
      },
    },
    'terms.cancellation',
  ],
  [{ halfUpToHours: '0' }, 'halfUpToHours'],
])('less notice costs no less, and a half day has a length: %j', (changes, field) => expect(troubled(changes)).toEqual([field]));

describe('which card', () => {
  const cards = [
    card({ name: 'old', validFrom: '2025-01-01' }),
    card({ name: 'new', validFrom: '2027-01-01' }),
    card({ name: 'summer', validFrom: '2026-06-01', validTo: '2026-08-31' }),
    card({ name: 'mixing', role: 'vision mixing', validFrom: '2024-01-01', validTo: '2024-12-31' }),
  ];
  const chosen = (role: Role, date: string) => chooseCard(cards, role, date);
  test.each([
    ['2026-05-31', 'old'],
    ['2026-06-01', 'summer'],
    ['2026-08-31', 'summer'],
    ['2026-09-01', 'old'],
    ['2027-01-01', 'new'],
  ])('a job on %s takes "%s"', (date, name) => expect(chosen('shoot', date)).toMatchObject({ card: { name }, caution: null }));
  test('before the first, the nearest, with a caution', () =>
    expect(chosen('shoot', '2024-06-01')).toMatchObject({
      card: { name: 'old' },
      caution: expect.stringContaining('valid from 2025-01-01'),
    }));
  test('after the last has ended, that one, with a caution', () =>
    expect(chosen('vision mixing', '2026-01-01')).toMatchObject({
      card: { name: 'mixing' },
      caution: expect.stringContaining('to 2024-12-31'),
    }));
  test('of another role, with a caution; shooting before others', () => {
    const mixing = card({ name: 'mixing now', role: 'vision mixing', validFrom: '2026-01-01' });
    expect(chooseCard([mixing, card({ name: 'shooting', validFrom: '2025-01-01' })], 'second camera', '2026-07-01')?.card.name).toBe(
      'shooting',
    );
  });
  test('of another role, with a caution', () =>
    expect(chosen('audio', '2026-07-01')).toMatchObject({
      card: { name: 'summer' },
      caution: 'There is no rate card for audio; "summer" is used, which is for shoot.',
    }));
  test('none where there is none', () => expect(chooseCard([], 'shoot', '2026-01-01')).toBeUndefined());
});

test('a preview in one sentence', () => {
  const row = (before: number, after: number) =>
    previewRow({ jobId: 'x', title: 'x', number: 1 }, money(before, 'USD'), money(after, 'USD'));
  expect(previewSentence([], 'USD')).toBe('No quote was made from this card yet.');
  expect(previewSentence([row(100_000, 110_000), row(100_000, 95_000)], 'USD')).toBe(
    'The last 2 quotes would come to USD 50.00 more together.',
  );
  expect(previewSentence([row(100_000, 90_000)], 'USD')).toBe('The last quote would come to USD 100.00 less together.');
  expect(previewSentence([row(100_000, 100_000)], 'USD')).toBe('The last quote would come to the same together.');
});

test('quotes of another currency stand apart and are never summed', () => {
  expect(whyApart('USD', 'USD', 'USD')).toBeNull();
  expect(whyApart('USD', 'USD', 'EUR')).toBe('It was made in USD, and the card would be in EUR.');
  expect(whyApart('EUR', 'USD', 'USD')).toBe('It was made in EUR, and the card is in USD now.');
  const row = previewRow({ jobId: 'a', title: 'A', number: 1 }, { minor: 100_000, currency: 'USD' }, { minor: 110_000, currency: 'USD' });
  const apart = { jobId: 'b', title: 'B', number: 1, why: 'It was made in EUR, and the card is in USD now.' };
  expect(previewSentence([row], 'USD', [apart])).toBe('The last quote would come to USD 100.00 more together. 1 quote cannot be compared.');
  expect(previewSentence([], 'USD', [apart])).toBe('The last quote cannot be compared.');
  expect(previewSentence([], 'USD', [apart, apart])).toBe('None of the last 2 quotes can be compared.');
});
