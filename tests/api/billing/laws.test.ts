/**
 * Whatever was billed and however it was taken back: once all of it is credited, every sum is zero, in the books and on the papers.
 */
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { tried } from '../../core/laws.ts';
import { SETUP } from '../world.ts';
import { house, TAXED, usd } from './house.ts';
import { onPapers } from './papers.ts';

const LONG = Boolean(process.env['KITBOUND_LONG']);
const taxed = (percent: string, included: boolean) => ({ ...TAXED, tax: { name: 'Sales tax', percent, included } });

test('all of it credited, in one or in parts, with a deposit or without: nothing is left', { timeout: 300_000 }, async () => {
  const setups = fc.constantFrom(SETUP, taxed('7.25', false), taxed('19', true), taxed('8.875', true));
  const cents = fc.integer({ min: 1, max: 99_999 });
  await fc.assert(
    fc.asyncProperty(setups, fc.boolean(), cents, fc.array(cents, { maxLength: 2 }), async (setup, withDeposit, extra, parts) => {
      const unitPrice = (extra / 100).toFixed(2);
      const h = await house({
        setup,
        changes: [{ op: 'add', section: 'extras', what: 'Licence', quantity: '1', unit: '', unitPrice }],
      });
      const deposit = withDeposit ? await h.issue('deposit') : null;
      h.door.at('2026-12-14T15:00:00Z');
      const bill = await h.issue('final');
      const credit = (id: string, lines: unknown) => h.door.call('invoices.credit', { id, lines, reason: 'Taken back' });
      // Each part is less than the 1,000.00 that any two of them leave of the days.
      for (const minor of parts) await credit(bill.id, [{ id: 'days/shoot', amount: usd(minor) }]);
      await credit(bill.id, 'all');
      if (deposit) await credit(deposit.id, 'all');

      const rows = await h.invoices();
      for (const sum of ['net', 'tax', 'gross', 'toPay', 'open'] as const)
        expect([sum, rows.reduce((total, row) => total + row[sum].minor, 0)]).toEqual([sum, 0]);
      expect((await onPapers(h)).reduce((total, [, minor]) => total + minor, 0)).toBe(0);
      expect(await h.door.call('ledger.see')).toMatchObject({ openCount: 0, clients: [] });
      expect(await h.door.call('ledger.year', { year: 2026 })).toMatchObject({ billed: { home: usd(0) } });
    }),
    // Each run is a store of its own with all its papers.
    { ...tried, numRuns: LONG ? 40 : 4 },
  );
});
