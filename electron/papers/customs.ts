/**
 * A job's customs list as a paper.
 */
import { customsPaperContent, typedOnCustoms, type CustomsPaperInput } from '../../core/documents/customs-paper.ts';
import { facts, notes, sign, sums } from './blocks.ts';
import { paperFile, type PaperOptions } from './file.ts';
import { table } from './table.ts';

/**
 * Write the paper of a customs list: the same bytes for the same content.
 * @throws PaperError when a text has letters that the typefaces do not cover, or the letterhead does not fit; nothing is written then
 */
export async function customsPaper(input: CustomsPaperInput, options?: PaperOptions): Promise<Uint8Array> {
  const paper = customsPaperContent(input);
  return paperFile(
    {
      frame: paper,
      typed: typedOnCustoms(input),
      madeAt: input.madeAt,
      blocks: (sheet) => [
        facts(sheet, paper.facts),
        ...table(sheet, paper),
        ...sums(sheet, paper.sums),
        sheet.gap(),
        ...notes(sheet, paper.notes),
        sign(sheet, paper.sign),
      ],
    },
    options,
  );
}
