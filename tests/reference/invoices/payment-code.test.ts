/**
 * Payment codes: what they say, and what a decoder that knows nothing of how they were made reads in them.
 * @source European Payments Council, EPC069-12 version 2.1, Quick Response Code: Guidelines to Enable Data Capture for the Initiation of a SEPA Credit Transfer, section 2 and data elements, 9 February 2012; ISO/IEC 18004
 */
import { fc, test as law } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { paymentCode } from '../../../core/invoices/payment-code.ts';
import { paymentSquares } from '../../../electron/papers/payment-squares.ts';
import { readSquares } from '../../papers/decode.ts';

const payTo = { name: 'Northlight Pictures', iban: 'BE68 5390 0754 7034', bic: '', words: '' };
const euro = (minor: number) => ({ minor, currency: 'EUR' });

/** Elements of the guideline by line, as a reader takes them apart. */
function elements(text: string) {
  const [tag, version, characters, kind, bic, name, iban, amount, purpose, structured, words, ...more] = text.split('\n');
  return { tag, version, characters, kind, bic, name, iban, amount, purpose, structured, words, more };
}

describe('the data elements', () => {
  test('service tag, version 002, UTF-8, SCT, name, account, amount in euro, words', () => {
    const text = paymentCode(payTo, euro(85_000), 'Invoice 2026-031') ?? '';
    expect(elements(text)).toEqual({
      tag: 'BCD',
      version: '002',
      characters: '1',
      kind: 'SCT',
      bic: '',
      name: 'Northlight Pictures',
      iban: 'BE68539007547034',
      amount: 'EUR850.00',
      purpose: '',
      structured: '',
      words: 'Invoice 2026-031',
      more: [],
    });
  });
  test('an account outside the Economic Area needs its bank, and says so by version 001', () => {
    const swiss = { ...payTo, iban: 'CH93 0076 2011 6238 5295 7' };
    expect(paymentCode(swiss, euro(100), 'x')).toBeNull();
    expect(elements(paymentCode({ ...swiss, bic: 'abcdchzz' }, euro(100), 'x') ?? '')).toMatchObject({ version: '001', bic: 'ABCDCHZZ' });
  });
  test.each([
    ['0.01, the least', 1, 'EUR0.01'],
    ['999,999,999.99, the most', 99_999_999_999, 'EUR999999999.99'],
  ])('%s', (_, minor, amount) => expect(elements(paymentCode(payTo, euro(minor), 'x') ?? '').amount).toBe(amount));
  test.each([
    ['nothing', euro(0)],
    ['less than nothing', euro(-100)],
    ['a billion', euro(100_000_000_000)],
    ['another currency', { minor: 100, currency: 'GBP' }],
  ])('%s has no code', (_, amount) => expect(paymentCode(payTo, amount, 'x')).toBeNull());
  test.each([
    ['an account that is wrong by a figure', { iban: 'BE68 5390 0754 7035' }],
    ['an account that such transfers do not reach', { iban: 'BR18 0036 0305 0000 1000 9795 493C 1', bic: 'ABCDBRZZ' }],
    ['no name', { name: '  ' }],
    ['a bank that is none', { bic: '12' }],
  ])('%s has no code', (_, changed) => expect(paymentCode({ ...payTo, ...changed }, euro(100), 'x')).toBeNull());
  test('a name is cut to 70 letters, the words to 140', () => {
    const text = paymentCode({ ...payTo, name: 'é'.repeat(80) }, euro(1), 'w'.repeat(200)) ?? '';
    expect(elements(text)).toMatchObject({ name: 'é'.repeat(70), words: 'w'.repeat(140) });
  });
  test('more than 331 bytes have no code', () => expect(paymentCode(payTo, euro(1), '面'.repeat(140))).toBeNull());
});

describe('read back by the decoder', () => {
  law.prop([
    fc.string({ minLength: 1, maxLength: 90, unit: 'grapheme' }),
    fc.constantFrom('BE68539007547034', 'DE89370400440532013000', 'FR1420041010050500013M02606', 'MT84MALT011000012345MTLCAST001S'),
    fc.integer({ min: 1, max: 99_999_999_999 }),
    fc.string({ maxLength: 160 }),
  ])('every code says what was put in, in no more than version 13', (name, iban, minor, words) => {
    const text = paymentCode({ ...payTo, name, iban }, euro(minor), words);
    fc.pre(text !== null);
    const read = readSquares(paymentSquares(text));
    expect(read?.text).toBe(text);
    expect(read?.version).toBeLessThanOrEqual(13);
  });
});
