/**
 * A file of people: its text and what kind of file it is.
 */
import type { Trouble } from '../../../core/contract/base.ts';
import { readTextFile, type TextFile } from '../../parts/text-file.ts';

export type PeopleFile = TextFile & { format: 'csv' | 'vcard' };

export async function readPeopleFile(file: File): Promise<{ file: PeopleFile } | { trouble: Trouble }> {
  const read = await readTextFile(file, 'Save the table as CSV, or the address book as vCard, and choose that.');
  if ('trouble' in read) return read;
  return { file: { ...read.file, format: /^\s*BEGIN:VCARD/i.test(read.file.text) ? 'vcard' : 'csv' } };
}
