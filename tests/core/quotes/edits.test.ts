/**
 * Edit lines from deliverables, and the rush on exactly those that are due inside the notice.
 */
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Edit } from '../../../core/contract/jobs.ts';
import { tried } from '../laws.ts';
import { lineOf, quoteOf } from './facts.ts';

// Asked for on Saturday, 1 August 2026, 09:00 at home; an edit hour costs what the card says.
const edit = (what: string, due: string | null, hours: string | null): Edit => ({ what, due, hours });
const quote = (...edits: Edit[]) => quoteOf({ card: { editHour: '60' }, job: { deliverables: edits.map(({ what }) => what), edits } });
const rushes = (...edits: Edit[]) =>
  quote(...edits)
    .lines.filter(({ section }) => section === 'rush')
    .map(({ what, amount }) => [what, amount.minor]);

describe('edit lines', () => {
  test('one for each deliverable whose hours are known, with its date in the reason', () => {
    const draft = quote(edit('a highlight', '2026-09-18', '6.5'), edit('a gallery', null, null));
    expect(draft.lines.filter(({ section }) => section === 'editing')).toMatchObject([
      { id: 'editing/of-a-highlight', what: 'Editing: a highlight', quantity: '6.5', unit: 'hours', amount: { minor: 39_000 } },
    ]);
    expect(lineOf(draft, 'editing/of-a-highlight')?.reason).toBe('6.5 edit hours for a highlight, due Fri 18 September 2026, at 60.00.');
    expect(draft.cautions.join()).not.toContain('no edit hours are priced');
  });
  test('two of one name have lines of their own; hours of nothing have none', () => {
    const ids = quote(edit('a film', null, '1'), edit('a film', null, '2'), edit('a reel', null, '0')).lines.map(({ id }) => id);
    expect(ids.filter((id) => id.startsWith('editing/'))).toEqual(['editing/of-a-film', 'editing/of-a-film-2']);
  });
  test('they count for what a cancellation owes its share of', () => {
    expect(quote(edit('a film', null, '10')).cancelBase.minor - quote().cancelBase.minor).toBe(60_000);
  });
});

describe('rush on edits', () => {
  test.each([
    // due at 23:59 at home: from 1 August 09:00 these are 38 h 59, 86 h 59, 158 h 59 and 182 h 59
    ['2026-08-02', [['Rush, under 72 h, 25 % of a film', 15_000]]],
    ['2026-08-04', [['Rush, under 7 days, 10 % of a film', 6_000]]],
    ['2026-08-07', [['Rush, under 7 days, 10 % of a film', 6_000]]],
    ['2026-08-08', []],
    [null, []],
  ])('due on %s', (due, expected) => expect(rushes(edit('a film', due, '10'))).toEqual(expected));

  test('exactly those edits that are due inside it, several steps apart, and no day with them', () => {
    expect(
      rushes(
        edit('a teaser', '2026-08-02', '2'),
        edit('a film', '2026-09-30', '10'),
        edit('a reel', '2026-08-02', '1'),
        edit('a recap', '2026-08-05', '4'),
      ),
    ).toEqual([
      ['Rush, under 72 h, 25 % of a teaser and a reel', 4_500],
      ['Rush, under 7 days, 10 % of a recap', 2_400],
    ]);
  });
  test('says how it came about', () => {
    const line = lineOf(quote(edit('a film', '2026-08-02', '10')), 'rush/editing-72h');
    expect(line?.reason).toBe('a film is due 38 h 59 min after the message, under 72 h: 25 % of 600.00 for editing, before any discount.');
  });
  test('follows the line as it was changed by hand, and goes when it is taken off', () => {
    const of = (change: Parameters<typeof quoteOf>[0]) =>
      lineOf(
        quoteOf({ card: { editHour: '60' }, job: { deliverables: ['a film'], edits: [edit('a film', '2026-08-02', '10')] }, ...change }),
        'rush/editing-72h',
      )?.amount.minor;
    expect(of({ changes: [{ op: 'set', id: 'editing/of-a-film', quantity: '20' }] })).toBe(30_000);
    expect(of({ changes: [{ op: 'drop', id: 'editing/of-a-film' }] })).toBeUndefined();
  });
  test('due later never costs more', () =>
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 20 }), (days, later) => {
        const gross = (by: number) =>
          quote(edit('a film', Temporal.PlainDate.from('2026-07-30').add({ days: by }).toString(), '10')).totals.gross.minor;
        expect(gross(days + later)).toBeLessThanOrEqual(gross(days));
      }),
      tried,
    ));
});
