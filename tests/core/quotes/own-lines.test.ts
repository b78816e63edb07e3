import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DraftChange, QuoteDraft } from '../../../core/contract/quotes.ts';
import { fixedLines } from '../../../core/quotes/known.ts';
import { drive, extra, lineOf, quoteOf } from './facts.ts';

const three: DraftChange[] = [extra('10'), extra('20'), extra('30')];
const ids = (draft: QuoteDraft, section: string): string[] => draft.lines.filter((line) => line.section === section).map(({ id }) => id);
const move = (id: string, before: string | null, section: 'extras' | 'days' | 'discount' = 'extras'): DraftChange => ({
  op: 'move',
  id,
  section,
  before,
});

describe('a line that is renamed', () => {
  const rename: DraftChange = { op: 'set', id: 'days/shoot', what: 'Filming the congress' };
  const draft = quoteOf({ changes: [rename] });
  test('keeps its words through a recalculation, and says what the card calls it', () => {
    expect(lineOf(draft, 'days/shoot')).toMatchObject({ what: 'Filming the congress', changed: true, quantity: '2' });
    expect(lineOf(draft, 'days/shoot')?.reason).toMatch(/^Changed by hand: called "Filming the congress" instead of "Shooting"\. /);
    expect(lineOf(quoteOf({ changes: [rename], card: { dayRate: '900' } }), 'days/shoot')).toMatchObject({
      what: 'Filming the congress',
      amount: { minor: 180_000 },
    });
  });
  test('costs what it did, and stays an estimate where it was one', () => {
    expect(draft.totals).toEqual(quoteOf().totals);
    const trip = { ...drive, source: 'estimated' as const, roadKnown: false };
    const card = { mileage: [{ from: '2026-01-01', rate: '0.725' }] };
    const way = quoteOf({ trip, card, changes: [{ op: 'set', id: 'travel/mileage', what: 'The drive' }] });
    expect(lineOf(way, 'travel/mileage')).toMatchObject({ what: 'The drive', estimated: true, changed: true });
  });
  test('called as the card does it is not changed', () => {
    expect(lineOf(quoteOf({ changes: [{ op: 'set', id: 'days/shoot', what: 'Shooting' }] }), 'days/shoot')?.changed).toBe(false);
  });
  test('goes back to the words of the card', () => {
    expect(quoteOf({ changes: [rename, { op: 'restore', id: 'days/shoot' }] }).lines).toEqual(quoteOf().lines);
  });
});

describe("lines of one's own", () => {
  test('stand in the order in which they were added until they are moved', () => {
    expect(ids(quoteOf({ changes: three }), 'extras')).toEqual(['extras/added-1', 'extras/added-2', 'extras/added-3']);
    expect(ids(quoteOf({ changes: [...three, move('extras/added-3', 'extras/added-1')] }), 'extras')).toEqual([
      'extras/added-3',
      'extras/added-1',
      'extras/added-2',
    ]);
    expect(ids(quoteOf({ changes: [...three, move('extras/added-1', null)] }), 'extras')).toEqual([
      'extras/added-2',
      'extras/added-3',
      'extras/added-1',
    ]);
  });
  test('move before a line of the card, and keep their name in another section', () => {
    const draft = quoteOf({ changes: [...three, move('extras/added-2', 'days/shoot', 'days')] });
    expect(ids(draft, 'days')).toEqual(['extras/added-2', 'days/shoot']);
    expect(draft.totals).toEqual(quoteOf({ changes: three }).totals);
  });
  test('moved among the days they bear rush like a day', () => {
    const soon = { received: { wall: '2026-09-06T09:00', zone: 'America/Chicago', at: '2026-09-06T14:00:00Z' } };
    expect(lineOf(quoteOf({ job: soon, changes: [...three, move('extras/added-2', null, 'days')] }), 'rush/notice')).toEqual(
      lineOf(quoteOf({ job: soon, changes: [...three.slice(0, 1), { ...extra('20'), section: 'days' } as DraftChange] }), 'rush/notice'),
    );
  });
  test('as a discount they take off', () => {
    expect(lineOf(quoteOf({ changes: [...three, move('extras/added-1', null, 'discount')] }), 'extras/added-1')?.amount.minor).toBe(-1000);
  });
  test('go to the end where the line they stood before is gone', () => {
    const changes = [...three, move('extras/added-1', 'extras/added-3'), { op: 'drop' as const, id: 'extras/added-3' }];
    expect(ids(quoteOf({ changes }), 'extras')).toEqual(['extras/added-2', 'extras/added-1']);
  });
  test('only they can be moved', () => {
    expect(fixedLines([move('extras/added-1', null), move('days/shoot', null)])).toEqual(['days/shoot']);
  });
  test('moving within a section changes no amount', () => {
    const own = fc.constantFrom('extras/added-1', 'extras/added-2', 'extras/added-3', null);
    fc.assert(
      fc.property(fc.array(fc.tuple(own, own), { maxLength: 6 }), (moves) => {
        const draft = quoteOf({ changes: [...three, ...moves.flatMap(([id, before]) => (id === null ? [] : [move(id, before)]))] });
        expect(ids(draft, 'extras').toSorted()).toEqual(['extras/added-1', 'extras/added-2', 'extras/added-3']);
        expect(draft.totals).toEqual(quoteOf({ changes: three }).totals);
      }),
      { numRuns: 60 },
    );
  });
});
