/**
 * Hours as they were worked, overtime that was asked for, and what was paid to hands.
 */
import { asc, eq, isNull, and, sql } from 'drizzle-orm';
import type { OvertimeAsk, Worked, WorkedFields } from '../core/contract/hours.ts';
import type { DayKind } from '../core/contract/parts.ts';
import { whichOfTwo, type WorkedHours } from '../core/hours/worked.ts';
import type { HandPaid } from '../core/hours/dues.ts';
import { epochOf, instantText } from '../core/time/read.ts';
import { newId } from './ids.ts';
import { perStore } from './prepared.ts';
import { handPayments, overtimeAsks, workedDays } from './schema/hours.ts';
import { hands } from './schema/people.ts';
import type { ReadableDb, WritableDb } from './store.ts';

export type WorkedRow = WorkedHours & { id: string; version: number; jobId: string; note: string; handName: string };

const reading = perStore((db) => {
  const worked = () =>
    db.select({ row: workedDays, handName: hands.name }).from(workedDays).leftJoin(hands, eq(hands.id, workedDays.handId));
  const asks = () => db.select().from(overtimeAsks);
  return {
    worked: worked()
      .where(eq(workedDays.jobId, sql.placeholder('jobId')))
      .orderBy(asc(workedDays.callAt), asc(workedDays.id))
      .prepare(),
    one: worked()
      .where(eq(workedDays.id, sql.placeholder('id')))
      .prepare(),
    running: worked()
      .where(and(isNull(workedDays.wrapAt), isNull(workedDays.handId)))
      .orderBy(asc(workedDays.callAt))
      .prepare(),
    asks: asks()
      .where(eq(overtimeAsks.jobId, sql.placeholder('jobId')))
      .orderBy(asc(overtimeAsks.askedAt), asc(overtimeAsks.id))
      .prepare(),
    ask: asks()
      .where(eq(overtimeAsks.id, sql.placeholder('id')))
      .prepare(),
    paid: db
      .select()
      .from(handPayments)
      .where(eq(handPayments.jobId, sql.placeholder('jobId')))
      .orderBy(asc(handPayments.madeAt), asc(handPayments.id))
      .prepare(),
  };
});

type Joined = { row: typeof workedDays.$inferSelect; handName: string | null };

function rowOf({ row, handName }: Joined): WorkedRow {
  const { createdAt: _created, updatedAt: _updated, kind, ...rest } = row;
  return { ...rest, kind: kind as DayKind, handName: handName ?? '' };
}

/** The hours of a job, by call. */
export function workedOf(db: ReadableDb, jobId: string): WorkedRow[] {
  return reading(db).worked.all({ jobId }).map(rowOf);
}

export function workedById(db: ReadableDb, id: string): WorkedRow | undefined {
  const row = reading(db).one.get({ id });
  return row && rowOf(row);
}

/** Calls of mine that run, whatever the job, oldest first. */
export function runningCalls(db: ReadableDb): WorkedRow[] {
  return reading(db).running.all().map(rowOf);
}

/** Hours as the contract shows them. */
export function workedAsMet({ callAt, wrapAt, ...row }: WorkedRow): Worked {
  const callIs = whichOfTwo(row.call, row.zone, callAt);
  const wrapIs = row.wrap === null || wrapAt === null ? undefined : whichOfTwo(row.wrap, row.zone, wrapAt);
  return {
    ...row,
    callAt: instantText(callAt),
    wrapAt: wrapAt === null ? null : instantText(wrapAt),
    ...(callIs ? { callIs } : {}),
    ...(wrapIs ? { wrapIs } : {}),
  };
}

/** Save hours: new ones, or the next version of `before`. `now` in epoch milliseconds. */
export function keepWorked(
  db: WritableDb,
  jobId: string,
  before: WorkedRow | undefined,
  hours: WorkedHours & Pick<WorkedFields, 'note'>,
  now: number,
): string {
  const { handId, date, kind, zone, call, wrap, callAt, wrapAt, unpaidBreakMinutes, note } = hours;
  const kept = { jobId, handId, date, kind, zone, call, wrap, callAt, wrapAt, unpaidBreakMinutes, note, updatedAt: now };
  const id = before?.id ?? newId();
  if (before)
    db.update(workedDays)
      .set({ ...kept, version: before.version + 1 })
      .where(eq(workedDays.id, id))
      .run();
  else
    db.insert(workedDays)
      .values({ ...kept, id, createdAt: now })
      .run();
  return id;
}

export function dropWorked(db: WritableDb, id: string): void {
  db.delete(workedDays).where(eq(workedDays.id, id)).run();
}

const askOf = ({ at, askedAt, ...ask }: typeof overtimeAsks.$inferSelect): OvertimeAsk => ({
  ...ask,
  askedAt: instantText(askedAt),
  at: at === null ? null : instantText(at),
});

/** Overtime that was asked for on a job, in order of asking. */
export function asksOf(db: ReadableDb, jobId: string): OvertimeAsk[] {
  return reading(db).asks.all({ jobId }).map(askOf);
}

export function askById(db: ReadableDb, id: string): OvertimeAsk | undefined {
  const row = reading(db).ask.get({ id });
  return row && askOf(row);
}

/** Keep an ask, new or as it stands now. */
export function keepAsk(db: WritableDb, ask: Omit<OvertimeAsk, 'id'> & { id?: string }): string {
  const id = ask.id ?? newId();
  const row = { ...ask, id, askedAt: epochOf(ask.askedAt), at: ask.at === null ? null : epochOf(ask.at) };
  db.insert(overtimeAsks).values(row).onConflictDoUpdate({ target: overtimeAsks.id, set: row }).run();
  return id;
}

export function dropAsk(db: WritableDb, id: string): void {
  db.delete(overtimeAsks).where(eq(overtimeAsks.id, id)).run();
}

/** What was paid to hands for a job, in order of noting. */
export function handPaymentsOf(db: ReadableDb, jobId: string): HandPaid[] {
  return reading(db)
    .paid.all({ jobId })
    .map(({ handId, amountMinor, currency }) => ({ handId, amount: { minor: amountMinor, currency } }));
}

/** Note a payment to a hand; rows never change. `now` in epoch milliseconds. */
export function addHandPayment(db: WritableDb, jobId: string, paid: HandPaid & { on: string; how: string }, now: number): void {
  const { handId, amount, on, how } = paid;
  db.insert(handPayments)
    .values({ id: newId(), jobId, handId, amountMinor: amount.minor, currency: amount.currency, on, how, madeAt: now })
    .run();
}
