/**
 * What a job owes when it is called off, by the terms that were frozen into the version agreed on, else into the newest.
 */
import type { Job } from '../../core/contract/jobs.ts';
import type { Cancellation, QuoteDraft } from '../../core/contract/quotes.ts';
import { amountOf, sum, type Money } from '../../core/money/money.ts';
import { agreedDraft } from '../../core/quotes/agreed.ts';
import { cancellationOf, type CancelInput } from '../../core/quotes/cancellation.ts';
import { wallAt } from '../../core/time/read.ts';
import { invoicesAsOf } from '../../db/invoices.ts';
import { daysOf } from '../../db/job-days.ts';
import { versionsOf } from '../../db/quotes.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb } from '../../db/store.ts';
import { holidayDates } from './holidays.ts';
import { refused } from './trouble.ts';

/** Instants in epoch milliseconds; amounts in currency units of the quote. Without `depositPaid` the books say it. */
type Asked = Pick<CancelInput, 'at' | 'agreedAt'> & { bound?: string | undefined; depositPaid?: string | undefined };

/** @throws REFUSED without a made quote or my details */
export function owedBy(db: ReadableDb, job: Job, asked: Asked): { version: number; cancellation: Cancellation } {
  const { at, agreedAt, bound = '0', depositPaid } = asked;
  const made = versionsOf(db, job.id);
  const agreed = made.find((version) => version.number === job.ink?.quoteVersion) ?? made[0];
  const firstCallAt = daysOf(db, job.id)[0]?.callAt;
  if (!agreed || firstCallAt === undefined)
    throw refused(
      `${job.title} has no made quote.`,
      'A cancellation owes what the frozen quote says; without one, nothing is owed by its terms.',
    );
  const draft = agreedDraft(agreed.draft, job.ink?.offer ?? null);
  return {
    version: agreed.number,
    cancellation: cancellationOf({
      draft,
      firstCallAt,
      at,
      home: homeCalendar(db, draft, [at, firstCallAt]),
      agreedAt,
      bound: amountOf(bound, draft.currency),
      depositPaid: depositPaid === undefined ? paidBefore(db, job.id, draft.currency) : amountOf(depositPaid, draft.currency),
    }),
  };
}

/** Later than every date that can be typed: payments count whenever they came. */
const LAST = '9999-12-31';

/** What the books say was paid of deposits and instalments, in a currency. */
function paidBefore(db: ReadableDb, jobId: string, currency: string): Money {
  const parts = invoicesAsOf(db, LAST, { jobId }).filter(({ kind }) => kind === 'deposit' || kind === 'instalment');
  return sum(
    currency,
    parts.filter((part) => part.currency === currency).map(({ paid }) => paid),
  );
}

/** My home's clock, and its holidays where the terms count business days. */
function homeCalendar(db: ReadableDb, { terms }: QuoteDraft, between: readonly [number, number]): CancelInput['home'] {
  const home = setupRow(db)?.fields.home;
  if (!home) throw refused('My details are not set up.', 'Fill in Setup first: business days are counted at home.');
  const [from, to] = between.map((instant) => wallAt(instant, home.zone)) as [string, string];
  return { zone: home.zone, holidays: terms.cancelBy === 'business days' ? holidayDates(home, from, to) : new Set() };
}
