/**
 * Sizes of files as words and figures. Decimal units (SI prefixes), as disks and cards are sold.
 */

const UNITS = ['kB', 'MB', 'GB', 'TB', 'PB'];

/** "812 bytes", "4.20 kB", "41.2 GB", "1.26 TB": three figures, rounded half up. @param bytes whole, zero or more */
export function bytesInWords(bytes: number): string {
  if (bytes < 1000) return bytes === 1 ? '1 byte' : `${bytes} bytes`;
  let size = bytes;
  let unit = -1;
  // What would be written as 1000 of a unit is one of the next.
  while (size >= 999.5 && unit < UNITS.length - 1) {
    size /= 1000;
    unit += 1;
  }
  return `${size.toFixed(size < 9.995 ? 2 : size < 99.95 ? 1 : 0)} ${UNITS[unit]}`;
}

/** "41,203,441,112": every byte, with commas between thousands. */
export function byteFigures(bytes: number): string {
  return String(bytes).replace(/\B(?=(\d{3})+$)/g, ',');
}
