import { sql } from 'drizzle-orm';
import { check, index, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import type { DocumentKind } from '../../core/contract/document-kind.ts';
import type { DocumentFields } from '../../core/contract/documents.ts';
import { createdAt, id, updatedAt, version } from './columns.ts';
import { hands } from './people.ts';
import { papers } from './quotes.ts';

/** Passports, rights to work, insurances and licences, of mine or of a hand. Their numbers are sensitive and stand in no history. */
export const documents = sqliteTable(
  'documents',
  {
    id: id(),
    kind: text('kind').$type<DocumentKind>().notNull(),
    handId: text('hand_id').references(() => hands.id),
    /** The last day on which it is valid, `YYYY-MM-DD`; null while it is not noted. */
    until: text('until'),
    fields: text('fields', { mode: 'json' }).$type<DocumentFields>().notNull(),
    scanId: text('scan_id').references(() => papers.id),
    version: version(),
    createdAt: createdAt(),
    updatedAt: updatedAt(),
  },
  (t) => [
    index('documents_by_until').on(t.until),
    index('documents_by_hand').on(t.handId),
    check('documents_fields_json', sql`json_valid(${t.fields})`),
    check(
      'documents_kind',
      sql`${t.kind} in ('passport', 'identity card', 'right to work', 'liability insurance', 'equipment insurance', 'driving licence', 'remote pilot licence', 'vehicle', 'carnet', 'other')`,
    ),
  ],
);
