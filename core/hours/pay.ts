/**
 * What my finished hours come to by the card that was agreed on, before rush, discount and tax.
 */
import type { Role } from '../contract/parts.ts';
import type { RateCard } from '../contract/rates.ts';
import type { BookDay } from '../fit/book.ts';
import { sum, type Money } from '../money/money.ts';
import { decimalText } from '../money/exact.ts';
import { dayLines } from '../quotes/days.ts';
import { editingLine } from '../quotes/editing.ts';
import { amountOfLine } from '../quotes/line.ts';

type PayLine = { what: string; quantity: string; unit: string; amount: Money; reason: string };
type HoursPriced = {
  /** My finished hours. */
  days: readonly BookDay[];
  zone: string;
  role: Role;
  card: RateCard;
  /** Dates that count as public holidays, as they were frozen. */
  holidays: readonly string[];
};

/** Lines with their reasons, what they add up to, and cautions on forced calls. */
export function hoursPay({ days, zone, role, card, holidays }: HoursPriced): { lines: PayLine[]; total: Money; cautions: string[] } {
  const priced = dayLines({ days, zone, role, terms: card, holidays: new Map(holidays.map((date) => [date, ''])) });
  const all = [...priced.lines, ...editingLine(days, card)];
  const lines = all.map((line) => ({
    what: line.what,
    quantity: decimalText(line.quantity),
    unit: line.unit,
    amount: amountOfLine(line, card.currency),
    reason: line.reason,
  }));
  return {
    lines,
    total: sum(
      card.currency,
      lines.map(({ amount }) => amount),
    ),
    cautions: priced.cautions,
  };
}
