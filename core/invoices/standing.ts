/**
 * Where an issued invoice stands as of a date: what was paid, credited and written off, what is open, and the word for it.
 * The paper itself never changes; all of this is derived from what came after it.
 */
import { compare, negate, subtract, sum, zero, type Money } from '../money/money.ts';
import { daysPastDue } from './ageing.ts';

type InvoiceState = 'open' | 'part paid' | 'paid' | 'late' | 'disputed' | 'credited' | 'written off';

/** What happened to an invoice; amounts are in its currency. A refund is a payment below zero, a credit note has the sign of its paper. */
export type InvoiceEvent<C extends string = string> =
  | { kind: 'paid'; on: string; amount: Money<C> }
  | { kind: 'credited'; on: string; amount: Money<C> }
  | { kind: 'written off'; on: string }
  | { kind: 'disputed' | 'settled'; on: string };

export type Standing<C extends string = string> = {
  state: InvoiceState;
  paid: Money<C>;
  credited: Money<C>;
  writtenOff: Money<C>;
  /** Never below zero. */
  open: Money<C>;
  /** What was paid or credited past the paper's sum: the client has it as credit. */
  over: Money<C>;
  daysLate: number;
};

/**
 * An invoice as of a date; what came after that date does not count. Money that comes after a write-off reverses it by as much.
 * @param toPay what the paper asks for, in its currency
 */
export function standingOf<C extends string>(
  toPay: Money<C>,
  dueDate: string,
  events: readonly InvoiceEvent<NoInfer<C>>[],
  asOf: string,
): Standing<C> {
  const { currency } = toPay;
  const until = events.filter((event) => event.on <= asOf);
  const amounts = (kind: 'paid' | 'credited') =>
    sum(
      currency,
      until.flatMap((event) => (event.kind === kind ? [event.amount] : [])),
    );
  const paid = amounts('paid');
  const credited = negate(amounts('credited'));
  const left = subtract(subtract(toPay, paid), credited);
  const none = zero(currency);
  const given = until.some(({ kind }) => kind === 'written off') && left.minor > 0;
  const open = given || left.minor < 0 ? none : left;
  const daysLate = open.minor > 0 ? Math.max(0, daysPastDue(dueDate, asOf)) : 0;
  return {
    state: stateOf({ toPay, paid, credited, given, open, daysLate, disputed: isDisputed(until) }),
    paid,
    credited,
    writtenOff: given ? left : none,
    open,
    over: left.minor < 0 ? negate(left) : none,
    daysLate,
  };
}

function isDisputed(events: readonly InvoiceEvent[]): boolean {
  const last = events
    .filter(({ kind }) => kind === 'disputed' || kind === 'settled')
    .toSorted((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0));
  return last.at(-1)?.kind === 'disputed';
}

type Facts = { toPay: Money; paid: Money; credited: Money; given: boolean; open: Money; daysLate: number; disputed: boolean };

function stateOf({ toPay, paid, credited, given, open, daysLate, disputed }: Facts): InvoiceState {
  if (given) return 'written off';
  if (open.minor === 0) return toPay.minor > 0 && compare(credited, toPay) >= 0 ? 'credited' : 'paid';
  if (disputed) return 'disputed';
  if (daysLate > 0) return 'late';
  return paid.minor > 0 ? 'part paid' : 'open';
}
