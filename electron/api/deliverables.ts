/**
 * Deliverables of a job: promised, changed, taken off and restored, their stages done and open, stretches set aside for them.
 */
import type { Deliverable } from '../../core/contract/deliverables.ts';
import type { Job } from '../../core/contract/jobs.ts';
import { internalBy, dueBy } from '../../core/deliverables/due.ts';
import { numbersOf, numbersWithout } from '../../core/deliverables/from-quote.ts';
import { stagesFrom } from '../../core/deliverables/make-stages.ts';
import { remade } from '../../core/deliverables/remake.ts';
import { epochOf, instantText } from '../../core/time/read.ts';
import { dateInWords } from '../../core/words/dates.ts';
import { deliverablesOf, insertDeliverable, replaceStages, setOff, updateDeliverable, type KeptFields } from '../../db/deliverables.ts';
import { daysOf } from '../../db/job-days.ts';
import { writeHistory } from '../../db/keeping.ts';
import { handById } from '../../db/people.ts';
import type { ReadableDb } from '../../db/store.ts';
import { templateById } from '../../db/templates.ts';
import type { Context } from './context.ts';
import { deed } from './deed.ts';
import { inked, ofVersion, told } from './deliverable-deed.ts';
import { makeDeliverables, notMadeYet } from './deliverables-make.ts';
import { bothHolidays, lastWrapOf } from './edit-dates.ts';
import { plan, tryOn } from './edit-plan.ts';
import { changeStage, pin, stageDone, stageOpen, unpin } from './edit-stages.ts';
import { whole } from './job-deed.ts';
import { homeZone } from './job-facts.ts';
import { os } from './os.ts';
import { checkNumbers } from './templates.ts';
import { badInput, notFound, refused } from './trouble.ts';

const of = os.deliverables.of.handler(({ input, context }) =>
  context.store.read((db) => {
    const job = whole(db, input.jobId, context.now());
    const wrap = lastWrapOf(daysOf(db, job.id), homeZone(db, context));
    return {
      deliverables: deliverablesOf(db, job.id),
      canMake: notMadeYet(db, context, job).length > 0,
      filesThereFrom: wrap && instantText(wrap.at),
    };
  }),
);

const makeFromQuote = os.deliverables.makeFromQuote.handler(({ input, context }) =>
  deed(context, 'deliverables.makeFromQuote', input, (db) => {
    const at = context.now();
    const job = inked(db, input.jobId, at);
    const { made, sentence } = makeDeliverables(db, context, job, at);
    if (made.length > 0) writeHistory(db, { at, subject: 'job', subjectId: job.id, deed: 'deliverables.makeFromQuote', sentence });
    return { made, sentence: made.length > 0 ? sentence : 'Everything that was promised is a deliverable already.' };
  }),
);

const add = os.deliverables.add.handler(({ input, context }) =>
  deed(context, 'deliverables.add', input, (db) => {
    const at = context.now();
    const job = inked(db, input.jobId, at);
    const template = input.templateId === undefined ? undefined : templateById(db, input.templateId);
    if (input.templateId !== undefined && !template) throw notFound('This template');
    const wrap = lastWrapOf(daysOf(db, job.id), homeZone(db, context));
    const holidays = bothHolidays(db, context, job.client?.id ?? null, at);
    const numbers = template ? numbersOf(template) : numbersWithout(null, 0);
    const name = input.fields.name ?? template?.name;
    if (name === undefined) throw badInput([{ field: 'fields.name', sentence: 'is missing; give it a name, or take a template' }]);
    const due = input.fields.due !== undefined ? input.fields.due : template && wrap ? dueBy(template.due, wrap.date, holidays) : null;
    const internalDate = due === null ? null : internalBy(due, input.fields.internalDays ?? numbers.internalDays, holidays);
    const fields: KeptFields = { ...numbers, name, editHours: null, handId: null, internalDate, ...given(input.fields), due };
    check(db, context, job, fields, 'fields');
    const id = insertDeliverable(
      db,
      { ...fields, jobId: job.id, templateId: template?.id ?? null, madeFrom: null },
      stagesFrom(fields),
      at,
    );
    return told(db, id, 'deliverables.add', `${name} was promised${due === null ? '' : ` for ${dateInWords(due)}`}.`, at);
  }),
);

