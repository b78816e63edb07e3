/**
 * A made version gives the same bytes from one release to the next: what clients have in hand can be written again.
 */
import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { quotePaper } from '../../electron/papers/quote.ts';
import { curlingQuote, longQuote } from './sample.ts';

const curling = curlingQuote();

// SHA-256 of the papers as they were before they shared their blocks with invoices.
test.each([
  ['a quote of one page', curling, '557029037fddd822ff148313d6f987967c663d2b5db22a42aa29226e48d4946f'],
  ['a quote of 400 lines', longQuote(400), 'cb966ec8040271f5b403ab64b77ddfc16edb196b028c5dcb04f05e9fc8d024d7'],
  [
    'on Letter, with an accent',
    { ...curling, setup: { ...curling.setup, paper: 'Letter' as const, accent: '#2f5877' } },
    '292630f980112ef0514ac16b6e9ee99fcf7437fca5a760cecd5b86b7945c8356',
  ],
])('%s', async (_, input, hash) =>
  expect(
    createHash('sha256')
      .update(await quotePaper(input))
      .digest('hex'),
  ).toBe(hash),
);
