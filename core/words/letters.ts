/**
 * Text made ready for paper, and the letters in it that a typeface does not have.
 */

/** A text that a person typed, and where, in words: "the client's name". */
export type TypedText = { field: string; text: string };
/** The letters of one field that cannot be drawn, each once, in the order in which they occur. */
export type UncoveredField = { field: string; letters: string[] };

/** Marks that are not drawn by themselves: joiners, direction marks, soft hyphens, byte order marks, variation selectors. */
const UNSEEN = /[\p{Cf}\ufe00-\ufe0f]/gu;
/** Every blank but the ones that forbid a line break. */
const BLANKS = /[^\S\n\u00a0\u202f]+/gu;

/** Composed letters (NFC), unseen marks left out, any run of blanks one space. Line breaks stay. */
export function paperText(text: string): string {
  return text.replace(/\r\n?/g, '\n').replace(UNSEEN, '').normalize('NFC').replace(BLANKS, ' ').trim();
}

/** The lines of a text that have something on them. */
export function paperLines(text: string): string[] {
  return paperText(text)
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
}

/** The fields with letters that `covers` refuses. Texts are looked at as they would be drawn. */
export function uncovered(texts: readonly TypedText[], covers: (codePoint: number) => boolean): UncoveredField[] {
  return texts
    .map(({ field, text }) => ({
      field,
      letters: Array.from(new Set(paperText(text))).filter((letter) => letter !== '\n' && !drawable(letter, covers)),
    }))
    .filter(({ letters }) => letters.length > 0);
}

/** True for a letter that is there whole, or whose base letter and marks all are. */
function drawable(letter: string, covers: (codePoint: number) => boolean): boolean {
  const has = (part: string) => covers(part.codePointAt(0) ?? 0);
  return has(letter) || Array.from(letter.normalize('NFD')).every(has);
}
