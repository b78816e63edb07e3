/**
 * Templates through the procedures: made, changed, dropped; what cannot be is refused and nothing is kept of it.
 */
import { call } from '@orpc/server';
import { expect, test } from 'vitest';
import { newId } from '../../../db/ids.ts';
import { historyOf } from '../../../db/keeping.ts';
import { callProcedure } from '../../../electron/api/serve.ts';
import { templates } from '../../../electron/api/templates.ts';
import { refusal, world } from '../world.ts';
import { FORMAT, HIGHLIGHT } from './numbers.ts';

const begun = async () => {
  const w = await world('2026-11-26T15:00:00Z');
  return { w, at: { context: w.context } };
};

test('one is made, listed by name and changed; each deed leaves its row of history', async () => {
  const { w, at } = await begun();
  const { template } = await call(templates.save, { fields: HIGHLIGHT }, at);
  await call(templates.save, { fields: { ...HIGHLIGHT, name: 'awards reel' } }, at);
  expect((await call(templates.list, {}, at)).templates.map(({ name }) => name)).toEqual(['awards reel', 'Highlight']);
  const longer = { ...HIGHLIGHT, finishedMinutes: '4.5' };
  const changed = await call(templates.save, { id: template.id, version: 1, fields: longer }, at);
  expect(changed.template).toEqual({ ...longer, id: template.id, version: 2, uses: 0 });
  const told = w.context.store.read((db) => historyOf(db, 'template', template.id));
  expect(told.map(({ sentence }) => sentence)).toEqual(['Template "Highlight" was changed.', 'Template "Highlight" was made.']);
  expect(told[0]?.before).toMatchObject({ finishedMinutes: '3', version: 1 });
});

test('a repeated save with one key makes one template', async () => {
  const { at } = await begun();
  const key = newId();
  const first = await call(templates.save, { fields: HIGHLIGHT, key }, at);
  expect(await call(templates.save, { fields: HIGHLIGHT, key }, at)).toEqual(first);
  expect((await call(templates.list, {}, at)).templates).toHaveLength(1);
});

test('one that was dropped is on the list no more, and cannot be saved or dropped again', async () => {
  const { at } = await begun();
  const { template } = await call(templates.save, { fields: HIGHLIGHT }, at);
  expect(await call(templates.drop, { id: template.id, version: 1 }, at)).toEqual({ sentence: 'Template "Highlight" was dropped.' });
  expect((await call(templates.list, {}, at)).templates).toEqual([]);
  for (const again of [
    call(templates.drop, { id: template.id, version: 2 }, at),
    call(templates.save, { id: template.id, version: 2, fields: HIGHLIGHT }, at),
  ])
    expect(await refusal(again)).toMatchObject({ code: 'NOT_FOUND', what: 'This template is not on the books.' });
});

test('an old version is refused with both states', async () => {
  const { at } = await begun();
  const { template } = await call(templates.save, { fields: HIGHLIGHT }, at);
  await call(templates.save, { id: template.id, version: 1, fields: { ...HIGHLIGHT, rounds: 1 } }, at);
  const late = await refusal(call(templates.save, { id: template.id, version: 1, fields: HIGHLIGHT }, at));
  expect(late).toMatchObject({ code: 'STALE', current: { rounds: 1 }, mine: { rounds: 2 } });
  expect(await refusal(call(templates.drop, { id: template.id, version: 1 }, at))).toMatchObject({ code: 'STALE' });
});

test.each([
  ['rounds on the same day', { sameDay: true }, 'fields.rounds', 'nobody waits for notes on the same day'],
  ['an unknown frame rate', { format: { ...FORMAT, rate: '31' } }, 'fields.format.rate', 'take one of 23.976, 24, 25, 29.97 drop'],
])('%s are bad input', async (_, wrong, field, sentence) => {
  const { at } = await begun();
  const said = await refusal(call(templates.save, { fields: { ...HIGHLIGHT, ...wrong } }, at));
  expect(said).toMatchObject({ code: 'BAD_INPUT', fields: [{ field, sentence: expect.stringContaining(sentence) }] });
  expect((await call(templates.list, {}, at)).templates).toEqual([]);
});

test.each([
  ['minutes below zero', { finishedMinutes: '-1' }, 'is below zero; give zero or more'],
  ['hours that are no number', { hoursPerRound: 'two' }, 'is not a number; write it as 1250.50'],
  ['half a round', { rounds: 1.5 }, 'must be a whole number'],
  ['a due date years after the wrap', { due: { ...HIGHLIGHT.due, days: 731 } }, 'is more than two years'],
  ['no name', { name: ' ' }, 'is empty; give it a name'],
])('%s never reach the store', async (_, wrong, sentence) => {
  const { w, at } = await begun();
  const said = await refusal(callProcedure(w.context, 'templates.save', { fields: { ...HIGHLIGHT, ...wrong } }));
  expect(said).toMatchObject({ code: 'BAD_INPUT', fields: [{ sentence: expect.stringContaining(sentence) }] });
  expect((await call(templates.list, {}, at)).templates).toEqual([]);
});
