/**
 * The money of many countries as people write it, and which one is meant where a sign has several.
 */
import { describe, expect, test } from 'vitest';
import { currencyCodes } from '../../../core/money/currencies.ts';
import { facts } from './reading.ts';

const offered = (offer: string): string => `Could you film our gala in Fargo on 12 December? ${offer}`;

describe('signs and words', () => {
  test.each([
    ['Our budget is GH₵14,000 for the job.', 14_000, 'GHS'],
    ['Our budget is ₦900,000 for the job.', 900_000, 'NGN'],
    ['Our budget is KSh 80,000 for the job.', 80_000, 'KES'],
    ['Our budget is 4 500 zł for the job.', 4500, 'PLN'],
    ['Our budget is CAD$1,200 for the job.', 1200, 'CAD'],
    ['Our budget is ₱45,000 for the job.', 45_000, 'PHP'],
    ['Our budget is 900 Stutz for the job.', 900, 'CHF'],
    ['Our budget is $2,000 for the job (Canadian dollars, not American).', 2000, 'CAD'],
    ['Our budget is $2,000 for the job.', 2000, 'USD'],
  ] as const)('%s', (offer, amount, currency) => {
    const { budget } = facts(offered(offer), undefined, 'duluth');
    expect(budget).toEqual({ amount, currency, per: 'job' });
    expect(currencyCodes).toContain(currency);
  });
});

test('a word of two countries is that of the place', () => {
  const { budget } = facts('Could you film our gala in Dubai on 12 December? Our budget is Dhs 12,000 for the job.');
  expect(budget).toEqual({ amount: 12_000, currency: 'AED', per: 'job' });
});

describe('no offer', () => {
  test.each(['We have ordered the transfer of $1,320 for your last invoice.', 'Tickets are $30 each so $300 has been raised.'])(
    '%s',
    (words) => expect(facts(offered(words)).budget).toBeUndefined(),
  );
});
