/**
 * Breaking text into lines.
 */

/** Width in points of a text. */
export type Measure = (text: string) => number;

/**
 * Lines that are no wider than `room`. Breaks at spaces; a word that is too wide by itself is cut between its letters.
 * Line breaks in the text are kept.
 */
export function wrap(text: string, room: number, measure: Measure): string[] {
  return text.split('\n').flatMap((paragraph) => wrapParagraph(paragraph, room, measure));
}

function wrapParagraph(paragraph: string, room: number, measure: Measure): string[] {
  if (measure(paragraph) <= room) return [paragraph];
  const lines: string[] = [];
  let line = '';
  for (const word of paragraph.split(' ').flatMap((long) => pieces(long, room, measure))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line === '' || measure(longer) <= room) {
      line = longer;
    } else {
      lines.push(line);
      line = word;
    }
  }
  return [...lines, line];
}

const letters = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** A word in pieces that fit the room. */
function pieces(word: string, room: number, measure: Measure): string[] {
  if (measure(word) <= room) return [word];
  const found: string[] = [];
  let piece = '';
  for (const { segment } of letters.segment(word)) {
    if (piece !== '' && measure(piece + segment) > room) {
      found.push(piece);
      piece = segment;
    } else {
      piece += segment;
    }
  }
  return [...found, piece];
}

/** The text as it is, or cut with an ellipsis so that it fits the room. */
export function clipped(text: string, room: number, measure: Measure): string {
  if (measure(text) <= room) return text;
  const parts = [...letters.segment(text)].map(({ segment }) => segment);
  while (parts.length > 0 && measure(`${parts.join('').trimEnd()}…`) > room) parts.pop();
  return `${parts.join('').trimEnd()}…`;
}
