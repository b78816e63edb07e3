/**
 * What every paper must look like.
 */
import { expect } from 'vitest';
import { differingPixels, inkPixels, pixels, wordBoxes } from './read-back.ts';

const SIZES = { A4: [595.28, 841.89], Letter: [612, 792] } as const;
const MARGIN = (22 * 72) / 25.4;
/** The foot and later heads stand in the margin, this far from the edge. */
const EDGE = (11 * 72) / 25.4;

/** No word outside the margins, none over another, every page of the size asked for and numbered. */
export function expectWellSet(bytes: Uint8Array, paper: keyof typeof SIZES): void {
  const pages = wordBoxes(bytes);
  const [width, height] = SIZES[paper];
  for (const [index, page] of pages.entries()) {
    expect(page.width).toBeCloseTo(width, 1);
    expect(page.height).toBeCloseTo(height, 1);
    expect(page.words.length).toBeGreaterThan(5);
    for (const word of page.words) {
      expect(word.left, word.text).toBeGreaterThan(MARGIN - 1);
      expect(word.right, word.text).toBeLessThan(width - MARGIN + 1);
      expect(word.top, word.text).toBeGreaterThan(EDGE);
      expect(word.bottom, word.text).toBeLessThan(height - EDGE);
    }
    expect(overlaps(page.words)).toEqual([]);
    expect(page.words.map((word) => word.text).join(' ')).toContain(`page ${index + 1} of ${pages.length}`);
  }
}

/** A paper of subsets draws what one of whole typefaces draws. */
export function expectSamePixels(subsetBytes: Uint8Array, wholeBytes: Uint8Array): void {
  const subset = pixels(subsetBytes);
  const whole = pixels(wholeBytes);
  expect(subset.length).toBe(whole.length);
  for (const [index, page] of subset.entries()) {
    const other = whole[index];
    if (!other) throw new Error('a page is missing');
    expect(inkPixels(page)).toBeGreaterThan(1000);
    expect(differingPixels(page, other)).toBe(0);
  }
}

/** Pairs of words whose boxes share more than a hair: poppler's boxes are as tall as the typeface, so only their middles count. */
function overlaps(words: ReturnType<typeof wordBoxes>[number]['words']): string[] {
  const middle = (word: (typeof words)[number]) => (word.top + word.bottom) / 2;
  const found: string[] = [];
  const byHeight = words.toSorted((a, b) => middle(a) - middle(b));
  byHeight.forEach((one, index) => {
    for (let next = index + 1; next < byHeight.length; next += 1) {
      const other = byHeight[next];
      if (!other || middle(other) - middle(one) > 5) break;
      if (Math.min(one.right, other.right) - Math.max(one.left, other.left) > 0.5) found.push(`${one.text} | ${other.text}`);
    }
  });
  return found;
}
