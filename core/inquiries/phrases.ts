/**
 * Phrases written in words, made one pattern: what people say is kept as lists that can be read, not as one long row of marks.
 *
 * A phrase stands on its line or between bars. In it `a/b` is one word of some, `word?` may be missing, `stem*` has any ending,
 * `load-in` is also "load in" and "loadin", `up_for` is two words where one is expected, `...` is up to four words of any kind, `{name}` is one phrase of another list,
 * and a last `#` says that an hour or a number follows.
 */

/** Up to four words that do not matter. */
const ANY_WORDS = String.raw`(?:\s[^\s.,;:!?()]{1,20}){0,4}`;
/** Small words and then an hour: "at 7", "by about half past", "from noon". */
const HOUR_FOLLOWS = String.raw`(?=,?\s?[:=-]?\s?(?:(?:is|are|at|by|from|for|around|about|like|maybe|roughly|approx|circa|ca|c|say|the|no later than|latest|time|please|pls|round|klo|kl|ab|um)\.?\s){0,3}~?(?:\d|noon|midday|midnight|half|quarter|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve))`;
/** Letters of the Latin scripts as ranges: classes of all letters make patterns of many phrases slow to build. */
const LETTER = String.raw`[\w\u00c0-\u024f]`;
const FROM_HERE = `(?<!${LETTER})`;
const TO_HERE = `(?!${LETTER})`;

const literal = (word: string): string =>
  word
    .replace(/[.+^$()[\]\\]/g, String.raw`\$&`)
    .replaceAll('_', '\\s')
    .replaceAll('-', '[- ]?')
    .replaceAll('*', `${LETTER}{0,12}`);

function piece(written: string, lists: Readonly<Record<string, string>>): string {
  const named = /^\{(\w+)\}$/.exec(written)?.[1];
  if (named !== undefined) {
    const list = lists[named];
    if (list === undefined) throw new RangeError(`There is no list of the name ${named}.`);
    return `(?:${listed(list, lists)})`;
  }
  const words = written.split('/').map(literal);
  return words.length > 1 ? `(?:${words.join('|')})` : (words[0] ?? '');
}

function phrase(written: string, lists: Readonly<Record<string, string>>): string {
  let pattern = '';
  /** What parts the next piece from those before it. */
  let lead = '';
  for (const one of written.split(/\s+/)) {
    if (one === '...') pattern += ANY_WORDS;
    else if (one.length < 2 || !one.endsWith('?')) [pattern, lead] = [pattern + lead + piece(one, lists), '\\s'];
    else if (lead === '') pattern += `(?:${piece(one.slice(0, -1), lists)}\\s)?`;
    else pattern += `(?:${lead}${piece(one.slice(0, -1), lists)})?`;
  }
  return pattern;
}

const listed = (list: string, lists: Readonly<Record<string, string>>): string => {
  const all = list
    .split(/[|\n]/)
    .map((one) => one.trim())
    .filter((one) => one !== '');
  const before = all.filter((one) => one.endsWith(' #')).map((one) => phrase(one.slice(0, -2), lists));
  const plain = all.filter((one) => !one.endsWith(' #')).map((one) => phrase(one, lists));
  return [...(before.length > 0 ? [`(?:${before.join('|')})${TO_HERE}${HOUR_FOLLOWS}`] : []), ...plain].join('|');
};

/** The source of a pattern for every phrase of a list, as whole words; to be used with the flag `i`, without `u`. */
export const phrases = (list: string, lists: Readonly<Record<string, string>> = {}): string =>
  `${FROM_HERE}(?:${listed(list, lists)})${TO_HERE}`;

/** A pattern that finds every phrase of a list. */
export const anyOf = (list: string, lists: Readonly<Record<string, string>> = {}, flags = 'i'): RegExp =>
  new RegExp(phrases(list, lists), flags);

/** Letters of the Latin scripts as ranges. */
const LETTERS = String.raw`a-z\u00c0-\u024f`;
/**
 * A pattern with the letters of the Latin scripts and plain figures for all letters and figures, to be used without regard to case: the class
 * of all letters makes long patterns slow to build. Such a class stands alone or first in its brackets.
 */
export const latin = (pattern: string): string =>
  pattern
    .replaceAll(String.raw`\p{N}`, String.raw`\d`)
    .replaceAll(/\[\\p\{L\}/g, `[${LETTERS}`)
    .replaceAll(/\\p\{Ll?\}/g, `[${LETTERS}]`);
