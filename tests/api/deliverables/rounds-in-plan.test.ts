/**
 * Rounds and the edit plan: work on notes waits for them, late notes move the date that the plan aims at, a further round takes its hours
 * until it is declined, and time that was spent is not planned again.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { deliverables } from '../../../electron/api/deliverables.ts';
import { rounds } from '../../../electron/api/rounds.ts';
import { spent } from '../../../electron/api/spent.ts';
import { promised, type Promised } from './promised.ts';

const plan = async ({ edit, at: { context } }: Promised) => {
  const { blocks, edits } = (await call(deliverables.plan, {}, { context })).plan;
  return { blocks, edit: edits.find(({ deliverableId }) => deliverableId === edit) };
};
const startOf = async (p: Promised, stage: string) => (await plan(p)).blocks.find(({ stageId }) => stageId === stage)?.start;

async function sent(p: Promised, what: string, closes: string) {
  return (await call(rounds.send, { deliverableId: p.edit, what, closes }, { context: p.at.context })).round;
}

test('work on notes is planned for the morning after they are due, and at once when they are there', async () => {
  const p = await promised();
  p.at.at('2026-12-15T16:00:00Z');
  const round = await sent(p, 'rough cut', p.stage('rough cut'));
  // Due on Friday; the next day for editing is Monday.
  expect(await startOf(p, p.stage('round'))).toBe('2026-12-21T15:00:00Z');
  expect((await plan(p)).edit?.waits).toBe('notes, due Fri 18 December');
  p.at.at('2026-12-17T16:00:00Z');
  await call(rounds.notesIn, { id: round.id, version: round.version, text: 'shorter' }, { context: p.at.context });
  expect(await startOf(p, p.stage('round'))).toBe('2026-12-17T16:00:00Z');
  expect((await plan(p)).edit).toMatchObject({ waits: '', due: '2027-01-06' });
});

test('late notes move the date that the plan aims at', async () => {
  const p = await promised();
  p.at.at('2026-12-15T16:00:00Z');
  const round = await sent(p, 'rough cut', p.stage('rough cut'));
  p.at.at('2026-12-23T16:00:00Z');
  await call(rounds.notesIn, { id: round.id, version: round.version, text: 'shorter' }, { context: p.at.context });
  expect((await plan(p)).edit).toMatchObject({ due: '2027-01-11', internalDate: '2027-01-08' });
});

test('a further round takes its hours, declined it gives them back, and hours that were spent are not planned again', async () => {
  const p = await promised({ edit: { rounds: 2 }, card: { editHour: '85' } });
  const { context } = p.at;
  p.at.at('2026-12-15T16:00:00Z');
  const hours = async () => (await plan(p)).edit?.hoursLeft;
  let cut = await sent(p, 'rough cut', p.stage('rough cut'));
  for (const [what, closes] of [
    ['second cut', p.stage('round')],
    ['third cut', p.stage('round', 2)],
  ] as const) {
    await call(rounds.notesIn, { id: cut.id, version: cut.version, text: 'shorter' }, { context });
    cut = await sent(p, what, closes);
  }
  // Picture lock alone is left.
  expect(await hours()).toBe(1);
  const { round } = await call(rounds.notesIn, { id: cut.id, version: cut.version, text: 'shorter' }, { context });
  expect(await hours()).toBe(3);
  await call(spent.type, { deliverableId: p.edit, stageId: p.stage('picture lock'), on: '2026-12-15', minutes: 30, note: '' }, { context });
  expect(await hours()).toBe(2.5);
  await call(rounds.settlePrice, { id: round.id, version: round.version, agreed: false, who: 'Ana Voss', how: '' }, { context });
  expect(await hours()).toBe(0.5);
});
