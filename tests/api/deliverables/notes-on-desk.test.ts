/**
 * The Desk: notes that are awaited until they come, and a further round until it is billed or declined.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { desk } from '../../../electron/api/desk.ts';
import { rounds } from '../../../electron/api/rounds.ts';
import { spent } from '../../../electron/api/spent.ts';
import { issued, worked } from '../invoices/agreed-job.ts';
import { promised, type Promised } from './promised.ts';

const clocks = async ({ at: { context } }: Promised, ids: string) =>
  (await call(desk.see, {}, { context })).clocks.flatMap(({ id, late, sentence }) => (id.startsWith(ids) ? [[late, sentence]] : []));

test('notes are awaited, then overdue, then there; a further round waits for its bill', async () => {
  const p = await promised({ edit: { rounds: 0 }, card: { editHour: '85' } });
  const { context } = p.at;
  p.at.at('2026-12-14T16:00:00Z');
  await worked(p, '2026-12-12T08:00', '2026-12-12T18:00');
  await worked(p, '2026-12-13T08:00', '2026-12-13T18:00');
  await issued(p, 'final');
  p.at.at('2026-12-15T16:00:00Z');
  const { round } = await call(rounds.send, { deliverableId: p.edit, what: 'rough cut' }, { context });
  expect(await clocks(p, 'notes:')).toEqual([[false, 'Highlights: notes on the rough cut due by the end of Fri']]);
  p.at.at('2026-12-22T16:00:00Z');
  expect(await clocks(p, 'notes:')).toEqual([[true, 'Highlights: notes on the rough cut overdue by 2 business days']]);
  expect(await clocks(p, 'further:')).toEqual([]);
  const { id, version } = round;
  const { round: came } = await call(rounds.notesIn, { id, version, text: 'shorter' }, { context });
  expect(await clocks(p, 'notes:')).toEqual([]);
  expect(await clocks(p, 'further:')).toEqual([[true, 'Highlights: further round of USD 170.00 to bill']]);
  await call(rounds.settlePrice, { id, version: came.version, agreed: false, who: 'Ana Voss', how: '' }, { context });
  expect(await clocks(p, 'further:')).toEqual([]);
});

test('a clock that nobody stopped is told after half a day', async () => {
  const p = await promised();
  p.at.at('2026-12-15T16:00:00Z');
  await call(spent.start, { deliverableId: p.edit, stageId: p.stage('rough cut') }, { context: p.at.context });
  p.at.at('2026-12-16T03:00:00Z');
  expect(await clocks(p, 'running:')).toEqual([]);
  p.at.at('2026-12-16T05:00:00Z');
  expect(await clocks(p, 'running:')).toEqual([[true, 'Highlights: the clock on rough cut still runs']]);
});
