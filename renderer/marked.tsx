import { plainText } from '../core/places/fold.ts';

/** A text with the words marked that begin as one of these do. */
export function Marked({ text, words }: { text: string; words: readonly string[] }) {
  // Every second piece is a word; what lies between stays as it is.
  return text.split(/([\p{L}\p{N}]+)/u).map((piece, index) => {
    const folded = plainText(piece);
    return index % 2 === 1 && words.some((word) => folded.startsWith(word)) ? <mark key={index}>{piece}</mark> : piece;
  });
}
