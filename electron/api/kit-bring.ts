/**
 * Kit from a file, and where everything is now.
 */
import { kitFromCsv } from '../../core/kit/csv.ts';
import { foldedIn } from '../../core/kit/fold.ts';
import { whereabouts as whereaboutsOf } from '../../core/kit/where.ts';
import { TableError } from '../../core/people/csv.ts';
import { instantText, wallAt } from '../../core/time/read.ts';
import { countInWords } from '../../core/words/amounts.ts';
import { allItems, keepItem } from '../../db/kit.ts';
import { writeHistory } from '../../db/keeping.ts';
import { missingPieces } from '../../db/packs.ts';
import { setupRow } from '../../db/setup.ts';
import type { ReadableDb } from '../../db/store.ts';
import { bookNear } from './book.ts';
import { deed } from './deed.ts';
import { os } from './os.ts';
import { badInput } from './trouble.ts';

export const bring = os.kit.bring.handler(({ input, context }) => {
  if (input.try) return { rows: context.store.read((db) => rowsIn(db, input.text)).rows, added: 0 };
  return deed(context, 'kit.bring', {}, (db) => {
    const now = context.now();
    const { rows, fresh } = rowsIn(db, input.text);
    for (const fields of fresh) {
      const item = keepItem(db, undefined, fields, now);
      const sentence = `${item.name}: ${item.owned} owned, from a file of ${countInWords(rows.length, 'line')}.`;
      writeHistory(db, { at: now, subject: 'kit', subjectId: item.id, deed: 'kit.bring', sentence, before: null });
    }
    return { rows, added: fresh.length };
  });
});

function rowsIn(db: ReadableDb, text: string): ReturnType<typeof foldedIn> {
  try {
    return foldedIn(kitFromCsv(text, setupRow(db)?.fields.currency ?? 'USD'), allItems(db));
  } catch (error) {
    if (error instanceof TableError) throw badInput([{ field: 'text', sentence: `cannot be read. ${error.message}` }]);
    throw error;
  }
}

export const whereabouts = os.kit.whereabouts.handler(({ context }) =>
  context.store.read((db) => {
    const setup = setupRow(db)?.fields;
    // Without a home there is no trip that anything could be on.
    if (!setup) return { items: allItems(db).map(({ id, owned }) => ({ id, home: owned, out: [], service: [], missing: [] })) };
    const now = context.now();
    const found = whereaboutsOf(bookNear(db, { from: now, to: now, now, leaveOutJob: null }), now);
    const lost = missingPieces(db);
    return {
      items: found.map(({ id, home, out, service }) => ({
        id,
        home,
        missing: lost.filter(({ item }) => item === id).map(({ jobId, title, count }) => ({ jobId, title, count })),
        out: out.map(({ jobId, title, count, untilAt }) => ({ jobId, title, count, until: instantText(untilAt) })),
        // The last day of a service is in it.
        service: service.map(({ count, endAt }) => ({ count, to: wallAt(endAt - 1, setup.home.zone).slice(0, 10) })),
      })),
    };
  }),
);
