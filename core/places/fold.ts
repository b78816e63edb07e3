/**
 * Names as they are compared: without accents, case, points and doubled spaces.
 */

// Letters that Unicode does not take apart into a base letter and a mark.
const plainLetters: Record<string, string> = { ø: 'o', æ: 'ae', œ: 'oe', ß: 'ss', ł: 'l', đ: 'd', ð: 'd', þ: 'th', ı: 'i' };
const wholeWords: Record<string, string> = { st: 'saint', ste: 'sainte', ft: 'fort', mt: 'mount' };

/** Small letters without their marks: `Québec` as `quebec`. What is neither letter nor mark stays. */
export function plainText(text: string): string {
  const lower = text.toLowerCase();
  // Most names are plain ASCII, and taking letters apart is what costs.
  return /^[\x20-\x7e]*$/.test(lower)
    ? lower
    : lower
        .normalize('NFD')
        .replace(/\p{M}+/gu, '')
        .replace(/[øæœßłđðþı]/g, (letter) => plainLetters[letter] ?? letter);
}

/** `St. Moritz-Dorf` as `saint moritz dorf`, `Québec` as `quebec`. "St", "Ft" and "Mt" are spelled out where a word follows. */
export function foldName(text: string): string {
  const plain = plainText(text);
  // Most names are one plain word, and a list of all towns is folded at once.
  if (/^[a-z\d]+$/.test(plain)) return plain;
  return plain
    .replace(/[.'’`ʻ]/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
    .replace(/\b(st|ste|ft|mt)(?= )/g, (word) => wholeWords[word] ?? word);
}
