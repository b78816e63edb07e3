/**
 * What happens to a hand-over afterwards: its originals go, or it is taken back.
 */
import { mayGo } from '../../core/handovers/originals.ts';
import { epochOf } from '../../core/time/read.ts';
import { dateIn } from '../../core/time/wall.ts';
import { dateInWords } from '../../core/words/dates.ts';
import { changeHandOver, handOverById, handOversOf, type HandOverRow } from '../../db/hand-overs.ts';
import { writeHistory } from '../../db/keeping.ts';
import { markStages, stagesOf } from '../../db/rounds.ts';
import type { WritableDb } from '../../db/store.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { checkOriginals, handable, handOverAsMet } from './hand-over-facts.ts';
import { badFacts } from './job-facts.ts';
import { os } from './os.ts';
import { roundFacts, type RoundFacts } from './round-facts.ts';
import { notFound, refused, stale } from './trouble.ts';

/** The mark and whatever stands before it. */
export function markDelivered(db: WritableDb, deliverableId: string, at: number): void {
  const all = stagesOf(db, deliverableId);
  const mark = all.find(({ kind }) => kind === 'delivered');
  const open = all.filter(({ position, doneAt }) => doneAt === null && mark && position <= mark.position);
  markStages(
    db,
    open.map(({ id }) => id),
    at,
  );
}

/** The marks of delivery and approval are open again; the work that was done stays done. */
function openDelivered(db: WritableDb, deliverableId: string): void {
  const marks = stagesOf(db, deliverableId).filter(({ kind, doneAt }) => doneAt !== null && (kind === 'delivered' || kind === 'approved'));
  markStages(
    db,
    marks.map(({ id }) => id),
    null,
  );
}

/** Leave a row of history and answer with the state. */
export function told(db: WritableDb, facts: RoundFacts, id: string, name: string, sentence: string, before: HandOverRow | null) {
  writeHistory(db, { at: facts.now, subject: 'job', subjectId: facts.job.id, deed: name, sentence, before });
  const row = handOverById(db, id);
  if (!row) throw notFound('This hand-over');
  return { handOver: handOverAsMet(db, facts, row) };
}

type OneHandOver = { id: string; version: number; key?: string | undefined };
type Change = Parameters<typeof changeHandOver>[2];

/** Run a deed on one hand-over: refuse an old version, act, say in a sentence what was done. */
function changed(
  context: Context,
  name: string,
  input: OneHandOver,
  act: (db: WritableDb, row: HandOverRow, facts: RoundFacts) => { change: Change; sentence: string },
) {
  return deed(context, name, input, (db) => {
    const row = handOverById(db, input.id);
    if (!row) throw notFound('This hand-over');
    const facts = roundFacts(db, context, row.deliverableId);
    if (row.version !== input.version) throw stale('This hand-over', handOverAsMet(db, facts, row), { ...input, key: undefined });
    const { change, sentence } = act(db, row, facts);
    changeHandOver(db, row, change);
    return told(db, facts, row.id, name, sentence, row);
  });
}

/** @throws REFUSED for a hand-over that was taken back */
function standing(row: HandOverRow): HandOverRow {
  if (row.takenBackAt !== null) throw refused('This hand-over was taken back.', 'Let it stand again first.');
  return row;
}

export const setOriginals = os.handovers.setOriginals.handler(({ input, context }) =>
  changed(context, 'handovers.setOriginals', input, (_, row, { edit, calendars }) => {
    if (standing(row).originalsGoneAt !== null) throw refused('The originals were deleted.', 'Note first that they are there after all.');
    const originals = { kind: input.originals, until: input.originalsUntil };
    checkOriginals(originals, dateIn(calendars.zone, row.at));
    const what = originals.until === null ? originals.kind : `kept until ${dateInWords(originals.until)}`;
    return {
      change: { originals: originals.kind, originalsUntil: originals.until },
      sentence: `Originals of ${edit.name}: ${originals.kind === 'kept until' && originals.until === null ? 'a date is still asked' : what}.`,
    };
  }),
);

export const originalsGone = os.handovers.originalsGone.handler(({ input, context }) =>
  changed(context, 'handovers.originalsGone', input, (_, row, { edit, calendars: { zone }, now }) => {
    const { originals: kind, originalsUntil: until } = standing(row);
    const at = input.at === undefined ? now : epochOf(input.at);
    if (row.originalsGoneAt !== null) throw refused('It is noted already that the originals were deleted.', 'There is nothing to do.');
    if (kind !== 'kept until') throw refused(`The originals were ${kind}: there are none to delete.`, 'There is nothing to do.');
    if (at > now)
      throw badFacts([{ field: 'at', sentence: 'The originals are said to be deleted after now. Give the moment at which it was done.' }]);
    if (!mayGo({ kind, until }, dateIn(zone, at)) && input.why === '')
      throw refused(
        until === null ? 'Until when the originals are kept is not agreed on.' : `The originals are kept until ${dateInWords(until)}.`,
        'Keep them, or say why they went before.',
      );
    return {
      change: { originalsGoneAt: at, originalsGoneWhy: input.why },
      sentence: `The originals of ${edit.name} were deleted${input.why === '' ? '' : `: ${input.why.replace(/\.$/, '')}`}.`,
    };
  }),
);

export const originalsThere = os.handovers.originalsThere.handler(({ input, context }) =>
  changed(context, 'handovers.originalsThere', input, (_, row, { edit }) => {
    if (row.originalsGoneAt === null) throw refused('The originals are there.', 'There is nothing to do.');
    return {
      change: { originalsGoneAt: null, originalsGoneWhy: '' },
      sentence: `The originals of ${edit.name} are there after all.`,
    };
  }),
);

export const takeBack = os.handovers.takeBack.handler(({ input, context }) =>
  changed(context, 'handovers.takeBack', input, (db, row, { edit, now }) => {
    standing(row);
    const others = handOversOf(db, row.deliverableId).filter(({ id, takenBackAt }) => id !== row.id && takenBackAt === null);
    if (others.length === 0) openDelivered(db, row.deliverableId);
    return {
      change: { takenBackAt: now, takenBackWhy: input.why },
      sentence: `The hand-over of ${edit.name} was taken back: ${input.why.replace(/\.$/, '')}.`,
    };
  }),
);

export const standAgain = os.handovers.standAgain.handler(({ input, context }) =>
  changed(context, 'handovers.standAgain', input, (db, row, facts) => {
    if (row.takenBackAt === null) throw refused('This hand-over stands.', 'There is nothing to do.');
    markDelivered(db, handable(facts).edit.id, row.at);
    return { change: { takenBackAt: null, takenBackWhy: '' }, sentence: `The hand-over of ${facts.edit.name} stands again.` };
  }),
);
