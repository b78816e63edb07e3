import type { Setup, SetupFields } from '../../core/contract/setup.ts';
import { ibanTrouble } from '../../core/invoices/iban.ts';
import { termsTrouble } from '../../core/papers/terms-text.ts';
import { writeHistory } from '../../db/keeping.ts';
import { saveSetup, setupRow } from '../../db/setup.ts';
import type { ReadableDb } from '../../db/store.ts';
import { deed } from './deed.ts';
import { readHolidays } from './holidays.ts';
import { os } from './os.ts';
import { badInput, stale } from './trouble.ts';

function stored(db: ReadableDb): Setup | null {
  const row = setupRow(db);
  return row ? { ...row.fields, version: row.version } : null;
}

const get = os.setup.get.handler(({ context }) => ({ setup: context.store.read(stored), suggestedZone: context.systemZone }));

const save = os.setup.save.handler(({ input, context }) => {
  refuseWrong(input.fields);
  return deed(context, 'setup.save', {}, (db) => {
    const before = stored(db);
    if ((before?.version ?? null) !== (input.version ?? null))
      throw stale('Setup', before, { ...input.fields, version: input.version ?? null });
    const now = context.now();
    saveSetup(db, input.fields, now);
    writeHistory(db, {
      at: now,
      subject: 'setup',
      subjectId: 'setup',
      deed: 'setup.save',
      sentence: before ? 'My details were changed.' : 'My details were set up.',
      before,
    });
    return { setup: { ...input.fields, version: (before?.version ?? 0) + 1 } };
  });
});

/** @throws BAD_INPUT for what would stand wrong on every paper: an account number that cannot be, a gap in my terms that nothing fills */
function refuseWrong({ payTo, termsText = '' }: SetupFields): void {
  const wrong = [
    { field: 'fields.payTo.iban', sentence: payTo && payTo.iban.trim() !== '' ? ibanTrouble(payTo.iban) : null },
    { field: 'fields.termsText', sentence: termsTrouble(termsText) },
  ].flatMap(({ field, sentence }) => (sentence === null ? [] : [{ field, sentence }]));
  if (wrong.length > 0) throw badInput(wrong);
}

export const setup = { get, save, holidays: readHolidays };
