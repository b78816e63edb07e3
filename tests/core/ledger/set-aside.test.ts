import { expect, test } from 'vitest';
import { setAsideOf } from '../../../core/ledger/set-aside.ts';
import { money } from '../../../core/money/money.ts';

const usd = (minor: number) => money(minor, 'USD');

test.each([
  [1_000_000, 250_000, '28', 750_000, 210_000, '10,000.00 received less 2,500.00 spent is 7,500.00; 28 % of it 2,100.00.'],
  [100_000, 250_000, '28', -150_000, 0, '1,000.00 received less 2,500.00 spent is -1,500.00; nothing is set aside of a loss.'],
  [100_000, 0, '0', 100_000, 0, '1,000.00 received less 0.00 spent is 1,000.00; no share is set aside in your year.'],
])('%i less %i at %s %%', (income, costs, percent, profit, amount, reason) => {
  expect(setAsideOf(usd(income), usd(costs), percent)).toEqual({
    profit: usd(profit),
    amount: usd(amount),
    reason: `${reason} An estimate, not tax advice.`,
  });
});
