/**
 * Sizes of files as words and figures. Decimal units (SI prefixes), as disks and cards are sold.
 */
import { exact, fixedText, roundHalfAway } from '../money/exact.ts';

const UNITS = ['kB', 'MB', 'GB', 'TB', 'PB'];

/** "812 bytes", "4.20 kB", "41.2 GB", "1.26 TB": three figures, rounded half up. @param bytes whole, zero or more */
export function bytesInWords(bytes: number): string {
  if (bytes < 1000) return bytes === 1 ? '1 byte' : `${bytes} bytes`;
  for (const [order, unit] of UNITS.entries()) {
    for (const places of [2, 1, 0]) {
      const last = unit === UNITS.at(-1) && places === 0;
      const figures = roundHalfAway(
        exact(bytes)
          .mul(10n ** BigInt(places))
          .div(1000n ** BigInt(order + 1)),
      );
      // What would be written with four figures has fewer places, or is one of the next unit.
      if (figures < 1000n || last) return `${fixedText(exact(figures).div(10n ** BigInt(places)), places)} ${unit}`;
    }
  }
  throw new RangeError(`${bytes} is no size`);
}

/** "41,203,441,112": every byte, with commas between thousands. */
export function byteFigures(bytes: number): string {
  return String(bytes).replace(/\B(?=(\d{3})+$)/g, ',');
}
