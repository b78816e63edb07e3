/**
 * Templates of what is delivered.
 */
import type { EditNumbers, Template } from '../../core/contract/templates.ts';
import { frameRates } from '../../core/deliverables/timecode.ts';
import { countInWords } from '../../core/words/amounts.ts';
import { writeHistory } from '../../db/keeping.ts';
import type { ReadableDb } from '../../db/store.ts';
import { allTemplates, dropTemplate, saveTemplate, templateById } from '../../db/templates.ts';
import { deed } from './deed.ts';
import { os } from './os.ts';
import { badInput, notFound, stale } from './trouble.ts';

const list = os.templates.list.handler(({ context }) => ({ templates: context.store.read(allTemplates) }));

const save = os.templates.save.handler(({ input, context }) => {
  const { id, version, fields } = input;
  checkNumbers(fields, 'fields');
  return deed(context, 'templates.save', input, (db) => {
    const at = context.now();
    const before = id === undefined ? undefined : ofVersion(db, id, version, fields);
    const saved = saveTemplate(db, before, fields, at);
    const sentence = `Template "${fields.name}" was ${before ? 'changed' : 'made'}.`;
    writeHistory(db, { at, subject: 'template', subjectId: saved, deed: 'templates.save', sentence, before });
    return { template: found(db, saved) };
  });
});

const drop = os.templates.drop.handler(({ input, context }) =>
  deed(context, 'templates.drop', input, (db) => {
    const at = context.now();
    const before = ofVersion(db, input.id, input.version, null);
    dropTemplate(db, before, at);
    const kept =
      before.uses === 0 ? '' : ` ${countInWords(before.uses, 'deliverable')} made from it ${before.uses === 1 ? 'stays' : 'stay'}.`;
    const sentence = `Template "${before.name}" was dropped.${kept}`;
    writeHistory(db, { at, subject: 'template', subjectId: before.id, deed: 'templates.drop', sentence, before });
    return { sentence };
  }),
);

function found(db: ReadableDb, id: string): Template {
  const template = templateById(db, id);
  if (!template) throw notFound('This template');
  return template;
}

function ofVersion(db: ReadableDb, id: string, version: number | undefined, mine: unknown): Template {
  const template = found(db, id);
  if (template.version !== version) throw stale(`Template "${template.name}"`, template, mine);
  return template;
}

/** @throws BAD_INPUT for numbers that no edit can have */
export function checkNumbers({ sameDay, rounds, format }: Partial<EditNumbers>, where: string): void {
  if (sameDay && (rounds ?? 0) > 0)
    throw badInput([{ field: `${where}.rounds`, sentence: 'are more than 0, but nobody waits for notes on the same day; set them to 0' }]);
  const rates = frameRates.map(({ name }) => name);
  if (format && format.rate !== '' && !rates.includes(format.rate))
    throw badInput([
      { field: `${where}.format.rate`, sentence: `is not a frame rate that time codes are read at; take one of ${rates.join(', ')}` },
    ]);
}

export const templates = { list, save, drop };
