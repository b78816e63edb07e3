/**
 * A paper as a PDF: the same bytes for the same content, and nothing on it that says which program made it.
 */
import { PDFDocument } from 'pdf-lib';
import type { PaperFrame } from '../../core/papers/content.ts';
import { uncovered, type TypedText } from '../../core/words/letters.ts';
import { covers, embedFaces, type Faces } from './faces.ts';
import { flow, type Block, type Placed } from './flow.ts';
import { letterhead, type Dress } from './letterhead.ts';
import { embedLogo } from './logo.ts';
import { colourOf, colours, penFor, type Style } from './pen.ts';
import { settingAt, sheetFor, type Area, type Sheet } from './setting.ts';
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
 * `frame` stands around the matter, `typed` is everything that somebody typed, `madeAt` the instant of the paper (UTC with Z),
 * and `blocks` is the matter below the letterhead, in order.
 */
export type PaperParts = { frame: PaperFrame; typed: readonly TypedText[]; madeAt: string; blocks: (sheet: Sheet) => Block[] };
/** `subset: false` embeds whole typefaces; for comparing only. */
export type PaperOptions = { subset: boolean };

/**
 * Write a paper.
 * @throws PaperError when a text has letters that the typefaces do not cover, or the letterhead does not fit; nothing is written then
 */
export async function paperFile(
  { frame, typed, madeAt, blocks }: PaperParts,
  options: PaperOptions = { subset: true },
): Promise<Uint8Array> {
  const [missing] = uncovered(typed, covers);
  if (missing) throw lettersMissing(missing.field, missing.letters);

  const document = await PDFDocument.create({ updateMetadata: false });
  const made = new Date(Temporal.Instant.from(madeAt).epochMilliseconds);
  document.setTitle(frame.title, { showInWindowTitleBar: true });
  document.setAuthor(frame.sender.name);
  document.setLanguage('en');
  document.setCreationDate(made);
  document.setModificationDate(made);

  const faces = await embedFaces(document, options.subset);
  const dress: Dress = {
    logo: frame.sender.logo && (await embedLogo(document, frame.sender.logo)),
    strong: frame.accent === null ? colours.ink : colourOf(frame.accent),
  };
  draw(document, frame, blocks, faces, dress);
  return document.save();
}

function draw(document: PDFDocument, frame: PaperFrame, blocks: PaperParts['blocks'], faces: Faces, dress: Dress): void {
  const [width, height] = SIZES[frame.size];
  const area: Area = { left: MARGIN, width: width - 2 * MARGIN };
  const head = letterhead(frame, faces, area, dress);
  const lay = (tightness: number) =>
    flow([head, ...blocks(sheetFor(faces, area, settingAt(tightness), dress.strong))], MARGIN, height - MARGIN);
  const pages = bestPages(lay);
  pages.forEach((placed, index) => {
    const pen = penFor(document.addPage([width, height]), faces);
    const page = frame.page(index + 1, pages.length);
    const measure = (text: string) => faces.plain.width(text, small.size);
    const foot = clipped(frame.foot, area.width - measure(page) - 24, measure);
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
function bestPages(lay: (tightness: number) => Placed[][]): Placed[][] {
  const fewest = lay(1);
  for (const tightness of TIGHTNESS) {
    const pages = lay(tightness);
    if (pages.length <= fewest.length) return pages;
  }
  return fewest;
}
