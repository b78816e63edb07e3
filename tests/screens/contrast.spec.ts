/**
 * Contrast of the colours themselves, by the formula of WCAG 2.2 (W3C 2023, "relative luminance" and "contrast ratio"): text reads on both
 * grounds and on what is marked, shapes are seen.
 */
import { readFileSync } from 'node:fs';
import { expect, test } from 'playwright/test';

const css = readFileSync(new URL('../../renderer/look/tokens.css', import.meta.url), 'utf8');
const tokens = new Map(
  [...css.matchAll(/--([\w-]+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\)/g)].map(([, name = '', light = '', dark = '']) => [
    name,
    { light, dark },
  ]),
);

function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const channel = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(a: string, b: string): number {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].toSorted((x, y) => y - x);
  return (light + 0.05) / (dark + 0.05);
}

const of = (name: string, look: 'light' | 'dark'): string => {
  const token = tokens.get(name);
  if (!token) throw new Error(`there is no colour ${name}`);
  return token[look];
};

test('black on white is 21, and equal colours are 1', () => {
  expect(contrast('#000000', '#ffffff')).toBe(21);
  expect(contrast('#777777', '#777777')).toBe(1);
  // The least grey that passes on white, as it is often given.
  expect(contrast('#767676', '#ffffff')).toBeGreaterThan(4.5);
});

for (const look of ['light', 'dark'] as const) {
  for (const ground of ['paper', 'sheet']) {
    for (const text of ['ink', 'ink-2', 'red', 'way', 'edit'])
      test(`${text} on ${ground}, ${look}: text of any size`, () => {
        expect(contrast(of(text, look), of(ground, look))).toBeGreaterThanOrEqual(4.5);
      });
    test(`graphite on ${ground}, ${look}: shapes`, () => {
      expect(contrast(of('graphite', look), of(ground, look))).toBeGreaterThanOrEqual(3);
    });
  }
  test(`ink on what is marked, and paper on the black action, ${look}`, () => {
    for (const text of ['ink', 'ink-2']) expect(contrast(of(text, look), of('highlight', look))).toBeGreaterThanOrEqual(4.5);
    expect(contrast(of('paper', look), of('ink', look))).toBeGreaterThanOrEqual(4.5);
  });
}
