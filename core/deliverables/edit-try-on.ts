/**
 * Changes to the edit plan that are tried on before anything is saved, and what they would change.
 */
import type { EditPlan, EditTryOn } from '../contract/deliverables.ts';
import { countInWords } from '../words/amounts.ts';
import { dateInWords } from '../words/dates.ts';
import { businessDays } from './edit-words.ts';
import type { EditGround } from './ground.ts';

/** The ground as it would be. */
export function triedEdits(ground: EditGround, tryOn: EditTryOn): EditGround {
  const { hired = [], moved = [], hoursADay, onTravelDays, onShootDays, closedWeekdays } = tryOn;
  const dues = new Map(moved.map(({ deliverableId, due }) => [deliverableId, due]));
  const said = Object.entries({ hoursADay, onTravelDays, onShootDays, closedWeekdays }).filter(([, value]) => value !== undefined);
  return {
    ...ground,
    settings: { ...ground.settings, ...(Object.fromEntries(said) as Partial<EditGround['settings']>) },
    edits: ground.edits.map((edit) => ({
      ...edit,
      due: dues.get(edit.id) ?? edit.due,
      editor: hired.includes(edit.id) ? (edit.editor ?? 'Somebody hired') : edit.editor,
    })),
  };
}

type Changed = { deliverableId: string; name: string; jobTitle: string; lateDaysBefore: number; lateDays: number; sentence: string };

/** Edits that would be later, or less late, those that it helps first; and in one sentence how many would be late. */
export function whatChanged(before: EditPlan, after: EditPlan): { changed: Changed[]; sentence: string } {
  const was = new Map(before.edits.map((edit) => [edit.deliverableId, edit]));
  const changed = after.edits.flatMap((edit) => {
    const old = was.get(edit.deliverableId);
    if (!old || (old.lateDays === edit.lateDays && old.due === edit.due && old.unplaced === edit.unplaced)) return [];
    const { deliverableId, name, jobTitle, lateDays } = edit;
    const then = edit.due !== null && edit.due !== old.due ? ` with ${dateInWords(edit.due)}` : '';
    const sentence = `${name} of ${jobTitle} would be ${late(lateDays)}${then}; now it is ${late(old.lateDays)}.`;
    return [{ deliverableId, name, jobTitle, lateDaysBefore: old.lateDays, lateDays, sentence }];
  });
  return {
    changed: changed.toSorted((a, b) => a.lateDays - a.lateDaysBefore - (b.lateDays - b.lateDaysBefore)),
    sentence:
      `${countInWords(countLate(after), 'edit')} would be late, where ${countLate(before)} ${countLate(before) === 1 ? 'is' : 'are'} now.`.replace(
        /^n/,
        'N',
      ),
  };
}

const late = (days: number): string => (days === 0 ? 'in time' : `${businessDays(days)} late`);

const countLate = ({ edits }: EditPlan): number => edits.filter(({ lateDays, unplaced }) => lateDays > 0 || unplaced > 0).length;
