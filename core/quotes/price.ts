/**
 * A quote as rate card, trip, notice and changes by hand price it now. Pure: the same facts give the same quote.
 */
import type { Job } from '../contract/jobs.ts';
import { sections, type DraftChange, type QuoteDraft, type Section } from '../contract/quotes.ts';
import type { RateCard, Terms } from '../contract/rates.ts';
import type { SetupFields } from '../contract/setup.ts';
import type { BookDay } from '../fit/book.ts';
import { exact } from '../money/exact.ts';
import { subtract, sum } from '../money/money.ts';
import { epochOf } from '../time/read.ts';
import { cancelSections } from './cancellation.ts';
import { cautionsOf, missingOf } from './cautions.ts';
import { foldChanges, overlay, type Overrides } from './changes.ts';
import { dayLines, kitDays } from './days.ts';
import { depositOf, validUntil } from './deadlines.ts';
import { discountedSections, discountLines, expenseSections } from './discount.ts';
import { editingLine } from './editing.ts';
import { amountOfLine, quoteLine, type PricedLine } from './line.ts';
import { rushLine } from './rush.ts';
import { floorOf, scaleOf } from './scale.ts';
import { taxesOf, taxesOfLine } from './taxes.ts';
import { totalsOf } from './totals.ts';
import { allowanceLine, kitLines, mileageLines, travelDayLine, type QuotedTrip } from './travel.ts';

export type PriceInput = {
  job: Pick<Job, 'id' | 'role' | 'place' | 'budget' | 'received' | 'deliverables'>;
  /** Paid dates with their instants. */
  days: readonly BookDay[];
  card: RateCard;
  /** Why this card, where it is not quite the one asked for. */
  cardCaution: string | null;
  setup: SetupFields;
  /** Null when place or days are not known. */
  trip: QuotedTrip | null;
  changes: readonly DraftChange[];
  draftVersion: number;
  /** Epoch milliseconds. */
  now: number;
};

/**
 * Price a quote. The pencil's expiry is left open: it depends on the book as well.
 * @throws RangeError when an amount is past what is reckoned with
 */
export function priceQuote(input: PriceInput): QuoteDraft {
  const { card, setup, now } = input;
  const { currency } = card;
  const overrides = foldChanges(input.changes);
  const terms: Terms = { ...card.terms, ...overrides.terms };
  const firstCallAt = firstCall(input.days);
  const home = setup.home.zone;

  const base = baseLines(input, overrides);
  const beforeRush = overlay(base.lines, overrides, (section) => section !== 'rush' && section !== 'discount', currency);
  const daysAmount = sum(currency, amountsIn(beforeRush, ['days'], currency));
  const notice = firstCallAt === null ? Infinity : firstCallAt - epochOf(input.job.received.at);
  const rush = rushLine(notice, card.rush, daysAmount);
  const withRush = [...beforeRush, ...overlay(rush, overrides, (section) => section === 'rush', currency)];
  const discounts = discountLines(overrides.discount, withRush, currency);
  const lines = inOrder([...withRush, ...overlay(discounts, overrides, (section) => section === 'discount', currency)]);

  const mine = taxesOf(setup);
  const taxed = lines.map((line) => ({ line, taxes: taxesOfLine(line.id, mine, overrides.taxes) }));
  const { totals, netOf } = totalsOf(taxed, setup.tax?.included ?? false, discountedSections(overrides.discount), currency);
  const due = depositOf(totals.gross, terms, now, firstCallAt, home);
  const scale = scaleOf(
    { kept: subtract(totals.net, netOf(expenseSections)), dates: base.dates, editHours: outsideHours(lines), hoursOut: hoursOut(input) },
    setup.year && setup.currency === currency ? floorOf(setup.year, currency) : null,
    input.job.budget,
    card.dayHours,
  );
  const all = [...base.lines, ...overrides.added, ...rush, ...discounts];
  return {
    jobId: input.job.id,
    draftVersion: input.draftVersion,
    cardId: card.id,
    cardName: card.name,
    currency,
    lines: taxed.map(({ line, taxes }) =>
      quoteLine(
        line,
        currency,
        taxes.some((tax) => tax.state === 'rated'),
      ),
    ),
    dropped: all.filter((line) => overrides.dropped.has(line.id)).map(({ id, what }) => ({ id, what })),
    totals,
    cancelBase: netOf(cancelSections),
    deposit: due.deposit,
    validUntil: validUntil(now, terms, firstCallAt, home),
    terms,
    scale,
    pencilUntil: null,
    cautions: [
      ...(input.cardCaution ? [input.cardCaution] : []),
      ...base.cautions,
      ...(due.caution ? [due.caution] : []),
      ...cautionsOf({ input, lines, scale, firstCallAt, known: new Set(all.map((line) => line.id)), overrides }),
    ],
    missing: missingOf(input, lines, totals.gross),
  };
}

/** What the card, the dates and the trip come to before anything was changed. */
function baseLines(input: PriceInput, { holidays }: Overrides): { lines: PricedLine[]; cautions: string[]; dates: number } {
  const { card, trip, setup } = input;
  const zone = input.job.place?.zone ?? setup.home.zone;
  const priced = dayLines({ days: input.days, zone, role: input.job.role, terms: card, holidays });
  const way = trip ? mileageLines(trip, card, setup.home.zone, zone) : { lines: [], cautions: [] };
  const lines = [
    ...joined(priced.lines, trip ? travelDayLine(trip, card) : []),
    ...kitLines(card, kitDays(priced.worked, card)),
    ...way.lines,
    ...(trip ? allowanceLine(trip, card) : []),
    ...editingLine(input.days, card),
  ];
  return { lines, cautions: [...priced.cautions, ...way.cautions], dates: priced.worked.length + (trip?.travelDates.length ?? 0) };
}

/** Travel days that were sold as such and those that the way asks for are one line. */
function joined(lines: readonly PricedLine[], travel: readonly PricedLine[]): PricedLine[] {
  const [more] = travel;
  const place = lines.findIndex((line) => line.id === more?.id);
  const same = lines[place];
  if (!more || !same) return [...lines, ...travel];
  const quantity = same.quantity.add(more.quantity);
  return lines.with(place, { ...same, quantity, unit: more.unit, reason: `${same.reason} ${more.reason}`, estimated: more.estimated });
}

function inOrder(lines: readonly PricedLine[]): PricedLine[] {
  return sections.flatMap((section) => lines.filter((line) => line.section === section));
}

function amountsIn(lines: readonly PricedLine[], within: readonly Section[], currency: string) {
  return lines.filter((line) => within.includes(line.section)).map((line) => amountOfLine(line, currency));
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
  if (trip?.away) return exact(Math.round((trip.doorInAt - trip.doorOutAt) / 60_000)).div(60n);
  const worked = days.filter((day) => day.kind !== 'edit').reduce((sum, day) => sum + day.wrapAt - day.callAt, 0);
  return exact(Math.round(worked / 60_000)).div(60n);
}
