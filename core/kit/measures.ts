/**
 * Weights and sizes as people type them. Whole grams and whole millimetres are kept; a pound is 453.59237 g and an inch 25.4 mm exactly
 * (International yard and pound agreement, 1959).
 */
import type { KitItemFields } from '../contract/kit.ts';
import { exact, roundHalfAway } from '../money/exact.ts';
import { formatNumber } from '../money/format.ts';
import { parseNumber, type Read } from '../money/parse.ts';

const gramsOf: Record<string, string> = { g: '1', kg: '1000', lb: '453.59237', lbs: '453.59237', oz: '28.349523125' };
const millimetresOf: Record<string, string> = { mm: '1', cm: '10', m: '1000', in: '25.4' };

/** "850 g", "1.2 kg", "3 lb" in whole grams. @param unit of a number that names none; empty where it must name one */
export function gramsIn(typed: string, unit: 'g' | 'kg' | 'lb' | '' = ''): Read<number> {
  const [, figures = '', named = ''] = /^(.*?)\s*(kg|g|lbs?|oz)?$/i.exec(typed.trim()) ?? [];
  const factor = gramsOf[named.toLowerCase() || unit];
  if (factor === undefined) return { ok: false, sentence: `"${typed}" names no unit; write it as 850 g, 1.2 kg or 3 lb.` };
  const read = parseNumber(figures);
  return read.ok ? { ok: true, value: Number(roundHalfAway(exact(read.value).mul(factor))) } : read;
}

/** "850 g", "1.25 kg". */
export function weightInWords(grams: number): string {
  return grams < 1000 ? `${grams} g` : `${formatNumber(exact(grams).div(1000))} kg`;
}

type Size = NonNullable<KitItemFields['size']>;

/** "40 x 30 x 20 cm" in whole millimetres; units are mm, cm, m and in, and cm where none is named. */
export function sizeIn(typed: string): Read<Size> {
  const unclear: Read<Size> = { ok: false, sentence: `"${typed}" is not a size; write it as 40 x 30 x 20 cm.` };
  const [, figures = '', named = 'cm'] = /^(.*?)\s*(mm|cm|m|in)?$/i.exec(typed.trim()) ?? [];
  const factor = millimetresOf[named.toLowerCase()] ?? '10';
  const [length, width, height, more] = figures.split(/\s*[x×*]\s*/i).map((part) => {
    const read = parseNumber(part);
    return read.ok ? Number(roundHalfAway(exact(read.value).mul(factor))) : undefined;
  });
  if (length === undefined || width === undefined || height === undefined || more !== undefined) return unclear;
  return { ok: true, value: { length, width, height } };
}

/** "40 × 30 × 20 cm". */
export function sizeInWords({ length, width, height }: Size): string {
  return `${[length, width, height].map((side) => formatNumber(exact(side).div(10))).join(' × ')} cm`;
}
