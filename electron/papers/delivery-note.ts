/**
 * The paper that goes with a delivery.
 */
import { deliveryNoteContent, typedOnDeliveryNote, type DeliveryNoteInput } from '../../core/handovers/note.ts';
import { facts, listed, notes, sums } from './blocks.ts';
import { covers } from './faces.ts';
import { fileTable } from './file-table.ts';
import { paperFile, type PaperOptions } from './file.ts';

/**
 * Write a delivery note: the same bytes for the same content. A file's name is drawn in any case, letters without a shape as their number:
 * nobody should have to rename what is handed over.
 * @throws PaperError when another text has letters that the typefaces do not cover, or the letterhead does not fit; nothing is written then
 */
export async function deliveryNote(input: DeliveryNoteInput, options?: PaperOptions): Promise<Uint8Array> {
  const note = deliveryNoteContent(input, drawable);
  return paperFile(
    {
      frame: note,
      typed: typedOnDeliveryNote(input),
      madeAt: input.madeAt,
      blocks: (sheet) => [
        facts(sheet, note.facts),
        ...fileTable(sheet, note),
        ...sums(sheet, note.sums),
        sheet.gap(),
        ...listed(sheet, note.terms, 'plain'),
        ...notes(sheet, note.notes),
      ],
    },
    options,
  );
}

/** A name in letters that can be drawn. */
function drawable(name: string): string {
  return Array.from(name)
    .map((letter) => {
      const code = letter.codePointAt(0) ?? 0;
      return covers(code) ? letter : `[U+${code.toString(16).toUpperCase().padStart(4, '0')}]`;
    })
    .join('');
}
