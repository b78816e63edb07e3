/**
 * A client's statement as a paper.
 */
import { statementPaperContent, typedOnStatement, type StatementPaperInput } from '../../core/papers/statement.ts';
import { facts, notes, sums } from './blocks.ts';
import { paperFile, type PaperOptions } from './file.ts';
import { pay } from './pay.ts';
import { table } from './table.ts';

/**
 * Write the paper of a statement: the same bytes for the same content.
 * @throws PaperError when a text has letters that the typefaces do not cover, or the letterhead does not fit; nothing is written then
 */
export async function statementPaper(input: StatementPaperInput, options?: PaperOptions): Promise<Uint8Array> {
  const paper = statementPaperContent(input);
  return paperFile(
    {
      frame: paper,
      typed: typedOnStatement(input),
      madeAt: input.madeAt,
      blocks: (sheet) => [
        facts(sheet, paper.facts),
        ...table(sheet, paper),
        ...sums(sheet, paper.sums),
        ...(paper.pay ? [pay(sheet, paper.pay)] : [sheet.gap()]),
        ...notes(sheet, paper.notes),
      ],
    },
    options,
  );
}
