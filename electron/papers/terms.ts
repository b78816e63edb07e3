/**
 * The terms of a job as a paper to be signed.
 */
import { termsPaperContent, typedOnTerms, type TermsPaperInput, type TermsPart } from '../../core/papers/terms.ts';
import { facts, notes, sign } from './blocks.ts';
import { paperFile, type PaperOptions } from './file.ts';
import type { Block } from './flow.ts';
import type { Sheet } from './setting.ts';

/**
 * Write the paper of the terms: the same bytes for the same content.
 * @throws PaperError when a text has letters that the typefaces do not cover, or the letterhead does not fit; nothing is written then
 */
export async function termsPaper(input: TermsPaperInput, options?: PaperOptions): Promise<Uint8Array> {
  const paper = termsPaperContent(input);
  return paperFile(
    {
      frame: paper,
      typed: typedOnTerms(input),
      madeAt: input.madeAt,
      blocks: (sheet) => [
        facts(sheet, paper.facts),
        ...paper.parts.flatMap((part) => prose(sheet, part)),
        ...notes(sheet, paper.notes),
        sign(sheet, paper.sign),
      ],
    },
    options,
  );
}

/** Text over the whole width, a block for each line. A heading stays with what it heads; no line of a paragraph stands alone on a page. */
function prose({ left, width, setting, plain, strong, lines, gap }: Sheet, { head, text }: TermsPart): Block[] {
  const lineOf = (words: string, style: typeof plain, withNext: boolean): Block => ({
    height: setting.line,
    withNext,
    draw: (pen, y) => pen.text(words, left, y + setting.line - 3, style),
  });
  const heads = head === '' ? [] : lines(head, width, strong).map((line) => lineOf(line, strong, true));
  const body = lines(text, width, plain).map((line, index, all) =>
    lineOf(line, plain, all.length > 1 && (index === 0 || index === all.length - 2)),
  );
  return [...heads, ...body, gap(setting.gap * 0.4)];
}
