/**
 * Several offers on one paper and in one reply.
 */
import { expect, test } from 'vitest';
import type { QuoteDraft } from '../../core/contract/quotes.ts';
import { quotePaperContent } from '../../core/quotes/paper.ts';
import { replyFor } from '../../core/quotes/reply.ts';
import { toneOf } from '../../core/quotes/tone.ts';
import { typedTexts } from '../../core/quotes/typed.ts';
import { extra, quoteOf } from '../core/quotes/facts.ts';
import { curlingQuote } from './sample.ts';

const draft: QuoteDraft = quoteOf({
  changes: [
    { op: 'offers', names: ['Plain', 'With a crane'] },
    { op: 'add', section: 'kit', what: 'Crane', quantity: '2', unit: 'days', unitPrice: '400', offer: 2 },
    extra('59'),
  ],
});
const input = { ...curlingQuote(), draft };

test('each offer is printed whole, under its number and name', () => {
  const content = quotePaperContent(input);
  expect(content.sections.map((section) => section.head)).toEqual([
    'Offer 1',
    'Days',
    'Licences and extras',
    'Offer 2',
    'Days',
    'Kit',
    'Licences and extras',
  ]);
  expect(content.sections.filter((section) => section.head.startsWith('Offer')).map((section) => section.rows[0]?.what)).toEqual([
    'Plain',
    'With a crane',
  ]);
  expect(content.sums.filter((one) => one.weight === 'total').map((one) => [one.label, one.amount])).toEqual([
    ['Total USD, offer 1', '2,059.00'],
    ['Total USD, offer 2', '2,859.00'],
  ]);
  expect(content.sign).toMatchObject({
    sentence: expect.stringContaining('for the offer named below'),
    fields: ['Offer taken', expect.anything(), expect.anything(), expect.anything(), expect.anything()],
  });
});

test('a letter that cannot be drawn is looked for in every offer', () => {
  expect(typedTexts(input).map((text) => text.text)).toEqual(expect.arrayContaining(['Crane days', 'With a crane']));
});

test('the reply lists them', () => {
  const { text } = replyFor({
    setup: input.setup,
    job: input.job,
    draft,
    number: 1,
    pencil: null,
    questions: [],
    payer: null,
    tone: toneOf('', ''),
  });
  expect(text).toContain('There are 2 offers to choose from:\n- 1. Plain: USD 2,059.00\n- 2. With a crane: USD 2,859.00');
});
