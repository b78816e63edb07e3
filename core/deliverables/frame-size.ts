/**
 * A frame size as it is typed: "1920 x 1080".
 */
import type { Read } from '../money/parse.ts';

export type FrameSize = { width: number | null; height: number | null };

/** Pixels, width first; nothing typed is no size. */
export function parseFrameSize(typed: string): Read<FrameSize> {
  const text = typed.trim();
  if (text === '') return { ok: true, value: { width: null, height: null } };
  const found = /^(\d{1,5})\s*(?:x|×|by|\*)\s*(\d{1,5})$/i.exec(text);
  const [width, height] = [Number(found?.[1]), Number(found?.[2])];
  return found && width > 0 && height > 0
    ? { ok: true, value: { width, height } }
    : { ok: false, sentence: 'write it as width x height, such as 1920 x 1080' };
}

export function frameSizeText({ width, height }: FrameSize): string {
  return width === null || height === null ? '' : `${width} x ${height}`;
}
