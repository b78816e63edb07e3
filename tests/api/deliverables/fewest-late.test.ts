import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { deliverables } from '../../../electron/api/deliverables.ts';
import { callProcedure } from '../../../electron/api/serve.ts';
import { refusal } from '../world.ts';
import { promised } from './promised.ts';

test('fewest late is tried on in place of least late, and says whether fewer are possible; nothing is saved', async () => {
  const { at } = await promised();
  const { plan: before } = await call(deliverables.plan, {}, at);
  const { plan, sentence } = await call(deliverables.tryOn, { tryOn: { order: 'fewest late' } }, at);
  const late = (edits: typeof plan.edits) => edits.filter(({ lateDays, unplaced }) => lateDays > 0 || unplaced > 0).length;
  expect(late(plan.edits)).toBeLessThanOrEqual(late(before.edits));
  expect(sentence).toMatch(/(No order of the work leaves fewer late|Best found: fewer may be possible)\.$/);
  expect((await call(deliverables.plan, {}, at)).plan.edits).toEqual(before.edits);
  expect((await refusal(callProcedure(at.context, 'deliverables.tryOn', { tryOn: { order: 'shortest first' } }))).code).toBe('BAD_INPUT');
});
