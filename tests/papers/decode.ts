/**
 * Payment codes read by a decoder that knows nothing of how they were made.
 */
import { createRequire } from 'node:module';
import type jsQR from 'jsqr';

const decode = createRequire(import.meta.url)('jsqr') as typeof jsQR;

/** So many dots a square: enough for any reader. */
const DOTS = 4;
/** Light squares that ISO/IEC 18004 asks for around a code. */
const MARGIN = 4;

/** The text in a code, and its version (1 is 21 squares wide, each next one four more); null where nothing is read. */
export function readSquares(squares: readonly (readonly boolean[])[]): { text: string; version: number } | null {
  const side = (squares.length + 2 * MARGIN) * DOTS;
  const dots = new Uint8ClampedArray(side * side * 4).fill(255);
  for (let y = 0; y < side; y += 1)
    for (let x = 0; x < side; x += 1) {
      const dark = squares[Math.floor(y / DOTS) - MARGIN]?.[Math.floor(x / DOTS) - MARGIN] ?? false;
      if (dark) dots.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3);
    }
  return readDots(dots, side, side);
}

/** The same from dots of red, green, blue and opacity, such as a page that was drawn. */
export function readDots(dots: Uint8ClampedArray, width: number, height: number): { text: string; version: number } | null {
  const found = decode(dots, width, height);
  return found && { text: new TextDecoder().decode(new Uint8Array(found.binaryData)), version: found.version };
}
