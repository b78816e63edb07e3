/**
 * A picture for the top of papers, as a file that was chosen. It is read by its bytes: a name proves nothing.
 */
import type { Logo } from '../../../core/contract/setup.ts';
import { formatNumber } from '../../../core/money/format.ts';

/** As much as a set-up keeps, in bytes. */
const MOST = 220_000;
/** As many pixels along a side as papers take. */
const LONGEST = 3000;
const beginnings = [
  { type: 'image/png', bytes: [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a] },
  { type: 'image/jpeg', bytes: [0xff, 0xd8, 0xff] },
] as const;

const inThousands = (bytes: number): string => formatNumber(Math.ceil(bytes / 1000));

/** The picture, or the sentence that says why it cannot be taken. */
export async function readPicture(file: File): Promise<{ logo: Logo } | { sentence: string }> {
  if (file.size > MOST)
    return {
      sentence: `${file.name} has ${inThousands(file.size)} kB; at most ${inThousands(MOST)} kB are kept. Save it smaller and choose that.`,
    };
  const bytes = new Uint8Array(await file.arrayBuffer());
  const kind = beginnings.find((beginning) => beginning.bytes.every((byte, at) => bytes[at] === byte));
  if (!kind) return { sentence: `${file.name} is neither PNG nor JPEG. Save the picture as one of them and choose that.` };
  try {
    const { width, height } = await createImageBitmap(new Blob([bytes], { type: kind.type }));
    if (Math.max(width, height) > LONGEST)
      return {
        sentence: `${file.name} is ${width} by ${height} pixels; papers take at most ${formatNumber(LONGEST)} along a side. Save it smaller.`,
      };
  } catch {
    return { sentence: `${file.name} cannot be read as a picture. Save it anew and choose that.` };
  }
  return { logo: { type: kind.type, base64: bytes.toBase64() } };
}
