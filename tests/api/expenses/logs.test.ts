import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { expenses } from '../../../electron/api/expenses.ts';
import { quotes } from '../../../electron/api/quotes.ts';
import { trips } from '../../../electron/api/trips.ts';
import { onSite } from '../hours/site.ts';
import { DULUTH, FARGO } from '../world.ts';

const year = { from: '2026-01-01', to: '2026-12-31' };
const leg = (from: typeof DULUTH, to: typeof DULUTH, depart: string, arrive: string, distance: string) => ({
  mode: 'drive' as const,
  from,
  to,
  depart,
  arrive,
  source: 'typed' as const,
  distance,
});

test('drives are logged as estimated until they are typed, then as driven; the quote charges the same', async () => {
  const { at, job } = await onSite();
  const before = await call(expenses.mileage, year, at);
  expect(before.rows.map(({ from, to, source }) => [from, to, source])).toEqual([
    ['Duluth', 'Fargo', 'estimate'],
    ['Fargo', 'Duluth', 'estimate'],
  ]);
  expect(before.cautions[0]).toContain('estimated');
  await call(trips.setLeg, { jobId: job.id, fields: leg(DULUTH, FARGO, '2026-12-11T15:00', '2026-12-11T19:30', '251.4') }, at);
  await call(trips.setLeg, { jobId: job.id, fields: leg(FARGO, DULUTH, '2026-12-13T17:30', '2026-12-13T22:00', '249.9') }, at);
  const { rows, totals, cautions } = await call(expenses.mileage, year, at);
  // 251.4 x 0.725 = 182.265 -> 182.27 (away from zero); 249.9 x 0.725 = 181.1775 -> 181.18.
  expect(rows.map(({ date, distance, amount, source }) => [date, distance, amount?.minor, source])).toEqual([
    ['2026-12-11', '251.4', 18_227, 'actual'],
    ['2026-12-13', '249.9', 18_118, 'actual'],
  ]);
  expect(totals).toEqual([{ minor: 36_345, currency: 'USD' }]);
  expect(cautions).toEqual(['A log for your accountant, not tax advice.']);
  const { draft } = await call(quotes.draft, { jobId: job.id }, at);
  expect(draft.lines.find(({ id }) => id === 'travel/mileage')).toMatchObject({ quantity: '501.3', estimated: false });
  expect((await call(expenses.mileage, { from: '2026-12-12', to: '2026-12-13' }, at)).rows).toHaveLength(1);
});

test('dates away are logged with the rate of their date, or say that none is known', async () => {
  const { w, at } = await onSite({ dates: ['2026-12-12', '2026-12-13'] });
  const { rows, totals, cautions } = await call(expenses.perDiem, year, at);
  expect(rows.every(({ amount, place }) => amount === null && place === 'Fargo')).toBe(true);
  expect(rows.map(({ date }) => date)).toContain('2026-12-12');
  expect(totals).toEqual([]);
  expect(cautions).toEqual(
    expect.arrayContaining([expect.stringContaining('no rate that is known'), expect.stringContaining('not tax advice')]),
  );
  expect((await call(expenses.perDiem, { from: '2026-12-12', to: '2026-12-12' }, w)).rows).toHaveLength(1);
});
