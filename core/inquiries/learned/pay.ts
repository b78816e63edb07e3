/**
 * Whether an offer is for a day, an hour or the whole job, held against what the learned weights make of the words around it.
 */
import type { Budget } from '../../contract/inquiries.ts';
import type { Amount } from '../money/units.ts';
import type { BudgetRead } from '../settle/budget.ts';
import { around, type Page } from './features.ts';
import { chancesIn, type Learned } from './models.ts';

/** A unit below this chance is asked about beside one from there on. */
const HARDLY = 0.07;
const RIVAL = 0.6;
/** An offer that says no unit. */
export const NO_UNIT = 'open';

/** Of one amount of a message: the words around it, and how many amounts and days there are. */
export function payFeatures(page: Page, amount: Amount): Set<string> {
  const { amounts, dates } = page.scene;
  const days = new Set(dates.filter(({ past, said }) => !past && said !== 'reply').flatMap(({ readings }) => readings[0] ?? [])).size;
  return new Set([
    ...around(page, amount),
    amount.mark === undefined ? 'bare' : 'marked',
    `p:${amount.per}`,
    `i:${Math.min(amounts.indexOf(amount), 3)}`,
    `n:${Math.min(amounts.length, 5)}`,
    `size:${Math.floor(Math.log2(amount.amount + 1))}`,
    `days:${Math.min(days, 4)}`,
  ]);
}

/** The offer that rules found, asked about where the weights plainly speak for another unit. */
export function agreedPay(read: BudgetRead, page: Page, learned: Learned): BudgetRead {
  const { budget, where } = read;
  const amount = budget && page.scene.amounts.find(({ start }) => start === where[0]?.start);
  if (!budget || read.ask || !amount) return read;
  // "Tageshonorar", "hour rate": a day or an hour is never taken for granted, words name it.
  if (budget.per !== 'job' && amount.per === undefined) return read;
  // "$450 a shift" of a job of one day is paid for all of it.
  if (budget.per === 'job' && amount.per === 'night') return read;
  const chances = chancesIn(learned.pay, payFeatures(page, amount));
  const [best] = Object.entries(chances).toSorted(([, a], [, b]) => b - a);
  if (!best || best[1] < RIVAL || (chances[budget.per ?? NO_UNIT] ?? 0) >= HARDLY) return read;
  const { per: _, ...bare } = budget;
  const other = best[0] === NO_UNIT ? bare : { ...bare, per: best[0] as NonNullable<Budget['per']> };
  return { where, choices: [budget, other], ask: 'per' };
}
