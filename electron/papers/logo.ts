/**
 * The sender's picture, read into a document.
 */
import type { PDFDocument, PDFImage } from 'pdf-lib';
import type { Logo } from '../../core/contract/setup.ts';
import { PaperError } from './trouble.ts';

/** Longest side in pixels; a small file can unfold into a picture that fills the memory. */
const LONGEST = 3000;

/** @throws PaperError for bytes that are no picture of the stated type, or a picture that is too large */
export async function embedLogo(document: PDFDocument, { type, base64 }: Logo): Promise<PDFImage> {
  const bytes = new Uint8Array(Buffer.from(base64, 'base64'));
  if (type === 'image/png' && longestSideOfPng(bytes) > LONGEST)
    throw new PaperError(`Your logo is more than ${LONGEST} pixels long.`, 'Save it smaller, then make the paper again.', 'your logo');
  try {
    return type === 'image/png' ? await document.embedPng(bytes) : await document.embedJpg(bytes);
  } catch {
    throw new PaperError('Your logo cannot be read as a picture.', 'Save it anew as PNG or JPEG, then make the paper again.', 'your logo');
  }
}

/** Width and height stand in bytes 16 to 24 of a PNG (ISO/IEC 15948, IHDR chunk). */
function longestSideOfPng(bytes: Uint8Array): number {
  if (bytes.length < 24) return 0;
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  return Math.max(view.getUint32(16), view.getUint32(20));
}
