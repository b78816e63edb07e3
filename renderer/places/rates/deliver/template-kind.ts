import type { Trouble } from '../../../../core/contract/base.ts';
import { Template, type DueRule, type TemplateFields } from '../../../../core/contract/templates.ts';
import { parseNumber } from '../../../../core/money/parse.ts';
import { client } from '../../../door.ts';
import { Reader } from '../../../parts/reader.ts';
import { editNumbers, typedEdit, type TypedEdit } from '../../../parts/typed-edit.ts';
import type { KeptKind } from '../../../parts/use-kept-form.ts';

export type TypedTemplate = TypedEdit & { name: string; dueDays: string; count: DueRule['count'] };

function templateFields(typed: TypedTemplate): { fields: TemplateFields } | { trouble: Trouble } {
  const reader = new Reader();
  const numbers = editNumbers(typed, reader);
  const days = Number(reader.take('due.days', parseNumber(typed.dueDays)) ?? '0');
  if (reader.trouble) return { trouble: reader.trouble };
  return { fields: { ...numbers, name: typed.name, due: { days, count: typed.count, from: 'last wrap' } } };
}

export const templateKind: KeptKind<TypedTemplate, TemplateFields, Template> = {
  typedFrom: (fields) => ({ ...typedEdit(fields), name: fields.name, dueDays: String(fields.due.days), count: fields.due.count }),
  fieldsFrom: templateFields,
  keep: async (fields, stored) =>
    (await client.templates.save({ fields, ...(stored ? { id: stored.id, version: stored.version } : {}), key: crypto.randomUUID() }))
      .template,
  storedIn: (current) => Template.safeParse(current).data,
};
