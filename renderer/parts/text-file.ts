/**
 * A text file, read in the page. Nothing of it leaves the page but to the store on this computer.
 */
import type { Trouble } from '../../core/contract/base.ts';

export type TextFile = { name: string; text: string };

/** Longer files are refused by the store's contract. */
const LONGEST = 1_900_000;

const refusal = (what: string, todo: string): { trouble: Trouble } => ({ trouble: { what, kept: 'Nothing was read or changed.', todo } });

/** Text as it was saved: UTF-8, else the one-byte letters that older programs write. */
function decoded(bytes: ArrayBuffer): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** @param ifNoText what to do about a file that is no text */
export async function readTextFile(file: File, ifNoText: string): Promise<{ file: TextFile } | { trouble: Trouble }> {
  if (file.size > LONGEST) return refusal(`${file.name} is larger than 1.9 MB.`, 'Split it and bring in one part after the other.');
  const text = decoded(await file.arrayBuffer());
  if (text.trim() === '') return refusal(`${file.name} is empty.`, 'Choose another file.');
  if (text.includes('\0')) return refusal(`${file.name} is not a text file.`, ifNoText);
  return { file: { name: file.name, text } };
}
