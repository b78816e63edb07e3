/**
 * People from a file: each row is new, the same as somebody already here, or refused with its reason. A file that cannot be read changes nothing.
 */
import type { ImportRow } from '../../core/contract/people.ts';
import { type AddressCard, clientOf, handOf, troubleOf } from '../../core/people/card.ts';
import { cardsFromCsv, TableError } from '../../core/people/csv.ts';
import { marksOf } from '../../core/people/doubles.ts';
import { CardError, cardsFromVcard } from '../../core/people/vcard.ts';
import { allClients, allHands, insertClient, insertHand } from '../../db/people.ts';
import type { ReadableDb, WritableDb } from '../../db/store.ts';
import { clientMarks, handMarks } from '../../core/people/marks.ts';
import { badInput } from './trouble.ts';

type Bring = { kind: 'client' | 'hand'; format: 'csv' | 'vcard'; text: string };

/** Tell the fate of each row; with `saving` also keep the new ones. */
export function broughtIn(
  db: ReadableDb,
  input: Bring,
  saving: { db: WritableDb; now: number } | null,
): { rows: ImportRow[]; added: number } {
  const taken = new Map<string, string>();
  const present = input.kind === 'client' ? allClients(db).map(clientMarks) : allHands(db).map(handMarks);
  for (const one of present) for (const { key } of marksOf(one)) taken.set(key, one.name);
  const rows = cardsIn(input).map((card): ImportRow => {
    const name = (input.kind === 'client' ? card.organisation || card.name : card.name || card.organisation) || '(no name)';
    const row = { line: card.line, name: name.slice(0, 120) };
    const trouble = troubleOf(card);
    if (trouble) return { ...row, fate: 'refused', why: trouble };
    const marks = marksOf({ name, emails: [card.email], phones: [card.phone], taxId: card.taxId });
    const same = marks.find(({ key }) => taken.has(key));
    if (same) return { ...row, fate: 'same as', why: `${taken.get(same.key)}: ${same.why}` };
    for (const { key } of marks) taken.set(key, name);
    if (saving && input.kind === 'client') insertClient(saving.db, clientOf(card), saving.now);
    if (saving && input.kind === 'hand') insertHand(saving.db, handOf(card), saving.now);
    return { ...row, fate: 'new', why: '' };
  });
  return { rows, added: saving ? rows.filter(({ fate }) => fate === 'new').length : 0 };
}

function cardsIn({ format, text }: Bring): AddressCard[] {
  try {
    return format === 'csv' ? cardsFromCsv(text) : cardsFromVcard(text);
  } catch (error) {
    if (error instanceof TableError || error instanceof CardError)
      throw badInput([{ field: 'text', sentence: `cannot be read. ${error.message}` }]);
    throw error;
  }
}
