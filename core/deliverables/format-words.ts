/**
 * The format of a finished file in words.
 */
import type { Format } from '../contract/templates.ts';

/** "1920 x 1080, frame rate 29.97 drop, H.264, −16 LUFS, captions: burned in": what is known, in this order; empty where nothing is. */
export function formatInWords({ width, height, rate, codec, loudness, captions, other }: Format): string {
  const size = width !== null && height !== null ? `${width} x ${height}` : '';
  const frames = rate.trim() === '' ? '' : `frame rate ${rate.trim()}`;
  const parts = [size, frames, codec, loudness, captions === '' ? '' : `captions: ${captions}`, other.replace(/\s*\n\s*/g, '; ')];
  return parts
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .join(', ');
}