const change = os.deliverables.change.handler(({ input, context }) =>
  deed(context, 'deliverables.change', input, (db) => {
    const at = context.now();
    const before = ofVersion(db, input);
    const job = inked(db, before.jobId, at);
    const changes = given(input.changes);
    // A date that moves takes its internal date along, unless that was said too.
    const holidays = bothHolidays(db, context, job.client?.id ?? null, at);
    const moved = changes.due !== undefined && changes.due !== before.due && changes.internalDate === undefined;
    const internal = moved
      ? { internalDate: changes.due ? internalBy(changes.due, changes.internalDays ?? before.internalDays, holidays) : null }
      : {};
    const fields: KeptFields = { ...kept(before), ...changes, ...internal };
    check(db, context, job, fields, 'changes');
    updateDeliverable(db, before, fields, at);
    const numbersChanged = JSON.stringify(stagesFrom(before)) !== JSON.stringify(stagesFrom(fields));
    if (numbersChanged) replaceStages(db, before, remade(doneAts(before), before.rounds, stagesFrom(fields)));
    const words = [
      fields.due === before.due ? '' : ` It is due ${fields.due === null ? 'on a date that is asked for' : dateInWords(fields.due)}.`,
      numbersChanged ? ' Its open stages were made anew.' : '',
    ];
    return told(db, before.id, 'deliverables.change', `${fields.name} was changed.${words.join('')}`, at, before);
  }),
);

const takeOff = os.deliverables.takeOff.handler(({ input, context }) =>
  deed(context, 'deliverables.takeOff', input, (db) => {
    const at = context.now();
    const before = ofVersion(db, input);
    if (before.off) throw refused(`${before.name} is taken off already.`, 'Nothing more needs doing.');
    setOff(db, before, at, at);
    return told(db, before.id, 'deliverables.takeOff', `${before.name} was taken off.`, at, before);
  }),
);

const restore = os.deliverables.restore.handler(({ input, context }) =>
  deed(context, 'deliverables.restore', input, (db) => {
    const at = context.now();
    const before = ofVersion(db, input);
    if (!before.off) throw refused(`${before.name} stands among what is promised.`, 'Nothing more needs doing.');
    setOff(db, before, null, at);
    return told(db, before.id, 'deliverables.restore', `${before.name} was put back.`, at, before);
  }),
);

/** What is given, without what is not. */
function given<T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>;
  };
}

function kept(before: Deliverable): KeptFields {
  const { name, editHours, due, internalDate, handId } = before;
  return { ...numbersOf(before), name, editHours, due, internalDate, handId };
}

const doneAts = ({ stages }: Deliverable) =>
  stages.map((stage) => ({ ...stage, doneAt: stage.doneAt === null ? null : epochOf(stage.doneAt) }));

/** @throws BAD_INPUT for numbers and dates that cannot be, NOT_FOUND for a hand that is not there */
function check(db: ReadableDb, context: Context, job: Job, fields: KeptFields, where: string): void {
  checkNumbers(fields, where);
  const { due, internalDate, handId } = fields;
  if (handId !== null && !handById(db, handId)) throw notFound('This hand');
  if (internalDate !== null && (due === null || internalDate > due))
    throw badInput([
      {
        field: `${where}.internalDate`,
        sentence: due === null ? 'has no promised date after it; say that first' : `lies after the promised date, ${dateInWords(due)}`,
      },
    ]);
  const wrap = lastWrapOf(daysOf(db, job.id), homeZone(db, context));
  if (due !== null && wrap && due < wrap.date)
    throw badInput([
      {
        field: `${where}.due`,
        sentence: `lies before the wrap on ${dateInWords(wrap.date)}, when the camera files are there; give a later date`,
      },
    ]);
}

export const deliverables = {
  of,
  makeFromQuote,
  add,
  change,
  takeOff,
  restore,
  changeStage,
  stageDone,
  stageOpen,
  pin,
  unpin,
  plan,
  tryOn,
};
