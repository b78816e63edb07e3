/**
 * Text as one line that shows everything in it.
 */

/** Control and direction marks, which let one line pretend to be another, and runs of blanks become one space. */
export function oneLine(text: string): string {
  return text
    .replace(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
}
