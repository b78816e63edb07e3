/**
 * A day of so many hours on a card, for checks against published terms.
 */
import { payOfDay, type DayTerms } from '../../../core/days/pay.ts';
import { defaultCard } from '../../../core/rates/defaults.ts';

const START = Temporal.Instant.from('2026-09-08T07:00:00Z').epochMilliseconds;

/** Minor units for a weekday of so many hours from call to wrap. */
export function payOfHours(hours: number, terms: Partial<DayTerms>, unpaidBreakMinutes = 0): number {
  const day = {
    date: '2026-09-08',
    kind: 'shoot',
    callAt: START,
    wrapAt: START + hours * 3_600_000,
    unpaidBreakMinutes,
    zone: 'UTC',
    holiday: false,
  } as const;
  const parts = payOfDay(day, { ...defaultCard('shoot', 'GBP', '2026-01-01'), ...terms });
  return parts.reduce((sum, part) => sum + part.amount.minor, 0);
}
