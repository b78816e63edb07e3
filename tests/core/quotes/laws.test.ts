import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import type { DraftChange, QuoteDraft } from '../../../core/contract/quotes.ts';
import { sum } from '../../../core/money/money.ts';
import { tried } from '../laws.ts';
import { day, drive, fargo, quoteOf, taxed, type Facts } from './facts.ts';

const price = fc.integer({ min: 0, max: 500_000 }).map((minor) => (minor / 100).toFixed(2));
const section = fc.constantFrom('days', 'kit', 'travel', 'editing', 'extras', 'discount');
const addition = fc.record({
  op: fc.constant('add' as const),
  section,
  what: fc.constant('Thing'),
  quantity: fc.constantFrom('1', '2', '0.5', '3.25'),
  unit: fc.constant(''),
  unitPrice: price,
});
const discount = fc.record({ op: fc.constant('discount' as const), percent: fc.constantFrom('0', '5', '12.5', '100'), fixed: price });
const changes: fc.Arbitrary<DraftChange[]> = fc.array(fc.oneof(addition, discount), { maxLength: 8 });
const dates = fc.uniqueArray(fc.integer({ min: 1, max: 28 }), { minLength: 1, maxLength: 6 });
const facts: fc.Arbitrary<Facts> = fc
  .record({
    changes,
    dates,
    wrap: fc.constantFrom('12:00', '18:00', '21:30', '23:50'),
    tax: fc.constantFrom('0', '7.25', '19'),
    included: fc.boolean(),
    away: fc.boolean(),
  })
  .map((made) => ({
    changes: made.changes,
    days: made.dates.map((date) => day(`2026-09-${String(date).padStart(2, '0')}`, '08:00', made.wrap)),
    setup: taxed(made.tax, made.included),
    ...(made.away ? { trip: drive, job: { place: fargo } } : {}),
  }));

const amounts = (draft: QuoteDraft) =>
  sum<string>(
    'USD',
    draft.lines.map((line) => line.amount),
  ).minor;

test('lines add up to the net, or to the gross where tax is included; net and tax to the gross', () =>
  fc.assert(
    fc.property(facts, (given) => {
      const draft = quoteOf(given);
      const { net, tax, gross } = draft.totals;
      expect(amounts(draft)).toBe(given.setup?.tax?.included ? gross.minor : net.minor);
      expect(net.minor + tax.minor).toBe(gross.minor);
      expect(draft.totals.taxes.reduce((all, group) => all + group.tax.minor, 0)).toBe(tax.minor);
    }),
    tried,
  ));

test('the order in which dates are given, and lines are added, changes no total', () =>
  fc.assert(
    fc.property(facts, (given) => {
      const turned = { ...given, days: given.days?.toReversed() ?? [], changes: given.changes?.toReversed() ?? [] };
      const onlyAdds = (each: Facts) => ({ ...each, changes: each.changes?.filter((change) => change.op === 'add') ?? [] });
      expect(quoteOf(onlyAdds(turned)).totals.gross).toEqual(quoteOf(onlyAdds(given)).totals.gross);
    }),
    tried,
  ));

test('every line has a reason and a name of its own', () =>
  fc.assert(
    fc.property(facts, (given) => {
      const { lines } = quoteOf(given);
      expect(new Set(lines.map((line) => line.id)).size).toBe(lines.length);
      for (const line of lines) expect(line.reason.length).toBeGreaterThan(10);
    }),
    tried,
  ));

test('a deposit and its rest are the gross, and the deposit is within half a unit of its share', () =>
  fc.assert(
    fc.property(facts, (given) => {
      const { deposit, totals } = quoteOf(given);
      if (!deposit) return;
      expect(Math.abs(2 * deposit.amount.minor - totals.gross.minor)).toBeLessThanOrEqual(1);
    }),
    tried,
  ));

test('less notice never costs less', () =>
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 400 }), fc.integer({ min: 0, max: 400 }), (hours, fewer) => {
      const received = (before: number) => {
        const at = Temporal.Instant.from('2026-09-08T13:00:00Z').subtract({ hours: before }).toString();
        return { job: { received: { wall: '2026-09-01T09:00', zone: 'America/Chicago', at } } };
      };
      expect(quoteOf(received(hours - Math.min(fewer, hours))).totals.gross.minor).toBeGreaterThanOrEqual(
        quoteOf(received(hours)).totals.gross.minor,
      );
    }),
    tried,
  ));
