/**
 * Exact numbers: decimals and fractions of whole numbers of any size. Only `measured` takes a float, and says to how many places it is meant.
 */
import { Fraction } from 'fraction.js';

/** An exact fraction. Add, multiply and divide it freely; only `roundHalfAway` loses anything. */
export type Exact = Fraction;
/** What an exact number is made from: a decimal written as text ("1250.50"), a whole number, or an exact number. */
export type ExactSource = string | bigint | number | Exact;

const DECIMAL = /^-?\d+(\.\d+)?$/;

/**
 * An exact number from a decimal, a whole number or another exact number.
 * @throws RangeError for text that is not a plain decimal, and for a number that is not whole (a float has already lost something)
 */
export function exact(source: ExactSource): Exact {
  if (source instanceof Fraction) return source;
  if (typeof source === 'number' && !Number.isSafeInteger(source))
    throw new RangeError(`${source} is not a whole number; write it as text`);
  if (typeof source === 'string' && !DECIMAL.test(source)) throw new RangeError(`"${source}" is not a decimal; write it as 1250.50`);
  return new Fraction(source);
}

/**
 * An exact number from one that was measured or read, such as a distance or an amount in JSON, kept to so many places.
 * What a float holds beyond them is noise of its writing, not of the thing.
 */
export function measured(value: number, places: number): Exact {
  return exact(value.toFixed(places));
}

/** The nearest whole number; a tie goes away from zero: 2.5 gives 3, -2.5 gives -3. */
export function roundHalfAway(value: Exact): bigint {
  const magnitude = (2n * value.n + value.d) / (2n * value.d);
  return value.s < 0n ? -magnitude : magnitude;
}

/**
 * An exact number as a decimal with a point, without trailing zeros: "1250.5".
 * What needs more than `places` decimals (a third, say) is rounded half away from zero for showing; sums are never made from it.
 */
export function decimalText(value: ExactSource, places = 9): string {
  const fixed = fixedText(value, places);
  return fixed.includes('.') ? fixed.replace(/\.?0+$/, '') : fixed;
}

/** An exact number as a decimal with exactly so many places: "1250.50". */
export function fixedText(value: ExactSource, places: number): string {
  const scaled = roundHalfAway(exact(value).mul(10n ** BigInt(places)));
  const digits = (scaled < 0n ? -scaled : scaled).toString().padStart(places + 1, '0');
  const whole = digits.slice(0, digits.length - places);
  const sign = scaled < 0n ? '-' : '';
  return places === 0 ? `${sign}${whole}` : `${sign}${whole}.${digits.slice(-places)}`;
}
