/**
 * A client's statement as a paper.
 */
import { statementPaperContent, typedOnStatement, type StatementPaperInput } from '../../core/papers/statement.ts';
import { account } from './account.ts';
import { paperFile, type PaperOptions } from './file.ts';

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
      blocks: (sheet) => account(sheet, paper),
    },
    options,
  );
}
