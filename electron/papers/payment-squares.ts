/**
 * A payment code as dark and light squares (ISO/IEC 18004), at error level M as the guideline EPC069-12 asks.
 */
import { encodeQR } from 'qr';

/** Rows of squares from the top, true where dark, without the light margin of four squares that a reader needs around them. */
export function paymentSquares(text: string): boolean[][] {
  // The encoder draws at least one light square around.
  return encodeQR(text, 'raw', { ecc: 'medium', encoding: 'byte', border: 1 })
    .slice(1, -1)
    .map((row) => row.slice(1, -1));
}
