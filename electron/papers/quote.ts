/**
 * A quote as a PDF: the same bytes for the same version, and nothing on it that says which program made it.
 */
import { PDFDocument } from 'pdf-lib';
import { quotePaperContent, type QuotePaper, type QuotePaperInput } from '../../core/quotes/paper.ts';
import { typedTexts } from '../../core/quotes/typed.ts';
import { uncovered } from '../../core/words/letters.ts';
import { covers, embedFaces, type Faces } from './faces.ts';
import { flow, type Placed } from './flow.ts';
import { letterhead, type Dress } from './letterhead.ts';
import { embedLogo } from './logo.ts';
import { colourOf, colours, penFor, type Style } from './pen.ts';
import { quoteBlocks, settingAt, type Area } from './quote-blocks.ts';
import { lettersMissing } from './trouble.ts';
import { clipped } from './wrap.ts';

/** Page sizes in points: ISO 216 A4 (210 x 297 mm), ANSI Letter (8.5 x 11 in). */
const SIZES = { A4: [595.28, 841.89], Letter: [612, 792] } as const;
const MM = 72 / 25.4;
const MARGIN = 22 * MM;
/** Foot and later heads stand in the margin. */
const IN_MARGIN = 13 * MM;
const small: Style = { size: 7.75, weight: 'plain', colour: colours.second };

/**
 * Write the paper of a quote's version.
 * @param options.subset false embeds whole typefaces; for comparing only
 * @throws PaperError when a text has letters that the typefaces do not cover, or the letterhead does not fit; nothing is written then
 */
export async function quotePaper(input: QuotePaperInput, options: { subset: boolean } = { subset: true }): Promise<Uint8Array> {
  const [missing] = uncovered(typedTexts(input), covers);
  if (missing) throw lettersMissing(missing.field, missing.letters);

  const content = quotePaperContent(input);
  const document = await PDFDocument.create({ updateMetadata: false });
  const made = new Date(Temporal.Instant.from(input.madeAt).epochMilliseconds);
  document.setTitle(content.title, { showInWindowTitleBar: true });
  document.setAuthor(content.sender.name);
  document.setLanguage('en');
  document.setCreationDate(made);
  document.setModificationDate(made);

  const faces = await embedFaces(document, options.subset);
  const dress: Dress = {
    logo: content.sender.logo && (await embedLogo(document, content.sender.logo)),
    strong: content.accent === null ? colours.ink : colourOf(content.accent),
  };
  draw(document, content, faces, dress);
  return document.save();
}

function draw(document: PDFDocument, content: QuotePaper, faces: Faces, dress: Dress): void {
  const [width, height] = SIZES[content.size];
  const area: Area = { left: MARGIN, width: width - 2 * MARGIN };
  const pages = bestPages(content, faces, dress, area, height);
  pages.forEach((placed, index) => {
    const pen = penFor(document.addPage([width, height]), faces);
    const page = content.page(index + 1, pages.length);
    const measure = (text: string) => faces.plain.width(text, small.size);
    const foot = clipped(content.foot, area.width - measure(page) - 24, measure);
    if (index > 0) {
      pen.text(foot, area.left, IN_MARGIN + small.size, small);
      pen.rule(area.left, IN_MARGIN + small.size + 6, area.width, 0.4, colours.line);
    }
    // Drawn from top to bottom, so that whoever has the paper read out hears it in order.
    for (const { block, y } of placed) block.draw(pen, y);
    pen.text(foot, area.left, height - IN_MARGIN, small);
    pen.text(page, area.left + area.width, height - IN_MARGIN, small, 'right');
  });
}

/** From the easiest on the eye to the tightest. */
const TIGHTNESS = [0, 0.25, 0.5, 0.75];

/** The fewest pages, and of the settings that take no more the easiest on the eye. */
function bestPages(content: QuotePaper, faces: Faces, dress: Dress, area: Area, height: number): Placed[][] {
  const head = letterhead(content, faces, area, dress);
  const lay = (tightness: number) =>
    flow([head, ...quoteBlocks(content, faces, area, settingAt(tightness), dress.strong)], MARGIN, height - MARGIN);
  const fewest = lay(1);
  for (const tightness of TIGHTNESS) {
    const pages = lay(tightness);
    if (pages.length <= fewest.length) return pages;
  }
  return fewest;
}
