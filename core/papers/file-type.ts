/**
 * What a file is, by its first bytes: a name or a stated type may say anything.
 */

export type FileType = { type: string; ending: string };

const PDF: FileType = { type: 'application/pdf', ending: 'pdf' };
const JPEG: FileType = { type: 'image/jpeg', ending: 'jpg' };
const PNG: FileType = { type: 'image/png', ending: 'png' };
const WEBP: FileType = { type: 'image/webp', ending: 'webp' };
const HEIC: FileType = { type: 'image/heic', ending: 'heic' };

/** A table that is kept beside a paper; it is made here and never taken from outside. */
const CSV: FileType = { type: 'text/csv', ending: 'csv' };

/** What is taken as a receipt or a signed copy. */
const TYPES = [PDF, JPEG, PNG, WEBP, HEIC];
/** Brands of the container that phones write pictures in (ISO/IEC 23008-12). */
const HEIC_BRANDS = ['heic', 'heix', 'heim', 'heis', 'hevc', 'hevx', 'mif1', 'msf1'];
const PNG_MARK = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const JPEG_MARK = [0xff, 0xd8, 0xff];

/** The type of a PDF or of a picture; null for anything else. Sixteen bytes are enough. */
export function fileType(bytes: Uint8Array): FileType | null {
  const text = (from: number, to: number): string => String.fromCharCode(...bytes.subarray(from, to));
  if (text(0, 5) === '%PDF-') return PDF;
  if (JPEG_MARK.every((byte, at) => bytes[at] === byte)) return JPEG;
  if (PNG_MARK.every((byte, at) => bytes[at] === byte)) return PNG;
  if (text(0, 4) === 'RIFF' && text(8, 12) === 'WEBP') return WEBP;
  return text(4, 8) === 'ftyp' && HEIC_BRANDS.includes(text(8, 12)) ? HEIC : null;
}

/** The ending of a file's name by its type; "bin" for one that is not known. */
export const endingOf = (type: string): string => [...TYPES, CSV].find((each) => each.type === type)?.ending ?? 'bin';

/** A bare name with the ending that its type asks for. */
export function namedBy({ ending }: FileType, name: string): string {
  const bare = name.replace(/^.*[\\/]/, '').trim();
  const dot = bare.lastIndexOf('.');
  const stem = dot > 0 ? bare.slice(0, dot) : bare;
  const own =
    dot > 0 &&
    [ending, ...(ending === 'jpg' ? ['jpeg'] : []), ...(ending === 'heic' ? ['heif'] : [])].includes(bare.slice(dot + 1).toLowerCase());
  return own ? bare : `${stem || 'receipt'}.${ending}`;
}

/** Why a file is not taken. */
export const WRONG_TYPE = 'is no PDF and no JPEG, PNG, WebP or HEIC picture; photograph it, or save it as a PDF';
export const TOO_LARGE = 'is larger than 8 MB; make the picture smaller, or save it as a smaller PDF';
