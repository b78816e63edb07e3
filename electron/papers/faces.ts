/**
 * The typefaces of papers: read once, measured with kerning, embedded as subsets.
 */
import { readFileSync } from 'node:fs';
import * as fontkit from 'fontkit';
import { PDFArray, PDFHexString, PDFNumber, type PDFDocument, type PDFFont } from 'pdf-lib';

/** Weights that papers are set in. */
export type Weight = 'plain' | 'strong';

const FILES: Record<Weight, string> = { plain: 'plex-sans-400.ttf', strong: 'plex-sans-600.ttf' };
/** Names in the file; a subset bears a tag of six capitals (ISO 32000-1:2008, 9.6.4). */
const NAMES: Record<Weight, string> = { plain: 'IBMPlexSans', strong: 'IBMPlexSans-SemiBold' };
const TAGS: Record<Weight, string> = { plain: 'PLAINS', strong: 'STRONG' };
const read = new Map<Weight, { bytes: Uint8Array; typeface: fontkit.Font }>();

function typefaceOf(weight: Weight): { bytes: Uint8Array; typeface: fontkit.Font } {
  const known = read.get(weight);
  if (known) return known;
  const bytes = readFileSync(new URL(`../../assets/fonts/${FILES[weight]}`, import.meta.url));
  const typeface = fontkit.create(bytes);
  if (!('layout' in typeface)) throw new TypeError(`${FILES[weight]} holds several typefaces`);
  const found = { bytes: new Uint8Array(bytes), typeface };
  read.set(weight, found);
  return found;
}

/** True when every weight has a shape for the code point; without this check a missing letter is drawn as an empty box. */
export function covers(codePoint: number): boolean {
  return typefaceOf('plain').typeface.hasGlyphForCodePoint(codePoint) && typefaceOf('strong').typeface.hasGlyphForCodePoint(codePoint);
}

/** Glyphs of a text at one height above the baseline, as the array of a TJ operator. `rise` is in thousandths of the size. */
export type GlyphRun = { rise: number; shown: PDFArray };

/** A weight embedded in one document. */
export type Face = {
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
  const { bytes, typeface } = typefaceOf(weight);
  document.registerFontkit({ create: () => typeface });
  const font = await document.embedFont(bytes, { subset, customName: subset ? `${TAGS[weight]}+${NAMES[weight]}` : NAMES[weight] });
  const scale = 1000 / typeface.unitsPerEm;
  const widths = new Map<string, number>();
  // A letter that is not there whole is built from its base and marks.
  const built = (text: string) =>
    Array.from(text, (letter) => (typeface.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0) ? letter : letter.normalize('NFD'))).join('');
  return {
    font,
    width(text, size) {
      let width = widths.get(text);
      if (width === undefined) {
        width = typeface.layout(built(text)).positions.reduce((sum, position) => sum + position.xAdvance, 0) * scale;
        widths.set(text, width);
      }
      return (width * size) / 1000;
    },
    glyphs(text) {
      const letters = built(text);
      return runsOf(document, typeface, font.encodeText(letters).asString(), letters);
    },
  };
}

/**
 * A reader of the file moves on by a glyph's own width; what kerning and the place of a mark differ from it stands between the glyphs.
 * @param hex four digits for each glyph of the text's layout
 */
function runsOf(document: PDFDocument, typeface: fontkit.Font, hex: string, text: string): GlyphRun[] {
  const scale = 1000 / typeface.unitsPerEm;
  const { glyphs, positions } = typeface.layout(text);
  const runs: GlyphRun[] = [];
  let owed = 0;
  let pending = '';
  const flush = () => {
    if (pending !== '') runs.at(-1)?.shown.push(PDFHexString.of(pending));
    pending = '';
  };
  positions.forEach((position, index) => {
    const rise = position.yOffset * scale;
    const shift = owed + position.xOffset;
    owed = position.xAdvance - position.xOffset - (glyphs[index]?.advanceWidth ?? 0);
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
