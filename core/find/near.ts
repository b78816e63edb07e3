/**
 * Is a word what was meant by a typed one, in spite of a slip of the fingers?
 */

/** Shorter words have too many neighbours to guess among. */
const SHORTEST = 4;

/** Slips that are forgiven in a word of so many letters. */
function slipsIn(letters: number): number {
  if (letters < SHORTEST) return 0;
  return letters < 7 ? 1 : 2;
}

/** Letters that were left out, put in, changed or swapped with the next, from `typed` to the whole of `word` and to its nearest beginning. */
function slipsBetween(typed: string, word: string): { whole: number; beginning: number } {
  let before: number[] = [];
  let last = Array.from({ length: word.length + 1 }, (_, column) => column);
  for (let row = 1; row <= typed.length; row += 1) {
    const next = [row];
    for (let column = 1; column <= word.length; column += 1) {
      const same = typed[row - 1] === word[column - 1];
      const swapped = row > 1 && column > 1 && typed[row - 1] === word[column - 2] && typed[row - 2] === word[column - 1];
      next.push(
        Math.min(
          (last[column] ?? 0) + 1,
          (next[column - 1] ?? 0) + 1,
          (last[column - 1] ?? 0) + (same ? 0 : 1),
          swapped ? (before[column - 2] ?? 0) + 1 : Number.POSITIVE_INFINITY,
        ),
      );
    }
    before = last;
    last = next;
  }
  return { whole: last[word.length] ?? typed.length, beginning: Math.min(...last) };
}

/**
 * How near a word is to a typed one, above 0 and below 1; 0 when it is another word. One slip is forgiven in four letters, two in seven.
 * A word that is still being typed is held against beginnings, with one slip fewer for its length because more words begin alike.
 */
export function nearness(typed: string, word: string): number {
  const allowed = slipsIn(typed.length);
  // No number of slips that is forgiven makes a word of another length.
  if (allowed === 0 || word.length < typed.length - allowed) return 0;
  const { whole, beginning } = slipsBetween(typed, word.slice(0, typed.length + allowed + 1));
  const isWhole = word.length <= typed.length + allowed && whole <= allowed;
  if (isWhole) return 1 - whole / (typed.length + 1);
  const forBeginning = slipsIn(typed.length - 1);
  return beginning <= forBeginning && typed.length > SHORTEST ? 0.9 - beginning / (typed.length + 1) : 0;
}
