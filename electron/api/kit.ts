/**
 * What I own, presets of it, and what jobs need.
 */
import { z } from 'zod';
import { KitItem, type KitNeed } from '../../core/contract/kit.ts';
import { Id } from '../../core/contract/parts.ts';
import { expanded, needsById } from '../../core/fit/kit-list.ts';
import { kitTroubles } from '../../core/kit/check.ts';
import { joined } from '../../core/words/lists.ts';
import { jobById } from '../../db/jobs.ts';
import { historyOf, writeHistory } from '../../db/keeping.ts';
import {
  allItems,
  allPresets,
  dropItem,
  dropPreset,
  itemById,
  jobsNeeding,
  keepItem,
  keepPreset,
  kitOfJob,
  presetById,
  replaceJobKit,
  restoreItem,
} from '../../db/kit.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import { deed } from './deed.ts';
import { bring, whereabouts } from './kit-bring.ts';
import { badFacts } from './job-facts.ts';
import { pack, packList } from './packs.ts';
import { os } from './os.ts';
import { notFound, refused, stale } from './trouble.ts';

const list = os.kit.list.handler(({ context }) => context.store.read((db) => ({ items: allItems(db), presets: allPresets(db) })));

const save = os.kit.save.handler(({ input, context }) =>
  deed(context, 'kit.save', {}, (db) => {
    const { fields } = input;
    const before = input.id === undefined ? undefined : itemById(db, input.id);
    if (input.id !== undefined && !before) throw notFound('This thing');
    if (before && before.version !== input.version) throw stale(before.name, before, fields);
    const wrong = kitTroubles(fields);
    if (wrong.length > 0) throw badFacts(wrong.map(({ field, sentence }) => ({ field: `fields.${field}`, sentence })));
    const now = context.now();
    const item = keepItem(db, before, fields, now);
    note(db, item.id, 'kit.save', `${item.name}: ${item.owned} owned.`, before, now);
    return { item };
  }),
);

const drop = os.kit.drop.handler(({ input, context }) =>
  deed(context, 'kit.drop', {}, (db) => {
    const before = itemById(db, input.id);
    if (!before) throw notFound('This thing');
    if (before.version !== input.version) throw stale(before.name, before, null);
    const now = context.now();
    const needing = jobsNeeding(db, input.id, now);
    if (needing.length > 0) throw refused(`${before.name} is needed by ${joined(needing)}.`, 'Take it off those jobs first.');
    const dropped: Dropped = { ...before, ofJobs: dropItem(db, input.id) };
    note(db, input.id, 'kit.drop', `${before.name} was taken off the list.`, dropped, now);
    return {};
  }),
);

/** What history keeps of a thing that was taken off: the thing, and what jobs that are over had of it. */
const Dropped = z.object({ ...KitItem.shape, ofJobs: z.array(z.strictObject({ jobId: Id, count: z.int() })).default([]) });
type Dropped = z.infer<typeof Dropped>;

const putBack = os.kit.putBack.handler(({ input, context }) =>
  deed(context, 'kit.putBack', {}, (db) => {
    const last = historyOf(db, 'kit', input.id).find(({ deed: name }) => name === 'kit.drop');
    if (!last) throw notFound('This thing');
    const here = itemById(db, input.id);
    if (here) throw refused(`${here.name} is on the list already.`, 'Look at it there.');
    const { ofJobs, ...before } = Dropped.parse(last.before);
    const now = context.now();
    const item = restoreItem(db, before, ofJobs, now);
    note(db, item.id, 'kit.putBack', `${item.name} is on the list again.`, null, now);
    return { item };
  }),
);

const savePreset = os.kit.savePreset.handler(({ input, context }) =>
  deed(context, 'kit.savePreset', {}, (db) => {
    const { name, needs } = input.fields;
    const before = input.id === undefined ? undefined : presetById(db, input.id);
    if (input.id !== undefined && !before) throw notFound('This preset');
    if (before && before.version !== input.version) throw stale(before.name, before, input.fields);
    if (allPresets(db).some((other) => other.name === name && other.id !== input.id))
      throw badFacts([{ field: 'fields.name', sentence: `There is a preset ${name} already. Give this one another name.` }]);
    const now = context.now();
    const preset = keepPreset(db, before, { name, needs: onTheList(db, needs, 'fields.needs') }, now);
    note(db, preset.id, 'kit.savePreset', `Preset ${name} holds ${preset.needs.length} things.`, before, now);
    return { preset };
  }),
);

const removePreset = os.kit.dropPreset.handler(({ input, context }) =>
  deed(context, 'kit.dropPreset', {}, (db) => {
    const before = presetById(db, input.id);
    if (!before) throw notFound('This preset');
    if (before.version !== input.version) throw stale(before.name, before, null);
    dropPreset(db, input.id);
    note(db, input.id, 'kit.dropPreset', `Preset ${before.name} was taken off the list.`, before, context.now());
    return {};
  }),
);

const forJob = os.kit.forJob.handler(({ input, context }) =>
  context.store.read((db) => {
    if (!jobById(db, input.jobId, context.now())) throw notFound('This job');
    return { needs: kitOfJob(db, input.jobId) };
  }),
);

const setForJob = os.kit.setForJob.handler(({ input, context }) =>
  deed(context, 'kit.setForJob', input, (db) => {
    const now = context.now();
    const job = jobById(db, input.jobId, now);
    if (!job) throw notFound('This job');
    const presets = input.presets.map((name, index) => {
      const found = allPresets(db).find((preset) => preset.name.toLowerCase() === name.toLowerCase());
      if (!found) throw badFacts([{ field: `presets.${index}`, sentence: `There is no preset ${name}.` }]);
      return found;
    });
    const before = kitOfJob(db, input.jobId);
    replaceJobKit(db, input.jobId, onTheList(db, expanded(needsById(input.needs, allItems(db)), presets), 'needs'));
    const needs = kitOfJob(db, input.jobId);
    const said = needs.map(({ name, count }) => `${count} × ${name}`);
    writeHistory(db, {
      at: now,
      subject: 'job',
      subjectId: job.id,
      deed: 'kit.setForJob',
      sentence: said.length > 0 ? `Kit: ${joined(said)}.` : 'No kit is needed.',
      before,
    });
    return { needs };
  }),
);

/** Needs by id. @throws BAD_INPUT for a thing that is not on the list */
function onTheList(db: ReadableDb, needs: readonly KitNeed[], field: string): KitNeed[] {
  const items = allItems(db);
  const byId = needsById(needs, items);
  const unknown = byId.find((need) => !items.some((item) => item.id === need.item));
  if (unknown) throw badFacts([{ field, sentence: `${unknown.item} is not on your kit list. Add it first.` }]);
  return byId;
}

function note(db: WritableDb, id: string, name: string, sentence: string, before: unknown, at: number): void {
  writeHistory(db, { at, subject: 'kit', subjectId: id, deed: name, sentence, before: before ?? null });
}

export const kit = {
  list,
  whereabouts,
  bring,
  save,
  drop,
  putBack,
  savePreset,
  dropPreset: removePreset,
  forJob,
  setForJob,
  packList,
  pack,
};
