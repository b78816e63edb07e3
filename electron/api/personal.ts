/**
 * Time of my own.
 */
import { instantOf } from '../../core/time/read.ts';
import { spanAt } from '../../core/words/moments.ts';
import { writeHistory } from '../../db/keeping.ts';
import { allPersonal, dropPersonal, keepPersonal, personalById } from '../../db/personal.ts';
import { deed } from './deed.ts';
import { badFacts } from './job-facts.ts';
import { os } from './os.ts';
import { notFound, stale } from './trouble.ts';

const list = os.personal.list.handler(({ context }) => ({ personal: context.store.read(allPersonal) }));

const save = os.personal.save.handler(({ input, context }) =>
  deed(context, 'personal.save', {}, (db) => {
    const { id, version, fields } = input;
    const startAt = instantOf(fields.from, fields.zone).epochMilliseconds;
    const endAt = instantOf(fields.to, fields.zone).epochMilliseconds;
    if (endAt <= startAt)
      throw badFacts([
        { field: 'fields.to', sentence: `${fields.title} ends before it begins. A whole day ends at 00:00 of the next date.` },
      ]);
    const before = id === undefined ? undefined : personalById(db, id);
    if (id !== undefined && !before) throw notFound('This time of yours');
    if (before && before.version !== version) throw stale(before.title, before, fields);
    const now = context.now();
    const kept = keepPersonal(db, before, fields, { startAt, endAt, now });
    const sentence = `${kept.title} is yours on ${spanAt(startAt, endAt, fields, fields)}.`;
    writeHistory(db, { at: now, subject: 'personal', subjectId: kept.id, deed: 'personal.save', sentence, before: before ?? null });
    return { personal: kept };
  }),
);

const drop = os.personal.drop.handler(({ input, context }) =>
  deed(context, 'personal.drop', {}, (db) => {
    const before = personalById(db, input.id);
    if (!before) throw notFound('This time of yours');
    if (before.version !== input.version) throw stale(before.title, before, null);
    dropPersonal(db, input.id);
    writeHistory(db, {
      at: context.now(),
      subject: 'personal',
      subjectId: input.id,
      deed: 'personal.drop',
      sentence: `${before.title} was taken off.`,
      before,
    });
    return {};
  }),
);

export const personal = { list, save, drop };
