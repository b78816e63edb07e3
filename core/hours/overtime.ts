/**
 * Overtime as it was worked, against what was agreed in the quote and what was approved on site.
 */
import type { OvertimeAsk } from '../contract/hours.ts';
import { paidDates } from '../days/dates.ts';
import { billedKind, workedMs, type DayTerms, type WorkedDay } from '../days/pay.ts';
import type { BookDay } from '../fit/book.ts';
import { exact } from '../money/exact.ts';
import { formatNumber } from '../money/format.ts';
import { epochOf, wallAt } from '../time/read.ts';
import { lengthInWords } from '../words/amounts.ts';
import { dateInWords } from '../words/dates.ts';
import { joined } from '../words/lists.ts';

const MINUTE = 60_000;

/** Minutes past the day length on one date: how many the quote held, how many were approved, how many nobody agreed to. */
export type Overtime = { date: string; over: number; quoted: number; approved: number; open: number; sentence: string };

type Facts = {
  /** As they were worked, and as they were planned in the quote. */
  actual: readonly BookDay[];
  planned: readonly BookDay[];
  asks: readonly OvertimeAsk[];
  terms: DayTerms;
  /** Zone of the place. */
  zone: string;
};

/** Every date with overtime. Approvals count by date; what the quote held already needs none. */
export function overtimeOf({ actual, planned, asks, terms, zone }: Facts): Overtime[] {
  const before = new Map(paidDates(planned).map((day) => [day.date, overMinutes(day, terms, zone)]));
  return paidDates(actual).flatMap((day) => {
    const over = overMinutes(day, terms, zone);
    if (over === 0) return [];
    const quoted = Math.min(over, before.get(day.date) ?? 0);
    const said = asks.filter((ask) => ask.date === day.date);
    const granted = said.filter(({ state }) => state === 'approved').reduce((sum, { minutes }) => sum + minutes, 0);
    const approved = Math.min(over - quoted, granted);
    const open = over - quoted - approved;
    const parts = [
      `${lengthInWords(over)} past the ${formatNumber(terms.dayHours)} h day`,
      quoted > 0 ? `${lengthInWords(quoted)} stood in the quote` : '',
      ...(over > quoted ? said.map((ask) => askInWords(ask, zone)) : []),
      open > 0 ? `${lengthInWords(open)} not approved: ask before billing` : '',
    ].filter((part) => part !== '');
    return [{ date: day.date, over, quoted, approved, open, sentence: `${dateInWords(day.date)}: ${parts.join('; ')}.` }];
  });
}

/** "2 h approved by Ana Voss at 18:10, by word of mouth"; with the date where it was said on another. */
export function askInWords({ date, minutes, state, who, at, how }: OvertimeAsk, zone: string): string {
  if (at === null) return `${lengthInWords(minutes)} asked, no answer yet`;
  const wall = wallAt(epochOf(at), zone);
  const when = wall.slice(0, 10) === date ? `at ${wall.slice(11)}` : `on ${dateInWords(wall.slice(0, 10))} at ${wall.slice(11)}`;
  return [`${lengthInWords(minutes)} ${state} by ${who} ${when}`, how].filter((part) => part !== '').join(', ');
}

/** Minutes past the day length, nothing within the grace; a half day that overran is a day. */
function overMinutes(day: BookDay, terms: DayTerms, zone: string): number {
  if (day.kind === 'edit' || day.kind === 'travel') return 0;
  const worked: WorkedDay = { unpaidBreakMinutes: 0, zone, holiday: false, ...day, kind: day.kind };
  if (billedKind(worked, terms) === 'half') return 0;
  const over = Math.ceil((workedMs(worked) - Math.round(exact(terms.dayHours).mul(3_600_000n).valueOf())) / MINUTE);
  return over > terms.graceMinutes ? over : 0;
}

/** What is open, as cautions: nothing where all of it was agreed to. */
export function overtimeCautions(overtime: readonly Overtime[], approver: string): string[] {
  return overtime
    .filter(({ open }) => open > 0)
    .map(({ date, open }) => {
      const whom = joined([approver].filter((name) => name !== ''));
      return `${dateInWords(date)}: ${lengthInWords(open)} of overtime is not approved. Ask ${whom === '' ? 'whoever may approve it' : whom} before billing, and note who said yes, when and how.`;
    });
}
