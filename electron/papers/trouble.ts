/**
 * Why a paper cannot be written: something in a field that does not go on paper. Nothing was written when this is thrown.
 */
export class PaperError extends Error {
  /** The field in words: "the client's organisation". */
  readonly field: string;
  /** Letters that the typefaces do not have, each once; empty where the trouble is another. */
  readonly letters: readonly string[];
  /** What to do about it, as a sentence. */
  readonly todo: string;
  constructor(what: string, todo: string, field: string, letters: readonly string[] = []) {
    super(what);
    this.field = field;
    this.letters = letters;
    this.todo = todo;
  }
}

/** At most so many letters are named in a sentence. */
const NAMED = 8;

/** Letters that the typefaces of papers do not have. */
export function lettersMissing(field: string, letters: readonly string[]): PaperError {
  const named = letters.slice(0, NAMED).join(' ');
  const more = letters.length > NAMED ? ` and ${letters.length - NAMED} more` : '';
  return new PaperError(
    `The typeface of papers has no ${named}${more} (in ${field}).`,
    `Write ${field} in Latin, Greek or Cyrillic letters, then make the paper again.`,
    field,
    letters,
  );
}
