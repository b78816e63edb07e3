/**
 * The typefaces of papers: read once, measured with kerning, embedded as subsets.
 */
import { readFileSync } from 'node:fs';
import * as fontkit from 'fontkit';
import { PDFArray, PDFHexString, PDFNumber, type PDFDocument, type PDFFont } from 'pdf-lib';
import { shaperOf, type Shaper } from './shaping.ts';

/** Weights that papers are set in. */
export type Weight = 'plain' | 'strong';

const FILES: Record<Weight, string> = { plain: 'plex-sans-400.ttf', strong: 'plex-sans-600.ttf' };
/** Names in the file; a subset bears a tag of six capitals (ISO 32000-1:2008, 9.6.4). */
const NAMES: Record<Weight, string> = { plain: 'IBMPlexSans', strong: 'IBMPlexSans-SemiBold' };
const TAGS: Record<Weight, string> = { plain: 'PLAINS', strong: 'STRONG' };

type Typeface = { bytes: Uint8Array; font: fontkit.Font; shaper: Shaper };
const read = new Map<Weight, Typeface>();

function typefaceOf(weight: Weight): Typeface {
  const known = read.get(weight);
  if (known) return known;
  const bytes = readFileSync(new URL(`../../assets/fonts/${FILES[weight]}`, import.meta.url));
  const font = fontkit.create(bytes);
  if (!('layout' in font)) throw new TypeError(`${FILES[weight]} holds several typefaces`);
  const found = { bytes: new Uint8Array(bytes), font, shaper: shaperOf(font) };
  read.set(weight, found);
  return found;
}

/** True when every weight has a shape for the code point; without this check a missing letter is drawn as an empty box. */
export function covers(codePoint: number): boolean {
  return typefaceOf('plain').font.hasGlyphForCodePoint(codePoint) && typefaceOf('strong').font.hasGlyphForCodePoint(codePoint);
}

/** Glyphs of a text at one height above the baseline, as the array of a TJ operator. `rise` is in thousandths of the size. */
type GlyphRun = { rise: number; shown: PDFArray };

/** A weight embedded in one document. */
type Face = {
  font: PDFFont;
  /** Width in points of a text at a size, kerning included. */
  width(text: string, size: number): number;
  /** The text as glyphs with kerning and placed marks. */
  glyphs(text: string): GlyphRun[];
};

export type Faces = Record<Weight, Face>;

/**
 * Embed both weights in a document.
 * @param subset only the shapes that are used (the default of papers), or the whole typeface for comparison
 */
export async function embedFaces(document: PDFDocument, subset: boolean): Promise<Faces> {
  return { plain: await embedFace(document, 'plain', subset), strong: await embedFace(document, 'strong', subset) };
}

async function embedFace(document: PDFDocument, weight: Weight, subset: boolean): Promise<Face> {
  const { bytes, font, shaper } = typefaceOf(weight);
  document.registerFontkit({ create: () => withShaper(font, shaper) });
  const embedded = await document.embedFont(bytes, { subset, customName: subset ? `${TAGS[weight]}+${NAMES[weight]}` : NAMES[weight] });
  const scale = 1000 / font.unitsPerEm;
  return {
    font: embedded,
    width: (text, size) => (shaper.advance(text) * scale * size) / 1000,
    glyphs: (text) => runsOf(document, shaper.shape(text), embedded.encodeText(text).asString(), scale),
  };
}

/** The typeface as the PDF writer asks for it, answering from what is shaped already. */
function withShaper(font: fontkit.Font, { shape }: Shaper): fontkit.Font {
  return Object.create(font, { layout: { value: (text: string) => ({ glyphs: shape(text).map(({ glyph }) => glyph) }) } });
}

/**
 * A reader of the file moves on by a glyph's own width; what kerning and the place of a mark differ from it stands between the glyphs.
 * @param hex four digits for each glyph
 */
function runsOf(document: PDFDocument, text: ReturnType<Shaper['shape']>, hex: string, scale: number): GlyphRun[] {
  const runs: GlyphRun[] = [];
  let owed = 0;
  let pending = '';
  const flush = () => {
    if (pending !== '') runs.at(-1)?.shown.push(PDFHexString.of(pending));
    pending = '';
  };
  text.forEach(({ glyph, advance, dx, dy }, index) => {
    const rise = dy * scale;
    const shift = owed + dx;
    owed = advance - dx - glyph.advanceWidth;
    if (runs.at(-1)?.rise !== rise) {
      flush();
      runs.push({ rise, shown: PDFArray.withContext(document.context) });
    }
    if (shift !== 0) {
      flush();
      runs.at(-1)?.shown.push(PDFNumber.of(-shift * scale));
    }
    pending += hex.slice(index * 4, index * 4 + 4);
  });
  flush();
  return runs;
}
