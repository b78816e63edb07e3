/**
 * The section "days": paid dates by kind, overtime that is planned, uplifts, and forced calls.
 */
import type { Role } from '../contract/parts.ts';
import { paidDates } from '../days/dates.ts';
import { billedKind, payOfDay, percentOfKind, type DayTerms, type PayPart, type WorkedDay } from '../days/pay.ts';
import { forcedCall } from '../days/turnaround.ts';
import type { BookDay } from '../fit/book.ts';
import { exact } from '../money/exact.ts';
import { formatNumber } from '../money/format.ts';
import { datesInWords } from '../words/dates.ts';
import { plural, slug, withOwnIds, type PricedLine } from './line.ts';

export type DaysInput = { days: readonly BookDay[]; zone: string; role: Role; terms: DayTerms; holidays: ReadonlyMap<string, string> };
export type PricedDays = { lines: PricedLine[]; cautions: string[]; worked: WorkedDay[] };

const work: Record<Role, string> = {
  shoot: 'Shooting',
  'second camera': 'Second camera',
  'vision mixing': 'Vision mixing',
  livestream: 'Livestream',
  'edit only': 'Editing on site',
  photo: 'Photography',
  audio: 'Sound',
  other: 'Work on site',
};

/** The dates of a job as days to be paid; breaks that are not paid are known once they were worked. */
function workedDays({ days, zone, holidays }: Pick<DaysInput, 'days' | 'zone' | 'holidays'>): WorkedDay[] {
  return paidDates(days).flatMap((day) =>
    day.kind === 'edit'
      ? []
      : [
          {
            date: day.date,
            kind: day.kind,
            callAt: day.callAt,
            wrapAt: day.wrapAt,
            unpaidBreakMinutes: day.unpaidBreakMinutes ?? 0,
            zone: day.zone ?? zone,
            holiday: holidays.has(day.date),
          },
        ],
  );
}

/** Lines for the dates of a job. Days whose price comes about in the same way stand on one line. */
export function dayLines(input: DaysInput): PricedDays {
  const worked = workedDays(input);
  const byKey = Map.groupBy(
    worked.flatMap((day) =>
      payOfDay(day, input.terms).map((part) => ({ date: day.date, part: named(part, input.holidays.get(day.date)) })),
    ),
    ({ part }) => `${part.key} ${part.unitPrice.toFraction()}`,
  );
  const lines = [...byKey.values()].flatMap(([first, ...more]) => (first ? [lineOf([first, ...more], input)] : []));
  const forced = forcedCalls(worked, input);
  return {
    lines: [...withOwnIds(lines).toSorted((a, b) => orderOf(a.id) - orderOf(b.id)), ...forced.lines],
    cautions: forced.cautions,
    worked,
  };
}

/** An uplift for a holiday says which one. */
function named(part: PayPart, holiday: string | undefined): PayPart {
  return holiday && part.key === 'holiday uplift' ? { ...part, reason: `${holiday}. ${part.reason}` } : part;
}

type Entry = { date: string; part: PayPart };

function lineOf(entries: readonly [Entry, ...Entry[]], { role, terms }: DaysInput): PricedLine {
  const { part } = entries[0];
  const quantity = entries.reduce((sum, entry) => sum.add(entry.part.quantity), exact(0));
  return {
    id: `days/${slug(part.key)}`,
    section: 'days',
    what: whatOf(part, role, terms),
    quantity,
    unit: unitOf(part, quantity),
    unitPrice: part.unitPrice,
    reason: reasonOf(entries),
    estimated: part.sort === 'overtime',
    changed: false,
  };
}

function whatOf(part: PayPart, role: Role, terms: DayTerms): string {
  if (part.key === 'shoot') return work[role];
  if (part.key === 'half') return `${work[role]}, half day`;
  if (part.sort === 'base') return `${sentence(part.what)} at ${formatNumber(percentOfKind(part.key as WorkedDay['kind'], terms))} %`;
  return sentence(part.what);
}

function unitOf(part: PayPart, quantity: PricedLine['quantity']): string {
  return plural(quantity, part.key === 'half' ? 'half day' : part.unit);
}

function reasonOf(entries: readonly Entry[]): string {
  const byReason = Map.groupBy(entries, (entry) => entry.part.reason);
  return [...byReason].map(([reason, same]) => `${datesInWords(same.map((entry) => entry.date))}: ${reason}`).join(' ');
}

function forcedCalls(worked: readonly WorkedDay[], { terms }: DaysInput): { lines: PricedLine[]; cautions: string[] } {
  const onSite = worked.filter((day) => day.kind !== 'travel');
  const forced = onSite.flatMap((day, order) => {
    const next = onSite[order + 1];
    const found = next && forcedCall(day.wrapAt, next.callAt, terms);
    return found ? [{ ...found, date: next.date }] : [];
  });
  const first = forced[0];
  if (!first) return { lines: [], cautions: [] };
  const cautions = forced.map((call) => `${datesInWords([call.date])}: ${call.caution}`);
  if (exact(terms.forcedTimes).equals(0)) return { lines: [], cautions };
  const quantity = forced.reduce((sum, call) => sum.add(call.quantity), exact(0));
  const line: PricedLine = {
    id: 'days/forced-call',
    section: 'days',
    what: 'Forced call, short turnaround',
    quantity,
    unit: plural(quantity, 'hour'),
    unitPrice: first.unitPrice,
    reason: forced.map((call) => `${datesInWords([call.date])}: ${call.reason}`).join(' '),
    estimated: true,
    changed: false,
  };
  return { lines: [line], cautions };
}

const ORDER = ['days/shoot', 'days/half', 'days/prep', 'days/standby', 'days/travel', 'days/overtime', 'days/'];

/** Base days first, dearest kind first, then overtime, then uplifts. */
function orderOf(id: string): number {
  return ORDER.findIndex((prefix) => id.startsWith(prefix));
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** How many dates use the kit: those billed as a shoot or half day. */
export function kitDays(worked: readonly WorkedDay[], terms: DayTerms): number {
  return worked.filter((day) => ['shoot', 'half'].includes(billedKind(day, terms))).length;
}
