/**
 * Drawing on one page: text, rules and pictures, measured in points from the top left corner.
 */
import {
  beginText,
  endText,
  fill,
  moveText,
  PDFOperator,
  PDFOperatorNames,
  rectangle,
  rgb,
  setFillingColor,
  setFontAndSize,
  setTextRise,
  type PDFImage,
  type PDFName,
  type PDFPage,
  type RGB,
} from 'pdf-lib';
import type { Faces, Weight } from './faces.ts';

/** Colours of papers: ink on white, a second ink for small words, a line for rules. */
export const colours = { ink: rgb(0.114, 0.102, 0.082), second: rgb(0.353, 0.325, 0.278), line: rgb(0.78, 0.75, 0.69) };

/** A colour written as `#rrggbb`. */
export function colourOf(hex: string): RGB {
  const part = (from: number) => Number.parseInt(hex.slice(from, from + 2), 16) / 255;
  return rgb(part(1), part(3), part(5));
}

/** How a text is set: its size in points, weight and colour. */
export type Style = { size: number; weight: Weight; colour: RGB };

export type Pen = {
  /** Text with its baseline at `y` from the top; `x` is its left edge, or its right edge where `align` says so. */
  text(text: string, x: number, y: number, style: Style, align?: 'left' | 'right'): void;
  /** A horizontal rule. */
  rule(x: number, y: number, width: number, thickness: number, colour: RGB): void;
  /** Rows of squares, the dark ones filled, in a square of this side whose top left corner is at x, y. */
  squares(rows: readonly (readonly boolean[])[], x: number, y: number, side: number, colour: RGB): void;
  /** A picture whose top left corner is at x, y. */
  picture(image: PDFImage, x: number, y: number, width: number, height: number): void;
};

/** A pen for a page; fonts are added to the page when they are first used on it. */
export function penFor(page: PDFPage, faces: Faces): Pen {
  const height = page.getHeight();
  const keys = new Map<Weight, PDFName>();
  const keyOf = (weight: Weight): PDFName => {
    const known = keys.get(weight);
    if (known) return known;
    const { font } = faces[weight];
    const key = page.node.newFontDictionary(font.name, font.ref);
    keys.set(weight, key);
    return key;
  };
  return {
    text(text, x, y, { size, weight, colour }, align = 'left') {
      if (text === '') return;
      const face = faces[weight];
      const left = align === 'right' ? x - face.width(text, size) : x;
      const runs = face
        .glyphs(text)
        .flatMap(({ rise, shown }) => [setTextRise((rise * size) / 1000), PDFOperator.of(PDFOperatorNames.ShowTextAdjusted, [shown])]);
      page.pushOperators(
        beginText(),
        setFillingColor(colour),
        setFontAndSize(keyOf(weight), size),
        moveText(round(left), round(height - y)),
        ...runs,
        endText(),
      );
    },
    rule(x, y, width, thickness, colour) {
      page.pushOperators(setFillingColor(colour), rectangle(round(x), round(height - y - thickness), round(width), thickness), fill());
    },
    squares(rows, x, y, side, colour) {
      const step = side / rows.length;
      // One path for all, each run of dark squares one rectangle: no hair of light between neighbours.
      const runs = rows.flatMap((row, order) =>
        runsOf(row).map(([from, length]) => rectangle(x + from * step, height - y - (order + 1) * step, length * step, step)),
      );
      page.pushOperators(setFillingColor(colour), ...runs, fill());
    },
    picture(image, x, y, width, tall) {
      page.drawImage(image, { x: round(x), y: round(height - y - tall), width: round(width), height: round(tall) });
    },
  };
}

/** Where dark squares begin in a row, and how many follow one another. */
function runsOf(row: readonly boolean[]): [from: number, length: number][] {
  const runs: [number, number][] = [];
  row.forEach((dark, index) => {
    const last = runs.at(-1);
    if (!dark) return;
    if (last && last[0] + last[1] === index) last[1] += 1;
    else runs.push([index, 1]);
  });
  return runs;
}

/** Hundredths of a point are finer than any printer and keep the bytes short. */
function round(points: number): number {
  return Math.round(points * 100) / 100;
}
