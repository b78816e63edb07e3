/**
 * Stages of a deliverable: done and open, their hours, and stretches that are set aside for them.
 */
import type { Deliverable, EditStage } from '../../core/contract/deliverables.ts';
import { halfHoursOf } from '../../core/deliverables/make-stages.ts';
import { epochOf, instantOf, WallTimeError } from '../../core/time/read.ts';
import { wallInWords } from '../../core/words/dates.ts';
import { addPin, deliverableById, deliverableOfPin, deliverableOfStage, dropPin, updateStage } from '../../db/deliverables.ts';
import { daysOf } from '../../db/job-days.ts';
import { pinsAhead } from '../../db/open-edits.ts';
import { markStages } from '../../db/rounds.ts';
import type { ReadableDb } from '../../db/store.ts';
import { deed } from './deed.ts';
import { inked, told } from './deliverable-deed.ts';
import { lastWrapOf } from './edit-dates.ts';
import { homeZone } from './job-facts.ts';
import { os } from './os.ts';
import { badInput, notFound, refused, stale } from './trouble.ts';

type Found = { deliverable: Deliverable; stage: EditStage };

export const changeStage = os.deliverables.changeStage.handler(({ input, context }) =>
  deed(context, 'deliverables.changeStage', input, (db) => {
    const { deliverable, stage } = ofVersion(db, input);
    inked(db, deliverable.jobId, context.now());
    const { hours, releaseDate } = input.changes;
    const halfHours = hours === undefined ? undefined : halfHoursOf(hours);
    if (halfHours !== undefined && halfHours > 0 && (stage.kind === 'delivered' || stage.kind === 'approved'))
      throw badInput([{ field: 'changes.hours', sentence: `are asked of "${stage.name}", which is a mark and takes no time` }]);
    updateStage(db, stage, { ...(halfHours === undefined ? {} : { halfHours }), ...(releaseDate === undefined ? {} : { releaseDate }) });
    return told(
      db,
      deliverable.id,
      'deliverables.changeStage',
      `${stage.name} of ${deliverable.name} was changed.`,
      context.now(),
      deliverable,
    );
  }),
);

export const stageDone = os.deliverables.stageDone.handler(({ input, context }) =>
  deed(context, 'deliverables.stageDone', input, (db) => {
    const now = context.now();
    const { deliverable, stage } = ofVersion(db, input);
    inked(db, deliverable.jobId, now);
    const at = input.at === undefined ? now : epochOf(input.at);
    if (at > now) throw badInput([{ field: 'at', sentence: 'lies after now; give the moment at which it was done' }]);
    if (stage.doneAt !== null) throw refused(`${stage.name} of ${deliverable.name} is done already.`, 'Nothing more needs doing.');
    const ids = deliverable.stages.filter(({ position, doneAt }) => position <= stage.position && doneAt === null).map(({ id }) => id);
    markStages(db, ids, at);
    return told(db, deliverable.id, 'deliverables.stageDone', `${stage.name} of ${deliverable.name} is done.`, now, deliverable);
  }),
);

export const stageOpen = os.deliverables.stageOpen.handler(({ input, context }) =>
  deed(context, 'deliverables.stageOpen', input, (db) => {
    const now = context.now();
    const { deliverable, stage } = ofVersion(db, input);
    inked(db, deliverable.jobId, now);
    if (stage.doneAt === null) throw refused(`${stage.name} of ${deliverable.name} is open.`, 'Nothing more needs doing.');
    const ids = deliverable.stages.filter(({ position, doneAt }) => position >= stage.position && doneAt !== null).map(({ id }) => id);
    markStages(db, ids, null);
    return told(db, deliverable.id, 'deliverables.stageOpen', `${stage.name} of ${deliverable.name} is open again.`, now, deliverable);
  }),
);

export const pin = os.deliverables.pin.handler(({ input, context }) =>
  deed(context, 'deliverables.pin', input, (db) => {
    const now = context.now();
    const { deliverable, stage } = found(db, input.stageId);
    inked(db, deliverable.jobId, now);
    const zone = homeZone(db, context);
    const [start, end] = [asInstant(input.start, zone, 'start'), asInstant(input.end, zone, 'end')];
    refuseWrongPin(db, { deliverable, stage }, { start, end }, now, zone);
    addPin(db, stage.id, start, end);
    const sentence = `${wallInWords(input.start)} to ${input.end.slice(11)} is set aside for ${stage.name} of ${deliverable.name}.`;
    return told(db, deliverable.id, 'deliverables.pin', sentence, now, deliverable);
  }),
);

export const unpin = os.deliverables.unpin.handler(({ input, context }) =>
  deed(context, 'deliverables.unpin', input, (db) => {
    const deliverable = deliverableOfPin(db, input.id);
    if (!deliverable) throw notFound('This stretch');
    dropPin(db, input.id);
    return told(db, deliverable.id, 'deliverables.unpin', `A stretch for ${deliverable.name} was let go.`, context.now(), deliverable);
  }),
);

const LONGEST_PIN = 86_400_000;

function refuseWrongPin(
  db: ReadableDb,
  { deliverable, stage }: Found,
  { start, end }: { start: number; end: number },
  now: number,
  zone: string,
): void {
  if (end <= start) throw badInput([{ field: 'end', sentence: 'is not after the start' }]);
  if (end - start > LONGEST_PIN)
    throw badInput([{ field: 'end', sentence: 'is more than 24 hours after the start; set several stretches aside' }]);
  if (end <= now) throw badInput([{ field: 'end', sentence: 'is over already; time that was spent is kept as such' }]);
  if (stage.doneAt !== null || deliverable.off)
    throw refused(
      `${stage.name} of ${deliverable.name} ${deliverable.off ? 'is taken off' : 'is done'}.`,
      'Open it again before time is set aside for it.',
    );
  const wrap = lastWrapOf(daysOf(db, deliverable.jobId), zone);
  if (wrap && start < wrap.at) throw badInput([{ field: 'start', sentence: 'lies before the last wrap, when the camera files are there' }]);
  if (pinsAhead(db, now).some((other) => other.start < end && other.end > start))
    throw refused('That stretch is set aside already, wholly or in part.', 'Let the other go first, or take another time.');
}

/** @throws BAD_INPUT where the clock at home skips the time or shows it twice */
function asInstant(wall: string, zone: string, field: string): number {
  try {
    return instantOf(wall, zone).epochMilliseconds;
  } catch (error) {
    if (error instanceof WallTimeError) throw badInput([{ field, sentence: error.message }]);
    throw error;
  }
}

function found(db: ReadableDb, stageId: string): Found {
  const deliverable = deliverableOfStage(db, stageId);
  const stage = deliverable?.stages.find(({ id }) => id === stageId);
  if (!deliverable || !stage) throw notFound('This stage');
  return { deliverable, stage };
}

function ofVersion(db: ReadableDb, input: { id: string; version: number }): Found {
  const { deliverable, stage } = found(db, input.id);
  if (stage.version !== input.version)
    throw stale(`${stage.name} of ${deliverable.name}`, deliverableById(db, deliverable.id), { ...input, key: undefined });
  return { deliverable, stage };
}
