/**
 * A pasted confirmation in small pieces: lines, and sentences within a line. A leg is a run of them.
 */
import { clean } from '../../inquiries/parts/clean.ts';

/** Offsets are those of the plain text. */
export type Unit = { start: number; end: number; text: string; afterBlank: boolean };
/** The units that are read, and where a place of the plain text stood in what was pasted. */
export type Units = { units: Unit[]; from: (offset: number) => number; cut: boolean };

/** More than this is no confirmation; what stands behind it is not read. */
const MOST_UNITS = 800;
/** Longest unit: nothing in a confirmation is said in one breath of more. */
const LONGEST = 400;

/** Take a text apart. Nothing is lost but blank lines; `cut` where the text goes on behind what is read. */
export function unitsOf(pasted: string): Units {
  const { text, from } = clean(pasted);
  const units: Unit[] = [];
  let afterBlank = false;
  let start = 0;
  for (const line of text.split('\n')) {
    let at = start;
    for (const piece of line.split(/(?<=[;|!?])\s+|(?<=\p{Ll}{3}\.|\d\.|\)\.)\s+(?=\p{Lu})/u)) {
      const found = line.indexOf(piece, at - start) + start;
      for (let cut = 0; cut < piece.length; cut += LONGEST) {
        const part = piece.slice(cut, cut + LONGEST);
        if (part.trim() === '') continue;
        if (units.length === MOST_UNITS) return { units, from, cut: true };
        units.push({ start: found + cut, end: found + cut + part.length, text: part, afterBlank });
        afterBlank = false;
      }
      at = found + piece.length;
    }
    if (line.trim() === '') afterBlank = true;
    start += line.length + 1;
  }
  return { units, from, cut: false };
}
