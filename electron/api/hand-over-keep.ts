/**
 * A deliverable is handed over: its delivery note is written before the books speak of it.
 */
import { paperName } from '../../core/quotes/paper-name.ts';
import { epochOf } from '../../core/time/read.ts';
import { dateIn } from '../../core/time/wall.ts';
import { countInWords } from '../../core/words/amounts.ts';
import { insertHandOver } from '../../db/hand-overs.ts';
import { deedByKey } from '../../db/keeping.ts';
import { insertPaper } from '../../db/papers.ts';
import { forgetReading } from '../files/readings.ts';
import { deliveryNote } from '../papers/delivery-note.ts';
import { keepPaper } from '../papers/keep.ts';
import { deed } from './deed.ts';
import { markDelivered, told } from './hand-over-change.ts';
import { checkOriginals, handable, matterOf, type Handing } from './hand-over-facts.ts';
import { filesOf } from './hand-over-reading.ts';
import { badFacts } from './job-facts.ts';
import { os } from './os.ts';
import { roundFacts } from './round-facts.ts';
import { notFound, stale } from './trouble.ts';
import { written } from './written.ts';

export const keep = os.handovers.keep.handler(async ({ input, context }) => {
  const { store } = context;
  const { key, deliverableId, from, how, where, note } = input;
  if (key !== undefined && store.read((db) => deedByKey(db, key)))
    return deed(context, 'handovers.keep', input, () => {
      throw notFound('The result of this deed');
    });
  const now = context.now();
  const at = input.at === undefined ? now : epochOf(input.at);
  const originals = { kind: input.originals, until: input.originalsUntil };
  if (at > now) throw badFacts([{ field: 'at', sentence: 'The hand-over is dated after now. Give the moment at which it was done.' }]);
  store.read((db) => {
    const { calendars } = handable(roundFacts(db, context, deliverableId));
    checkOriginals(originals, dateIn(calendars.zone, at));
  });
  const { run, files } = await filesOf(context, deliverableId, from);
  const handing: Handing = { how, where, at, originals, note, files };
  const said = store.read((db) => matterOf(db, { ...roundFacts(db, context, deliverableId), now }, handing));
  const kept = keepPaper(store.papers, await written(deliveryNote(said.paper)));
  const result = deed(context, 'handovers.keep', input, (db) => {
    const facts = { ...handable(roundFacts(db, context, deliverableId)), now };
    const again = matterOf(db, facts, handing);
    if (JSON.stringify(again) !== JSON.stringify(said)) throw stale('The deliverable', again.paper, said.paper);
    const { job, edit, calendars } = facts;
    const date = dateIn(calendars.zone, at);
    const paper = insertPaper(db, {
      jobId: job.id,
      kind: 'delivery note',
      name: paperName(`Delivery note ${date}`, edit.name),
      type: 'application/pdf',
      ...kept,
      madeAt: now,
    });
    const id = insertHandOver(db, {
      deliverableId,
      how,
      where,
      at,
      originals: originals.kind,
      originalsUntil: originals.until,
      hashKind: said.hashKind,
      files: [...files],
      messageSubject: said.message.subject,
      messageText: said.message.text,
      paperId: paper.id,
      note,
    });
    markDelivered(db, deliverableId, at);
    const count = countInWords(files.length, 'file');
    return told(db, facts, id, 'handovers.keep', `${edit.name} was handed over by ${how}: ${count}.`, null);
  });
  forgetReading(store, run);
  return result;
});
