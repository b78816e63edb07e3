/**
 * This month's figures: what stands in ink and in live pencil, by the date of first call at home.
 */
import type { Money } from '../contract/parts.ts';
import { stateOf } from '../jobs/state.ts';
import type { Sum } from '../ledger/sums.ts';
import { sum } from '../money/money.ts';
import { wallAt } from '../time/read.ts';
import { countInWords } from '../words/amounts.ts';
import type { DeskJob } from './clocks.ts';

const MONTHS = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'];

/** What is owed to me today, and what the last billed jobs kept per hour away together. */
export type MonthMoney = { owed: { open: Sum; late: Sum }; perHour: { jobs: number; perHour: Money } | null };
export type MonthFigures = { label: string; inked: Money; pencilled: Money };

/** Gross of the newest quotes, in the home currency only; the label says how many jobs in other currencies are left out. */
export function monthOf(jobs: readonly DeskJob[], now: number, home: { zone: string; currency: string }): MonthFigures {
  const month = wallAt(now, home.zone).slice(0, 7);
  const quoted = jobs.flatMap(({ days, total, stage, heldUntil }) => {
    const first = days[0];
    const state = stateOf(stage, heldUntil, now);
    const counts = state === 'inked' || state === 'pencilled';
    return counts && total && first && wallAt(first.callAt, home.zone).startsWith(month) ? [{ state, total }] : [];
  });
  const own = quoted.filter(({ total }) => total.currency === home.currency);
  const others = quoted.length - own.length;
  const figure = (state: string) =>
    sum(
      home.currency,
      own.filter((job) => job.state === state).map((job) => job.total),
    );
  const name = `${MONTHS[Number(month.slice(5)) - 1]} ${month.slice(0, 4)}`;
  return {
    label: others === 0 ? name : `${name}, ${countInWords(others, 'job')} in other currencies left out`,
    inked: figure('inked'),
    pencilled: figure('pencilled'),
  };
}
