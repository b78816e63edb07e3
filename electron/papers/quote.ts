/**
 * A quote's version as a paper.
 */
import { quotePaperContent, type QuotePaperInput } from '../../core/quotes/paper.ts';
import { typedTexts } from '../../core/quotes/typed.ts';
import { facts, listed, notes, sign, sums } from './blocks.ts';
import { paperFile, type PaperOptions } from './file.ts';
import { table } from './table.ts';

/**
 * Write the paper of a quote's version: the same bytes for the same version.
 * @throws PaperError when a text has letters that the typefaces do not cover, or the letterhead does not fit; nothing is written then
 */
export async function quotePaper(input: QuotePaperInput, options?: PaperOptions): Promise<Uint8Array> {
  const content = quotePaperContent(input);
  const { deliverables } = content;
  return paperFile(
    {
      frame: content,
      typed: typedTexts(input),
      madeAt: input.madeAt,
      blocks: (sheet) => [
        facts(sheet, content.facts),
        ...listed(sheet, deliverables.length > 0 ? [{ label: 'To deliver', text: deliverables.join('\n') }] : [], 'plain'),
        ...table(sheet, content),
        ...sums(sheet, content.sums),
        sheet.gap(),
        ...listed(sheet, content.terms, 'small'),
        ...notes(sheet, content.notes),
        sign(sheet, content.sign),
      ],
    },
    options,
  );
}
