/** An expense as it is typed: amounts and rates as text, a rate only where the currency is another than the job's. */
import type { Trouble } from '../../../core/contract/base.ts';
import type { Expense, ExpenseFields } from '../../../core/contract/expenses.ts';
import { exponentOf, isCurrency } from '../../../core/money/currencies.ts';
import { fixedText } from '../../../core/money/exact.ts';
import { amountOf, majorOf } from '../../../core/money/money.ts';
import { parseAmount, parseNumber } from '../../../core/money/parse.ts';
import { Reader } from '../../parts/reader.ts';

export type TypedExpense = {
  on: string;
  category: ExpenseFields['category'];
  what: string;
  amount: string;
  currency: string;
  rate: string;
  rateDate: string;
  markUp: string;
  billed: boolean;
  taxed: boolean;
  untaxed: string;
};

export const typedExpense = (expense: Expense): TypedExpense => ({
  on: expense.on,
  category: expense.category,
  what: expense.what,
  amount: fixedText(majorOf(expense.amount), exponentOf(expense.amount.currency)),
  currency: expense.amount.currency,
  rate: expense.rate?.rate ?? '',
  rateDate: expense.rate?.date ?? expense.on,
  markUp: expense.markUpPercent === '0' ? '' : expense.markUpPercent,
  billed: expense.billed,
  taxed: expense.untaxed === null,
  untaxed: expense.untaxed ?? '',
});

/** An expense that is still to be typed. @param on date, @param currency of the job */
export const blankExpense = (on: string, currency: string): TypedExpense => ({
  on,
  category: 'travel',
  what: '',
  amount: '',
  currency,
  rate: '',
  rateDate: on,
  markUp: '',
  billed: true,
  taxed: true,
  untaxed: '',
});

/** What a save takes of an expense that is kept. */
export function expenseFields({ jobId, on, category, what, amount, rate, markUpPercent, billed, untaxed }: Expense): ExpenseFields {
  return { jobId, on, category, what, amount, rate, markUpPercent, billed, untaxed };
}

/** The fields to save, or the trouble that names what cannot be read. @param jobCurrency in which no rate is needed */
export function readExpense(typed: TypedExpense, jobId: string, jobCurrency: string): { fields: ExpenseFields } | { trouble: Trouble } {
  const reader = new Reader();
  const currency = typed.currency.trim().toUpperCase();
  const known = isCurrency(currency);
  if (!known) reader.refuse('currency', 'is not an ISO 4217 currency; write it as USD');
  if (typed.on === '') reader.refuse('on', 'is not given');
  if (typed.what.trim() === '') reader.refuse('what', 'is empty; say what it was');
  const amount = reader.take('amount', parseAmount(typed.amount, known ? exponentOf(currency) : 2));
  const foreign = known && currency !== jobCurrency && typed.rate.trim() !== '';
  const rate = foreign ? reader.take('rate', parseNumber(typed.rate)) : undefined;
  if (foreign && typed.rateDate === '') reader.refuse('rateDate', 'is not given');
  const markUp = typed.markUp.trim() === '' ? '0' : reader.take('markUp', parseNumber(typed.markUp));
  if (reader.trouble) return { trouble: reader.trouble };
  return {
    fields: {
      jobId,
      on: typed.on,
      category: typed.category,
      what: typed.what,
      amount: amountOf(amount ?? '0', currency),
      rate: rate === undefined ? null : { rate, date: typed.rateDate },
      markUpPercent: typed.billed ? (markUp ?? '0') : '0',
      billed: typed.billed,
      untaxed: typed.billed && !typed.taxed ? typed.untaxed : null,
    },
  };
}
