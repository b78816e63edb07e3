import type { z } from 'zod';
import type { Trouble } from '../../../core/contract/base.ts';
import { Preset, type PresetFields } from '../../../core/contract/kit.ts';
import { parseNumber } from '../../../core/money/parse.ts';
import { client } from '../../door.ts';
import { Reader } from '../../parts/reader.ts';
import type { KeptKind } from '../../parts/use-kept-form.ts';

type Fields = z.infer<typeof PresetFields>;
type TypedPreset = { name: string; needs: { item: string; count: string }[] };

function presetFields(typed: TypedPreset): { fields: Fields } | { trouble: Trouble } {
  const reader = new Reader();
  const needs = typed.needs.map(({ item, count }, at) => ({
    item,
    count: Number(reader.take(`needs[${at}].count`, parseNumber(count)) ?? '0'),
  }));
  return reader.trouble ? { trouble: reader.trouble } : { fields: { name: typed.name, needs } };
}

export const presetKind: KeptKind<TypedPreset, Fields, Preset> = {
  typedFrom: ({ name, needs }) => ({ name, needs: needs.map(({ item, count }) => ({ item, count: String(count) })) }),
  fieldsFrom: presetFields,
  keep: async (fields, stored) =>
    (await client.kit.savePreset({ fields, ...(stored ? { id: stored.id, version: stored.version } : {}) })).preset,
  storedIn: (current) => Preset.safeParse(current).data,
};
