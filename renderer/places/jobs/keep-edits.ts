/**
 * What was tried on of promised edits and holds: another date that was agreed, or another day of editing.
 */
import type { Deliverable, EditTryOn } from '../../../core/contract/deliverables.ts';
import type { EditSettings } from '../../../core/contract/setup.ts';
import { EDIT_SETTINGS } from '../../../core/deliverables/ground.ts';
import { dateInWords, withoutYear } from '../../../core/words/dates.ts';
import { deed } from '../../deeds.ts';
import { client } from '../../door.ts';
import { sceneNow } from '../../scene.ts';
import { sayWithUndo } from '../../undo.ts';

type Keep = { label: string; perform: () => Promise<boolean> };

/** @param jobId the job whose edit it is */
export function keepOfEdits({ moved, hired, hoursADay, onTravelDays }: EditTryOn, jobId: string | undefined): Keep | null {
  const [date] = moved ?? [];
  if (date && jobId) return { label: 'Agreed: write the new date', perform: () => keepDate(jobId, date) };
  // Who is hired is said on the sheet of the job that the edit belongs to.
  if (hired && jobId) return { label: 'Say who, on its sheet', perform: () => toSheet(jobId) };
  if (hoursADay !== undefined) return { label: 'Write it into Setup', perform: () => keepDay({ hoursADay }) };
  return onTravelDays === undefined ? null : { label: 'Write it into Setup', perform: () => keepDay({ onTravelDays }) };
}

async function keepDate(jobId: string, { deliverableId, due }: { deliverableId: string; due: string }): Promise<boolean> {
  const kept = await deed(async () => {
    const { deliverables } = await client.deliverables.of({ jobId });
    const before = deliverables.find(({ id }) => id === deliverableId);
    return before && { before, after: await changed(before, { due }) };
  });
  if (!kept) return false;
  const { before, after } = kept;
  const undo = () => changed(after, { due: before.due, internalDate: before.internalDate });
  sayWithUndo(`${before.name} is due ${withoutYear(dateInWords(due))}.`, 'Take it back', undo, `${before.name} is due as before.`);
  return true;
}

type Dates = { due: string | null; internalDate?: string | null };

async function changed({ id, version }: Deliverable, changes: Dates): Promise<Deliverable> {
  return (await client.deliverables.change({ id, version, changes, key: crypto.randomUUID() })).deliverable;
}

async function toSheet(jobId: string): Promise<false> {
  sceneNow().go(`/jobs/${jobId}`);
  return false;
}

async function keepDay(part: Partial<EditSettings>): Promise<boolean> {
  const kept = await deed(() => saveEditing(part));
  if (!kept) return false;
  const undo = () => saveEditing(kept);
  sayWithUndo('Your day of editing is changed in Setup.', 'Take it back', undo, 'Your day of editing is as before.');
  return true;
}

/** Answers with what was before. */
async function saveEditing(part: Partial<EditSettings>): Promise<EditSettings> {
  const { setup } = await client.setup.get({});
  if (!setup) return EDIT_SETTINGS;
  const { version, ...fields } = setup;
  const before = setup.editing ?? EDIT_SETTINGS;
  await client.setup.save({ version, fields: { ...fields, editing: { ...before, ...part } } });
  return before;
}
