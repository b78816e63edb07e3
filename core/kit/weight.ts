/**
 * Weights as people type them. Whole grams are kept; a pound is 453.59237 g exactly (International yard and pound agreement, 1959).
 */
import { exact, roundHalfAway } from '../money/exact.ts';
import { formatNumber } from '../money/format.ts';
import { parseNumber, type Read } from '../money/parse.ts';

const gramsOf: Record<string, string> = { g: '1', kg: '1000', lb: '453.59237', lbs: '453.59237', oz: '28.349523125' };

/** "850 g", "1.2 kg", "3 lb" in whole grams. @param unit of a number that names none; empty where it must name one */
export function gramsIn(typed: string, unit: 'g' | 'kg' | 'lb' | ''): Read<number> {
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
