/** The little of fontkit that papers use beyond what the PDF writer asks of it; the package ships no types of its own. */
declare module 'fontkit' {
  type Engine = Parameters<import('pdf-lib').PDFDocument['registerFontkit']>[0];
  type Font = Extract<Awaited<ReturnType<Engine['create']>>, { unitsPerEm: number }>;
  /** Units of the typeface. */
  export type Position = { xAdvance: number; xOffset: number; yOffset: number };
  export type Typeface = Omit<Font, 'layout'> & {
    hasGlyphForCodePoint(codePoint: number): boolean;
    layout(...given: Parameters<Font['layout']>): ReturnType<Font['layout']> & { positions: Position[] };
  };
  export function create(bytes: Uint8Array): Typeface;
}
