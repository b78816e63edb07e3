/**
 * Papers read back by poppler: pixels and positions.
 */
import { execFileSync } from 'node:child_process';
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { temporaryFolder } from '../store.ts';

export type Picture = { width: number; height: number; grey: Uint8Array };

/** Each page as grey pixels, so many to the inch. */
export function pixels(bytes: Uint8Array, inch = 100): Picture[] {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'paper.pdf'), bytes);
  execFileSync('pdftoppm', ['-gray', '-r', String(inch), join(folder, 'paper.pdf'), join(folder, 'page')]);
  return readdirSync(folder)
    .filter((name) => name.endsWith('.pgm'))
    .sort()
    .map((name) => picture(readFileSync(join(folder, name))));
}

/** A binary PGM (P5): three numbers of head, then a byte for each pixel. */
function picture(file: Buffer): Picture {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(file.subarray(0, 64).toString('latin1'));
  if (!head) throw new Error('not a picture of grey pixels');
  return { width: Number(head[1]), height: Number(head[2]), grey: new Uint8Array(file.subarray(head[0].length)) };
}

/** Pixels that are not quite white. */
export function inkPixels({ grey }: Picture): number {
  return grey.reduce((count, value) => count + (value < 250 ? 1 : 0), 0);
}

/** Pixels that differ between two pictures of one size. */
export function differingPixels(one: Picture, other: Picture): number {
  if (one.width !== other.width || one.height !== other.height) throw new Error('two sizes');
  return one.grey.reduce((count, value, index) => count + (value === other.grey[index] ? 0 : 1), 0);
}

type Word = { text: string; left: number; top: number; right: number; bottom: number };
export type WordsOfPage = { width: number; height: number; words: Word[] };

/** Every word with its box in points from the top left corner. */
export function wordBoxes(bytes: Uint8Array): WordsOfPage[] {
  const folder = temporaryFolder();
  writeFileSync(join(folder, 'paper.pdf'), bytes);
  const xml = execFileSync('pdftotext', ['-bbox', join(folder, 'paper.pdf'), '-'], { encoding: 'utf8', maxBuffer: 1e8 });
  return [...xml.matchAll(/<page width="([\d.]+)" height="([\d.]+)">([\s\S]*?)<\/page>/g)].map(([, width, height, body]) => ({
    width: Number(width),
    height: Number(height),
    words: [...(body ?? '').matchAll(/<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)<\/word>/g)].map(
      ([, left, top, right, bottom, text]) => ({
        text: text ?? '',
        left: Number(left),
        top: Number(top),
        right: Number(right),
        bottom: Number(bottom),
      }),
    ),
  }));
}
