/**
 * One offer of a quote: the lines of card and trip, what was changed by hand, rush, discount, taxes, and what it is worth to me.
 */
import { sections, type QuoteDraft } from '../contract/quotes.ts';
import type { Terms } from '../contract/rates.ts';
import type { BookDay } from '../fit/book.ts';
import { exact } from '../money/exact.ts';
import { add, amountOf, subtract, sum, type Money } from '../money/money.ts';
import { epochOf } from '../time/read.ts';
import { baseLines } from './base.ts';
import { cancelSections } from './cancellation.ts';
import { cautionsOf, missingOf } from './cautions.ts';
import { arranged, foldChanges, overlay } from './changes.ts';
import { costsOfJob } from './costs.ts';
import { depositOf, endOfDay, validUntil } from './deadlines.ts';
import { discountedSections, discountLines, expenseSections } from './discount.ts';
import { pricedEdits } from './editing.ts';
import { amountOfLine, quoteLine, type PricedLine } from './line.ts';
import { countedHolidays, holidaysOn } from './holidays.ts';
import type { PriceInput } from './input.ts';
import { editRushLines, rushLine } from './rush.ts';
import { floorOf, scaleOf } from './scale.ts';
import { taxesOf, taxesOfLine } from './taxes.ts';
import { totalsOf } from './totals.ts';

export type PricedOffer = Pick<
  QuoteDraft,
  | 'lines'
  | 'dropped'
  | 'totals'
  | 'cancelBase'
  | 'deposit'
  | 'discount'
  | 'validUntil'
  | 'terms'
  | 'holidays'
  | 'publicHolidays'
  | 'scale'
  | 'costs'
  | 'cautions'
  | 'missing'
>;

/** Price one offer of a quote; a quote without offers is offer 1. */
export function priceOffer(input: PriceInput, offer: number): PricedOffer {
  const { card, setup, now } = input;
  const { currency } = card;
  const overrides = foldChanges(input.changes, offer);
  const terms: Terms = { ...card.terms, ...overrides.terms };
  const firstCallAt = input.agreedCallAt ?? firstCall(input.days);
  const home = setup.home.zone;

  const publicHolidays = holidaysOn(input.days, input.publicHolidays);
  const holidays = countedHolidays(publicHolidays, overrides.holidays);
  const base = baseLines(input, holidays);
  const beforeRush = overlay(base.lines, overrides, (section) => section !== 'rush' && section !== 'discount', currency);
  const ofDays = beforeRush.filter((line) => line.section === 'days').map((line) => amountOfLine(line, currency));
  const notice = firstCallAt === null ? Infinity : firstCallAt - epochOf(input.job.received.at);
  const edits = pricedEdits(input.job).flatMap(({ edit, id }) => {
    const line = beforeRush.find((each) => each.id === id);
    return line && edit.due ? [{ what: edit.what, amount: amountOfLine(line, currency), dueAt: endOfDay(edit.due, home) }] : [];
  });
  const rush = [
    ...rushLine(notice, card.rush, sum(currency, ofDays)),
    ...editRushLines(edits, epochOf(input.job.received.at), card.rush, currency),
  ];
  const withRush = [...beforeRush, ...overlay(rush, overrides, (section) => section === 'rush', currency)];
  const discounts = discountLines(overrides.discount, withRush, currency);
  const inSections = inOrder([...withRush, ...overlay(discounts, overrides, (section) => section === 'discount', currency)]);
  const lines = arranged(inSections, overrides.moves);

  const mine = taxesOf(setup);
  const taxed = lines.map((line) => ({ line, taxes: taxesOfLine(line.id, mine, overrides.taxes) }));
  const { totals, netOf } = totalsOf(taxed, setup.tax?.included ?? false, discountedSections(overrides.discount), currency);
  const due = depositOf(totals.gross, terms, now, firstCallAt, home);
  const mineOf = costsOfJob({
    overrides,
    hands: input.hands,
    wear: input.wear,
    role: input.job.role,
    dates: base.worked,
    kitDates: base.kitDates,
    currency,
  });
  const scale = scaleOf(
    {
      kept: subtract(totals.net, add(add(netOf(expenseSections), costsOf(lines, currency)), mineOf.total)),
      dates: base.dates,
      editHours: outsideHours(lines),
      hoursOut: hoursOut(input),
    },
    setup.year && setup.currency === currency ? floorOf(setup.year, currency) : null,
    input.job.budget,
    card.dayHours,
  );
  const all = [...base.lines, ...overrides.added, ...rush, ...discounts];
  return {
    lines: taxed.map(({ line, taxes }) => quoteLine(line, currency, taxes)),
    dropped: all.filter((line) => overrides.dropped.has(line.id)).map(({ id, what }) => ({ id, what })),
    totals,
    cancelBase: netOf(cancelSections),
    deposit: due.deposit,
    discount: { ...overrides.discount, over: overrides.discount.over ? [...overrides.discount.over] : null },
    validUntil: validUntil(now, terms, firstCallAt, home),
    terms,
    holidays: [...holidays.keys()],
    publicHolidays,
    scale,
    costs: mineOf.costs,
    cautions: [
      ...base.cautions,
      ...mineOf.cautions,
      ...(due.caution ? [due.caution] : []),
      ...cautionsOf({ input, lines, scale, firstCallAt, known: new Set(all.map((line) => line.id)), overrides }),
    ],
    missing: missingOf(input, lines, totals.gross),
  };
}

/** What lines cost me; what is passed on as it is counts as a whole already. */
function costsOf(lines: readonly PricedLine[], currency: string): Money {
  const costs = lines
    .filter((line) => !expenseSections.includes(line.section))
    .flatMap(({ cost }) => (cost ? [amountOf(cost, currency)] : []));
  return sum(currency, costs);
}

function inOrder(lines: readonly PricedLine[]): PricedLine[] {
  return sections.flatMap((section) => lines.filter((line) => line.section === section));
}

function firstCall(days: readonly BookDay[]): number | null {
  return days.length === 0 ? null : Math.min(...days.map((day) => day.callAt));
}

/** Edit hours that use up days of their own: those of edit lines counted in hours, changed by hand or not. */
function outsideHours(lines: readonly PricedLine[]) {
  return lines
    .filter((line) => line.section === 'editing' && /^(hours?|h)$/i.test(line.unit))
    .reduce((hours, line) => hours.add(line.quantity), exact(0));
}

/** Hours from door-out to door-in; where nobody travels, those from call to wrap. */
function hoursOut({ trip, days }: PriceInput) {
  if (trip?.away) return exact(Math.round(trip.hoursAway * 60)).div(60n);
  const worked = days.filter((day) => day.kind !== 'edit').reduce((sum, day) => sum + day.wrapAt - day.callAt, 0);
  return exact(Math.round(worked / 60_000)).div(60n);
}
